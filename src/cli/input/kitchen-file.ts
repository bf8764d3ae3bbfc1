import { readFileSync } from 'node:fs';
import { parseKitchen, problemMessage, type ParsedKitchen } from '../../core/kitchen/index.ts';
import { asWritten, message, type Message } from '../../core/messages/index.ts';
import { inEnglish } from '../speech/english.ts';

/** Something wrong with a file, in words. */
type FileProblem = {
  readonly path: string;
  readonly found: string;
  readonly allowed: string;
  readonly text: string;
};

/** The kitchen of a file, or what is wrong with it. */
export type KitchenFile = ParsedKitchen | { readonly problems: readonly FileProblem[] };

function reasonOf(fault: unknown): Message {
  const code = fault instanceof Error && 'code' in fault ? fault.code : undefined;
  if (code === 'ENOENT') return message('terminal.file.missing');
  if (code === 'EISDIR') return message('terminal.file.folder');
  if (code === 'EACCES') return message('terminal.file.forbidden');
  return asWritten(fault instanceof Error ? fault.message : String(fault));
}

/** Reads a kitchen file; every problem comes back as a value. */
export function readKitchenFile(path: string): KitchenFile {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (fault) {
    const found = reasonOf(fault);
    const allowed = message('terminal.file.allowed');
    return {
      problems: [
        {
          path,
          found: inEnglish.say(found),
          allowed: inEnglish.say(allowed),
          text: inEnglish.t('terminal.file.unreadable', { path, found, allowed }),
        },
      ],
    };
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
