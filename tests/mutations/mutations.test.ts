import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { INVARIANTS, MUTATIONS } from './index.ts';

const ROOT = join(import.meta.dirname, '../..');

/** Whether the tests bite is tried by `npm run mutate`; here only that each entry still fits the code. */
describe('the list of mutations', () => {
  it('breaks every invariant at least once', () => {
    const broken = new Set(MUTATIONS.flatMap(({ breaks }) => breaks));
    expect(INVARIANTS.filter((number) => !broken.has(number))).toEqual([]);
    expect([...broken].filter((number) => !INVARIANTS.includes(number))).toEqual([]);
  });

  it('names each entry once', () => {
    const ids = MUTATIONS.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it('names tests that say they verify what it breaks', () => {
    const silent = MUTATIONS.filter(({ breaks, tests }) => {
      const texts = tests.map((test) => readFileSync(join(ROOT, test), 'utf8'));
      const lines = texts.flatMap((text) => text.match(/Verifies: .*/g) ?? []);
      return !breaks.some((number) => lines.some((line) => line.includes(number)));
    });
    expect(silent.map(({ id }) => id)).toEqual([]);
  });

  it.each(MUTATIONS)('$id fits the code', ({ file, find, replace, tests }) => {
    const text = readFileSync(join(ROOT, file), 'utf8');
    expect(text.split(find).length - 1, `“${find}” in ${file}`).toBe(1);
    expect(replace).not.toBe(find);
    expect(tests.length).toBeGreaterThan(0);
    for (const test of tests) expect(existsSync(join(ROOT, test)), test).toBe(true);
  });
});
