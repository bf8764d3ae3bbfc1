import { inRange } from '../quantity/index.ts';

/**
 * One zone: C(t) = Css + (C0 − Css) e^(−λt), λ = air changes + deposition,
 * Css = (N Cout + G/V) / λ.
 * @throws OutOfRangeError
 */
export function air(input: {
  readonly volumeM3: number;
  readonly airChangesPerH: number;
  readonly emissionMgH: number;
  readonly outdoorMgM3: number;
  readonly startMgM3: number;
  readonly depositionPerH: number;
  readonly timeH: number;
}): { readonly concentrationMgM3: number; readonly steadyMgM3: number } {
  inRange('volumeM3', input.volumeM3, 1, 10_000);
  inRange('airChangesPerH', input.airChangesPerH, 0, 200);
  inRange('depositionPerH', input.depositionPerH, 0, 20);
  inRange('timeH', input.timeH, 0, 1000);
  const rate = inRange('airChangesPerH', input.airChangesPerH + input.depositionPerH, 1e-6, 220);
  const steadyMgM3 =
    (input.airChangesPerH * input.outdoorMgM3 + input.emissionMgH / input.volumeM3) / rate;
  const concentrationMgM3 =
    steadyMgM3 + (input.startMgM3 - steadyMgM3) * Math.exp(-rate * input.timeH);
  return { concentrationMgM3, steadyMgM3 };
}

/** Nitrogen dioxide of a gas burner, mg per kWh of gas: 7.8 ng/J (Lebel et al. 2022, 32 homes). */
export const NO2_MG_KWH = 7.8 * 3.6;
/** One-hour value for NO2, mg/m³: 100 ppb (US EPA), about 188 µg/m³. */
export const NO2_HOUR_MG_M3 = 0.188;
