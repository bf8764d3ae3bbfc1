/** Lengths are reckoned in whole micrometres, so that what touches, touches exactly. */
const UNITS_PER_M = 1e6;

/** Whole micrometres of a length in metres. */
export function unitsOf(metres: number): number {
  return Math.round(metres * UNITS_PER_M);
}

/** Metres of a whole number of micrometres. */
export function metresOf(units: number): number {
  return units / UNITS_PER_M;
}

/** The largest length of which all are whole multiples; 1 for none. */
export function commonUnit(lengths: readonly number[]): number {
  let unit = 0;
  for (const length of lengths) {
    let [a, b] = [unit, length];
    while (b > 0) [a, b] = [b, a % b];
    unit = a;
  }
  return Math.max(unit, 1);
}
