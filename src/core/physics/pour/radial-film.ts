import { inRange } from '../../units/index.ts';
import { water } from '../water/water.ts';
import { flowM3S } from './flow.ts';
import { SPOUT_HEIGHT_M, streamRadiusM, streamSpeedMS } from './jet-loss.ts';

/** Watson's similarity solution: 2π²/(3√3), the virtual origin 0.567·a·Re^(1/3), where it begins 0.3155·a·Re^(1/3), surface over mean speed. */
const WATSON_DEPTH = (2 * Math.PI ** 2) / (3 * Math.sqrt(3));
const WATSON_ORIGIN = 0.567;
const WATSON_BEGINS = 0.3155;
const WATSON_SURFACE = 1.63;
/** Nusselt number of a developed laminar film heated from one side, free surface insulated. Wilke (1962). */
const FILM_NUSSELT = 1.88;
/** Boundary layer round the stream: Nu = 0.632·Re^½·Pr^⅓·(d/r)^½ from 0.787·d outwards. Lienhard, Annu. Rev. Heat Transfer 6 (1995). */
const LAYER_NUSSELT = 0.632;
const LAYER_FROM = 0.787;
/** Air dragged along by a moving sheet: Nu = 0.349·Re^½. Tsou, Sparrow & Goldstein (1967), Pr 0.7. */
const SHEET_NUSSELT = 0.349;
/** Air over the film: conductivity W/(m K), viscosity m²/s. Incropera A.4, from memory. */
const AIR_WMK = 0.029;
const AIR_M2S = 2.2e-5;

/** The film round a stream, by distance from it. */
export type FilmRound = {
  readonly thicknessM: (radiusM: number) => number;
  /** Mean speed outwards, m/s. */
  readonly speedMS: (radiusM: number) => number;
  /** From water to surface, W/(m² K). */
  readonly filmWM2K: (radiusM: number) => number;
  /** From water to the air over it, W/(m² K), without evaporation. */
  readonly airWM2K: (radiusM: number) => number;
};

/**
 * The fast film round a stream from the stream to its jump.
 * @throws OutOfRangeError
 * Source: Watson, J. Fluid Mech. 20 (1964); Nusselt numbers as above. From memory.
 */
export function filmRound(of: {
  readonly flowLMin: number;
  readonly tempC: number;
  readonly fallM?: number;
}): FilmRound {
  const flow = flowM3S(of.flowLMin);
  const fallM = inRange('fallM', of.fallM ?? SPOUT_HEIGHT_M, 0.02, 1);
  const { densityKgM3, viscosityPaS, conductivityWMK, heatCapacityJKgK } = water(of);
  const nu = viscosityPaS / densityKgM3;
  const prandtl = (viscosityPaS * heatCapacityJKgK) / conductivityWMK;
  const a = streamRadiusM(flow, fallM);
  const lengthM = a * (flow / (a * nu)) ** (1 / 3);
  const originM = WATSON_ORIGIN * lengthM;
  const beginsM = WATSON_BEGINS * lengthM;
  const reynolds = (2 * flow) / (Math.PI * a * nu);
  const layer =
    (LAYER_NUSSELT * Math.sqrt(reynolds) * Math.cbrt(prandtl) * conductivityWMK) / (2 * a);
  const thicknessM = (r: number) => (WATSON_DEPTH * nu * (r ** 3 + originM ** 3)) / (flow * r);
  const speedMS = (r: number) => flow / (2 * Math.PI * r * thicknessM(r));
  return {
    thicknessM,
    speedMS,
    filmWM2K: (r) =>
      r >= beginsM
        ? (FILM_NUSSELT * conductivityWMK) / thicknessM(r)
        : layer * Math.sqrt((2 * a) / Math.max(r, LAYER_FROM * 2 * a)),
    airWM2K: (r) => {
      const surfaceMS = Math.min(streamSpeedMS(fallM), WATSON_SURFACE * speedMS(r));
      return ((SHEET_NUSSELT * AIR_WMK) / r) * Math.sqrt((surfaceMS * r) / AIR_M2S);
    },
  };
}
