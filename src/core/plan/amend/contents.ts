import { message, type Message } from '../../messages/index.ts';
import { resplitFrom } from '../../pouring/index.ts';
import type { LanesPicture, Picture, SinkPicture, Step, Stretch } from '../model/index.ts';

/** What one kettle is to pour after the re-split, with the seconds it should take. */
export type Content = {
  readonly picture: Picture;
  readonly detail?: readonly Message[];
  /** None where the picture does not tell: as much as the step poured before. */
  readonly litres?: number;
  readonly pourS: number;
  /** Which time over the whole of it, where it is poured more than once. */
  readonly round?: number | undefined;
};

/** A kettle that reached less than this share was spilled or half empty: no measure for those that follow. */
const LEAST_SHARE = 0.1;

/** What the reckoning of lanes takes: kettles of so much, a hand of such a speed, water of so much a metre. */
const LEAST_KETTLE_L = 0.1;
const HAND_SPEED_M_PER_S = { least: 0.001, most: 1 };
const LITRES_PER_M = { least: 0.01, most: 100 };

/** As many kettles for one surface as nobody boils, and as the reckoning of lanes still takes. */
const MOST_KETTLES = 1000;

function clamped(value: number, { least, most }: { least: number; most: number }): number {
  return Math.min(most, Math.max(least, value));
}

/**
 * Litres a metre by how far this kettle reached. Kettles that run out one after
 * the other would each take the last for the measure; a tenth of what the first
 * was planned to reach stays the least, whatever happens.
 */
function learnedLitresPerM(
  before: readonly Stretch[],
  litres: number,
  ownM: number,
  pouredM: number,
  { usableKettleL, openM }: { readonly usableKettleL: number; readonly openM: number },
): number {
  const plannedLitresPerM = Math.min(
    ...before.filter(({ lengthM }) => lengthM > 0).map((one) => one.litres / one.lengthM),
  );
  const learned = litres / Math.max(ownM * LEAST_SHARE, pouredM);
  const most = Math.min(
    plannedLitresPerM / LEAST_SHARE,
    (MOST_KETTLES * usableKettleL) / Math.max(openM, ownM),
  );
  return clamped(Math.max(plannedLitresPerM, Math.min(learned, most)), LITRES_PER_M);
}

function emptyS(pour: Step): number {
  const empty = pour.stages[0]?.timers.find(({ role }) => role === 'estimate');
  return empty?.lengthS ?? pour.durationS.typical;
}

function litresOf(stretches: readonly { readonly litres: number }[]): number {
  return stretches.reduce((sum, { litres }) => sum + litres, 0);
}

function metresOf(stretches: readonly { readonly lengthM: number }[]): number {
  return stretches.reduce((sum, { lengthM }) => sum + lengthM, 0);
}

/**
 * Lanes: what is left of this kettle's stretch and all later ones, cut anew by
 * how far one filling really reached.
 * @param share of this kettle's stretch that was poured, 0 to 1
 */
export function laneContents(pour: Step, picture: LanesPicture, share: number): readonly Content[] {
  const own = picture.stretches.filter(({ kettle }) => kettle === picture.kettle);
  const ownM = metresOf(own);
  const litres = litresOf(own);
  const pouredM = ownM * Math.max(0, Math.min(1, share));
  const handSpeedMPerS = clamped(ownM / emptyS(pour), HAND_SPEED_M_PER_S);
  const kept = picture.stretches.filter(({ kettle }) => kettle < picture.kettle);
  const open = picture.stretches.filter(({ kettle }) => kettle >= picture.kettle);
  const usableKettleL = Math.max(LEAST_KETTLE_L, litres);
  const cut = resplitFrom(open, pouredM, {
    litresPerM: learnedLitresPerM([...kept, ...own], litres, ownM, pouredM, {
      usableKettleL,
      openM: metresOf(open) - pouredM,
    }),
    usableKettleL,
    handSpeedMPerS,
    firstKettle: picture.kettle + 1,
  }).map(({ kettle, points, litres: l, lengthM }): Stretch => ({
    kettle,
    points,
    litres: l,
    lengthM,
  }));
  const stretches: readonly Stretch[] = [...kept, ...own, ...cut];
  const kettles = [...new Set(cut.map(({ kettle }) => kettle))];
  return kettles.map((kettle) => {
    const stretch = cut.filter((one) => one.kettle === kettle);
    return {
      picture: { ...picture, stretches, kettle },
      litres: litresOf(stretch),
      pourS: metresOf(stretch) / handSpeedMPerS,
    };
  });
}

/** Sink: the parts of this kettle are finished by one more, and every later kettle moves up by one. */
export function sinkContents(
  pour: Step,
  picture: SinkPicture,
  later: readonly Step[],
): readonly Content[] {
  const parts = picture.parts.flatMap((part) => {
    if (part.kettle < picture.kettle) return [part];
    const moved = { ...part, kettle: part.kettle + 1 };
    return part.kettle === picture.kettle
      ? [part, { ...moved, name: message('steps.sink.the-rest', { part: part.name }) }]
      : [moved];
  });
  const content = (kettle: number, from: Step): Content => ({
    picture: { ...picture, parts, kettle },
    detail: parts.filter((part) => part.kettle === kettle).map(({ name }) => name),
    ...(from.work.on === 'kettle' && { litres: from.work.litres }),
    pourS: emptyS(from),
  });
  return [pour, ...later].map((from, i) => content(picture.kettle + 1 + i, from));
}

/** Which time over the whole fixture a pour is of; none where it is poured once. */
export function roundOf({ work }: Step): number | undefined {
  return work.on === 'kettle' ? work.round : undefined;
}

/** What a pour was planned to be. */
export function plannedContent(pour: Step): Content {
  const picture = pour.picture ?? { kind: 'sink', parts: [], kettle: 0 };
  const detail = pour.stages[0]?.detail;
  return {
    picture,
    ...(detail && { detail }),
    ...(pour.work.on === 'kettle' && { litres: pour.work.litres }),
    pourS: emptyS(pour),
    round: roundOf(pour),
  };
}
