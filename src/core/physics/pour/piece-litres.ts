import {
  LITRES_PER_M3,
  MM_PER_M,
  SECONDS_PER_MINUTE,
  inRange,
  type Band,
} from '../../units/index.ts';
import { water } from '../water/water.ts';
import { filmJump } from './film-jump.ts';
import { levelJump } from './level-jump.ts';
import type { PourGovern, PourPiece } from './pour-types.ts';
import { puddleDepth } from './puddle-depth.ts';
import { wettingRate } from './wetting-rate.ts';

/** Half the width of the wetted band at the level of the stream, in radii of the film jump; from memory. */
const UPRIGHT_HALF_WIDTH = 4 / 3;
/** Path round one spout, tap or handle, m: its length along the front and along both sides. Common practice, no published source. */
const FITTING_PATH_M = 0.2 * 3;

/** One way of pouring: numbers without a spread. */
export type Hand = {
  readonly flowLMin: number;
  readonly handSpeedMS: number;
  readonly overlapShare: number;
  /** Water on the surface, °C. */
  readonly streamC: number;
  /** Which end of the level jump's band. */
  readonly jump: keyof Band;
};

export type PieceLitres = { readonly litres: number; readonly governedBy: PourGovern };

type Area = Extract<PourPiece, { readonly areaM2: number }>;

function levelL(piece: Area, hand: Hand): PieceLitres {
  const tempC = hand.streamC;
  const swathM = (2 * levelJump({ flowLMin: hand.flowLMin, tempC }).radiusMm[hand.jump]) / MM_PER_M;
  const stream = litresPerM2(hand, swathM);
  const standing = puddleDepth({ tempC, contactDeg: piece.contactDeg }).depthMm;
  return {
    litres: piece.areaM2 * Math.max(stream, standing),
    governedBy: stream >= standing ? 'stream' : 'standing-film',
  };
}

function uprightL(piece: Area, hand: Hand): PieceLitres {
  const tempC = hand.streamC;
  const { contactDeg } = piece;
  const flow = { flowLMin: hand.flowLMin, tempC };
  const jumpM = filmJump({ ...flow, contactDeg }).halfAngleRadiusMm / MM_PER_M;
  const massKgS =
    (hand.flowLMin / (LITRES_PER_M3 * SECONDS_PER_MINUTE)) * water({ tempC }).densityKgM3;
  // A wider film than this breaks into rivulets further down the wall.
  const wettableM = massKgS / wettingRate({ tempC, contactDeg }).rateKgMS;
  const wideM = 2 * UPRIGHT_HALF_WIDTH * jumpM;
  return {
    litres: piece.areaM2 * litresPerM2(hand, Math.min(wideM, wettableM)),
    governedBy: wideM <= wettableM ? 'stream' : 'wetting-rate',
  };
}

function litresPerM2(hand: Hand, swathM: number): number {
  return hand.flowLMin / SECONDS_PER_MINUTE / (swathM * (1 - hand.overlapShare) * hand.handSpeedMS);
}

/** Litres that end on one piece. */
export function litresOf(piece: PourPiece, hand: Hand): PieceLitres {
  const litresPerM = hand.flowLMin / SECONDS_PER_MINUTE / hand.handSpeedMS;
  switch (piece.kind) {
    case 'level':
      inRange('areaM2', piece.areaM2, 0, 100);
      return levelL(piece, hand);
    case 'upright':
      inRange('areaM2', piece.areaM2, 0, 100);
      return uprightL(piece, hand);
    case 'edge':
      return {
        litres: inRange('lengthM', piece.lengthM, 0, 200) * litresPerM,
        governedBy: 'length',
      };
    case 'fitting':
      return {
        litres: inRange('count', piece.count, 0, 100) * FITTING_PATH_M * litresPerM,
        governedBy: 'round',
      };
  }
}
