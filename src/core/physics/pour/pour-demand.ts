import {
  MM_PER_M,
  SECONDS_PER_MINUTE,
  addBands,
  band,
  exactly,
  inRange,
  type Band,
} from '../../units/index.ts';
import { levelJump } from './level-jump.ts';
import { ORDINARY_HAND } from './ordinary-hand.ts';
import { litresOf, type Hand } from './piece-litres.ts';
import type { PiecePour, PourDemand, PourHand, PourPiece } from './pour-types.ts';

/** Rounding that is not worth another kettle. */
const NEARLY = 1e-9;

export type PourDemandInput = {
  readonly pieces: readonly PourPiece[];
  /** What one filling holds, up to its mark. */
  readonly usableKettleL: number;
  /** Water on the surface, °C. */
  readonly streamC: number;
  /** Speed of the stream over the surface, m/s; a slow hand is `low`. */
  readonly handSpeedMS: number | Band;
  readonly flowLMin?: number | Band;
  readonly overlapShare?: number;
  readonly lossShare?: number;
};

function asBand(value: number | Band | undefined, usual: Band): Band {
  if (value === undefined) return usual;
  return typeof value === 'number' ? exactly(value) : value;
}

type CheckedHand = PourHand & { readonly handSpeedMS: Band; readonly streamC: number };

function handOf(of: PourDemandInput): CheckedHand {
  const flowLMin = asBand(of.flowLMin, ORDINARY_HAND.flowLMin);
  const { handSpeedMS: told } = of;
  const handSpeedMS = typeof told === 'number' ? exactly(told) : told;
  inRange('handSpeedMS', handSpeedMS.low, 0.0005, 1);
  inRange('handSpeedMS', handSpeedMS.high, 0.0005, 1);
  return {
    flowLMin,
    handSpeedMS,
    streamC: inRange('streamC', of.streamC, 40, 105),
    overlapShare: inRange('overlapShare', of.overlapShare ?? ORDINARY_HAND.overlapShare, 0, 0.5),
    lossShare: inRange('lossShare', of.lossShare ?? ORDINARY_HAND.lossShare, 0, 0.5),
  };
}

/**
 * The three ways of pouring that span the band. Flow and speed of one hand
 * belong together (a strong stream is moved faster), so the flow stays typical
 * while the speed and the school of the jump go to their ends.
 */
function waysOf(hand: CheckedHand): Readonly<Record<keyof Band, Hand>> {
  const way = (speed: keyof Band, jump: keyof Band): Hand => ({
    flowLMin: hand.flowLMin.typical,
    handSpeedMS: hand.handSpeedMS[speed],
    overlapShare: hand.overlapShare,
    streamC: hand.streamC,
    jump,
  });
  return { low: way('high', 'high'), typical: way('typical', 'typical'), high: way('low', 'low') };
}

function pieceOf(piece: PourPiece, ways: Readonly<Record<keyof Band, Hand>>): PiecePour {
  const low = litresOf(piece, ways.low);
  const usual = litresOf(piece, ways.typical);
  const high = litresOf(piece, ways.high);
  const litres = band(low.litres, usual.litres, high.litres);
  const seconds = (volumeL: number) => (volumeL / ways.typical.flowLMin) * SECONDS_PER_MINUTE;
  return {
    kind: piece.kind,
    litres,
    pourS: band(seconds(low.litres), seconds(usual.litres), seconds(high.litres)),
    governedBy: usual.governedBy,
  };
}

/**
 * Boiling water for a set of surfaces poured by hand: litres, kettles (whole
 * fillings), seconds of pouring. One call is one zone that is not to be left
 * half poured. Flow, overlap and losses default to ORDINARY_HAND.
 * @param usableKettleL 0.2 to 200 L
 * @throws OutOfRangeError
 * Source: width of the fast film round a stream (levelJump, filmJump), never
 * less than a standing film (puddleDepth) or the least wetting rate; losses: see
 * ORDINARY_HAND.
 */
export function pourDemand(of: PourDemandInput): PourDemand {
  const kettleL = inRange('usableKettleL', of.usableKettleL, 0.2, 200);
  const hand = handOf(of);
  const ways = waysOf(hand);
  const perPiece = of.pieces.map((piece) => pieceOf(piece, ways));
  const onSurface = perPiece.map(({ litres }) => litres).reduce(addBands, exactly(0));
  const boiled = (litres: number) => litres / (1 - hand.lossShare);
  const litres = band(boiled(onSurface.low), boiled(onSurface.typical), boiled(onSurface.high));
  const kettles = (volumeL: number) => Math.ceil(volumeL / kettleL - NEARLY);
  const { radiusMm } = levelJump({ flowLMin: hand.flowLMin.typical, tempC: hand.streamC });
  const swath = (radius: number) => (2 * radius) / MM_PER_M;
  return {
    litres,
    kettles: band(kettles(litres.low), kettles(litres.typical), kettles(litres.high)),
    pourS: perPiece.map(({ pourS }) => pourS).reduce(addBands, exactly(0)),
    swathM: band(swath(radiusMm.low), swath(radiusMm.typical), swath(radiusMm.high)),
    perPiece,
  };
}
