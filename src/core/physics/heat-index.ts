import { inRange } from '../quantity/index.ts';

/**
 * Apparent temperature by the National Weather Service: Rothfusz regression
 * with its two adjustments, the simple average below 80 °F.
 * @param input.tempC 10 to 60 °C
 * @param input.humidityPct 0 to 100
 * @throws OutOfRangeError
 */
export function heatIndex(input: { readonly tempC: number; readonly humidityPct: number }): {
  readonly heatIndexC: number;
} {
  const f = inRange('tempC', input.tempC, 10, 60) * 1.8 + 32;
  const rh = inRange('humidityPct', input.humidityPct, 0, 100);
  const simple = 0.5 * (f + 61 + (f - 68) * 1.2 + rh * 0.094);
  const indexF = (simple + f) / 2 < 80 ? simple : regression(f, rh) + adjustment(f, rh);
  return { heatIndexC: (indexF - 32) / 1.8 };
}

function regression(f: number, rh: number): number {
  return (
    -42.379 +
    2.04901523 * f +
    10.14333127 * rh -
    0.22475541 * f * rh -
    6.83783e-3 * f * f -
    5.481717e-2 * rh * rh +
    1.22874e-3 * f * f * rh +
    8.5282e-4 * f * rh * rh -
    1.99e-6 * f * f * rh * rh
  );
}

function adjustment(f: number, rh: number): number {
  if (rh < 13 && f >= 80 && f <= 112)
    return -((13 - rh) / 4) * Math.sqrt((17 - Math.abs(f - 95)) / 17);
  if (rh > 85 && f >= 80 && f <= 87) return ((rh - 85) / 10) * ((87 - f) / 5);
  return 0;
}
