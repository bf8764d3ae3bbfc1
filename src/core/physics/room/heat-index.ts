import { inRange } from '../../units/index.ts';

/** Rothfusz regression, °F and % relative humidity: [power of T, power of R, coefficient]. */
const ROTHFUSZ = [
  [0, 0, -42.379],
  [1, 0, 2.04901523],
  [0, 1, 10.14333127],
  [1, 1, -0.22475541],
  [2, 0, -6.83783e-3],
  [0, 2, -5.481717e-2],
  [2, 1, 1.22874e-3],
  [1, 2, 8.5282e-4],
  [2, 2, -1.99e-6],
] as const;

/** Below this average of temperature and the simple formula the simple one stands, °F. */
const SIMPLE_BELOW_F = 80;
/** Bands of the National Weather Service: from, °F. */
const BANDS = [
  [125, 'extreme-danger'],
  [103, 'danger'],
  [90, 'extreme-caution'],
  [80, 'caution'],
] as const;

export type HeatBand = (typeof BANDS)[number][1] | 'none';

const fahrenheit = (c: number) => (c * 9) / 5 + 32;
const celsius = (f: number) => ((f - 32) * 5) / 9;

/** Adjustments of the Service for dry and for humid air, °F. */
function adjustment(t: number, r: number): number {
  if (r < 13 && t >= 80 && t <= 112) {
    return -((13 - r) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17);
  }
  if (r > 85 && t >= 80 && t <= 87) return ((r - 85) / 10) * ((87 - t) / 5);
  return 0;
}

/**
 * Heat index, °C: what the warmth feels like to a person at rest in the shade.
 * @param tempC −20 to 50 °C (the Service's chart ends at 44 °C)
 * @param humidityPct 0 to 100 %
 * @throws OutOfRangeError
 * Source: US National Weather Service, heat index equation (Rothfusz 1990).
 */
export function heatIndex(of: { readonly tempC: number; readonly humidityPct: number }): {
  readonly heatIndexC: number;
  readonly band: HeatBand;
} {
  const t = fahrenheit(inRange('tempC', of.tempC, -20, 50));
  const r = inRange('humidityPct', of.humidityPct, 0, 100);
  const simple = 0.5 * (t + 61 + (t - 68) * 1.2 + r * 0.094);
  const average = (simple + t) / 2;
  const full = ROTHFUSZ.reduce((sum, [m, n, c]) => sum + c * t ** m * r ** n, 0);
  const heatIndexF = average < SIMPLE_BELOW_F ? average : full + adjustment(t, r);
  const band = BANDS.find(([fromF]) => heatIndexF >= fromF)?.[1] ?? 'none';
  return { heatIndexC: celsius(heatIndexF), band };
}
