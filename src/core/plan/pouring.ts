import type { Counter, Fixture, Sink, Table } from '../kitchen/index.ts';
import {
  LanesRefusal,
  planLanes,
  sinkKettles,
  sinkLanes,
  splitIntoKettles,
  type LanePoint,
  type SinkPart,
} from '../lanes/index.ts';
import { deckM2, fittings, pieceL, type PourReckoned } from './reckon/index.ts';
import type { Picture, Stretch } from './types.ts';

/** What one kettle pours. */
export type KettlePour = {
  readonly kettle: number;
  readonly litres: number;
  /** Names of the parts, for a sink. */
  readonly parts: readonly string[];
  readonly picture?: Picture;
};

type Line = { readonly points: readonly LanePoint[] };

/** Alike shares when no lanes can be drawn. */
export function evenShares(need: PourReckoned): readonly KettlePour[] {
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
function topStretches(top: Counter | Table, need: PourReckoned): readonly Stretch[] {
  const holes = top.kind === 'counter' ? top.holes : [];
  const backEdges = top.kind === 'counter' && top.backEdges.length > 0 ? top.backEdges : undefined;
  const { lanes, edgeLanes } = planLanes(
    { outer: top.outline, holes },
    { swathM: need.laneM, ...(backEdges && { backEdges }) },
  );
  const lines: readonly Line[] = [
    ...(top.kind === 'counter' ? backLines(top) : []),
    ...lanes,
    ...edgeLanes.filter(({ kind }) => kind === 'front'),
  ];
  const totalM = lines.reduce((sum, line) => sum + lengthM(line), 0);
  const stretches = splitIntoKettles(lines, {
    litresPerM: need.litres.typical / totalM,
    usableKettleL: need.usableL,
    handSpeedMPerS: need.handSpeedMS,
  });
  return stretches.map(({ kettle, points, litres, lengthM: long }) => ({
    kettle,
    points,
    litres,
    lengthM: long,
  }));
}

function topPours(top: Counter | Table, need: PourReckoned): readonly KettlePour[] {
  const stretches = topStretches(top, need);
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

/** Deck and drainboard are poured after the fittings over them and before the rims below. */
function withDeck(parts: readonly SinkPart[], sink: Sink, laneM: number): readonly SinkPart[] {
  const deck = deckM2(sink);
  if (deck === 0) return parts;
  const at = parts.findIndex(({ kind }) => kind !== 'fitting');
  const name = sink.drainboard ? 'Deck and drainboard' : 'Deck round the bowls';
  const part: SinkPart = {
    kind: 'floor',
    name,
    pieces: 0,
    outlines: [],
    lanes: [],
    areaM2: deck,
    lengthM: deck / laneM,
  };
  return [...parts.slice(0, at), part, ...parts.slice(at)];
}

function sinkPours(sink: Sink, need: PourReckoned, filledL: number): readonly KettlePour[] {
  const parts = withDeck(
    sinkLanes(sink.bowls, { swathM: need.laneM, handles: sink.tap.handles }),
    sink,
    need.laneM,
  );
  const litresOf = (kinds: readonly string[]): number =>
    need.pieces
      .filter(({ kind }) => kinds.includes(kind))
      .reduce((sum, piece) => sum + pieceL(piece, filledL), 0);
  const metresOf = (kind: SinkPart['kind']): number =>
    parts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.lengthM, 0);
  const pieces = parts.reduce((sum, part) => sum + part.pieces, 0);
  const shares = sinkKettles(parts, {
    litresPerFitting: pieces === 0 ? 0 : litresOf(['fitting']) / Math.max(pieces, fittings(sink)),
    rimLitresPerM: litresOf(['edge']) / metresOf('rim'),
    wallLitresPerM: litresOf(['upright']) / metresOf('wall'),
    floorLitresPerM: litresOf(['level']) / metresOf('floor'),
    usableKettleL: need.usableL,
  });
  const kettles = [...new Set(shares.map(({ kettle }) => kettle))];
  const drawn = shares.map(({ name, kettle }) => ({ name, kettle }));
  return kettles.map((kettle) => {
    const own = shares.filter((share) => share.kettle === kettle);
    return {
      kettle,
      litres: own.reduce((sum, { litres }) => sum + litres, 0),
      parts: own.map(({ name }) => name),
      picture: { kind: 'sink', parts: drawn, kettle },
    };
  });
}

/**
 * Where each kettle of a fixture goes. A surface for which no lanes can be
 * drawn gets alike shares without a picture.
 */
export function kettlePours(
  fixture: Fixture,
  need: PourReckoned,
  filledL: number,
): readonly KettlePour[] {
  try {
    if (fixture.kind === 'sink') return sinkPours(fixture, need, filledL);
    if (fixture.kind === 'counter' || fixture.kind === 'table') return topPours(fixture, need);
  } catch (refusal) {
    if (!(refusal instanceof LanesRefusal)) throw refusal;
  }
  return evenShares(need);
}
