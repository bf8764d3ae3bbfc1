import { MM_PER_M, inRange } from '../../units/index.ts';
import { GRAVITY_MS2 } from '../common/constants.ts';
import { water } from '../water/water.ts';
import { flowM3S } from './flow.ts';

/** Watson's similarity solution: 2π²/(3√3) and the virtual origin 0.567·a·Re^(1/3). */
const WATSON_DEPTH = (2 * Math.PI ** 2) / (3 * Math.sqrt(3));
const WATSON_ORIGIN = 0.567;
/** Nusselt number of a developed laminar film heated from one side, free surface insulated. Wilke (1962). */
const FILM_NUSSELT = 1.88;
/** Height a household kettle is held over the surface, m; common practice, no published source. */
const SPOUT_HEIGHT_M = 0.2;

/** Radius of a stream that has fallen freely from rest, m. */
function streamRadiusM(flow: number, fallM: number): number {
  return Math.sqrt(flow / (Math.PI * Math.sqrt(2 * GRAVITY_MS2 * fallM)));
}

/**
 * Thickness of the fast film at a distance from the stream, mm, and its heat
 * transfer coefficient to the surface below, W/(m² K).
 * @param radiusMm distance from the stream, inside the jump, 5 to 400 mm
 * @throws OutOfRangeError
 * Source: Watson, J. Fluid Mech. 20 (1964), developed region; Nusselt number
 * of a developed laminar film 1.88 (Wilke 1962). Both from memory.
 */
export function radialFilm(of: {
  readonly flowLMin: number;
  readonly tempC: number;
  readonly radiusMm: number;
  readonly fallM?: number;
}): { readonly thicknessMm: number; readonly filmWM2K: number } {
  const flow = flowM3S(of.flowLMin);
  const fallM = inRange('fallM', of.fallM ?? SPOUT_HEIGHT_M, 0.02, 1);
  const r = inRange('radiusMm', of.radiusMm, 5, 400) / MM_PER_M;
  const { densityKgM3, viscosityPaS, conductivityWMK } = water({ tempC: of.tempC });
  const nu = viscosityPaS / densityKgM3;
  const a = streamRadiusM(flow, fallM);
  const originM = WATSON_ORIGIN * a * (flow / (a * nu)) ** (1 / 3);
  const thicknessM = (WATSON_DEPTH * nu * (r ** 3 + originM ** 3)) / (flow * r);
  return {
    thicknessMm: thicknessM * MM_PER_M,
    filmWM2K: (FILM_NUSSELT * conductivityWMK) / thicknessM,
  };
}
