import { inRange, OutOfRangeError } from '../../units/index.ts';
import { GRAVITY_MS2, ZERO_C_K } from '../common/constants.ts';
import { airAt } from '../tables/air.ts';
import { STILL_SHAPES, type StillShape } from '../tables/still-shapes.ts';

/** Sea-level pressure that the table of air is for, Pa. */
const SEA_PA = 101_325;
/** From this Rayleigh number the air over a level plate is turbulent. */
const TURBULENT = 1e7;
/** Nearer than this to the air nothing moves, K. */
const LEAST_K = 1e-3;

/** Exponents and constants of Churchill & Chu for a lying cylinder and an upright plate. */
function churchillChu(rayleigh: number, prandtl: number, alone: number, weight: number): number {
  const factor = (1 + (weight / prandtl) ** (9 / 16)) ** (8 / 27);
  return (alone + (0.387 * rayleigh ** (1 / 6)) / factor) ** 2;
}

/**
 * Mean Nusselt number of free convection.
 * @param of.rayleigh on the diameter, on the height, or on area over perimeter of a disc
 * Source: Incropera ch. 9: eq. 9.34 and 9.26 (Churchill & Chu 1975), 9.30 and
 * 9.31 (McAdams). Within about 20 % of what is measured.
 */
export function freeNusselt(of: {
  readonly shape: StillShape;
  readonly rayleigh: number;
  readonly prandtl: number;
}): { readonly nusselt: number } {
  const { shape, rayleigh, prandtl } = of;
  switch (shape) {
    case 'horizontal-cylinder':
      return { nusselt: churchillChu(rayleigh, prandtl, 0.6, 0.559) };
    case 'upright-plate':
      return { nusselt: churchillChu(rayleigh, prandtl, 0.825, 0.492) };
    case 'disc-up':
      return {
        nusselt: rayleigh < TURBULENT ? 0.54 * rayleigh ** (1 / 4) : 0.15 * rayleigh ** (1 / 3),
      };
  }
  throw new OutOfRangeError('shape', shape, STILL_SHAPES.join(', '), 'Choose one of these.');
}

/**
 * Film coefficient of still air at a hot body, W/(m² K). It falls as the body
 * cools: that is why the last stretch to a touch is the longest.
 * @param surfaceC −20 to 1300 °C
 * @param airC −20 to 60 °C
 * @param sizeM 0.002 to 2 m
 * @param pressurePa default: sea level; thinner air carries less
 * @throws OutOfRangeError
 * Source: Incropera ch. 9; air at the mean of surface and room.
 */
export function freeConvection(of: {
  readonly shape: StillShape;
  readonly sizeM: number;
  readonly surfaceC: number;
  readonly airC: number;
  readonly pressurePa?: number;
}): { readonly filmWM2K: number; readonly rayleigh: number; readonly nusselt: number } {
  inRange('surfaceC', of.surfaceC, -20, 1300);
  inRange('airC', of.airC, -20, 60);
  inRange('sizeM', of.sizeM, 0.002, 2);
  const thin = inRange('pressurePa', of.pressurePa ?? SEA_PA, 40_000, 110_000) / SEA_PA;
  const meanK = (of.surfaceC + of.airC) / 2 + ZERO_C_K;
  const { viscosityM2S, diffusivityM2S, conductivityWMK } = airAt(meanK);
  // Area over perimeter of a disc is a quarter of its diameter.
  const lengthM = of.shape === 'disc-up' ? of.sizeM / 4 : of.sizeM;
  const differenceK = Math.max(LEAST_K, Math.abs(of.surfaceC - of.airC));
  const rayleigh =
    (GRAVITY_MS2 * differenceK * lengthM ** 3 * thin ** 2) /
    (meanK * viscosityM2S * diffusivityM2S);
  const prandtl = viscosityM2S / diffusivityM2S;
  const { nusselt } = freeNusselt({ shape: of.shape, rayleigh, prandtl });
  return { filmWM2K: (nusselt * conductivityWMK) / lengthM, rayleigh, nusselt };
}
