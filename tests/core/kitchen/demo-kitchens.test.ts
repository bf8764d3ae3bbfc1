import { areaM2, netAreaM2, type Polygon } from '../../../src/core/geometry/index.ts';
import { describe, expect, it } from 'vitest';
import {
  formatKitchen,
  parseKitchen,
  type Counter,
  type Fixture,
  type Kitchen,
} from '../../../src/core/kitchen/index.ts';
import { overlap } from '../../../src/core/geometry/index.ts';
import { DEMO_TEXTS, demoKitchen } from './demos.ts';

const KITCHENS = DEMO_TEXTS.map(([file]) => [file, demoKitchen(file)] as const);

function counters(kitchen: Kitchen): readonly Counter[] {
  return kitchen.fixtures.filter((f): f is Counter => f.kind === 'counter');
}

/** Fixtures that stand on the floor beside each other: what is set into or onto another is left out. */
function standing(kitchen: Kitchen): readonly (readonly [Fixture, Polygon])[] {
  const holes = counters(kitchen).flatMap(({ holes }) => holes);
  const setIn = (outline: Polygon) =>
    holes.some((hole) => JSON.stringify(hole) === JSON.stringify(outline));
  return kitchen.fixtures.flatMap((fixture) => {
    if (fixture.kind === 'microwave') return []; // stands on a counter
    if (fixture.kind === 'oven' && fixture.sharesRangeWith !== undefined) return [];
    const outline = 'outline' in fixture ? fixture.outline : undefined;
    return outline && !setIn(outline) ? [[fixture, outline] as const] : [];
  });
}

describe('the demo kitchens', () => {
  it('are the four that the README names', () => {
    expect(DEMO_TEXTS.map(([file]) => file)).toEqual([
      'flat-coils.kitchen.json',
      'flat-glass-230.kitchen.json',
      'hall.kitchen.json',
      'mountain-gas.kitchen.json',
    ]);
  });

  it.each(DEMO_TEXTS)('%s is read with nothing to warn of and nothing left out', (_, text) => {
    const outcome = parseKitchen(text);
    expect(outcome).toMatchObject({ warnings: [], filled: [] });
  });

  it.each(DEMO_TEXTS)('%s is written as the app would write it', (file, text) => {
    expect(formatKitchen(demoKitchen(file))).toBe(text);
  });

  it.each(KITCHENS)('%s: every cut-out is filled by exactly one sink or cooktop', (_, kitchen) => {
    const holes = counters(kitchen).flatMap((counter) => counter.holes);
    const fillers = kitchen.fixtures.filter((f) => f.kind === 'sink' || f.kind === 'cooktop');
    for (const hole of holes) {
      const inside = fillers.filter((f) => JSON.stringify(f.outline) === JSON.stringify(hole));
      expect(inside).toHaveLength(1);
    }
  });

  it.each(KITCHENS)('%s: nothing stands where something else stands', (_, kitchen) => {
    const all = standing(kitchen);
    const clashes = all.flatMap(([a, one], i) =>
      all
        .slice(i + 1)
        .flatMap(([b, other]) => (overlap(one, other) ? [`${a.id} and ${b.id}`] : [])),
    );
    expect(clashes).toEqual([]);
  });

  it.each(KITCHENS)('%s: what stands on the floor fits on the floor', (_, kitchen) => {
    const stoodM2 = standing(kitchen).reduce((sum, [, outline]) => sum + areaM2(outline), 0);
    expect(stoodM2).toBeGreaterThan(0.15 * kitchen.room.floorAreaM2);
    expect(stoodM2).toBeLessThan(0.7 * kitchen.room.floorAreaM2);
  });

  it('have the counter areas worked out by hand', () => {
    const areas = (file: string) =>
      counters(demoKitchen(file)).map((c) => Number(netAreaM2(c.outline, c.holes).toFixed(4)));
    // 0.72 × 0.64; 1.38 × 0.64 − 0.60 × 0.50
    expect(areas('flat-coils.kitchen.json')).toEqual([0.4608, 0.5832]);
    // L: 0.65 × 1.95 + 1.60 × 0.65 − 0.50 × 0.82; 0.94 × 0.65 − 0.50 × 0.46
    expect(areas('mountain-gas.kitchen.json')).toEqual([1.8975, 0.381]);
    // L: 0.62 × 1.38 + 2.60 × 0.62 − 0.50 × 0.86 − 0.59 × 0.52
    expect(areas('flat-glass-230.kitchen.json')).toEqual([1.7308]);
    expect(areas('hall.kitchen.json')).toEqual([1.12, 1.26, 3.08, 2.1]);
  });
});
