import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestPurchase,
  CutsRefusal,
  purchaseFrom,
  type Stock,
  type WantedPiece,
} from '../../../src/core/cutting/index.ts';

const film: Stock = { id: 'film', widthM: 1.4, lengthM: 50, soldBy: 'metre', grain: false };
const paper: Stock = {
  id: 'paper',
  widthM: 0.45,
  lengthM: 2,
  soldBy: 'roll',
  price: 4,
  grain: false,
};
const JOINS = { overlapM: 0.05, clearM: 0.1 };

describe('what to buy', () => {
  it('is as many rolls as the stretches need, and no roll is longer than it is sold', () => {
    const shelves = [1, 2, 3].map((n) => ({ id: `shelf${n}`, widthM: 0.4, lengthM: 1.2 }));
    const found = purchaseFrom(paper, shelves);
    expect(found).toMatchObject({ amount: 3, price: 12 });
    for (const roll of found.rolls) expect(roll.usedLengthM).toBeLessThanOrEqual(paper.lengthM);
  });

  it('is metres, rounded up to tenths, where a shop cuts them', () => {
    const found = purchaseFrom(film, [{ id: 'top', widthM: 0.65, lengthM: 2.43 }]);
    expect(found.amount).toBeCloseTo(2.5, 9);
    expect(found.price).toBeUndefined();
  });

  it('is the cheapest that does', () => {
    const wanted = [{ id: 'a', widthM: 0.4, lengthM: 1.5 }];
    const dear = { ...paper, id: 'dear', widthM: 0.9, price: 9 };
    expect(bestPurchase([dear, paper], wanted).stock.id).toBe('paper');
    const wide = [{ id: 'a', widthM: 0.6, lengthM: 1.5 }];
    expect(bestPurchase([dear, paper], wide).stock.id).toBe('dear');
  });

  it('keeps the print of a roll along the piece', () => {
    const printed = { ...film, grain: true };
    const wanted = [{ id: 'a', widthM: 0.3, lengthM: 1.2, turns: false }];
    expect(purchaseFrom(printed, wanted).usedLengthM).toBeCloseTo(1.2, 9);
    expect(purchaseFrom(film, wanted).usedLengthM).toBeCloseTo(0.3, 9);
  });

  it('is refused with the piece that lies on no roll', () => {
    const wanted = [{ id: 'island', widthM: 1.5, lengthM: 2 }];
    expect(() => bestPurchase([paper, film], wanted)).toThrow(CutsRefusal);
    expect(() => bestPurchase([], wanted)).toThrow(/stocks/);
  });
});

describe('joins', () => {
  const island = { id: 'island', widthM: 1.6, lengthM: 3 };

  it('are made where a piece is wider than the roll, with one part over the next', () => {
    const { parts } = purchaseFrom(film, [island], JOINS);
    expect(parts.length).toBe(2);
    expect(parts[0]!.xM + parts[0]!.widthM).toBeCloseTo(parts[1]!.xM + JOINS.overlapM, 9);
  });

  it('never run over a sink', () => {
    const sink = { xM: 1.2, yM: 1, widthM: 0.3, lengthM: 0.6 };
    const { parts } = purchaseFrom(film, [{ ...island, noJoin: [sink] }], JOINS);
    const [first] = parts;
    expect(first!.xM + first!.widthM).toBeLessThanOrEqual(1.2 - JOINS.clearM + 1e-9);
  });

  it('are refused where a sink is as wide as the roll and lies everywhere', () => {
    const sink = { xM: 0, yM: 0, widthM: 1.6, lengthM: 3 };
    expect(() => purchaseFrom(film, [{ ...island, noJoin: [sink] }], JOINS)).toThrow(CutsRefusal);
  });

  const mm = (least: number, most: number) =>
    fc.integer({ min: least, max: Math.round(most) }).map((n) => n / 1000);

  it('cover all of a piece, keep off cut-outs, and make parts that lie on the roll', () => {
    const wanted = fc
      .record({ widthM: mm(100, 3000), lengthM: mm(100, 4000) })
      .chain(({ widthM, lengthM }) =>
        fc.record({
          id: fc.constant('top'),
          widthM: fc.constant(widthM),
          lengthM: fc.constant(lengthM),
          noJoin: fc.array(
            fc.record({
              xM: mm(0, widthM * 1000),
              yM: mm(0, lengthM * 1000),
              widthM: mm(10, 600),
              lengthM: mm(10, 600),
            }),
            { maxLength: 2 },
          ),
        }),
      );
    let joined = 0;
    fc.assert(
      fc.property(wanted, (piece: WantedPiece) => {
        let found;
        try {
          found = purchaseFrom(film, [piece], JOINS);
        } catch (fault) {
          expect(fault).toBeInstanceOf(CutsRefusal);
          return;
        }
        const { parts } = found;
        if (parts.length > 1) joined += 1;
        for (const side of ['x', 'y'] as const) {
          const [at, size] =
            side === 'x' ? (['xM', 'widthM'] as const) : (['yM', 'lengthM'] as const);
          const ends = parts.map((part) => part[at] + part[size]);
          const starts = parts.map((part) => part[at]);
          expect(Math.min(...starts)).toBeCloseTo(0, 9);
          expect(Math.max(...ends)).toBeCloseTo(piece[size], 9);
          for (const end of ends.filter((one) => one < piece[size] - 1e-9)) {
            // Each end lies over another part by the overlap.
            expect(starts.some((start) => Math.abs(end - start - JOINS.overlapM) < 1e-9)).toBe(
              true,
            );
            for (const hole of piece.noJoin ?? []) {
              const clear =
                end <= hole[at] - JOINS.clearM + 1e-6 ||
                end - JOINS.overlapM >= hole[at] + hole[size] + JOINS.clearM - 1e-6;
              expect(clear).toBe(true);
            }
          }
        }
      }),
      { numRuns: 300 },
    );
    expect(joined).toBeGreaterThan(50);
  });
});
