import { SECONDS_PER_MINUTE, inRange } from '../../units/index.ts';
import { thinned, type CurvePoint } from '../common/curve.ts';
import { lumpPath, steadyTempC } from '../surface/lumped.ts';
import { coolingPath } from './cool-to-touch.ts';
import { glowLump, type GlowInput } from './glow-time.ts';

/** Heating is drawn to this far below the steady temperature, K. */
const NEARLY_K = 5;
const HALF = 100;

/**
 * Heat-up, hold and cool-down of the part that glows, for a picture; at most 200 points.
 * @param holdMin 0 to 600
 * @throws OutOfRangeError
 */
export function glowCurve(of: GlowInput & { readonly holdMin: number }): readonly CurvePoint[] {
  const body = glowLump(of);
  const holdS = inRange('holdMin', of.holdMin, 0, 600) * SECONDS_PER_MINUTE;
  const topC = steadyTempC(body) - NEARLY_K;
  const heating = thinned(lumpPath(body, body.roomC, topC), HALF - 1);
  const heatS = heating.at(-1)?.timeS ?? 0;
  const cooling = coolingPath(of, topC);
  const shifted = cooling.map(({ timeS, tempC }) => ({ timeS: timeS + heatS + holdS, tempC }));
  return [...heating, ...thinned(shifted, HALF)];
}
