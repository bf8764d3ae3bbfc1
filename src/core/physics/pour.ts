import { band, inRange, type Band } from '../quantity/index.ts';
import { water } from './water.ts';

const GRAVITY_M_S2 = 9.80665;
const RADIANS = Math.PI / 180;
/** [18 / (100 π³)]^¼, Wilson et al. 2012, published as 0.276. */
const FILM_JUMP = (18 / (100 * Math.PI ** 3)) ** 0.25;
/** Bhagat et al. 2018. */
const LEVEL_JUMP_TENSION = 0.277;
/** Bohr, Dimon and Putkaradze 1993. */
const LEVEL_JUMP_GRAVITY = 0.73;

/**
 * Thickness of a puddle that spreads freely on a level top:
 * e = 2 √(σ/ρg) sin(θ/2) (de Gennes, Brochard-Wyart, Quéré). Millimetres are litres a square metre.
 * @param input.contactDeg 1 to 180
 * @throws OutOfRangeError
 */
export function puddleDepth(input: { readonly tempC: number; readonly contactDeg: number }): {
  readonly depthMm: number;
} {
  inRange('contactDeg', input.contactDeg, 1, 180);
  const { surfaceTensionNM, densityKgM3 } = water(input);
  const capillaryM = Math.sqrt(surfaceTensionNM / (densityKgM3 * GRAVITY_M_S2));
  return { depthMm: 2000 * capillaryM * Math.sin((input.contactDeg / 2) * RADIANS) };
}

/**
 * Least flow a metre of upright wall needs to stay wet (Hartley and Murgatroyd 1964, force criterion).
 * @throws OutOfRangeError
 */
export function wettingRate(input: { readonly tempC: number; readonly contactDeg: number }): {
  readonly rateKgMS: number;
} {
  inRange('contactDeg', input.contactDeg, 1, 180);
  const { surfaceTensionNM, densityKgM3, viscosityPaS } = water(input);
  const pull = surfaceTensionNM * (1 - Math.cos(input.contactDeg * RADIANS));
  const fluid = ((viscosityPaS * densityKgM3) / GRAVITY_M_S2) ** 0.2;
  return { rateKgMS: (15 ** 0.6 / 3) * fluid * pull ** 0.6 };
}

/**
 * Radius of the fast film round a stream that meets an upright wall (Wilson et
 * al. 2012). `contactDeg` is the effective angle: about half the advancing one
 * (Aouad et al. 2016).
 * @throws OutOfRangeError
 */
export function filmJump(input: {
  readonly flowLMin: number;
  readonly tempC: number;
  readonly contactDeg: number;
}): { readonly radiusMm: number } {
  inRange('flowLMin', input.flowLMin, 0.1, 30);
  inRange('contactDeg', input.contactDeg, 1, 180);
  const { surfaceTensionNM, densityKgM3, viscosityPaS } = water(input);
  const massKgS = (input.flowLMin / 60_000) * densityKgM3;
  const pull = surfaceTensionNM * (1 - Math.cos(input.contactDeg * RADIANS));
  return {
    radiusMm: 1000 * FILM_JUMP * (massKgS ** 3 / (viscosityPaS * densityKgM3 * pull)) ** 0.25,
  };
}

/**
 * Radius of the thin fast film round a stream on a level top. Two schools of
 * physics disagree; the band spans them: Bhagat et al. 2018 (surface tension)
 * and Bohr et al. 1993 (gravity). The low end is the safe one for coverage.
 * @throws OutOfRangeError
 */
export function levelJump(input: { readonly flowLMin: number; readonly tempC: number }): {
  readonly radiusMm: Band;
} {
  inRange('flowLMin', input.flowLMin, 0.1, 30);
  const { surfaceTensionNM, densityKgM3, viscosityPaS } = water(input);
  const flow = input.flowLMin / 60_000;
  const nu = viscosityPaS / densityKgM3;
  const gravity =
    LEVEL_JUMP_GRAVITY * (flow / (2 * Math.PI)) ** 0.625 * nu ** -0.375 * GRAVITY_M_S2 ** -0.125;
  const tension =
    LEVEL_JUMP_TENSION * ((densityKgM3 * flow ** 3) / (nu * surfaceTensionNM)) ** 0.25;
  const [low, high] = gravity < tension ? [gravity, tension] : [tension, gravity];
  return { radiusMm: band(1000 * low, 500 * (low + high), 1000 * high) };
}
