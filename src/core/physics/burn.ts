import { inRange } from '../quantity/index.ts';

/** Hot water on adult skin (Moritz and Henriques; table read in a plumbing safety copy): °C, s to second, s to third degree. */
const ROWS: readonly (readonly [tempC: number, secondS: number, thirdS: number])[] = [
  [45, 7200, 10_800],
  [47, 1200, 2700],
  [48, 900, 1200],
  [49, 480, 600],
  [51, 120, 252],
  [55, 17, 30],
  [60, 3, 5],
];

/**
 * Seconds of hot water to a second- and third-degree burn, ln t linear in T
 * between the rows. Above 60 °C it is under those of 60 °C; children take a
 * half to a quarter of the time.
 * @param input.tempC 45 to 60 °C
 * @throws OutOfRangeError
 */
export function burnTime({ tempC }: { readonly tempC: number }): {
  readonly secondDegreeS: number;
  readonly thirdDegreeS: number;
} {
  inRange('tempC', tempC, 45, 60);
  const above = ROWS.findIndex(([t]) => t >= tempC);
  const high = ROWS[Math.max(above, 1)] ?? [60, 3, 5];
  const low = ROWS[Math.max(above, 1) - 1] ?? [45, 7200, 10_800];
  const share = (tempC - low[0]) / (high[0] - low[0]);
  const between = (a: number, b: number): number =>
    Math.exp(Math.log(a) + share * (Math.log(b) - Math.log(a)));
  return { secondDegreeS: between(low[1], high[1]), thirdDegreeS: between(low[2], high[2]) };
}
