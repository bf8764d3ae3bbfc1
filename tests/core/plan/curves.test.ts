import { describe, expect, it } from 'vitest';
import { buildPlan, heatCharts, type HeatChart } from '../../../src/core/plan/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const FILES = ['flat-coils', 'mountain-gas', 'flat-glass-230', 'hall'];

function picturesOf(file: string): readonly HeatChart[] {
  return heatCharts(buildPlan(demoKitchen(`${file}.kitchen.json`)));
}

function most(picture: HeatChart, line: number): number {
  return Math.max(...(picture.lines[line]?.points.map(({ y }) => y) ?? []));
}

describe.each(FILES)('heat pictures of %s', (file) => {
  const pictures = picturesOf(file);

  it('draws every line forward in time, with finite values and few enough points', () => {
    expect(pictures.length).toBeGreaterThan(2);
    for (const picture of pictures)
      for (const { points } of picture.lines) {
        expect(points.length).toBeGreaterThan(2);
        expect(points.length).toBeLessThan(1500);
        points.forEach(({ timeS, y }, i) => {
          expect(Number.isFinite(y)).toBe(true);
          expect(timeS).toBeGreaterThanOrEqual(points[i - 1]?.timeS ?? 0);
        });
      }
  });

  it('lets the water start at the tap and end at the boil of this altitude', () => {
    const kitchen = demoKitchen(`${file}.kitchen.json`);
    const boil = pictures.find(({ id }) => id.startsWith('boil-'));
    expect(boil?.lines[0]?.points[0]?.y).toBeCloseTo(kitchen.tapColdC, 1);
    expect(most(boil as HeatChart, 0)).toBeCloseTo(buildPlan(kitchen).boilingC, 1);
  });

  it('asks for the last drop before a full kettle has lost 5 K by the quicker line: an emptying one is cooler', () => {
    const cool = pictures.find(({ id }) => id.startsWith('cool-')) as HeatChart;
    const by = cool.moments[0]?.timeS ?? 0;
    const limit = cool.limits[0]?.y ?? 0;
    const at = cool.lines[0]?.points.findLast(({ timeS }) => timeS <= by);
    expect(at?.y).toBeGreaterThan(limit);
    expect(at?.y).toBeLessThan(limit + 3);
  });

  it('shows the kitchen hotter with one burner more, and hottest shut', () => {
    const room = pictures.find(({ id }) => id === 'room-heat') as HeatChart;
    expect(most(room, 1)).toBeGreaterThan(most(room, 0));
    expect(most(room, 2)).toBeGreaterThan(most(room, 0));
    // The bad end of what is planned.
    expect(most(room, 3)).toBeGreaterThan(most(room, 0));
  });

  it('draws gas air for gas only, and above the hour limit when all is shut', () => {
    const gas = ['mountain-gas', 'hall'].includes(file);
    const air = pictures.find(({ id }) => id === 'room-air');
    expect(air !== undefined).toBe(gas);
    const co = pictures.find(({ id }) => id === 'room-co');
    expect(co !== undefined).toBe(gas);
    if (!air || !co) return;
    expect(most(air, 2)).toBeGreaterThan(air.limits[0]?.y ?? Infinity);
    expect(most(air, 3)).toBeGreaterThan(most(air, 0));
    expect(most(co, 3)).toBeGreaterThan(most(co, 0));
  });
});
