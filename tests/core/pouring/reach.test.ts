import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LanesRefusal,
  partsInReach,
  planLanes,
  splitIntoKettles,
} from '../../../src/core/pouring/index.ts';
import type { LanesPlan, Ring, StandSide } from '../../../src/core/pouring/index.ts';
import { sample } from './random-surfaces.ts';
import { awayM, rastered, ROUNDING_M } from './raster.ts';

const rectangle = (x: number, y: number, w: number, h: number): Ring => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

/** Whole edges of an outline, by their numbers. */
function edges(outer: Ring, ...numbers: readonly number[]): StandSide[] {
  return numbers.map((from) => {
    const to = (from + 1) % outer.length;
    return { edge: [from, to], a: outer[from] ?? [0, 0], b: outer[to] ?? [0, 0] };
  });
}

/** No place of any lane lies farther from where one stands for it than an arm. */
function keepsInReach(plan: LanesPlan, armM: number): void {
  for (const { points, stand } of [...plan.lanes, ...plan.edgeLanes]) {
    expect(stand).toBeDefined();
    if (!stand) continue;
    for (const p of points) expect(awayM(p, stand.from, stand.to)).toBeLessThan(armM + ROUNDING_M);
    expect(awayM(stand.at, stand.from, stand.to)).toBeLessThan(1e-9);
  }
}

const spotsM2 = ({ unreached }: LanesPlan) =>
  unreached.reduce((sum, { areaM2 }) => sum + areaM2, 0);

describe('an island', () => {
  const swathM = 0.1144;
  const island = (wideM: number, armM: number, ...from: readonly number[]) => {
    const outer = rectangle(0, 0, 2.4, wideM);
    const sides = edges(outer, ...from);
    const plan = planLanes({ outer, holes: [] }, { swathM, armM, sides });
    const whole = planLanes({ outer, holes: [] }, { swathM });
    return { plan, whole, sides };
  };

  it.each([1.2, 1.3, 1.4])('of %s m is poured from both long sides, all of it', (wideM) => {
    const { plan } = island(wideM, 0.65, 0, 2);
    expect(plan.unreached).toEqual([]);
    expect(new Set(plan.lanes.map(({ stand }) => stand?.edge[0]))).toEqual(new Set([0, 2]));
    expect(plan.quality.lifts).toBe(1);
    keepsInReach(plan, 0.65);
  });

  it('of 1.5 m has a band in its middle that an arm of 0.65 m leaves and one of 0.7 m does not', () => {
    const { plan } = island(1.5, 0.65, 0, 2);
    // By hand: 1.5 less two arms and half a swath at each: 8.6 cm, 2.4 m long.
    expect(spotsM2(plan)).toBeCloseTo((1.5 - 2 * 0.65 - swathM) * 2.4, 3);
    expect(plan.unreached[0]?.at[1]).toBeCloseTo(0.75, 2);
    expect(island(1.5, 0.7, 0, 2).plan.unreached).toEqual([]);
  });

  it('gives its ends to those who may stand there', () => {
    const both = island(1.5, 0.65, 0, 2).plan;
    const all = island(1.5, 0.65, 0, 1, 2, 3).plan;
    expect(spotsM2(all)).toBeLessThan(spotsM2(both) / 2);
    keepsInReach(all, 0.65);
  });

  it('open at one side only names the far part', () => {
    const { plan } = island(1.2, 0.65, 0);
    expect(spotsM2(plan)).toBeCloseTo((1.2 - 0.65 - swathM / 2) * 2.4, 3);
  });

  it('takes no more lanes from two sides than from one long arm where its width divides evenly', () => {
    for (const wideM of [0.8, 1.1, 1.2, 1.3]) {
      const { plan, whole } = island(wideM, 0.65, 0, 2);
      expect(plan.quality.pathLengthM).toBeLessThan(whole.quality.pathLengthM + 1e-6);
    }
  });

  it('is poured from the middle toward each side', () => {
    const { plan } = island(1.2, 0.65, 0, 2);
    for (const { points, stand } of plan.lanes) {
      const depths = points.map(([, y]) => (stand?.edge[0] === 0 ? y : 1.2 - y));
      expect(depths).toEqual(depths.toSorted((a, b) => b - a));
    }
  });

  it('has every open side poured along', () => {
    const { plan } = island(1.2, 0.65, 0, 2);
    expect(plan.edgeLanes.map(({ kind, lengthM }) => [kind, lengthM])).toEqual([
      ['front', 2.4],
      ['front', 2.4],
    ]);
  });
});

describe('counters at walls', () => {
  it('are planned as ever when an arm reaches their back', () => {
    for (const deepM of [0.6, 0.65, 0.7]) {
      const outer = rectangle(0, 0, 2.4, deepM);
      const options = { swathM: 0.1, backEdges: [[0, 1]] } as const;
      const told = planLanes({ outer, holes: [] }, { ...options, sides: edges(outer, 2) });
      const untold = planLanes({ outer, holes: [] }, options);
      expect(told.lanes.map(({ points }) => points)).toEqual(
        untold.lanes.map(({ points }) => points),
      );
      expect(told.unreached).toEqual([]);
      keepsInReach(told, 0.65);
    }
  });

  it('with a corner name the far spot of it', () => {
    const outer: Ring = [
      [0, 0],
      [2.6, 0],
      [2.6, 0.62],
      [0.62, 0.62],
      [0.62, 2],
      [0, 2],
    ];
    const options = {
      swathM: 0.1144,
      backEdges: [
        [0, 1],
        [5, 0],
      ],
      sides: edges(outer, 2, 3),
    } as const;
    const plan = planLanes({ outer, holes: [] }, options);
    keepsInReach(plan, 0.65);
    expect(rastered(plan, options, 0.01)).toMatchObject({ forgotten: [], unnamed: [] });
    expect(plan.quality.lifts).toBeLessThanOrEqual(1);
    // The corner of the walls is 0.877 m from the inner corner; what is nearer than an arm is wetted.
    const outOfArmM2 = 0.62 * 0.62 - areaInCircleM2(0.62, 0.65);
    expect(spotsM2(plan)).toBeLessThan(outOfArmM2);
    expect(spotsM2(plan)).toBeGreaterThan(outOfArmM2 / 3);
  });

  it('are refused where nobody can stand', () => {
    const outer = rectangle(0, 0, 1, 0.6);
    expect(() => planLanes({ outer, holes: [] }, { swathM: 0.1, sides: [] })).toThrow(LanesRefusal);
    expect(() => planLanes({ outer, holes: [] }, { swathM: 0.1, armM: 3 })).toThrow(/armM is 3/);
  });
});

/** Area of a square of a side that lies within `radius` of one corner, summed. */
function areaInCircleM2(side: number, radius: number): number {
  const steps = 20_000;
  let sum = 0;
  for (let k = 0; k < steps; k += 1) {
    const x = ((k + 0.5) / steps) * side;
    sum += Math.min(side, Math.sqrt(Math.max(0, radius * radius - x * x))) * (side / steps);
  }
  return sum;
}

describe('a line', () => {
  it('is cut where another side takes over, and left out where none reaches', () => {
    const sides: StandSide[] = [
      { edge: [0, 1], a: [0, 0], b: [1, 0] },
      { edge: [2, 3], a: [2, 0], b: [3, 0] },
    ];
    const parts = partsInReach(
      [
        [0, 0.3],
        [5, 0.3],
      ],
      sides,
      0.5,
    );
    expect(parts.map(({ points }) => points.map(([x]) => x))).toEqual([
      [0, expect.closeTo(1.4, 4)],
      [expect.closeTo(1.6, 4), expect.closeTo(3.4, 4)],
    ]);
    expect(parts.map(({ stand }) => stand?.edge[0])).toEqual([0, 2]);
  });

  it('keeps its stand when it is shared out among kettles', () => {
    const outer = rectangle(0, 0, 2.4, 1.2);
    const { lanes } = planLanes({ outer, holes: [] }, { swathM: 0.1, sides: edges(outer, 0, 2) });
    const stretches = splitIntoKettles(lanes, {
      litresPerM: 0.3,
      usableKettleL: 1.5,
      handSpeedMPerS: 0.1,
    });
    expect(stretches.length).toBeGreaterThan(4);
    for (const { points, stand } of stretches) {
      for (const p of points) {
        expect(stand && awayM(p, stand.from, stand.to)).toBeLessThan(0.65 + ROUNDING_M);
      }
    }
  });
});

describe('whatever can be stood at', () => {
  const some = fc.record({
    n: fc.nat(499),
    picks: fc.array(fc.nat(20), { minLength: 1, maxLength: 4 }),
    armCm: fc.integer({ min: 40, max: 95 }),
  });

  it('covers what is in reach, names what is not, and keeps every hand in reach', () => {
    fc.assert(
      fc.property(some, ({ n, picks, armCm }) => {
        const { surface, options } = sample(n);
        const count = surface.outer.length;
        const numbers = [...new Set(picks.map((pick) => pick % count))];
        const told = { ...options, sides: edges(surface.outer, ...numbers), armM: armCm / 100 };
        const plan = planLanes(surface, told);
        keepsInReach(plan, told.armM);
        expect(rastered(plan, told, 0.02)).toMatchObject({ forgotten: [], unnamed: [] });
      }),
      { numRuns: 25, seed: 65 },
    );
  }, 120_000);

  it('names the area that its own raster finds dry', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 180 }),
        fc.integer({ min: 40, max: 90 }),
        fc.uniqueArray(fc.nat(3), { minLength: 1, maxLength: 3 }),
        (wideCm, armCm, numbers) => {
          const outer = rectangle(0, 0, 1.8, wideCm / 100);
          const holes = [rectangle(0.7, 0.2, 0.4, 0.2)];
          const options = { swathM: 0.09, armM: armCm / 100, sides: edges(outer, ...numbers) };
          const plan = planLanes({ outer, holes }, options);
          const { dryM2, ...missed } = rastered(plan, options, 0.007);
          expect(missed).toEqual({ forgotten: [], unnamed: [] });
          // A raster is off by half a step along the border of a spot.
          expect(Math.abs(dryM2 - spotsM2(plan))).toBeLessThan(0.015);
          expect(plan.quality.areaM2 + spotsM2(plan)).toBeCloseTo((1.8 * wideCm) / 100 - 0.08, 4);
        },
      ),
      { numRuns: 25, seed: 65 },
    );
  });
});
