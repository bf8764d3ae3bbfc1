import type {
  Counter,
  Fixture,
  Kitchen,
  Polygon,
  PourUntil,
  Sink,
  Table,
} from '../../kitchen/index.ts';
import { areaM2, netAreaM2, perimeterM } from '../../geometry/index.ts';
import {
  boilingTemp,
  material,
  ORDINARY_HAND,
  pourDemand,
  type PourPiece,
} from '../../physics/index.ts';
import { addBands, type Band } from '../../units/index.ts';
import { usualHands, type PourSetting } from './pour-hand.ts';

export type PouredFixture = Counter | Sink | Table;

/** Water that a fixture takes, and how it is spread. */
export type PourEstimate = {
  readonly litres: Band;
  readonly kettles: Band;
  readonly pourS: Band;
  /** Distance between neighbouring lanes, m: the swath less its overlap. */
  readonly laneM: number;
  /** Speed of the hand along a lane, m/s. */
  readonly handSpeedMS: number;
  /** Boiled for each kind of piece, L. */
  readonly litresOf: Readonly<Record<PourPiece['kind'], number>>;
};

/** Where it is poured and until when. */
export type PourPlace = { readonly boilingC: number; readonly until: PourUntil };

export function pourPlaceOf({ altitudeM, household }: Kitchen): PourPlace {
  return {
    boilingC: boilingTemp({ altitudeM }).tempC,
    until: household.pourUntil ?? 'reached',
  };
}

/** May it be poured at all: has it a surface to pour? */
export function isPoured(fixture: Fixture): fixture is PouredFixture {
  return fixture.kind === 'counter' || fixture.kind === 'sink' || fixture.kind === 'table';
}

function edgeLengthM(outline: Polygon, edges: readonly (readonly [number, number])[]): number {
  return edges.reduce((sum, [from, to]) => {
    const [a, b] = [outline[from], outline[to]];
    return a && b ? sum + Math.hypot(b[0] - a[0], b[1] - a[1]) : sum;
  }, 0);
}

/** Level, upright and edge pieces of a counter; the edges that stand at no wall are poured along. */
function counterPieces(counter: Counter): readonly PourPiece[] {
  const angle = material(counter.material).contactDeg.typical;
  const backM = edgeLengthM(counter.outline, counter.backEdges);
  const frontM = Math.max(0, perimeterM(counter.outline) - backM);
  return [
    ...(counter.backsplashHeightM > 0 && backM > 0
      ? [{ kind: 'upright', areaM2: backM * counter.backsplashHeightM, contactDeg: angle } as const]
      : []),
    { kind: 'level', areaM2: netAreaM2(counter.outline, counter.holes), contactDeg: angle },
    { kind: 'edge', lengthM: frontM },
  ];
}

function tablePieces(table: Table): readonly PourPiece[] {
  const angle = material(table.material).contactDeg.typical;
  return [
    { kind: 'level', areaM2: areaM2(table.outline), contactDeg: angle },
    { kind: 'edge', lengthM: perimeterM(table.outline) },
  ];
}

/** Deck and drainboard: what of the outline is neither bowl nor rim, m². */
export function deckM2(sink: Sink): number {
  const bowls = sink.bowls.reduce((sum, bowl) => {
    const rim = 2 * sink.rimWidthM;
    return sum + (bowl.lengthM + rim) * (bowl.widthM + rim);
  }, 0);
  return Math.max(0, areaM2(sink.outline) - bowls);
}

/** Spout with its tap, and each handle: pieces that the stream goes round. A sprayer is part of the spout. */
export function fittings(sink: Sink): number {
  return 1 + sink.tap.handles;
}

function sinkPieces(sink: Sink): readonly PourPiece[] {
  const angle = material(sink.material).contactDeg.typical;
  const floor = sink.bowls.reduce((sum, { lengthM, widthM }) => sum + lengthM * widthM, 0);
  const walls = sink.bowls.reduce(
    (sum, { lengthM, widthM, depthM }) => sum + 2 * (lengthM + widthM) * depthM,
    0,
  );
  const rim = sink.bowls.reduce((sum, { lengthM, widthM }) => sum + 2 * (lengthM + widthM), 0);
  const deck = deckM2(sink);
  return [
    { kind: 'fitting', count: fittings(sink) },
    ...(deck > 0 ? [{ kind: 'level', areaM2: deck, contactDeg: angle } as const] : []),
    { kind: 'edge', lengthM: rim },
    { kind: 'upright', areaM2: walls, contactDeg: angle },
    { kind: 'level', areaM2: floor, contactDeg: angle },
  ];
}

function piecesOf(fixture: PouredFixture): readonly PourPiece[] {
  switch (fixture.kind) {
    case 'counter':
      return counterPieces(fixture);
    case 'table':
      return tablePieces(fixture);
    case 'sink':
      return sinkPieces(fixture);
  }
}

/** What may be assumed otherwise about a pour. */
export type PourAssumed = Omit<PourSetting, 'material' | 'boilingC'> & {
  readonly lossShare?: number;
};

/**
 * Boiling water for one fixture.
 * @param filledL what a kettle is filled with, L
 * @throws OutOfRangeError
 */
export function estimatePour(
  fixture: PouredFixture,
  filledL: number,
  { boilingC, until }: PourPlace,
  assumed: PourAssumed = {},
): PourEstimate {
  const { lossShare = ORDINARY_HAND.lossShare, ...setting } = assumed;
  const hands = usualHands({ material: fixture.material, boilingC, ...setting });
  const { litres, kettles, pourS, swathM, perPiece } = pourDemand({
    pieces: piecesOf(fixture),
    usableKettleL: filledL,
    streamC: hands.impactC.typical,
    handSpeedMS: hands[until],
    lossShare,
    ...(assumed.flowLMin !== undefined && { flowLMin: assumed.flowLMin }),
    ...(assumed.overlapShare !== undefined && { overlapShare: assumed.overlapShare }),
  });
  const litresOf = { level: 0, upright: 0, edge: 0, fitting: 0 };
  // What splashes and drips is boiled with each piece.
  for (const piece of perPiece) litresOf[piece.kind] += piece.litres.typical / (1 - lossShare);
  return {
    litres,
    kettles,
    pourS,
    laneM: swathM.typical * (1 - (assumed.overlapShare ?? ORDINARY_HAND.overlapShare)),
    handSpeedMS: hands[until].typical,
    litresOf,
  };
}

export function sumBands(bands: readonly Band[]): Band {
  return bands.reduce(addBands, { low: 0, typical: 0, high: 0 });
}
