import type { CustomId, Designation, HoodKind, VesselBody, VesselKind } from '../types.ts';
import { choice } from './leaves.ts';
import { BURNER_TYPES, CONDITIONS, MATERIALS, METHODS, OVEN_CLEANINGS, PURPOSES } from '../ids.ts';
import { named } from './shape.ts';

/** Every word of a union, in the order people are shown them; a word left out does not compile. */
function every<T extends string>(words: Readonly<Record<T, true>>): readonly T[] {
  return Object.keys(words) as T[];
}

export const materialShape = named('material', choice(MATERIALS));
export const conditionShape = named('condition', choice(CONDITIONS));
export const methodShape = named('method', choice(METHODS));
export const burnerTypeShape = named('burnerType', choice(BURNER_TYPES));
export const designationShape = named(
  'designation',
  choice(every<Designation>({ meat: true, dairy: true, pareve: true, undecided: true })),
);
export const purposeShape = choice(PURPOSES);
export const customShape = choice(every<CustomId>({ sephardic: true, ashkenazic: true }));
export const hoodKindShape = choice(
  every<HoodKind>({ none: true, recirculating: true, vented: true }),
);
export const vesselKindShape = choice(
  every<VesselKind>({ 'electric-kettle': true, 'stove-kettle': true, urn: true, pot: true }),
);
export const vesselBodyShape = choice(
  every<VesselBody>({ plastic: true, steel: true, glass: true, 'double-wall': true, enamel: true }),
);
export const ovenCleaningShape = choice(OVEN_CLEANINGS);
