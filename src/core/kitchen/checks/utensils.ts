import { message } from '../../messages/index.ts';
import type { Kitchen } from '../model/kitchen.ts';
import { foundValue, problemAt, type KitchenWarning } from '../model/problem.ts';
import type { UtensilKind, UtensilMaterial } from '../model/utensil.ts';

/** Kinds whose name says of what they are; anything else is a slip of the finger. */
const MADE_OF: Readonly<Partial<Record<UtensilKind, readonly UtensilMaterial[]>>> = {
  'wooden-spoon': ['wood', 'unknown'],
  glass: ['glass', 'plastic', 'unknown'],
  silver: ['silver', 'stainless-steel', 'brass', 'unknown'],
};

/** The heaviest that the box of a thing can weigh: solid silver, kg/m³. */
const HEAVIEST_KGM3 = 10_500;

/** What a household should look at in its utensils although they can be planned. */
export function* utensilsToLookAt({ utensils = [] }: Kitchen): Generator<KitchenWarning> {
  for (const [i, { kind, material, size, massKg }] of utensils.entries()) {
    const made = MADE_OF[kind];
    if (made && !made.includes(material)) {
      const allowed = message('problems.utensil-material.allowed', { materials: made.join(', ') });
      const advice = message('problems.utensil-material.advice');
      yield problemAt(`utensils[${i}].material`, foundValue(material), allowed, advice);
    }
    if (!size || massKg === undefined) continue;
    const mostKg = size.lengthM * size.widthM * size.heightM * HEAVIEST_KGM3;
    if (massKg > mostKg) {
      const allowed = message('problems.utensil-mass.allowed', { mostKg });
      const advice = message('problems.utensil-mass.advice');
      yield problemAt(`utensils[${i}].massKg`, foundValue(massKg), allowed, advice);
    }
  }
}
