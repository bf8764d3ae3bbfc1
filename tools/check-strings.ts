/**
 * Fails when a string that a person would read stands outside the message
 * catalogue. `// not shown: reason` on the line or the line above excuses one.
 * With --count it prints how many there are in each folder.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { FILLED } from './strings/prose.ts';
import { shownStrings } from './strings/shown-strings.ts';

/** Where sentences for people are written. */
const CATALOGUE = 'src/core/messages/';

/**
 * Rooms that speak to whoever writes code or files by hand, in English and in
 * the names of fields: what they refuse and what they reckon. No page shows
 * it; a page says the message of the refusal's code.
 */
const FOR_ENGINEERS = [
  'src/cli/reckon/',
  'src/core/units/',
  'src/core/calendar/',
  'src/core/physics/',
  'src/core/pouring/',
  'src/core/schedule/',
  'src/core/cutting/',
  'src/core/plan/check/',
];

function* sources(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.tsx?$/.test(entry.name)) yield path;
  }
}

const root = process.cwd();
const counts = new Map<string, number>();
let problems = 0;
for (const path of sources(join(root, 'src'))) {
  const file = relative(root, path);
  if ([CATALOGUE, ...FOR_ENGINEERS].some((room) => file.startsWith(room))) continue;
  const { shown, needless } = shownStrings(file, readFileSync(path, 'utf8'));
  problems += shown.length + needless.length;
  counts.set(dirname(file), (counts.get(dirname(file)) ?? 0) + shown.length);
  if (process.argv.includes('--count')) continue;
  for (const { line, text } of shown)
    console.error(
      `${file}:${line} “${text.replaceAll(FILLED, '…').replaceAll(/\s+/g, ' ')}” belongs in the message catalogue.`,
    );
  for (const line of needless)
    console.error(
      `${file}:${line} “not shown” excuses nothing or gives no reason; write “not shown: reason” beside a string, or delete it.`,
    );
}
if (process.argv.includes('--count'))
  for (const [folder, count] of [...counts].toSorted(([, a], [, b]) => b - a))
    if (count > 0) console.log(`${String(count).padStart(5)}  ${folder}`);
console.log(problems === 0 ? 'All texts are in the catalogue.' : `${problems} texts are not.`);
process.exit(problems === 0 ? 0 : 1);
