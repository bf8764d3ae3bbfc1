/**
 * A number that physics or people leave open: the lowest and highest sensible
 * value and the one to expect. low ≤ typical ≤ high. The unit is in the name
 * of the field that holds the band (`timeS`, `litres`).
 */
export type Band = { readonly low: number; readonly typical: number; readonly high: number };

/** A band with no spread. */
export function exactly(value: number): Band {
  return { low: value, typical: value, high: value };
}

/** A band as it is; a number as a band with no spread. */
export function asBand(value: number | Band): Band {
  return typeof value === 'number' ? exactly(value) : value;
}

/**
 * Builds a band from three numbers in any order of trust.
 * @throws RangeError when they are not finite or not in order.
 */
export function band(low: number, typical: number, high: number): Band {
  if (!(low <= typical && typical <= high) || !Number.isFinite(low) || !Number.isFinite(high)) {
    throw new RangeError(`band: ${low} ≤ ${typical} ≤ ${high} does not hold`);
  }
  return { low, typical, high };
}

/** The same band through an increasing function. */
export function mapBand(from: Band, increasing: (value: number) => number): Band {
  return band(increasing(from.low), increasing(from.typical), increasing(from.high));
}

/** Sum of two bands (worst case: extremes add). */
export function addBands(a: Band, b: Band): Band {
  return { low: a.low + b.low, typical: a.typical + b.typical, high: a.high + b.high };
}
