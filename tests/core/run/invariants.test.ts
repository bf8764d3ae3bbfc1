import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Invariants of the engine; a planner's matter (no step inside a rest day) is number 19, tested with the calendar. */
const NUMBERS = Array.from({ length: 18 }, (_, index) => `I-${String(index + 1).padStart(2, '0')}`);

function* testFiles(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* testFiles(path);
    else if (entry.name.endsWith('.test.ts')) yield path;
  }
}

describe('the invariants', () => {
  it('are each cited by a test that asserts it', () => {
    const cited = new Set<string>();
    for (const folder of ['run', 'journal']) {
      for (const path of testFiles(join(import.meta.dirname, '..', folder))) {
        for (const [, list = ''] of readFileSync(path, 'utf8').matchAll(/Verifies: ([I\d, -]+)/g)) {
          for (const number of list.matchAll(/I-\d\d/g)) cited.add(number[0]);
        }
      }
    }
    expect(NUMBERS.filter((number) => !cited.has(number))).toEqual([]);
  });
});
