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
  const reachM = Math.max(ownM * LEAST_SHARE, pouredM);
  const handSpeedMPerS = Math.max(0.001, ownM / emptyS(pour));
  const kept = picture.stretches.filter(({ kettle }) => kettle < picture.kettle);
  const cut = resplitFrom(
    picture.stretches.filter(({ kettle }) => kettle >= picture.kettle),
    pouredM,
    {
      litresPerM: litres / reachM,
      usableKettleL: litres,
      handSpeedMPerS,
      firstKettle: picture.kettle + 1,
    },
  ).map(({ kettle, points, litres: l, lengthM }): Stretch => ({
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
