import { describe, expect, it } from 'vitest';
import { planCovers, rollDrawings, stretches } from '../../../src/core/covering/index.ts';
import { chooseMethod } from '../../../src/core/custom/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const drawings = ['flat-coils', 'flat-glass-230', 'mountain-gas', 'hall'].flatMap((id) => {
  const kitchen = demoKitchen(`${id}.kitchen.json`);
  const methods = kitchen.fixtures.map((one) => chooseMethod(one, kitchen).method);
  return planCovers(kitchen, { methods }).groups.flatMap(rollDrawings);
});

describe.each([1, 2, 5])('stretches of %s m', (mostM) => {
  it('make up the roll, and no piece lies on two of them', () => {
    expect(drawings.length).toBeGreaterThan(5);
    for (const drawing of drawings) {
      const found = stretches(drawing, mostM);
      expect(found[0]!.fromM).toBe(0);
      expect(found.at(-1)!.toM).toBe(drawing.lengthM);
      for (const [at, { fromM, toM }] of found.entries()) {
        expect(toM).toBeGreaterThan(fromM);
        if (at > 0) expect(fromM).toBe(found[at - 1]!.toM);
      }
      for (const { at } of drawing.pieces) {
        const on = found.filter(
          ({ fromM, toM }) => at.yM >= fromM - 1e-6 && at.yM + at.lengthM <= toM + 1e-6,
        );
        expect(on).toHaveLength(1);
      }
    }
  });
});

it('a stretch is longer than wanted only where no cut goes through', () => {
  const drawing = {
    widthM: 1,
    lengthM: 6,
    pieces: [],
    lines: [
      { number: 1, from: [0, 4], to: [1, 4] },
      { number: 2, from: [0, 2], to: [0.5, 2] },
      { number: 3, from: [0.5, 0], to: [0.5, 4] },
    ],
  } as const;
  expect(stretches(drawing, 2.5)).toEqual([
    { fromM: 0, toM: 4 },
    { fromM: 4, toM: 6 },
  ]);
});
