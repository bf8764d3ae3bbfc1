/** The words of the kitchen file that rows of the customs are looked up by. */
export type Material =
  | 'stainless-steel'
  | 'cast-iron'
  | 'enamelled-steel'
  | 'porcelain'
  | 'ceramic'
  | 'glass'
  | 'glass-ceramic'
  | 'granite'
  | 'marble'
  | 'soapstone'
  | 'concrete'
  | 'quartz-composite'
  | 'acrylic'
  | 'laminate'
  | 'wood'
  | 'raw-wood'
  | 'tile'
  | 'plastic'
  | 'silicone'
  | 'unknown';

/** What the eye and a fingernail find. `smooth` is the only one that needs no question. */
export type Condition = 'smooth' | 'scratched' | 'cracked' | 'porous' | 'unknown';

export type Purpose = 'new-kitchen' | 'passover' | 'mix-up';
export type CustomId = 'sephardic' | 'ashkenazic';
/** Where a fixture is to belong afterwards. */
export type Designation = 'meat' | 'dairy' | 'pareve' | 'undecided';

export type MethodId =
  | 'glow' // libun gamur
  | 'light-heat' // libun kal, highest setting
  | 'self-clean'
  | 'pour' // irui
  | 'immerse' // hagalah
  | 'steam' // water boiled inside (microwave)
  | 'boil-over' // kettle or urn filled and boiled over the rim
  | 'clean'
  | 'line'
  | 'cover'
  | 'not-purged'
  | 'replace'; // of a part: a new one takes its place

/** A part of a fixture that is treated by itself; which fixture has which: shared/parts.json. */
export type PartId =
  | 'racks'
  | 'side-rails'
  | 'trays'
  | 'door-rim'
  | 'grates'
  | 'caps'
  | 'drip-bowls'
  | 'cooktop-surface'
  | 'knobs'
  | 'hood-filter'
  | 'strainer'
  | 'aerator'
  | 'overflow'
  | 'sprayer-hose'
  | 'instant-hot-tap'
  | 'disposer'
  | 'plate'
  | 'plate-ring';

/** What a household knows of a surface; absent: not told. */
export type SurfaceFacts = {
  /** Wood under varnish or lacquer. */
  readonly varnished?: boolean;
  /** Dough was kneaded straight on it. */
  readonly kneaded?: boolean;
  /** Hot food lay straight on it, or was kept in it without a dish. */
  readonly hotFood?: boolean;
};
