/**
 * Lanes cut into stretches that one kettle pours. Kettles are shared out
 * evenly, so that none runs dry at the last hand's breadth, and a stretch
 * ends at a lift or a turn where there is one near enough.
 */
import { distanceM } from '../../geometry/index.ts';
import { nearestAlongM, partOf } from './progress.ts';
import { LanesRefusal, within } from '../model/refusal.ts';
import type { Lane, LanePoint, Stand } from '../model/types.ts';
import { standAlong } from '../reach/arm.ts';

/** Where one kettle goes, without a lift; a kettle has several where it is lifted on its way. */
export type KettleStretch = {
  /** Number of the kettle, from 1. */
  readonly kettle: number;
  readonly points: readonly LanePoint[];
  readonly lengthM: number;
  readonly litres: number;
  /** Seconds of pouring since this kettle's pour began, at the hand's speed; carrying not counted. */
  readonly startS: number;
  readonly endS: number;
  /** From where it is poured, where the lane tells. */
  readonly stand?: Stand;
};

/** A lane to be cut. */
type Poured = Pick<Lane, 'points' | 'stand'>;

export type KettleOptions = {
  /** Water that a metre of lane needs, litres per metre, 0.01 to 100. */
  readonly litresPerM: number;
  /** Water that can be poured out of one filling, litres, 0.1 to 100. */
  readonly usableKettleL: number;
  /** Speed of the hand along the lane, metres per second, 0.001 to 1. */
  readonly handSpeedMPerS: number;
  /** Number of the first kettle; 1 unless the pour goes on from before. */
  readonly firstKettle?: number;
};

/** More kettles than this is a mistake in the numbers. */
const MOST_KETTLES = 2000;
/** A kettle may end this share of its length early or late for a lift or a turn. */
const NEAR_ENOUGH = 0.2;
/** Rounding allowed to lengths, metres. */
const ROUNDING_M = 1e-9;
/** A kettle more is not boiled for a millionth of one. */
const ROUNDING_KETTLES = 1e-6;

type Stops = { readonly lifts: readonly number[]; readonly turns: readonly number[] };

/** Lengths along all lanes at which the kettle is lifted or turns. */
function stopsOf(lanes: readonly Pick<Lane, 'points'>[]): Stops {
  const lifts: number[] = [];
  const turns: number[] = [];
  let walked = 0;
  for (const { points } of lanes) {
    points.forEach((p, i) => {
      const before = points[i - 1];
      if (before) walked += distanceM(before, p);
      if (i > 0 && i < points.length - 1) turns.push(walked);
    });
    lifts.push(walked);
  }
  return { lifts, turns };
}

/** The stop nearest to `wantedM` within the bounds, or `wantedM` itself. */
function stopNear(stops: Stops, wantedM: number, fromM: number, toM: number): number {
  for (const list of [stops.lifts, stops.turns]) {
    let best: number | undefined;
    for (const m of list) {
      if (m < fromM || m > toM) continue;
      if (best === undefined || Math.abs(m - wantedM) < Math.abs(best - wantedM)) best = m;
    }
    if (best !== undefined) return best;
  }
  return wantedM;
}

/** Lengths along the lanes at which a kettle ends, the last at the end of all. */
function endsOf(stops: Stops, fromM: number, totalM: number, kettleM: number): number[] {
  const count = Math.max(1, Math.ceil((totalM - fromM) / kettleM - ROUNDING_KETTLES));
  if (count > MOST_KETTLES) {
    const advice = 'Check the litres per metre and the size of the kettle.';
    throw new LanesRefusal(
      'volume-out-of-range',
      'litresPerM and usableKettleL',
      `${count} kettles`,
      `up to ${MOST_KETTLES} kettles`,
      advice,
    );
  }
  const ends: number[] = [];
  let atM = fromM;
  for (let left = count; left > 1; left -= 1) {
    const shareM = (totalM - atM) / left;
    const slackM = NEAR_ENOUGH * shareM;
    // The kettles after this one must be able to pour what is left.
    const leastM = Math.max(totalM - (left - 1) * kettleM, atM + shareM - slackM);
    const mostM = Math.min(atM + kettleM, atM + shareM + slackM);
    atM = stopNear(stops, atM + shareM, leastM, mostM);
    ends.push(atM);
  }
  return [...ends, totalM];
}

function checked(options: KettleOptions): void {
  within('volume-out-of-range', 'litresPerM', options.litresPerM, 0.01, 100);
  within('volume-out-of-range', 'usableKettleL', options.usableKettleL, 0.1, 100);
  within('speed-out-of-range', 'handSpeedMPerS', options.handSpeedMPerS, 0.001, 1);
}

function splitFrom(
  lanes: readonly Poured[],
  fromM: number,
  options: KettleOptions,
): readonly KettleStretch[] {
  checked(options);
  const stops = stopsOf(lanes);
  const totalM = stops.lifts[stops.lifts.length - 1] ?? 0;
  if (totalM - fromM < ROUNDING_M) return [];
  const ends = endsOf(stops, fromM, totalM, options.usableKettleL / options.litresPerM);
  const stretches: KettleStretch[] = [];
  const first = options.firstKettle ?? 1;
  let kettleFromM = fromM;
  ends.forEach((kettleToM, k) => {
    let laneFromM = 0;
    let poured = 0;
    lanes.forEach(({ points, stand }, lane) => {
      const laneToM = stops.lifts[lane] ?? laneFromM;
      const a = Math.max(kettleFromM, laneFromM);
      const b = Math.min(kettleToM, laneToM);
      if (b - a > ROUNDING_M) {
        const lengthM = b - a;
        const part = partOf(points, a - laneFromM, b - laneFromM);
        const startS = poured / options.handSpeedMPerS;
        poured += lengthM;
        stretches.push({
          kettle: first + k,
          points: part,
          lengthM,
          litres: lengthM * options.litresPerM,
          startS,
          endS: poured / options.handSpeedMPerS,
          ...(stand && { stand: standAlong(part, stand) }),
        });
      }
      laneFromM = laneToM;
    });
    kettleFromM = kettleToM;
  });
  return stretches;
}

/**
 * Cuts lanes into what each kettle pours, rounded up to whole kettles: each
 * kettle begins a stretch of its own that it can finish.
 * @throws LanesRefusal volume-out-of-range, speed-out-of-range
 */
export function splitIntoKettles(
  lanes: readonly Poured[],
  options: KettleOptions,
): readonly KettleStretch[] {
  return splitFrom(lanes, 0, options);
}

/**
 * "I ran out here": cuts what is left of the lanes anew.
 * @param at metres poured along the lanes, or the place where the water gave
 *   out (taken at the first lane that passes nearest to it)
 * @param options with the litres per metre learned since and the next kettle's number in `firstKettle`
 * @throws LanesRefusal place-out-of-range, volume-out-of-range, speed-out-of-range
 */
export function resplitFrom(
  lanes: readonly Poured[],
  at: number | LanePoint,
  options: KettleOptions,
): readonly KettleStretch[] {
  if (typeof at !== 'number') return splitFrom(lanes, nearestAlongM(lanes, at), options);
  const totalM = stopsOf(lanes).lifts.at(-1) ?? 0;
  return splitFrom(lanes, within('place-out-of-range', 'at', at, 0, totalM + 1e-6), options);
}
