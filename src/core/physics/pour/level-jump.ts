import { MM_PER_M, band, type Band } from '../../units/index.ts';
import { GRAVITY_MS2 } from '../common/constants.ts';
import { water } from '../water/water.ts';
import { flowM3S } from './flow.ts';

/** Coefficient of the gravity law. Bohr, Dimon & Putkaradze, J. Fluid Mech. 254 (1993). */
const BOHR = 0.73;
/** Coefficient of the surface-tension law. Bhagat et al., J. Fluid Mech. 851 R5 (2018). */
const BHAGAT = 0.277;

/**
 * Radius of the fast film round a stream that meets a level top (circular
 * hydraulic jump), mm. Two schools disagree on whether gravity or surface
 * tension sets it: they are the ends of the band, their mean the typical value.
 * @param flowLMin 0.2 to 12 L/min
 * @throws OutOfRangeError
 * Source: Bhagat et al. 2018: 0.277·(ρQ³/(νγ))^(1/4); Bohr et al. 1993:
 * 0.73·q^(5/8)·ν^(−3/8)·g^(−1/8), q = Q/2π.
 */
export function levelJump(of: { readonly flowLMin: number; readonly tempC: number }): {
  readonly radiusMm: Band;
} {
  const flow = flowM3S(of.flowLMin);
  const { densityKgM3, viscosityPaS, surfaceTensionNM } = water({ tempC: of.tempC });
  const viscosityM2S = viscosityPaS / densityKgM3;
  const q = flow / (2 * Math.PI);
  const bohr = BOHR * q ** (5 / 8) * viscosityM2S ** (-3 / 8) * GRAVITY_MS2 ** (-1 / 8) * MM_PER_M;
  const group = (densityKgM3 * flow ** 3) / (viscosityM2S * surfaceTensionNM);
  const bhagat = BHAGAT * group ** (1 / 4) * MM_PER_M;
  return {
    radiusMm: band(Math.min(bhagat, bohr), (bhagat + bohr) / 2, Math.max(bhagat, bohr)),
  };
}
