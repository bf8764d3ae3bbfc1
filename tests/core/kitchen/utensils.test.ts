import { describe, expect, it } from 'vitest';
import { formatKitchen, parseKitchen, readKitchen } from '../../../src/core/kitchen/index.ts';
import { DEMO_TEXTS, demoJson } from './demos.ts';

const spoons = { id: 'spoons', kind: 'cutlery', material: 'silver' };

/** A demo kitchen with these utensils, read; its warnings by path. */
function told(...utensils: readonly object[]) {
  const read = readKitchen({ ...(demoJson('flat-coils.kitchen.json') as object), utensils });
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return { ...read, paths: read.warnings.map(({ path }) => path) };
}

describe('utensils in the kitchen file', () => {
  it('may be left out: older files open and are written as they were', () => {
    for (const [, text] of DEMO_TEXTS) {
      const read = parseKitchen(text);
      if ('problems' in read) throw new Error('a demo does not open');
      if (text.includes('"utensils"')) continue;
      expect(read.kitchen.utensils).toBeUndefined();
      expect(formatKitchen(read.kitchen)).not.toContain('utensils');
    }
  });

  it('are asked about where nothing is told, never taken for easy', () => {
    const { kitchen, filled } = told(spoons);
    expect(kitchen.utensils).toEqual([
      {
        ...spoons,
        count: 1,
        use: 'unknown',
        condition: 'unknown',
        designation: 'undecided',
      },
    ]);
    expect(filled.map(({ path }) => path)).toContain('utensils[0].use');
  });

  it('are looked at again where kind and material, or mass and size, do not fit', () => {
    expect(told(spoons).paths).not.toContain('utensils[0].material');
    const wooden = { id: 'spoon', kind: 'wooden-spoon', material: 'steel' };
    expect(told(wooden).paths).toContain('utensils[0].material');
    const size = { lengthM: 0.2, widthM: 0.04, heightM: 0.01 };
    expect(told({ ...spoons, size, massKg: 2 }).paths).toContain('utensils[0].massKg');
    expect(told({ ...spoons, size, massKg: 0.06 }).paths).not.toContain('utensils[0].massKg');
  });
});
