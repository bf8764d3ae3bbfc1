import { MM_PER_M, inRange } from '../../units/index.ts';
import { material } from '../tables/materials.ts';
import { levelJump } from './level-jump.ts';
import { radialFilm } from './radial-film.ts';

/** An exponential is 95 % done after three time constants. */
const TIME_CONSTANTS = 3;
/** Sheet of an ordinary household sink, mm; makers state 0.8 to 1.2. Common practice, no published source. */
const SINK_SHEET_MM = 1;
/** What of each strip the next one covers again; common practice, no published source. */
export const USUAL_OVERLAP = 0.15;

export type HandSpeed = {
  readonly flowLMin: number;
  readonly tempC: number;
  readonly overlapShare?: number;
  readonly sheetMm?: number;
  /** From a spout at this height, m. */
  readonly fallM?: number;
};

/**
 * Hand speed at which a thin steel sheet has time to follow the water: the
 * worst-placed point of a strip (where the overlap begins) stays under the
 * fast film for three time constants of the sheet, so 95 % of what that film
 * can give. `dwellS` is that time. It is where a person starts; the first
 * kettle teaches the person's own speed.
 * @throws OutOfRangeError
 * Source: jump radius as in levelJump (mean of two schools), film coefficient
 * as in radialFilm, lumped sheet; the criterion (worst-placed point,
 * three time constants) is this project's and was chosen knowing that practice
 * takes 3 to 4 kettles for a sink; judged at the middle of the strip instead,
 * the hand is about twice as quick and the sink takes about half the water.
 */
export function handSpeed(of: HandSpeed): {
  readonly speedMS: number;
  readonly dwellS: number;
  readonly filmWM2K: number;
} {
  const overlap = inRange('overlapShare', of.overlapShare ?? USUAL_OVERLAP, 0, 0.5);
  const sheetM = inRange('sheetMm', of.sheetMm ?? SINK_SHEET_MM, 0.3, 5) / MM_PER_M;
  const radiusMm = levelJump(of).radiusMm.typical;
  const { filmWM2K } = radialFilm({ ...of, radiusMm });
  const steel = material('stainless-steel');
  const timeConstantS = (sheetM * steel.densityKgM3 * steel.heatCapacityJKgK) / filmWM2K;
  const dwellS = TIME_CONSTANTS * timeConstantS;
  // Without overlap the edge of a strip is only touched: half the least overlap stands in for it.
  const offset = 1 - Math.max(overlap, 0.05);
  const chordM = 2 * (radiusMm / MM_PER_M) * Math.sqrt(1 - offset ** 2);
  return { speedMS: chordM / dwellS, dwellS, filmWM2K };
}
