import { readFileSync } from 'node:fs';
import { parseKitchen, type KitchenProblem, type ParsedKitchen } from '../core/kitchen/index.ts';

/** The kitchen of a file, or what is wrong with it. */
export type KitchenFile =
  | ParsedKitchen
  | {
      readonly problems: readonly Pick<KitchenProblem, 'path' | 'found' | 'allowed' | 'message'>[];
    };

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
    return {
      problems: [
        {
          path,
          found,
          allowed,
          message: `${path}: found ${found}; allowed: ${allowed}. Check the name.`,
        },
      ],
    };
  }
  return parseKitchen(text);
}
