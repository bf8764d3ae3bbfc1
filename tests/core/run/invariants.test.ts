import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** The invariants are numbered from 1 to 30; the 27th is the page's: its queue outlives any exception. */
const NUMBERS = Array.from(
  { length: 30 },
  (_, index) => `I-${String(index + 1).padStart(2, '0')}`,
).filter((number) => number !== 'I-27');

function* testFiles(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* testFiles(path);
    else if (entry.name.endsWith('.test.ts')) yield path;
  }
}

/** Numbers that no text cites with "Verifies:". */
function uncited(texts: readonly string[]): string[] {
  const cited = new Set<string>();
  for (const text of texts) {
    for (const [, list = ''] of text.matchAll(/Verifies: ([I\d, -]+)/g))
      for (const number of list.matchAll(/I-\d\d/g)) cited.add(number[0]);
  }
  return NUMBERS.filter((number) => !cited.has(number));
}

describe('the invariants', () => {
  it('are each cited by a test that asserts it', () => {
    const texts = ['run', 'journal'].flatMap((folder) =>
      [...testFiles(join(import.meta.dirname, '..', folder))].map((path) =>
        readFileSync(path, 'utf8'),
      ),
    );
    expect(uncited(texts)).toEqual([]);
  });

  it('are each told in the guide', () => {
    const guide = readFileSync(join(import.meta.dirname, '../../../DEVELOPERS.md'), 'utf8');
    const told = [...guide.matchAll(/^\| (I-\d\d) \| \S/gm)].map(([, number]) => number);
    expect(told.toSorted()).toEqual([...NUMBERS, 'I-27'].toSorted());
  });

  it('are found missing when no test cites them', () => {
    const cites = (numbers: readonly string[]): string => `// Verifies: ${numbers.join(', ')}`;
    expect(uncited([cites(NUMBERS)])).toEqual([]);
    expect(uncited([cites(NUMBERS.slice(0, 6)), cites(NUMBERS.slice(7))])).toEqual(['I-07']);
    expect(uncited(['// I-19 is mentioned, not verified'])).toEqual(NUMBERS);
  });
});
