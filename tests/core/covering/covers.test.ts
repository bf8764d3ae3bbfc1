import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import table from '../../../shared/covers/rolls.json';
import {
  coverPieces,
  describeCovers,
  planCovers,
  rollDrawings,
  type CoverPlan,
} from '../../../src/core/covering/index.ts';
import { chooseMethod } from '../../../src/core/custom/index.ts';
import { english } from '../../../src/core/messages/english/index.ts';
import type { Kitchen } from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import { replay } from '../cutting/replay.ts';
import { demoKitchen } from '../kitchen/demos.ts';
import { kitchens } from '../kitchen/arbitrary/kitchen-arbitrary.ts';

const DEMOS = ['flat-coils', 'flat-glass-230', 'mountain-gas', 'hall'] as const;

/** What a plan says of methods, without the rest of it. */
function methodsOf(kitchen: Kitchen) {
  return { methods: kitchen.fixtures.map((fixture) => chooseMethod(fixture, kitchen).method) };
}

/** Everything a plan of covers must keep. */
function holds(kitchen: Kitchen, plan: CoverPlan): void {
  const wanted = coverPieces(kitchen, methodsOf(kitchen)).pieces.map(({ id }) => id);
  const planned = plan.groups.flatMap(({ pieces }) => pieces.map(({ id }) => id));
  const left = plan.tooLarge.map(({ id }) => id);
  expect([...planned, ...left].toSorted()).toEqual(wanted.toSorted());
  for (const group of plan.groups) {
    const { purchase, pieces } = group;
    const parts = new Map(purchase.parts.map(({ piece }) => [piece.id, piece]));
    const cut = purchase.rolls.flatMap(({ cuts }) => cuts.map(({ id }) => id));
    expect(cut.toSorted()).toEqual([...parts.keys()].toSorted());
    for (const roll of purchase.rolls) {
      const own = roll.cuts.map(({ id }) => parts.get(id)!);
      const { stock } = purchase;
      expect(replay({ rollWidthM: stock.widthM, pieces: own }, roll)).toEqual([]);
      expect(roll.usedLengthM).toBeLessThanOrEqual(stock.lengthM + 1e-9);
    }
    for (const piece of pieces) {
      const own = purchase.parts.filter(({ of }) => of === piece.id);
      const areaM2 = own.reduce((sum, { widthM, lengthM }) => sum + widthM * lengthM, 0);
      expect(areaM2).toBeGreaterThanOrEqual(piece.widthM * piece.lengthM - 1e-9);
    }
    for (const drawing of rollDrawings(group))
      for (const { at, cutOuts } of drawing.pieces)
        for (const hole of cutOuts) {
          expect(hole.xM).toBeGreaterThanOrEqual(at.xM - 1e-9);
          expect(hole.yM).toBeGreaterThanOrEqual(at.yM - 1e-9);
          expect(hole.xM + hole.widthM).toBeLessThanOrEqual(at.xM + at.widthM + 1e-9);
          expect(hole.yM + hole.lengthM).toBeLessThanOrEqual(at.yM + at.lengthM + 1e-9);
        }
  }
}

describe('covers of a kitchen', () => {
  it.each(DEMOS)('%s: every piece is cut once, from a roll it lies on', (name) => {
    const kitchen = demoKitchen(`${name}.kitchen.json`);
    const plan = planCovers(kitchen, methodsOf(kitchen));
    expect(plan.groups.length).toBeGreaterThan(0);
    holds(kitchen, plan);
  });

  it('holds for random kitchens', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        const plan = planCovers(kitchen, methodsOf(kitchen));
        holds(kitchen, plan);
        expect(describeCovers(plan, kitchen.name, inEnglish)).not.toMatch(/undefined|NaN|\[object/);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('measures the demo table by hand', () => {
    const kitchen = demoKitchen('flat-coils.kitchen.json');
    const { pieces } = coverPieces(kitchen, methodsOf(kitchen));
    const demoTable = kitchen.fixtures.find(({ kind }) => kind === 'table');
    // 1.20 by 0.75 m, with 5 cm over each edge.
    expect(pieces.find(({ fixture }) => fixture === demoTable?.id)).toMatchObject({
      lengthM: 1.3,
      widthM: 0.85,
      cutOuts: [],
    });
  });

  it('tells what nobody measured, and what lies on no roll', () => {
    const kitchen = demoKitchen('mountain-gas.kitchen.json');
    const plan = planCovers(kitchen, methodsOf(kitchen), {
      joins: false,
      stock: [
        {
          id: 'narrow',
          coverWith: ['cut-to-size', 'plastic-sheet', 'adhesive-paper'],
          widthM: 0.8,
          lengthM: 3,
          soldBy: 'metre',
          grain: false,
        },
      ],
    });
    expect(plan.unmeasured.map(({ fixture }) => fixture)).toEqual(['fridge']);
    expect(plan.tooLarge.map(({ fixture }) => fixture)).toContain('counter-corner');
    const text = describeCovers(plan, 'x', inEnglish);
    expect(text).toContain('lie on no usual roll');
    expect(text).toContain('Fridge: measure it');
  });

  it('covers a corner in one piece when it may not be joined, told to be trimmed', () => {
    const kitchen = demoKitchen('mountain-gas.kitchen.json');
    const { pieces } = coverPieces(kitchen, methodsOf(kitchen), false);
    const corner = pieces.filter(({ fixture }) => fixture === 'counter-corner');
    expect(corner).toMatchObject([{ trimmed: true }]);
  });
});

describe('shared/covers/rolls.json', () => {
  it('names materials that the catalogue knows, each roll once', () => {
    for (const { coverWith } of table.rolls)
      for (const id of coverWith) expect(Object.keys(english)).toContain(`custom.cover.${id}`);
    expect(new Set(table.rolls.map(({ id }) => id)).size).toBe(table.rolls.length);
  });
});
