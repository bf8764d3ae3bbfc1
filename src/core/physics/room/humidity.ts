import { ZERO_C_K } from '../common/constants.ts';
import { saturationPressure } from '../water/saturation.ts';

/** Gas constant of water vapour, J/(kg K). IAPWS. */
const VAPOUR_GAS_JKGK = 461.51805;
const PERCENT = 100;

/** Vapour in air of that temperature and humidity, kg/m³; below 0 °C as at 0 °C. */
export function vapourKgM3(tempC: number, humidityPct: number): number {
  const pressurePa = saturationPressure({ tempC: Math.max(0, tempC) }).pressurePa;
  return ((humidityPct / PERCENT) * pressurePa) / (VAPOUR_GAS_JKGK * (tempC + ZERO_C_K));
}

/** Relative humidity of air that holds so much vapour, %, at most 100: the rest is on the windows. */
export function humidityPct(tempC: number, vapour: number): number {
  return Math.min(PERCENT, (PERCENT * vapour) / vapourKgM3(tempC, PERCENT));
}
