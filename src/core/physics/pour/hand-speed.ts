import { MM_PER_M, inRange, type Band } from '../../units/index.ts';
import { slabResponse, type Slab } from '../surface/slab-response.ts';
import { material } from '../tables/materials.ts';
import { levelJump } from './level-jump.ts';
import { ORDINARY_HAND } from './ordinary-hand.ts';
import { pouredSpot } from './poured-spot.ts';
import { filmRound } from './radial-film.ts';

/** Heated through: the surface has come this far from its own temperature to the water's. Three time constants of a thin sheet. */
const HEATED_SHARE = 0.95;
/** The film keeps up with a hand that is this share as quick as the film is at its jump. Judgement. */
const KEEPS_UP_SHARE = 0.25;
/** Slowest hand that is reckoned with, m/s. */
const SLOWEST_MS = 0.001;
/** Rounds of the search for a speed, and its mesh: to a few per cent of the speed. */
const ROUNDS = 4;
const SEARCH_CELLS = 12;
/** Steps and halvings of the search for the time a surface takes. */
const STEPS = 40;
const HALVINGS = 30;
const LONGEST_S = 3600;

export type HandSpeed = {
  readonly flowLMin: number;
  /** Water where the stream meets the surface, °C. */
  readonly impactC: number;
  readonly material: string;
  /** Default: usual for the material. */
  readonly thicknessMm?: number;
  readonly overlapShare?: number;
  readonly fallM?: number;
  readonly jump?: keyof Band;
};

/** Where the worst-placed spot lies between the middle of a strip and its edge. Without overlap the edge is only touched: a little of it stands in. */
export function worstOffset(overlapShare: number): number {
  return 1 - Math.max(inRange('overlapShare', overlapShare, 0, 0.5), 0.05);
}

type Strip = { readonly radiusM: number; readonly chordM: number };

function stripOf(of: HandSpeed): Strip {
  const { radiusMm } = levelJump({ flowLMin: of.flowLMin, tempC: of.impactC });
  const radiusM = radiusMm[of.jump ?? 'typical'] / MM_PER_M;
  const offset = worstOffset(of.overlapShare ?? ORDINARY_HAND.overlapShare);
  return { radiusM, chordM: 2 * radiusM * Math.sqrt(1 - offset ** 2) };
}

/**
 * Quickest hand with which the film still spreads round the stream as it does
 * round one that stands still, m/s.
 * @throws OutOfRangeError
 * Source: speed of Watson's film at the jump; the share is judgement.
 */
export function keepsUp(of: HandSpeed): { readonly speedMS: number } {
  const { radiusM } = stripOf(of);
  const { speedMS } = filmRound({ ...of, tempC: of.impactC });
  return { speedMS: KEEPS_UP_SHARE * speedMS(radiusM) };
}

/** Share of the way to the water's temperature that a surface has come under a film. */
function risenShare(slab: Slab, filmWM2K: number, timeS: number): number {
  const response = slabResponse(slab, timeS / STEPS, STEPS);
  const now = response[0] ?? 0;
  const heats: number[] = [];
  let share = 0;
  for (let step = 0; step < STEPS; step += 1) {
    let before = 0;
    for (let i = 0; i < step; i += 1) before += (heats[i] ?? 0) * (response[step - i] ?? 0);
    share = (before + now * filmWM2K) / (1 + now * filmWM2K);
    heats.push(filmWM2K * (1 - share));
  }
  return share;
}

/**
 * Hand speed at which what is poured on has time to follow the water: the
 * worst-placed spot of a strip stays under the film until its surface has come
 * 95 % of the way to the water over it. `dwellS` is that time.
 * @throws OutOfRangeError
 * Source: film coefficient as in filmRound at the jump, slab as in
 * slabResponse; the criterion is this project's: no text asks for it.
 */
export function heatedSpeed(of: HandSpeed): {
  readonly speedMS: number;
  readonly dwellS: number;
  readonly filmWM2K: number;
} {
  const { radiusM, chordM } = stripOf(of);
  const filmWM2K = filmRound({ ...of, tempC: of.impactC }).filmWM2K(radiusM);
  const row = material(of.material);
  const slab = {
    conductivityWMK: row.conductivityWMK,
    heatCapacityJM3K: row.densityKgM3 * row.heatCapacityJKgK,
    thicknessM:
      inRange('thicknessMm', of.thicknessMm ?? row.thicknessMm.typical, 0.1, 300) / MM_PER_M,
  };
  let [low, high] = [Math.log(1e-3), Math.log(LONGEST_S)];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (risenShare(slab, filmWM2K, Math.exp(middle)) < HEATED_SHARE) low = middle;
    else high = middle;
  }
  const dwellS = Math.exp(high);
  return { speedMS: Math.max(SLOWEST_MS, chordM / dwellS), dwellS, filmWM2K };
}

export type Reach = HandSpeed & {
  readonly boilingC: number;
  /** What the first touch of the worst-placed spot must reach, °C. */
  readonly touchC: number;
  /** Water left standing, mm. */
  readonly standingMm?: number;
  /** Never slower than this, whatever is reached, m/s. */
  readonly slowestMS?: number;
};

/**
 * Quickest hand speed at which the water that first touches the worst-placed
 * spot of a strip is at least that hot. Not quicker than the film keeps up
 * with; where no hand is slow enough, the slowest, and `reached` is false.
 * @throws OutOfRangeError
 * Source: pouredSpot.
 */
export function reachedSpeed(of: Reach): { readonly speedMS: number; readonly reached: boolean } {
  const touchC = inRange('touchC', of.touchC, 30, 105);
  const quickest = keepsUp(of).speedMS;
  const slowest = Math.min(
    quickest,
    inRange('slowestMS', of.slowestMS ?? SLOWEST_MS, SLOWEST_MS, 1),
  );
  const offset = worstOffset(of.overlapShare ?? ORDINARY_HAND.overlapShare);
  const aboveK = (handSpeedMS: number) =>
    pouredSpot({ ...of, handSpeedMS, offset, cells: SEARCH_CELLS }).firstTouchC - touchC;
  const over = aboveK(quickest);
  if (over >= 0) return { speedMS: quickest, reached: true };
  const under = aboveK(slowest);
  if (under < 0) return { speedMS: slowest, reached: false };
  return {
    speedMS: Math.exp(crossing(aboveK, [Math.log(slowest), under], [Math.log(quickest), over])),
    reached: true,
  };
}

type End = readonly [logSpeed: number, aboveK: number];

/** Where what is above falls to nothing, from the slow side: nearly a straight line in the logarithm of the speed. */
function crossing(aboveK: (speedMS: number) => number, from: End, to: End): number {
  let [slow, quick] = [from, to];
  for (let i = 0; i < ROUNDS; i += 1) {
    // Aims a little to the slow side, so that it is reached as a rule.
    const share = Math.max(0.02, slow[1] / (slow[1] - quick[1]) - 0.02);
    const at = slow[0] + share * (quick[0] - slow[0]);
    const above = aboveK(Math.exp(at));
    if (above >= 0) slow = [at, above];
    else quick = [at, above];
  }
  return slow[0];
}
