import type { Counter, Kitchen, Table } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';
import { compareDirections, LanesRefusal } from '../../pouring/index.ts';
import { lanesOptions, surfaceOf } from '../pours/index.ts';
import {
  fillL,
  isPoured,
  pouringKettles,
  pourPlaceOf,
  estimatePour,
  type PourPlace,
} from '../estimates/index.ts';
import type { LanesPicture, Plan, SinkPicture } from '../model/index.ts';
import { pourWords } from './pour-words.ts';

/** Where every kettle of one fixture goes, and what another direction would save. */
export type PourChart = {
  readonly fixture: string;
  readonly name: string;
  readonly kettles: number;
  readonly picture: LanesPicture | SinkPicture;
  /** What the water does there, and how much of it by which aim. */
  readonly words: readonly Message[];
  /** Lanes along the back edge (custom) and in the shortest direction, m; a sink has none. */
  readonly directions?: { readonly customM: number; readonly shortestM: number };
};

/** None where lanes can be drawn in custom's direction alone: a top longer than so many lanes side by side. */
function directionsOf(
  kitchen: Kitchen,
  top: Counter | Table,
  filledL: number,
  place: PourPlace,
): PourChart['directions'] {
  try {
    const { customLengthM, shortestLengthM } = compareDirections(
      surfaceOf(top),
      lanesOptions(kitchen, top, estimatePour(top, filledL, place).laneM),
    );
    return { customM: customLengthM, shortestM: shortestLengthM };
  } catch (refusal) {
    if (refusal instanceof LanesRefusal && refusal.code === 'too-fine') return undefined;
    throw refusal;
  }
}

/**
 * One picture a poured fixture, with all its kettles. Custom's direction, back
 * to front, is what is planned; the shorter one is only told.
 */
export function pourCharts(plan: Plan): readonly PourChart[] {
  const filledL = fillL(pouringKettles(plan.kitchen));
  const place = pourPlaceOf(plan.kitchen);
  return plan.kitchen.fixtures.flatMap((fixture): PourChart[] => {
    const pours = plan.steps.filter(
      (step) => step.kind === 'pour' && step.fixture === fixture.id && step.picture,
    );
    const picture = pours[0]?.picture;
    if (!isPoured(fixture) || !picture) return [];
    if (picture.kind !== 'lanes' && picture.kind !== 'sink') return [];
    const directions =
      fixture.kind === 'sink' ? undefined : directionsOf(plan.kitchen, fixture, filledL, place);
    return [
      {
        fixture: fixture.id,
        name: fixture.name,
        kettles: pours.length,
        picture: { ...picture, kettle: 0 },
        words: (plan.pours ?? [])
          .filter((pour) => pour.fixture === fixture.id)
          .flatMap((pour) => pourWords(plan, pour)),
        ...(directions && { directions }),
      },
    ];
  });
}
