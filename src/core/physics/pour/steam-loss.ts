import { LATENT_HEAT_JKG, USUAL_ROOM_C, WATER_KGMOL } from '../common/constants.ts';
import { saturationPressure } from '../water/saturation.ts';

/** Heat capacity of air, J/(mol K), and how much easier vapour spreads in it than heat: (D/α)^(2/3). Incropera A.4 and A.8, from memory. */
const AIR_JMOLK = 29.3;
const VAPOUR_EASE = (3.1e-5 / 2.8e-5) ** (2 / 3);
/** Below boiling by less than this the vapour would drive all air away; it is held here, K. */
const LEAST_BELOW_K = 0.02;
const STEP_K = 0.25;

/**
 * Heat that leaves hot water into still air, by temperature: for each W/(m² K)
 * of the air's film coefficient, K. Ten times the difference of temperature
 * near boiling, since vapour carries nearly all of it.
 * @param boilingC boiling point of the place, °C
 * @returns heat by temperature, up to boiling; interpolated in a table
 * Source: analogy of heat and mass transfer with Stefan's flow (Incropera,
 * ch. 6 and 14); saturation by IAPWS-IF97.
 */
export function steamLoss(boilingC: number): (tempC: number) => number {
  const { pressurePa } = saturationPressure({ tempC: boilingC });
  const molarK = (VAPOUR_EASE * WATER_KGMOL * LATENT_HEAT_JKG) / AIR_JMOLK;
  const exact = (tempC: number): number => {
    const below = Math.min(tempC, boilingC - LEAST_BELOW_K);
    const share = saturationPressure({ tempC: below }).pressurePa / pressurePa;
    return tempC - USUAL_ROOM_C - molarK * Math.log(1 - share);
  };
  const table = Float64Array.from({ length: Math.ceil(boilingC / STEP_K) + 2 }, (_, i) =>
    exact(i * STEP_K),
  );
  return (tempC) => {
    const at = Math.min(Math.max(tempC, 0), boilingC) / STEP_K;
    const below = Math.floor(at);
    const low = table[below] ?? 0;
    return low + (at - below) * ((table[below + 1] ?? low) - low);
  };
}
