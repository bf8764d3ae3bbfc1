/**
 * Fails when the catalogue holds a sentence that nothing asks for. A key is
 * asked for where it stands in the source as a whole, or where a key made of
 * parts (`common.method.${id}`) may become it: the table of the ids is then
 * held against the catalogue by the tests of its room. Sentences that only
 * journals of older runs still name are left out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { english } from '../src/core/messages/english/index.ts';
import { retired } from '../src/core/messages/english/custom/retired.ts';
import { retiredSteps } from '../src/core/messages/english/steps/retired.ts';
import { keysAsked, unasked } from './messages/keys-asked.ts';

function* sources(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.(tsx?|json)$/.test(entry.name)) yield path;
  }
}

const asked = ['src', 'shared'].flatMap((root) =>
  [...sources(root)].map((path) => keysAsked(readFileSync(path, 'utf8'))),
);
const old = { ...retired, ...retiredSteps };
const known = Object.keys(english).filter((key) => !Object.hasOwn(old, key));
const left = unasked(known, asked);
for (const key of left) console.error(`“${key}” is asked for nowhere: delete it.`);
console.log(
  left.length === 0 ? 'Every sentence is asked for.' : `${left.length} sentences are not.`,
);
process.exit(left.length === 0 ? 0 : 1);
