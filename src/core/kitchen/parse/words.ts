import type {
  BurnerType,
  Condition,
  CustomId,
  Designation,
  HoodKind,
  Material,
  MethodId,
  OvenCleaning,
  Purpose,
  VesselBody,
  VesselKind,
} from '../types.ts';
import { choice } from './leaves.ts';
import { named } from './shape.ts';

/** Every word of a union, in the order people are shown them; a word left out does not compile. */
function every<T extends string>(words: Readonly<Record<T, true>>): readonly T[] {
  return Object.keys(words) as T[];
}

export const MATERIALS = every<Material>({
  'stainless-steel': true,
  'cast-iron': true,
  'enamelled-steel': true,
  porcelain: true,
  ceramic: true,
  glass: true,
  'glass-ceramic': true,
  granite: true,
  marble: true,
  soapstone: true,
  concrete: true,
  'quartz-composite': true,
  acrylic: true,
  laminate: true,
  wood: true,
  'raw-wood': true,
  tile: true,
  plastic: true,
  silicone: true,
  unknown: true,
});

const CONDITIONS = every<Condition>({
  smooth: true,
  scratched: true,
  cracked: true,
  porous: true,
  unknown: true,
});

const METHODS = every<MethodId>({
  glow: true,
  'light-heat': true,
  'self-clean': true,
  pour: true,
  immerse: true,
  steam: true,
  'boil-over': true,
  clean: true,
  line: true,
  cover: true,
  'not-purged': true,
});

const BURNER_TYPES = every<BurnerType>({
  'electric-coil': true,
  'solid-plate': true,
  'radiant-glass': true,
  induction: true,
  'gas-sealed': true,
  'gas-open': true,
  'gas-wok': true,
  'commercial-open': true,
  'portable-plate': true,
});

export const materialShape = named('material', choice(MATERIALS));
export const conditionShape = named('condition', choice(CONDITIONS));
export const methodShape = named('method', choice(METHODS));
export const burnerTypeShape = named('burnerType', choice(BURNER_TYPES));
export const designationShape = named(
  'designation',
  choice(every<Designation>({ meat: true, dairy: true, pareve: true, undecided: true })),
);
export const purposeShape = choice(
  every<Purpose>({ 'new-kitchen': true, passover: true, 'mix-up': true }),
);
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
export const ovenCleaningShape = choice(
  every<OvenCleaning>({ pyrolytic: true, steam: true, catalytic: true, none: true }),
);
