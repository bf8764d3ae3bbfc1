import type {
  BurnerType,
  Condition,
  Fixture,
  HoodKind,
  Material,
  OvenCleaning,
  VesselBody,
  VesselKind,
} from '../../../../../core/kitchen/index.ts';

type Told = { readonly name: string; readonly tell: string };

/** How to know each by eye, fingernail or magnet. Common practice, no published source. */
export const MATERIAL_WORDS: Readonly<Record<Material, Told>> = {
  'stainless-steel': {
    name: 'Stainless steel',
    tell: 'Grey metal through and through; rings when knocked.',
  },
  'cast-iron': { name: 'Cast iron', tell: 'Black, heavy, rough; a magnet holds fast.' },
  'enamelled-steel': {
    name: 'Enamelled steel',
    tell: 'Glassy coat on metal; a magnet holds, chips show dark metal.',
  },
  porcelain: { name: 'Porcelain', tell: 'White, glassy and thick; no magnet holds.' },
  ceramic: { name: 'Ceramic', tell: 'Fired clay with a glaze; a chip shows a dull inside.' },
  glass: { name: 'Glass', tell: 'Clear or tinted, cold to the hand, a green edge.' },
  'glass-ceramic': { name: 'Glass-ceramic', tell: 'Dark flat glass of a hob.' },
  granite: {
    name: 'Granite',
    tell: 'Speckled stone, no two spots alike; a key leaves no scratch.',
  },
  marble: { name: 'Marble', tell: 'Veined stone; dulls where lemon juice stood.' },
  soapstone: { name: 'Soapstone', tell: 'Grey and silky; a fingernail nearly marks it.' },
  concrete: { name: 'Concrete', tell: 'Cast grey with fine pores; drinks water unless sealed.' },
  'quartz-composite': {
    name: 'Quartz composite',
    tell: 'Even grains in resin; the underside is smooth and the same.',
  },
  acrylic: { name: 'Acrylic', tell: 'Warm to the hand, no seams, sands like hard plastic.' },
  laminate: { name: 'Laminate', tell: 'Thin printed sheet on board; a brown line at the edge.' },
  wood: { name: 'Wood, sealed', tell: 'Varnished or oiled; a water drop stands on it.' },
  'raw-wood': { name: 'Wood, raw', tell: 'A water drop sinks in and leaves a dark spot.' },
  tile: { name: 'Tile', tell: 'Glazed squares with lines of grout between.' },
  plastic: { name: 'Plastic', tell: 'Light, warm to the hand, gives under a nail.' },
  silicone: { name: 'Silicone', tell: 'Soft and rubbery.' },
  unknown: {
    name: 'I cannot tell',
    tell: 'The plan takes the stricter way and writes the question down.',
  },
};

/** What is usual for each kind comes first; all others follow under "another". */
const COUNTER_MATERIALS: readonly Material[] = [
  'granite',
  'laminate',
  'quartz-composite',
  'stainless-steel',
  'wood',
  'tile',
];
const BOARD_MATERIALS: readonly Material[] = ['laminate', 'raw-wood', 'wood', 'stainless-steel'];
const LINING_MATERIALS: readonly Material[] = [
  'plastic',
  'stainless-steel',
  'enamelled-steel',
  'glass',
];
export const USUAL_MATERIALS: Readonly<Record<Fixture['kind'], readonly Material[]>> = {
  counter: COUNTER_MATERIALS,
  sink: [
    'stainless-steel',
    'porcelain',
    'enamelled-steel',
    'granite',
    'quartz-composite',
    'ceramic',
  ],
  cooktop: [],
  oven: [],
  table: ['laminate', 'wood', 'raw-wood', 'glass', 'stainless-steel'],
  cupboard: BOARD_MATERIALS,
  drawer: BOARD_MATERIALS,
  fridge: LINING_MATERIALS,
  freezer: LINING_MATERIALS,
  microwave: LINING_MATERIALS,
  dishwasher: LINING_MATERIALS,
  'warming-drawer': LINING_MATERIALS,
  hood: LINING_MATERIALS,
};

export const CONDITION_WORDS: Readonly<Record<Condition, Told>> = {
  smooth: { name: 'Smooth', tell: 'A fingernail drawn across it never catches.' },
  scratched: { name: 'Scratched', tell: 'The nail catches in lines you can see.' },
  cracked: { name: 'Cracked', tell: 'A line goes in deep, or a chip is out.' },
  porous: { name: 'Porous', tell: 'A drop of water left a minute darkens it.' },
  unknown: { name: 'Not looked at', tell: 'Look before the plan: it may change the way.' },
};

export const BURNER_WORDS: Readonly<Record<BurnerType, Told>> = {
  'electric-coil': { name: 'Electric coil', tell: 'A bare spiral that turns red.' },
  'solid-plate': { name: 'Solid plate', tell: 'A closed iron disc; does not turn red.' },
  'radiant-glass': { name: 'Radiant under glass', tell: 'Glows red through dark glass.' },
  induction: { name: 'Induction', tell: 'Never glows; heats only a pan that holds a magnet.' },
  'gas-sealed': { name: 'Gas, sealed', tell: 'Flame over a closed top.' },
  'gas-open': { name: 'Gas, open', tell: 'You can look down past the burner.' },
  'gas-wok': { name: 'Gas, wok', tell: 'One large ring, often two flames in each other.' },
  'commercial-open': { name: 'Commercial open', tell: 'Heavy cast heads of a hall range.' },
  'portable-plate': { name: 'Portable plate', tell: 'Stands on the counter with its own plug.' },
};

export const CLEANING_WORDS: Readonly<Record<OvenCleaning, Told>> = {
  pyrolytic: {
    name: 'Self-clean with heat',
    tell: 'Locks its door and heats for hours; the manual says “pyrolytic” or “self-clean”, about 450 °C and more.',
  },
  steam: {
    name: 'Steam clean',
    tell: 'Water on the floor, half an hour, no lock. Steam clean is not a purge.',
  },
  catalytic: {
    name: 'Catalytic lining',
    tell: 'Rough grey walls that “clean themselves” while baking. That is not a purge either.',
  },
  none: { name: 'None', tell: 'Cleaned by hand only.' },
};

export const VESSEL_WORDS: Readonly<Record<VesselKind, string>> = {
  'electric-kettle': 'Electric kettle',
  'stove-kettle': 'Stove kettle',
  urn: 'Urn',
  pot: 'Pot',
};
export const BODY_WORDS: Readonly<Record<VesselBody, string>> = {
  steel: 'Steel',
  plastic: 'Plastic',
  glass: 'Glass',
  'double-wall': 'Double wall',
  enamel: 'Enamel',
};
export const HOOD_WORDS: Readonly<Record<HoodKind, Told>> = {
  none: { name: 'No hood', tell: 'Nothing draws over the stove.' },
  recirculating: {
    name: 'Recirculating',
    tell: 'Blows back into the room through a filter. It removes no gas and no heat.',
  },
  vented: {
    name: 'To the outside',
    tell: 'A duct leads out; on a cold day you feel it at the wall.',
  },
};
export const SURFACE_WORDS = {
  metal: 'Metal',
  enamel: 'Enamel',
  'glass-ceramic': 'Glass',
} as const;
