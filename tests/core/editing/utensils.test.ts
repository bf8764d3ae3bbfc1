import { describe, expect, it } from 'vitest';
import { addUtensil, problemsOf, removeUtensil } from '../../../src/core/editing/index.ts';
import type { Utensil } from '../../../src/core/kitchen/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const kitchen = demoKitchen('flat-coils.kitchen.json');
const pots: Omit<Utensil, 'id'> = {
  kind: 'pot',
  count: 2,
  material: 'stainless-steel',
  use: 'fire-liquid',
  condition: 'smooth',
  designation: 'meat',
};

describe('lines of utensils', () => {
  it('are added with ids of their own, and the kitchen reads as well as before', () => {
    const two = addUtensil(addUtensil(kitchen, pots), { ...pots, designation: 'dairy' });
    expect(two.utensils?.map(({ id }) => id)).toEqual(['pot-1', 'pot-2']);
    expect(problemsOf(two)).toEqual(problemsOf(kitchen));
    const again = addUtensil(removeUtensil(two, 'pot-1'), pots);
    expect(again.utensils?.map(({ id }) => id)).toEqual(['pot-2', 'pot-1']);
  });

  it('are taken out by their id', () => {
    const one = addUtensil(kitchen, pots);
    expect(removeUtensil(one, 'pot-1').utensils).toEqual([]);
    expect(removeUtensil(one, 'lid-1')).toBe(one);
  });
});
