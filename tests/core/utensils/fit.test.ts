import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastPotL, potOf, wayInto } from '../../../src/core/utensils/batches/fit.ts';

const mm = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => n / 1000);
const sides = fc
  .tuple(mm(10, 600), mm(5, 400), mm(2, 300))
  .map((all) => all.toSorted((a, b) => b - a) as [number, number, number]);
const litres = fc.integer({ min: 1, max: 60 });

/** Corners of a box turned about two axes, its middle in the middle of the water. */
function corners([a, b, c]: readonly number[], tilt: number, roll: number) {
  const signs = [-0.5, 0.5];
  return signs.flatMap((i) =>
    signs.flatMap((j) =>
      signs.map((k) => {
        const [x, y, z] = [i * a!, j * b!, k * c!];
        const [y1, z1] = [
          y * Math.cos(roll) - z * Math.sin(roll),
          y * Math.sin(roll) + z * Math.cos(roll),
        ];
        return [
          x * Math.cos(tilt) - z1 * Math.sin(tilt),
          y1,
          x * Math.sin(tilt) + z1 * Math.cos(tilt),
        ] as const;
      }),
    ),
  );
}

/** Whether any of many turns of the box lies wholly in the water: a search of its own. */
function someTurnFits(box: readonly number[], pot: { diameterM: number; depthM: number }): boolean {
  const [a, b, c] = box;
  const orders = [[a, b, c], [a, c, b], [b, a, c], [b, c, a], [c, a, b], [c, b, a]];
  const steps = Array.from({ length: 61 }, (_, i) => (i / 60) * (Math.PI / 2));
  return orders.some((order) =>
    steps.some((tilt) =>
      [0, Math.PI / 2].some((roll) =>
        corners(order as number[], tilt, roll).every(
          ([x, y, z]) =>
            Math.hypot(x, y) <= pot.diameterM / 2 + 2e-3 && Math.abs(z) <= pot.depthM / 2 + 2e-3,
        ),
      ),
    ),
  );
} // prettier-ignore

describe('what goes under water in a pot', () => {
  it('whole: some turn of it has every corner under water', () => {
    let whole = 0;
    fc.assert(
      fc.property(sides, litres, (box, volumeL) => {
        const pot = potOf(volumeL);
        if (wayInto(box, pot) !== 'whole') return;
        whole += 1;
        expect(someTurnFits(box, pot)).toBe(true);
      }),
      { numRuns: 400 },
    );
    expect(whole).toBeGreaterThan(50);
  });

  it('does so in every larger pot too', () => {
    fc.assert(
      fc.property(sides, litres, fc.integer({ min: 1, max: 40 }), (box, volumeL, more) => {
        const rank = { whole: 2, 'by-halves': 1 };
        const inSmall = wayInto(box, potOf(volumeL));
        const inLarge = wayInto(box, potOf(volumeL + more));
        expect(inLarge ? rank[inLarge] : 0).toBeGreaterThanOrEqual(inSmall ? rank[inSmall] : 0);
      }),
    );
  });

  it('by hand: a spoon leans, a tray needs halves or a larger pot', () => {
    // 7 L of usual shape: 22.8 cm across, 17.1 cm deep, so 28 cm from corner to corner.
    const pot = potOf(7);
    expect(pot.diameterM).toBeCloseTo(0.2282, 3);
    expect(wayInto([0.27, 0.04, 0.01], pot)).toBe('whole');
    expect(wayInto([0.28, 0.04, 0.01], pot)).toBe('by-halves');
    expect(wayInto([0.4, 0.3, 0.02], pot)).toBeUndefined();
    const least = leastPotL([0.4, 0.3, 0.02]);
    expect(wayInto([0.4, 0.3, 0.02], potOf(least))).toBeDefined();
    expect(wayInto([0.4, 0.3, 0.02], potOf(least - 1))).toBeUndefined();
  });
});
