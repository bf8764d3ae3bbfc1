/** One thing wrong with a kitchen file, in words a cook can act on. */
export type KitchenProblem = {
  /** `fixtures[2].bowls[0].depthM`; for broken JSON `line 12, column 5`; `file` for the whole. */
  readonly path: string;
  /** What stands there, as text. */
  readonly found: string;
  readonly allowed: string;
  readonly advice: string;
  /** All of it in one line. */
  readonly message: string;
  /** Line of the file, counted from 1, where it is known. */
  readonly line?: number;
};

/** Something a household should look at; the file is still used. */
export type KitchenWarning = KitchenProblem;

const LONGEST_QUOTE = 48;

/** The path of a value inside the file; the whole file has the empty path inside. */
export const WHOLE_FILE = 'file';

/** A value of the file as a short text: quoted strings, plain numbers, the size of lists. */
export function foundText(value: unknown): string {
  if (value === undefined) return 'nothing (it is missing)';
  if (value === null) return 'null';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') return 'an object in { }';
  if (typeof value !== 'string') return String(value);
  const letters = [...value];
  return JSON.stringify(
    letters.length > LONGEST_QUOTE ? `${letters.slice(0, LONGEST_QUOTE).join('')}…` : value,
  );
}

/**
 * Builds a problem and its one-line message.
 * @param path path inside the file, empty for the whole file
 * @param found already in words (see {@link foundText})
 */
export function problemAt(
  path: string,
  found: string,
  allowed: string,
  advice: string,
): KitchenProblem {
  const at = path === '' ? WHOLE_FILE : path;
  return {
    path: at,
    found,
    allowed,
    advice,
    message: `${at}: found ${found}; allowed: ${allowed}. ${advice}`,
  };
}

/** The same problem with the line it stands on. */
export function onLine(problem: KitchenProblem, line: number | undefined): KitchenProblem {
  if (line === undefined) return problem;
  return { ...problem, line, message: `Line ${line}, ${problem.message}` };
}

const PLAIN_NAME = /^[A-Za-z_$][\w$]*$/;

/** Path of a named field under `at`. */
export function fieldPath(at: string, name: string): string {
  if (!PLAIN_NAME.test(name)) return `${at}[${JSON.stringify(name)}]`;
  return at === '' ? name : `${at}.${name}`;
}
