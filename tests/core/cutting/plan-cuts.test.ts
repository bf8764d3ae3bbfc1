import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CutsRefusal, planCuts, planRolls } from '../../../src/core/cutting/index.ts';
import { replay, separable } from './replay.ts';

/** Sizes in millimetres, as a tape measure gives them. */
const metres = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((mm) => mm / 1000);

const problem = fc
  .record({
    rollWidthM: metres(300, 2000),
    rotate: fc.boolean(),
    sizes: fc.array(
      fc.record({
        width: fc.integer({ min: 20, max: 1000 }),
        lengthM: metres(20, 3000),
        turns: fc.option(fc.boolean(), { nil: undefined }),
      }),
      { maxLength: 25 },
    ),
  })
  .map(({ rollWidthM, rotate, sizes }) => ({
    rollWidthM,
    rotate,
    rounds: 30,
    pieces: sizes.map(({ width, lengthM, turns }, at) => ({
      id: `p${at}`,
      // Never wider than the roll, as it lies.
      widthM: Math.max(1, Math.floor((width / 1000) * rollWidthM * 1000)) / 1000,
      lengthM,
      ...(turns !== undefined && { turns }),
    })),
  }));

describe('a cut plan', () => {
  it('can be cut in its order, frees each piece once, and turns only what may be turned', () => {
    fc.assert(
      fc.property(problem, (one) => {
        const plan = planCuts(one);
        expect(replay(one, plan)).toEqual([]);
        expect(separable(plan.cuts)).toBe(true);
        expect(plan.usedLengthM).toBeGreaterThanOrEqual(plan.leastLengthM - 1e-6);
        expect(plan.wasteShare).toBeGreaterThanOrEqual(0);
        expect(plan.wasteShare).toBeLessThan(1);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same each time', () => {
    fc.assert(
      fc.property(problem, (one) => {
        expect(planCuts(one)).toEqual(planCuts(one));
      }),
      { numRuns: 20 },
    );
  });

  it('keeps to the length of each roll', () => {
    fc.assert(
      fc.property(problem, (one) => {
        const rollLengthM = 3;
        const rolls = planRolls({ ...one, rollLengthM });
        const cut = rolls.flatMap(({ cuts }) => cuts.map(({ id }) => id));
        expect(cut.toSorted()).toEqual(one.pieces.map(({ id }) => id).toSorted());
        for (const roll of rolls) {
          expect(roll.usedLengthM).toBeLessThanOrEqual(rollLengthM + 1e-9);
          const own = one.pieces.filter(({ id }) => roll.cuts.some((piece) => piece.id === id));
          expect(replay({ ...one, pieces: own }, roll)).toEqual([]);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('of nothing uses nothing', () => {
    const plan = planCuts({ rollWidthM: 1, pieces: [] });
    expect(plan).toMatchObject({ usedLengthM: 0, wasteShare: 0, cuts: [], lines: [] });
  });

  it('lays two halves side by side, cut across first and then between', () => {
    const plan = planCuts({
      rollWidthM: 1,
      pieces: [
        { id: 'a', widthM: 0.5, lengthM: 2 },
        { id: 'b', widthM: 0.5, lengthM: 2 },
        { id: 'c', widthM: 1, lengthM: 0.7 },
      ],
    });
    expect(plan.usedLengthM).toBeCloseTo(2.7, 9);
    expect(plan.wasteShare).toBeCloseTo(0, 9);
    expect(plan.lines.map(({ direction }) => direction)).toEqual(['across', 'along']);
  });

  it('does not turn what may not be turned', () => {
    const pieces = [{ id: 'a', widthM: 0.2, lengthM: 1 }];
    expect(planCuts({ rollWidthM: 1, pieces }).usedLengthM).toBeCloseTo(0.2, 9);
    expect(planCuts({ rollWidthM: 1, pieces, rotate: false }).usedLengthM).toBeCloseTo(1, 9);
    const kept = pieces.map((piece) => ({ ...piece, turns: false }));
    expect(planCuts({ rollWidthM: 1, pieces: kept }).usedLengthM).toBeCloseTo(1, 9);
  });
});

describe('the checker of these tests', () => {
  const one = { rollWidthM: 3, pieces: [] };

  it('finds a pinwheel, which no straight cut divides', () => {
    const wheel = [
      { xM: 0, yM: 0, widthM: 2, lengthM: 1 },
      { xM: 2, yM: 0, widthM: 1, lengthM: 2 },
      { xM: 1, yM: 2, widthM: 2, lengthM: 1 },
      { xM: 0, yM: 1, widthM: 1, lengthM: 2 },
    ];
    expect(separable(wheel)).toBe(false);
  });

  it('finds a piece that is missing, and one that never comes free', () => {
    const good = { ...one, pieces: [{ id: 'a', widthM: 1, lengthM: 1 }] };
    const plan = planCuts(good);
    expect(replay(good, { ...plan, cuts: [] })).toEqual(['a is missing']);
    expect(replay(good, { ...plan, lines: [] })).toEqual(['a does not come free']);
  });
});

describe('refused by name', () => {
  const piece = { id: 'a', widthM: 0.5, lengthM: 1 };
  it.each([
    ['rollWidthM', { rollWidthM: 0, pieces: [] }],
    ['rollWidthM', { rollWidthM: Number.NaN, pieces: [] }],
    ['rollLengthM', { rollWidthM: 1, rollLengthM: -1, pieces: [] }],
    ['pieces[0].widthM', { rollWidthM: 1, pieces: [{ ...piece, widthM: -1 }] }],
    ['pieces[1].id', { rollWidthM: 1, pieces: [piece, piece] }],
    ['pieces[0]', { rollWidthM: 0.4, pieces: [piece] }],
    ['pieces[0]', { rollWidthM: 0.6, rotate: false, pieces: [{ ...piece, widthM: 0.7 }] }],
    ['pieces[0]', { rollWidthM: 1, rollLengthM: 0.4, pieces: [piece] }],
  ] as const)('%s', (input, refused) => {
    let fault: unknown;
    try {
      planCuts(refused);
    } catch (thrown) {
      fault = thrown;
    }
    expect(fault).toBeInstanceOf(CutsRefusal);
    expect(fault).toMatchObject({ input });
  });
});
