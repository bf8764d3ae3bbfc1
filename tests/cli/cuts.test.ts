import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { answer } from '../../src/cli/reckon/answer.ts';

const folder = mkdtempSync(join(tmpdir(), 'cuts-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(content: unknown) {
  const path = join(folder, 'pieces.json');
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return answer(['cuts', path]);
}

const pieces = [
  { id: 'counter', widthM: 0.65, lengthM: 2.4 },
  { id: 'shelf', widthM: 0.35, lengthM: 0.8 },
  { id: 'shelf-2', widthM: 0.35, lengthM: 0.8 },
];

describe('reckon cuts', () => {
  it('prints the used length, the waste, and the pieces in the order they come free', () => {
    const { print, code } = run({ rollWidthM: 1.4, rotate: true, pieces });
    expect(code).toBe(0);
    expect(Object.keys(print)).toEqual(['usedLengthM', 'wasteShare', 'cuts']);
    const { usedLengthM, wasteShare, cuts } = print as {
      usedLengthM: number;
      wasteShare: number;
      cuts: Record<string, unknown>[];
    };
    expect(cuts.map(({ id }) => id).toSorted()).toEqual(['counter', 'shelf', 'shelf-2']);
    expect(Object.keys(cuts[0]!)).toEqual(['id', 'xM', 'yM', 'widthM', 'lengthM']);
    const areaM2 = 0.65 * 2.4 + 2 * 0.35 * 0.8;
    expect(wasteShare).toBeCloseTo(1 - areaM2 / (1.4 * usedLengthM), 9);
    expect(usedLengthM).toBeLessThanOrEqual(2.4 + 1e-9);
  });

  it('does not turn pieces where it may not', () => {
    const { print } = run({ rollWidthM: 1.4, rotate: false, pieces });
    expect(print).toMatchObject({ usedLengthM: 2.4 });
  });

  it.each([
    ['file', 'not json'],
    ['file', []],
    ['file', { rollWidthM: 1, pieces: [], rotates: true }],
    ['rotate', { rollWidthM: 1, rotate: 'yes', pieces: [] }],
    ['rollWidthM', { pieces: [] }],
    ['pieces', { rollWidthM: 1 }],
    ['pieces[0]', { rollWidthM: 1, pieces: [{ id: 'a', width: 1 }] }],
    ['pieces[0].lengthM', { rollWidthM: 1, pieces: [{ id: 'a', widthM: 1 }] }],
    ['pieces[0]', { rollWidthM: 0.5, pieces: [{ id: 'a', widthM: 0.6, lengthM: 0.7 }] }],
  ])('names %s when it cannot be used', (input, content) => {
    const { print, code } = run(content);
    expect(code).toBe(2);
    expect(print).toMatchObject({ error: { input } });
  });
});
