import type { UnitSystem } from '../../units/index.ts';
import type {
  BurnerType,
  Condition,
  Cooktop,
  CustomId,
  Designation,
  FixtureKind,
  HoodKind,
  LaneDirection,
  LeavenDay,
  PourUntil,
  Material,
  MethodId,
  OvenCleaning,
  PartId,
  Purpose,
  VesselBody,
  VesselKind,
} from './kitchen.ts';
import type { UtensilKind, UtensilMaterial, UtensilMethod, UtensilUse } from './utensil.ts';

// Every id of the kitchen file, in the order people are shown them. Written as
// records so that a new id does not compile until it stands here, and every
// table that is asked about all of them.
const MATERIAL: Record<Material, true> = {
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
};
const CONDITION: Record<Condition, true> = {
  smooth: true,
  scratched: true,
  cracked: true,
  porous: true,
  unknown: true,
};
const PURPOSE: Record<Purpose, true> = { 'new-kitchen': true, passover: true, 'mix-up': true };
const BURNER: Record<BurnerType, true> = {
  'electric-coil': true,
  'solid-plate': true,
  'radiant-glass': true,
  induction: true,
  'gas-sealed': true,
  'gas-open': true,
  'gas-wok': true,
  'commercial-open': true,
  'portable-plate': true,
};
const CLEANING: Record<OvenCleaning, true> = {
  pyrolytic: true,
  steam: true,
  catalytic: true,
  none: true,
};
const KIND: Record<FixtureKind, true> = {
  counter: true,
  sink: true,
  cooktop: true,
  oven: true,
  table: true,
  cupboard: true,
  drawer: true,
  fridge: true,
  freezer: true,
  microwave: true,
  dishwasher: true,
  'warming-drawer': true,
  hood: true,
};
const CUSTOM: Record<CustomId, true> = { sephardic: true, ashkenazic: true };
const DESIGNATION: Record<Designation, true> = {
  meat: true,
  dairy: true,
  pareve: true,
  undecided: true,
};
const HOOD: Record<HoodKind, true> = {
  none: true,
  recirculating: true,
  vented: true,
  unknown: true,
};
const VESSEL: Record<VesselKind, true> = {
  'electric-kettle': true,
  'stove-kettle': true,
  urn: true,
  pot: true,
};
const BODY: Record<VesselBody, true> = {
  steel: true,
  plastic: true,
  glass: true,
  'double-wall': true,
  enamel: true,
};
const LANES: Record<LaneDirection, true> = { 'back-to-front': true, shortest: true };
const POURED_UNTIL: Record<PourUntil, true> = { reached: true, heated: true };
const DAYS_OF_LEAVEN: Record<LeavenDay, true> = { 'dawn-nightfall': true, 'sunrise-sunset': true };
const UNITS: Record<UnitSystem, true> = { metric: true, 'us-customary': true };
const SURFACE: Record<Cooktop['surface'], true> = {
  metal: true,
  enamel: true,
  'glass-ceramic': true,
};
const METHOD: Record<MethodId, true> = {
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
  replace: true,
};
const PART: Record<PartId, true> = {
  racks: true,
  'side-rails': true,
  trays: true,
  'door-rim': true,
  grates: true,
  caps: true,
  'drip-bowls': true,
  'cooktop-surface': true,
  knobs: true,
  'hood-filter': true,
  strainer: true,
  aerator: true,
  overflow: true,
  'sprayer-hose': true,
  'instant-hot-tap': true,
  disposer: true,
  plate: true,
  'plate-ring': true,
};

const UTENSIL: Record<UtensilKind, true> = {
  pot: true,
  lid: true,
  pan: true,
  tray: true,
  rack: true,
  cutlery: true,
  knife: true,
  ladle: true,
  'wooden-spoon': true,
  board: true,
  plate: true,
  mug: true,
  glass: true,
  silver: true,
  sieve: true,
  gadget: true,
};
const UTENSIL_MATERIAL: Record<UtensilMaterial, true> = {
  'stainless-steel': true,
  steel: true,
  'cast-iron': true,
  aluminium: true,
  copper: true,
  brass: true,
  silver: true,
  'enamelled-steel': true,
  nonstick: true,
  glass: true,
  earthenware: true,
  porcelain: true,
  stone: true,
  wood: true,
  plastic: true,
  silicone: true,
  unknown: true,
};
const UTENSIL_USE: Record<UtensilUse, true> = {
  'fire-dry': true,
  'fire-liquid': true,
  poured: true,
  cold: true,
  unknown: true,
};
const UTENSIL_METHOD: Record<UtensilMethod, true> = {
  heat: true,
  'light-heat': true,
  immerse: true,
  soak: true,
  clean: true,
  'put-away': true,
};

function keysOf<T extends string>(record: Record<T, true>): readonly T[] {
  return Object.keys(record) as T[];
}

export const MATERIALS = keysOf(MATERIAL);
export const CONDITIONS = keysOf(CONDITION);
export const PURPOSES = keysOf(PURPOSE);
export const BURNER_TYPES = keysOf(BURNER);
export const OVEN_CLEANINGS = keysOf(CLEANING);
export const FIXTURE_KINDS = keysOf(KIND);
export const METHODS = keysOf(METHOD);
export const PARTS = keysOf(PART);
export const CUSTOMS = keysOf(CUSTOM);
export const DESIGNATIONS = keysOf(DESIGNATION);
export const HOOD_KINDS = keysOf(HOOD);
export const VESSEL_KINDS = keysOf(VESSEL);
export const VESSEL_BODIES = keysOf(BODY);
export const LANE_DIRECTIONS = keysOf(LANES);
export const POUR_UNTIL = keysOf(POURED_UNTIL);
export const UNIT_SYSTEMS = keysOf(UNITS);
export const LEAVEN_DAYS = keysOf(DAYS_OF_LEAVEN);
export const COOKTOP_SURFACES = keysOf(SURFACE);
export const UTENSIL_KINDS = keysOf(UTENSIL);
export const UTENSIL_MATERIALS = keysOf(UTENSIL_MATERIAL);
export const UTENSIL_USES = keysOf(UTENSIL_USE);
export const UTENSIL_METHODS = keysOf(UTENSIL_METHOD);
