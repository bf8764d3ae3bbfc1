import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { importJournal } from '../../../../src/core/journal/index.ts';
import { inEnglish, inEnglishWith } from '../../../support/english.ts';

export const FOLDER_OF_VERSION = {
  1: join(import.meta.dirname, 'v1'),
  2: join(import.meta.dirname, 'v2'),
} as const;

/** Times as the frozen records have them. */
export const translator = inEnglishWith({
  dateTime: (wallMs) => new Date(wallMs).toISOString().slice(0, 19),
});

/** Entries of a frozen journal, packed or not, unchecked. The first four lie where they were frozen. */
export function frozenEntries(name: string): readonly unknown[] {
  const version = name.endsWith('-v1') ? 1 : 2;
  const plain = join(import.meta.dirname, `${name}.json`);
  const text = existsSync(plain)
    ? readFileSync(plain, 'utf8')
    : gunzipSync(readFileSync(join(FOLDER_OF_VERSION[version], `${name}.json.gz`))).toString();
  const file = importJournal(text);
  if ('problem' in file) throw new Error(inEnglish.say(file.problem));
  return file.entries;
}
