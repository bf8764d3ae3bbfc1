import type { CustomId, Designation, HoodKind, VesselBody, VesselKind } from '../model/kitchen.ts';
import { choice } from './primitives.ts';
import {
  BURNER_TYPES,
  CONDITIONS,
  MATERIALS,
  METHODS,
  OVEN_CLEANINGS,
  PURPOSES,
} from '../model/ids.ts';
import { named } from './codec.ts';

/** Every word of a union, in the order people are shown them; a word left out does not compile. */
function every<T extends string>(words: Readonly<Record<T, true>>): readonly T[] {
  return Object.keys(words) as T[];
}

export const materialCodec = named('material', choice(MATERIALS));
export const conditionCodec = named('condition', choice(CONDITIONS));
export const methodCodec = named('method', choice(METHODS));
export const burnerTypeCodec = named('burnerType', choice(BURNER_TYPES));
export const designationCodec = named(
  'designation',
  choice(every<Designation>({ meat: true, dairy: true, pareve: true, undecided: true })),
);
export const purposeCodec = choice(PURPOSES);
export const customCodec = choice(every<CustomId>({ sephardic: true, ashkenazic: true }));
export const hoodKindCodec = choice(
  every<HoodKind>({ none: true, recirculating: true, vented: true }),
);
export const vesselKindCodec = choice(
  every<VesselKind>({ 'electric-kettle': true, 'stove-kettle': true, urn: true, pot: true }),
);
export const vesselBodyCodec = choice(
  every<VesselBody>({ plastic: true, steel: true, glass: true, 'double-wall': true, enamel: true }),
);
export const ovenCleaningCodec = choice(OVEN_CLEANINGS);
