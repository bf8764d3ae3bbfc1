import { MM_PER_M, inRange } from '../../units/index.ts';
import { GRAVITY_MS2 } from '../common/constants.ts';
import { water } from '../water/water.ts';

const RAD_DEG = Math.PI / 180;

/**
 * Depth of a puddle that spreads freely on a level top, mm; each mm is one
 * litre a square metre. e = 2·√(σ/(ρg))·sin(θ/2).
 * @param contactDeg 1 to 180°, advancing angle for water that spreads over a dry top
 * @throws OutOfRangeError
 * Source: de Gennes, Brochard-Wyart, Quéré, Capillarity and Wetting Phenomena, ch. 2.
 */
export function puddleDepth(of: { readonly tempC: number; readonly contactDeg: number }): {
  readonly depthMm: number;
} {
  inRange('contactDeg', of.contactDeg, 1, 180);
  const { surfaceTensionNM, densityKgM3 } = water({ tempC: of.tempC });
  const capillaryM = Math.sqrt(surfaceTensionNM / (densityKgM3 * GRAVITY_MS2));
  return { depthMm: 2 * capillaryM * Math.sin((of.contactDeg * RAD_DEG) / 2) * MM_PER_M };
}
