import type { Condition, Designation } from './words.ts';

export type UtensilKind =
  | 'pot'
  | 'lid'
  | 'pan'
  | 'tray'
  | 'rack'
  | 'cutlery'
  | 'knife'
  | 'ladle'
  | 'wooden-spoon'
  | 'board'
  | 'plate'
  | 'mug'
  | 'glass'
  | 'silver'
  | 'sieve'
  | 'gadget';

export type UtensilMaterial =
  | 'stainless-steel'
  | 'steel'
  | 'cast-iron'
  | 'aluminium'
  | 'copper'
  | 'brass'
  | 'silver'
  | 'enamelled-steel'
  | 'nonstick'
  | 'glass'
  | 'earthenware'
  | 'porcelain'
  | 'stone'
  | 'wood'
  | 'plastic'
  | 'silicone'
  | 'unknown';

/** How it was used; where in several ways, the hottest. */
export type UtensilUse =
  /** On the fire or in the oven, without liquid. */
  | 'fire-dry'
  /** On the fire with liquid in it, or in such a pot. */
  | 'fire-liquid'
  /** Hot food or liquid was poured into it. */
  | 'poured'
  | 'cold'
  | 'unknown';

/** What an answer may make of a utensil; the ways its table knows. */
export type UtensilMethod =
  /** Until it glows, or a self-clean cycle: libun gamur. */
  | 'heat'
  /** Until the far side scorches straw or paper: libun kal. */
  | 'light-heat'
  /** In boiling water: hagalah. */
  | 'immerse'
  /** Cold water for three days, changed each 24 hours: milui v'irui. */
  | 'soak'
  | 'clean'
  | 'put-away';

/** "Our rabbi said" about one line of utensils. */
export type UtensilAnswer = {
  readonly method: UtensilMethod;
  readonly saidBy: string;
  /** ISO date, yyyy-mm-dd */
  readonly saidOn: string;
  readonly text?: string;
};

/** Outer size of one, m; the longest side is its length. */
export type UtensilSize = {
  readonly lengthM: number;
  readonly widthM: number;
  readonly heightM: number;
};

/** Utensils of one kind, told as one line with their number. */
export type Utensil = {
  readonly id: string;
  /** What the household calls them; absent: their kind. */
  readonly name?: string;
  readonly kind: UtensilKind;
  readonly count: number;
  readonly material: UtensilMaterial;
  readonly use: UtensilUse;
  readonly condition: Condition;
  /** What they are to be used for. */
  readonly designation: Designation;
  /** What they were used for until now. Absent: the same. */
  readonly was?: Designation;
  /** They have joints, rivets or a glued handle that cannot be opened and cleaned. Absent: nobody looked. */
  readonly closedJoints?: boolean;
  /** Of one; absent: the usual size and mass of the kind. */
  readonly size?: UtensilSize;
  readonly massKg?: number;
  /** Made or owned by a non-Jew until now, and not yet immersed in a mikveh. */
  readonly forMikveh?: boolean;
  readonly answer?: UtensilAnswer;
  readonly comment?: string;
};
