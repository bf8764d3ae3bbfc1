import { sideName, type Polygon, type SideName } from '../../geometry/index.ts';
import { poursUpwards } from '../../custom/index.ts';
import type { Counter, Kitchen, Table } from '../../kitchen/index.ts';
import {
  LanesRefusal,
  partsInReach,
  planLanes,
  splitIntoKettles,
  type Lane,
  type Unreached,
} from '../../pouring/index.ts';
import { remembered, type PouredFixture, type PourEstimate } from '../estimates/index.ts';
import { sinkPours } from './sink-pours.ts';
import type { KettlePour, KettlePours } from './kettle-pour.ts';
import { lanesOptions, surfaceOf } from './lanes-options.ts';
import type { Stretch } from '../model/index.ts';

type Line = Pick<Lane, 'points' | 'stand'>;

/** A spot out of reach smaller than this is wetted by what runs over it, m²: 1 cm². */
const LEAST_SPOT_M2 = 1e-4;

/** The lanes of a surface hang on its shape, its sides and the water, not on when or in which kitchen it is poured. */
const lanesDrawn = remembered(planLanes);

/** Alike shares when no lanes can be drawn. */
function evenShares(need: PourEstimate): readonly KettlePour[] {
  const count = Math.max(1, need.kettles.typical);
  return Array.from({ length: count }, (_, at) => ({
    kettle: at + 1,
    litres: need.litres.typical / count,
    parts: [],
  }));
}

function backLines(counter: Counter): readonly Line[] {
  if (counter.backsplashHeightM === 0) return [];
  return counter.backEdges.flatMap(([from, to]) => {
    const [a, b] = [counter.outline[from], counter.outline[to]];
    return a && b ? [{ points: [a, b] }] : [];
  });
}

function lengthM({ points }: Line): number {
  return points.reduce((sum, p, at) => {
    const before = points[at - 1];
    return before ? sum + Math.hypot(p[0] - before[0], p[1] - before[1]) : sum;
  }, 0);
}

/** Lines to pour in their order, and what is out of reach of them. */
type Lines = { readonly lines: readonly Line[]; readonly unreached: readonly Unreached[] };

/**
 * Backsplash from the top, then the lanes from back to front, then the front
 * edges. Water for a backsplash is thrown against it, half a lane ahead of the hand.
 */
function linesOf(kitchen: Kitchen, top: Counter | Table, laneM: number): Lines {
  const options = lanesOptions(kitchen, top, laneM);
  const { lanes, edgeLanes, unreached } = lanesDrawn(surfaceOf(top), options);
  const splashM = options.armM + laneM / 2;
  const lines = [
    ...(top.kind === 'counter' ? backLines(top) : []).flatMap(({ points }) =>
      partsInReach(points, options.sides, splashM),
    ),
    ...lanes,
    ...edgeLanes.filter(({ kind }) => kind === 'front'),
  ];
  return { lines, unreached };
}

/** The water is spread evenly over all the length of the lines. */
function stretchesOf(
  lines: readonly Line[],
  need: PourEstimate,
  filledL: number,
): readonly Stretch[] {
  const totalM = lines.reduce((sum, line) => sum + lengthM(line), 0);
  return splitIntoKettles(lines, {
    litresPerM: need.litres.typical / totalM,
    usableKettleL: filledL,
    handSpeedMPerS: need.handSpeedMS,
  }).map(({ kettle, points, litres, lengthM: long, stand }) => ({
    kettle,
    points,
    litres,
    lengthM: long,
    ...(stand && { stand }),
  }));
}

function topPours(
  kitchen: Kitchen,
  top: Counter | Table,
  need: PourEstimate,
  filledL: number,
): KettlePours {
  const { lines, unreached } = linesOf(kitchen, top, need.laneM);
  const stretches = stretchesOf(lines, need, filledL);
  const holes = top.kind === 'counter' ? top.holes : [];
  const kettles = [...new Set(stretches.map(({ kettle }) => kettle))];
  const spots = unreached.filter(({ areaM2 }) => areaM2 >= LEAST_SPOT_M2);
  const drawn = {
    kind: 'lanes',
    outline: top.outline,
    holes,
    stretches,
    laneM: need.laneM,
    ...(spots.length > 0 && { unreached: spots }),
  } as const;
  const pours = kettles.map((kettle): KettlePour => ({
    kettle,
    litres: stretches
      .filter((one) => one.kettle === kettle)
      .reduce((sum, { litres }) => sum + litres, 0),
    parts: [],
    sides: sidesOf(stretches, kettle, top.outline),
    picture: { ...drawn, kettle },
  }));
  return { pours, unreached: spots };
}

/** Sides at which one stands for a kettle, in the order of its stretches. */
function sidesOf(
  stretches: readonly Stretch[],
  kettle: number,
  outline: Polygon,
): readonly SideName[] {
  const edges = stretches.flatMap(({ kettle: own, stand }) =>
    own === kettle && stand ? [stand.edge] : [],
  );
  return [...new Set(edges.map(([from]) => sideName(outline, from)))];
}

/**
 * Where each kettle of a fixture goes. A surface for which no lanes can be
 * drawn gets alike shares without a picture, and the refusal that says why.
 * @param filledL what a kettle is filled with, L
 */
export function kettlePours(
  kitchen: Kitchen,
  fixture: PouredFixture,
  need: PourEstimate,
  filledL: number,
): KettlePours {
  try {
    return fixture.kind === 'sink'
      ? { pours: sinkPours(fixture, need, filledL, poursUpwards(kitchen)) }
      : topPours(kitchen, fixture, need, filledL);
  } catch (refusal) {
    if (!(refusal instanceof LanesRefusal)) throw refusal;
    return { pours: evenShares(need), refusal: refusal.code };
  }
}
