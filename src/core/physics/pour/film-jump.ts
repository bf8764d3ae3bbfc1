import { MM_PER_M, inRange } from '../../units/index.ts';
import { water } from '../water/water.ts';
import { flowM3S } from './flow.ts';

const RAD_DEG = Math.PI / 180;
/** (18/(100·π³))^(1/4) = 0.27603; the paper rounds to 0.276. */
const WILSON = (18 / (100 * Math.PI ** 3)) ** (1 / 4);

/**
 * Radius of the fast film round a stream that meets an upright wall, mm:
 * R = 0.276·(ṁ³/(µργ(1−cos β)))^(1/4). `contactDeg` is β itself. Measured
 * radii fit with β about half the advancing contact angle; that radius is
 * `halfAngleRadiusMm`.
 * @param flowLMin 0.2 to 12 L/min
 * @param contactDeg 5 to 180°
 * @throws OutOfRangeError
 * Source: Wilson et al., Chem. Eng. Sci. 68 (2012); half angle: Aouad et al.,
 * Exp. Therm. Fluid Sci. 74 (2016) 429–443.
 */
export function filmJump(of: {
  readonly flowLMin: number;
  readonly tempC: number;
  readonly contactDeg: number;
}): { readonly radiusMm: number; readonly halfAngleRadiusMm: number } {
  inRange('contactDeg', of.contactDeg, 5, 180);
  const { densityKgM3, viscosityPaS, surfaceTensionNM } = water({ tempC: of.tempC });
  const massKgS = flowM3S(of.flowLMin) * densityKgM3;
  const radiusMm = (betaDeg: number) => {
    const pull = surfaceTensionNM * (1 - Math.cos(betaDeg * RAD_DEG));
    return WILSON * (massKgS ** 3 / (viscosityPaS * densityKgM3 * pull)) ** (1 / 4) * MM_PER_M;
  };
  return {
    radiusMm: radiusMm(of.contactDeg),
    halfAngleRadiusMm: radiusMm(of.contactDeg / 2),
  };
}
