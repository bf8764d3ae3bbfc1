import { message, type Message } from '../../messages/index.ts';
import { escapedUnseen } from './plain-line.ts';

/** One thing wrong with a kitchen file, told so that a cook can act on it. */
export type KitchenProblem = {
  /** `fixtures[2].bowls[0].depthM`; empty for the whole file. */
  readonly path: string;
  /** What stands there. */
  readonly found: Message;
  readonly allowed: Message;
  readonly advice: Message;
  /** Line of the file, counted from 1, where it is known. */
  readonly line?: number;
  /** Letter of that line, counted from 1, where the text itself breaks off. */
  readonly column?: number;
};

/** Something a household should look at; the file is still used. */
export type KitchenWarning = KitchenProblem;

const LONGEST_QUOTE = 48;

/** A value of the file as a short text: quoted strings, plain numbers, the size of lists. */
export function foundValue(value: unknown): Message {
  if (value === undefined) return message('problems.found.missing');
  if (Array.isArray(value)) return message('problems.found.list', { count: value.length });
  if (typeof value === 'object' && value !== null) return message('problems.found.object');
  if (typeof value !== 'string') return message('problems.value', { json: String(value) });
  return quoted(shortened(value));
}

/** A text of the file, or its beginning when it is long. */
export function shortened(text: string): string {
  // A letter takes one or two places of a string: the rest of a long one is never looked at.
  const letters = Array.from(text.slice(0, 2 * LONGEST_QUOTE + 2));
  return letters.length > LONGEST_QUOTE ? `${letters.slice(0, LONGEST_QUOTE).join('')}…` : text;
}

/** A string of the file in the quotes it stands in. */
export function quoted(text: string): Message {
  return message('problems.value', { json: escapedUnseen(JSON.stringify(text)) });
}

/** Words of the format, each in its quotes: `"meat", "dairy"`. */
export function quotedList(words: readonly string[]): Message {
  return message('problems.value', { json: words.map((word) => JSON.stringify(word)).join(', ') });
}

/**
 * @param path path inside the file, empty for the whole file
 * @param found see {@link foundValue}
 */
export function problemAt(
  path: string,
  found: Message,
  allowed: Message,
  advice: Message,
): KitchenProblem {
  return { path, found, allowed, advice };
}

/** The same problem with the line it stands on. */
export function onLine(problem: KitchenProblem, line: number | undefined): KitchenProblem {
  return line === undefined ? problem : { ...problem, line };
}

/** Where it stands: field, line, or line and letter. */
export function problemWhere({ path, line, column }: KitchenProblem): Message {
  if (line !== undefined && column !== undefined)
    return message('problems.where.letter', { line, column });
  const field =
    path === '' ? message('problems.where.file') : message('problems.where.field', { path });
  return line === undefined ? field : message('problems.where.line', { line, field });
}

/** All of it in one line. */
export function problemMessage(problem: KitchenProblem): Message {
  const { found, allowed, advice } = problem;
  return message('problems.told', { where: problemWhere(problem), found, allowed, advice });
}

const PLAIN_NAME = /^[A-Za-z_$][\w$]*$/;

/** Path of a named field under `at`; a name longer than any field has is told by its beginning. */
export function fieldPath(at: string, longName: string): string {
  const name = shortened(longName);
  if (!PLAIN_NAME.test(name)) return `${at}[${escapedUnseen(JSON.stringify(name))}]`;
  return at === '' ? name : `${at}.${name}`;
}
