import type { Counter, LaneDirection, Table } from '../../kitchen/index.ts';
import { LanesRefusal, planLanes, splitIntoKettles, type LanePoint } from '../../pouring/index.ts';
import type { PouredFixture, PourEstimate } from '../estimates/index.ts';
import { sinkPours } from './sink-pours.ts';
import type { KettlePour, KettlePours } from './kettle-pour.ts';
import type { Stretch } from '../model/index.ts';

type Line = { readonly points: readonly LanePoint[] };

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

/**
 * Backsplash from the top, then the lanes from back to front, then the front
 * edge. The water is spread evenly over all that length.
 */
function topStretches(
  top: Counter | Table,
  need: PourEstimate,
  filledL: number,
  direction: LaneDirection,
): readonly Stretch[] {
  const holes = top.kind === 'counter' ? top.holes : [];
  const backEdges = top.kind === 'counter' && top.backEdges.length > 0 ? top.backEdges : undefined;
  const { lanes, edgeLanes } = planLanes(
    { outer: top.outline, holes },
    { swathM: need.laneM, direction, ...(backEdges && { backEdges }) },
  );
  const lines: readonly Line[] = [
    ...(top.kind === 'counter' ? backLines(top) : []),
    ...lanes,
    ...edgeLanes.filter(({ kind }) => kind === 'front'),
  ];
  const totalM = lines.reduce((sum, line) => sum + lengthM(line), 0);
  const stretches = splitIntoKettles(lines, {
    litresPerM: need.litres.typical / totalM,
    usableKettleL: filledL,
    handSpeedMPerS: need.handSpeedMS,
  });
  return stretches.map(({ kettle, points, litres, lengthM: long }) => ({
    kettle,
    points,
    litres,
    lengthM: long,
  }));
}

function topPours(
  top: Counter | Table,
  need: PourEstimate,
  filledL: number,
  direction: LaneDirection,
): readonly KettlePour[] {
  const stretches = topStretches(top, need, filledL, direction);
  const holes = top.kind === 'counter' ? top.holes : [];
  const kettles = [...new Set(stretches.map(({ kettle }) => kettle))];
  return kettles.map((kettle) => ({
    kettle,
    litres: stretches
      .filter((one) => one.kettle === kettle)
      .reduce((sum, { litres }) => sum + litres, 0),
    parts: [],
    picture: { kind: 'lanes', outline: top.outline, holes, stretches, kettle },
  }));
}

/**
 * Where each kettle of a fixture goes. A surface for which no lanes can be
 * drawn gets alike shares without a picture, and the refusal that says why.
 * @param filledL what a kettle is filled with, L
 */
export function kettlePours(
  fixture: PouredFixture,
  need: PourEstimate,
  filledL: number,
  direction: LaneDirection = 'back-to-front',
): KettlePours {
  try {
    return {
      pours:
        fixture.kind === 'sink'
          ? sinkPours(fixture, need, filledL)
          : topPours(fixture, need, filledL, direction),
    };
  } catch (refusal) {
    if (!(refusal instanceof LanesRefusal)) throw refusal;
    return { pours: evenShares(need), refusal: refusal.code };
  }
}
