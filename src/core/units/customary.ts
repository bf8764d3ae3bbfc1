/**
 * What a US customary unit is in metric ones, exactly.
 * Source: NIST SP 811 (2008), appendix B.8; NIST Handbook 44, appendix C.
 */
export const INCH_M = 0.0254;
export const FOOT_M = 12 * INCH_M;
/** US liquid gallon, 231 cubic inches; a quart is a quarter of it, a fluid ounce a 32nd of a quart. */
export const GALLON_L = (231 * INCH_M ** 3 * 1_000_000) / 1000;
export const QUART_L = GALLON_L / 4;
export const FLUID_OUNCE_L = QUART_L / 32;
export const CUBIC_FOOT_L = FOOT_M ** 3 * 1000;
/** Avoirdupois pound. */
export const POUND_KG = 0.453_592_37;
/** Btu of the International Table, an hour. */
export const BTU_H_W = 1055.055_852_62 / 3600;
/** °C = (°F + FAHRENHEIT_ZERO) × per; a difference takes the factor alone. */
export const FAHRENHEIT_C = 1 / 1.8;
export const FAHRENHEIT_ZERO_C = -32 / 1.8;

/** The units a household reads. */
export type UnitSystem = 'metric' | 'us-customary';

/** A length as a tape with inches shows it: whole feet, whole inches, and parts of an inch, `of` of them to one. */
export type OnTape = {
  readonly feet: number;
  readonly inches: number;
  readonly parts: number;
  readonly of: number;
};

/** Cabinets, counters and rolls are told in inches alone below this, in. */
const FEET_FROM_IN = 72;

/** Lowest terms: 4/8 is 1/2. */
function lowest(parts: number, of: number): readonly [parts: number, of: number] {
  return parts % 2 === 0 && of > 1 ? lowest(parts / 2, of / 2) : [parts, of];
}

/**
 * To the nearest part of an inch, in lowest terms.
 * @param metres 0 or more
 * @param finest parts to the inch, a power of two: 8 for cuts, 16 for what is measured
 */
export function onTape(metres: number, finest: number): OnTape {
  const all = Math.round((metres / INCH_M) * finest);
  const wholeIn = Math.floor(all / finest);
  const [parts, of] = lowest(all % finest, finest);
  const feet = wholeIn >= FEET_FROM_IN ? Math.floor(wholeIn / 12) : 0;
  return { feet, inches: wholeIn - feet * 12, parts, of };
}
