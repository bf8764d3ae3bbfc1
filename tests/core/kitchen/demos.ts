import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseKitchen, type Kitchen } from '../../../src/core/kitchen/index.ts';

const FOLDER = join(import.meta.dirname, '../../../demo-kitchens');

/** File names and texts of the demo kitchens. */
export const DEMO_TEXTS: readonly (readonly [file: string, text: string])[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.kitchen.json'))
  .toSorted()
  .map((file) => [file, readFileSync(join(FOLDER, file), 'utf8')] as const);

/** A demo as plain JSON, free to be spoilt. */
// eslint-disable-next-line typescript/no-explicit-any
export function demoJson(file: string): any {
  const text = DEMO_TEXTS.find(([name]) => name === file)?.[1];
  if (text === undefined) throw new Error(`no demo ${file}`);
  return JSON.parse(text);
}

export function demoKitchen(file: string): Kitchen {
  const outcome = parseKitchen(DEMO_TEXTS.find(([name]) => name === file)?.[1] ?? '');
  if ('problems' in outcome) throw new Error(JSON.stringify(outcome.problems));
  return outcome.kitchen;
}
