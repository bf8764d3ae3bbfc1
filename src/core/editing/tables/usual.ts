import {
  countryOf,
  type Bowl,
  type BurnerType,
  type Cooktop,
  type Cupboard,
  type FixtureKind,
  type Material,
  type OvenCleaning,
  type VesselBody,
} from '../../kitchen/index.ts';
import table from '../../../../shared/survey.json';

/** Which column of the table of usual sizes holds in a country. */
export type Sizes = 'inch' | 'metric';

/**
 * Where a new fixture is put: along a wall; free in the room; cut into a
 * counter; standing on or under one; under its cooktop; or not drawn at all.
 */
export type Stands = 'wall' | 'floor' | 'in' | 'on' | 'under' | 'range' | 'undrawn';

type BySizes<T> = { readonly inch: T; readonly metric: T };
export type UsualSize = { readonly lengthM: number; readonly depthM: number };
type UsualBurner = {
  /** Where it is: "front-left". */
  readonly id: string;
  /** Place on the cooktop, as shares of its length and depth. */
  readonly alongShare: number;
  readonly acrossShare: number;
  readonly diameterM: number;
  readonly ratedW: number;
};

/** A row of the table: what is usual for one thing that can be added. */
export type Usual = {
  readonly id: string;
  readonly kind: FixtureKind;
  readonly stands: Stands;
  /** Where along a counter it is usually found, as a share of its length. */
  readonly alongShare?: number;
  readonly inch: UsualSize;
  readonly metric: UsualSize;
  readonly material?: Material;
  readonly bowls?: BySizes<readonly Bowl[]>;
  readonly rimWidthM?: number;
  readonly surface?: Cooktop['surface'];
  readonly burnerType?: BurnerType;
  readonly burners?: BySizes<readonly UsualBurner[]>;
  readonly cleaning?: OvenCleaning;
  readonly ratedW?: BySizes<number>;
  /** An oven under gas burners burns gas too, where that is usual. */
  readonly gasRangeW?: { readonly inch?: number; readonly metric?: number };
  readonly shelves?: BySizes<Cupboard['shelves']>;
};

// A JSON import knows no literal types; tests hold the rows against the kitchen format.
export const USUAL = table.rows as readonly unknown[] as readonly Usual[];
export const ROOM_RATIO = table.roomRatio.value;
export const NEW_KITCHEN = table.newKitchen;
/** A window that is said to open, until its size is told. */
export const NEW_WINDOW = {
  areaM2: table.newKitchen.windowAreaM2,
  heightM: table.newKitchen.windowHeightM,
} as const;
export const NEW_KETTLE_BODY = table.newKitchen.kettleBody as VesselBody;

export function sizesIn(country: string): Sizes {
  return table.inchCountries.includes(country) ? 'inch' : 'metric';
}

/** Usual depth of a counter, metres. */
export function counterDepthM(country: string): number {
  return table.counterDepthM[sizesIn(country)];
}

/** Rating of the breaker behind kitchen sockets in a country, amperes. */
export function socketCircuitA(country: string): number {
  const row = table.socketCircuits.find(({ countries }) => countries.includes(country));
  const USUAL_A = 16;
  return row?.ratingA ?? Math.max(...(countryOf(country)?.socketA ?? [USUAL_A]));
}
