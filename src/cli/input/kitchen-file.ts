import { readFileSync } from 'node:fs';
import { parseKitchen, problemMessage, type ParsedKitchen } from '../../core/kitchen/index.ts';
import { inEnglish } from '../speech/english.ts';

/** Something wrong with a file, in words. */
export type FileProblem = {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
  readonly text: string;
};

/** The kitchen of a file, or what is wrong with it. */
export type KitchenFile = ParsedKitchen | { readonly problems: readonly FileProblem[] };

function reasonOf(fault: unknown): string {
  const code = fault instanceof Error && 'code' in fault ? fault.code : undefined;
  if (code === 'ENOENT') return 'no such file';
  if (code === 'EISDIR') return 'a folder';
  if (code === 'EACCES') return 'a file that may not be read';
  return fault instanceof Error ? fault.message : String(fault);
}

/** Reads a kitchen file; every problem comes back as a value. */
export function readKitchenFile(path: string): KitchenFile {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (fault) {
    const found = reasonOf(fault);
    const allowed = 'a *.kitchen.json file that can be read';
    const told = `${path}: found ${found}; allowed: ${allowed}. Check the name.`;
    return { problems: [{ path, found, allowed, text: told }] };
  }
  const read = parseKitchen(text);
  if (!('problems' in read)) return read;
  return {
    problems: read.problems.map((problem) => ({
      path: problem.path,
      found: inEnglish.say(problem.found),
      allowed: inEnglish.say(problem.allowed),
      text: inEnglish.say(problemMessage(problem)),
    })),
  };
}
