import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  LanesRefusal,
  planLanes,
  resplitFrom,
  sinkLanes,
  splitIntoKettles,
  type KettleStretch,
  type LanePoint,
} from '../../../src/core/pouring/index.ts';

const HAND = { handSpeedMPerS: 0.1 };
const straight = (lengthM: number) => ({
  points: [
    [0, 0],
    [lengthM, 0],
  ] as LanePoint[],
});

const perKettle = (stretches: readonly KettleStretch[]) => {
  const sums = new Map<number, number>();
  for (const { kettle, litres } of stretches) sums.set(kettle, (sums.get(kettle) ?? 0) + litres);
  return [...sums];
};

describe('stretches of a kettle', () => {
  it('are even and rounded up: 10 m at 0.5 L/m from a kettle of 1.5 L are four of 1.25 L', () => {
    const stretches = splitIntoKettles([straight(10)], {
      litresPerM: 0.5,
      usableKettleL: 1.5,
      ...HAND,
    });
    expect(perKettle(stretches)).toEqual([1, 2, 3, 4].map((k) => [k, expect.closeTo(1.25, 9)]));
    expect(stretches[1]?.points).toEqual([
      [expect.closeTo(2.5, 9), 0],
      [expect.closeTo(5, 9), 0],
    ]);
    expect(stretches.map((s) => [s.startS, s.endS])).toEqual(
      [1, 2, 3, 4].map(() => [0, expect.closeTo(25, 9)]),
    );
  });

  it('take a kettle that is just enough as enough', () => {
    const options = { litresPerM: 0.3, usableKettleL: 0.9, ...HAND };
    expect(perKettle(splitIntoKettles([straight(9)], options))).toHaveLength(3);
  });

  it('end at a lift or a turn when one is near', () => {
    const lanes = [
      straight(2.9),
      {
        points: [
          [0, 1],
          [3.1, 1],
        ] as LanePoint[],
      },
    ];
    const stretches = splitIntoKettles(lanes, { litresPerM: 0.5, usableKettleL: 1.6, ...HAND });
    expect(stretches.map((s) => [s.kettle, s.lengthM])).toEqual([
      [1, expect.closeTo(2.9, 9)],
      [2, expect.closeTo(3.1, 9)],
    ]);
  });

  it('go on over a lift within one kettle, the seconds too', () => {
    const lanes = [
      straight(1),
      {
        points: [
          [0, 1],
          [2, 1],
        ] as LanePoint[],
      },
    ];
    const stretches = splitIntoKettles(lanes, { litresPerM: 0.1, usableKettleL: 1, ...HAND });
    expect(stretches.map((s) => [s.kettle, s.startS, s.endS])).toEqual([
      [1, 0, expect.closeTo(10, 9)],
      [1, expect.closeTo(10, 9), expect.closeTo(30, 9)],
    ]);
  });

  it('lose no metre, keep their order and never overfill a kettle', () => {
    const place = fc.tuple(
      fc.double({ min: 0, max: 3, noNaN: true }),
      fc.double({ min: 0, max: 3, noNaN: true }),
    );
    const lane = fc.array(place, { minLength: 2, maxLength: 12 }).map((points) => ({ points }));
    fc.assert(
      fc.property(
        fc.array(lane, { minLength: 1, maxLength: 4 }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0.3, max: 5, noNaN: true }),
        (lanes, litresPerM, usableKettleL) => {
          const stretches = splitIntoKettles(lanes, { litresPerM, usableKettleL, ...HAND });
          const total = lanes.reduce(
            (sum, { points }) =>
              sum +
              points
                .slice(1)
                .reduce(
                  (s, b, i) =>
                    s + Math.hypot(b[0] - (points[i]?.[0] ?? 0), b[1] - (points[i]?.[1] ?? 0)),
                  0,
                ),
            0,
          );
          expect(stretches.reduce((sum, s) => sum + s.lengthM, 0)).toBeCloseTo(total, 6);
          const drawn = stretches.reduce(
            (sum, { points }) =>
              sum +
              points
                .slice(1)
                .reduce(
                  (s, b, i) =>
                    s + Math.hypot(b[0] - (points[i]?.[0] ?? 0), b[1] - (points[i]?.[1] ?? 0)),
                  0,
                ),
            0,
          );
          expect(drawn).toBeCloseTo(total, 6);
          const kettles = perKettle(stretches);
          expect(kettles.map(([k]) => k)).toEqual(kettles.map((_, i) => i + 1));
          for (const [, litres] of kettles)
            expect(litres).toBeLessThanOrEqual(usableKettleL + 1e-6);
          if (total > 1e-3)
            expect(kettles).toHaveLength(Math.ceil((total * litresPerM) / usableKettleL - 1e-6));
        },
      ),
      { seed: 18 },
    );
  });

  it('begin anew where the water gave out, from a length or a place', () => {
    const { lanes } = planLanes(
      {
        outer: [
          [0, 0],
          [2.4, 0],
          [2.4, 0.6],
          [0, 0.6],
        ],
        holes: [],
      },
      { swathM: 0.12, backEdges: [[0, 1]] },
    );
    const options = { litresPerM: 0.5, usableKettleL: 1.5, firstKettle: 3, ...HAND };
    const byLength = resplitFrom(lanes, 4, options);
    const [first] = byLength;
    expect(first?.kettle).toBe(3);
    expect(byLength.reduce((sum, s) => sum + s.lengthM, 0)).toBeCloseTo(12.48 - 4, 9);
    expect(first?.points[0]?.[0]).toBeCloseTo(2.4 - (4 - 2.52), 9);
    const byPlace = resplitFrom(lanes, [2.4 - (4 - 2.52), 0.19], options);
    expect(byPlace[0]?.points[0]?.[0]).toBeCloseTo(first?.points[0]?.[0] ?? NaN, 6);
    expect(resplitFrom(lanes, 12.48, options)).toEqual([]);
    expect(() => resplitFrom(lanes, 13, options)).toThrow(/at is 13; allowed: 0 to 12.48/);
  });

  it.each([
    [{ litresPerM: 0, usableKettleL: 1.5, ...HAND }, /litresPerM is 0/],
    [{ litresPerM: 0.5, usableKettleL: NaN, ...HAND }, /usableKettleL is NaN/],
    [{ litresPerM: 0.5, usableKettleL: 1.5, handSpeedMPerS: 0 }, /handSpeedMPerS is 0/],
    [{ litresPerM: 100, usableKettleL: 0.1, ...HAND }, /10000 kettles; allowed: up to 2000/],
  ])('refuse %o', (options, message) => {
    expect(() => splitIntoKettles([straight(10)], options)).toThrow(LanesRefusal);
    expect(() => splitIntoKettles([straight(10)], options)).toThrow(message);
  });
});

describe('a sink unfolded', () => {
  const bowl = { lengthM: 0.5, widthM: 0.4, depthM: 0.2 };

  it('goes from high to low: spout and tap, handles, rim, walls, floor', () => {
    const parts = sinkLanes([bowl, { ...bowl, lengthM: 0.35 }], { swathM: 0.08 });
    expect(parts.map(({ kind, fitting, bowl }) => [kind, fitting ?? bowl])).toEqual([
      ['fitting', 'spout-and-tap'],
      ['fitting', 'handles'],
      ['rim', 1],
      ['rim', 2],
      ['wall', 1],
      ['wall', 2],
      ['floor', 1],
      ['floor', 2],
    ]);
    // Surface of an open box: l·w + 2·(l + w)·d (elementary). Tolerance: rounding.
    const first = parts.filter((p) => p.bowl === 1);
    expect(first.reduce((sum, p) => sum + p.areaM2, 0)).toBeCloseTo(0.2 + 2 * 0.9 * 0.2, 12);
    expect(parts.find((p) => p.kind === 'rim')?.lengthM).toBeCloseTo(1.8, 12);
    expect(parts.find((p) => p.kind === 'wall')?.lengthM).toBeCloseTo(1.8, 12);
  });

  it('takes a second pass round the walls where the film does not reach down', () => {
    const wall = (wallReachM: number) =>
      sinkLanes([bowl], { swathM: 0.08, wallReachM }).find((p) => p.kind === 'wall');
    expect(wall(0.1)?.lanes).toHaveLength(8);
    expect(wall(0.1)?.lanes[0]?.points[0]).toEqual([0.2, 0]);
    expect(wall(0.2)?.lanes).toHaveLength(4);
  });

  it.each([5, 6])('of %i bowls has each of them, none over another', (count) => {
    const parts = sinkLanes(
      Array.from({ length: count }, () => bowl),
      { swathM: 0.08 },
    );
    for (const kind of ['rim', 'wall', 'floor'])
      expect(parts.filter((part) => part.kind === kind).map((part) => part.bowl)).toEqual(
        Array.from({ length: count }, (_, at) => at + 1),
      );
  });

  it('refuses sizes that no bowl has', () => {
    expect(() => sinkLanes([], { swathM: 0.08 })).toThrow(/bowls is 0; allowed: 1 or more bowls/);
    expect(() => sinkLanes([{ ...bowl, depthM: 20 }], { swathM: 0.08 })).toThrow(
      /bowls\[0\].depthM is 20; allowed: 0.03 to 1/,
    );
  });
});
