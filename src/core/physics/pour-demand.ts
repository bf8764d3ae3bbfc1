import { addBands, band, exactly, inRange, type Band } from '../quantity/index.ts';
import { filmJump, levelJump, puddleDepth, wettingRate } from './pour.ts';

/**
 * How much boiling water a set of surfaces takes, poured by hand.
 *
 * Level: a stream moved at hand speed wets a swath as wide as the fast film
 * around it (twice the jump radius), so litres per m² = flow / (swath × hand
 * speed); never less than the puddle that stands on it. Upright: the same with
 * the width of the falling film, (8/3) R at jet level, and never less than the
 * minimum wetting rate along the wall for as long as the stream is on it.
 * Edge: by length. Fitting: by the time a hand takes to go round it.
 */
export type PourPiece =
  | { readonly kind: 'level'; readonly areaM2: number; readonly contactDeg: number }
  | { readonly kind: 'upright'; readonly areaM2: number; readonly contactDeg: number }
  | { readonly kind: 'edge'; readonly lengthM: number }
  | { readonly kind: 'fitting'; readonly count: number };

/** The person's pour; a plain number has no spread. */
export type PourHand = {
  /** Stream out of the spout. Household kettles poured low and slow: common practice, no published source. */
  readonly flowLMin: Band;
  /** Speed of the stream over the surface. Common practice, no published source. */
  readonly handSpeedMS: Band;
  /** Share of each swath that the next one wets again, 0 to 0.5. */
  readonly overlapShare: number;
  /** First splash, drips, and the last water in the kettle that is not poured, share of the filling. */
  readonly lossShare: number;
};

export const ORDINARY_HAND: PourHand = {
  flowLMin: { low: 1.5, typical: 2, high: 2.5 },
  handSpeedMS: { low: 0.04, typical: 0.05, high: 0.06 },
  overlapShare: 0.15,
  lossShare: 0.1,
};

/** A stream goes round a spout or a handle for so long, s. Common practice, no published source. */
const FITTING_S = 6;
/** Boiling water has lost a little on its way from the spout. */
const STREAM_C = 95;
/** Half the advancing angle is the effective one on an upright wall (Aouad et al. 2016). */
const EFFECTIVE_SHARE = 0.5;

export type PourDemand = {
  readonly litres: Band;
  readonly kettles: Band;
  readonly pourS: Band;
  readonly swathM: Band;
};

type Way = { readonly flowLMin: number; readonly handSpeedMS: number; readonly jump: keyof Band };

function swathLevelM(way: Way): number {
  return (2 * levelJump({ flowLMin: way.flowLMin, tempC: STREAM_C }).radiusMm[way.jump]) / 1000;
}

function pieceL(piece: PourPiece, way: Way, hand: PourHand): number {
  const flowLS = way.flowLMin / 60;
  switch (piece.kind) {
    case 'level': {
      const streamLM2 = flowLS / (swathLevelM(way) * (1 - hand.overlapShare) * way.handSpeedMS);
      const standing = puddleDepth({ tempC: STREAM_C, contactDeg: piece.contactDeg }).depthMm;
      return piece.areaM2 * Math.max(streamLM2, standing);
    }
    case 'upright': {
      const contactDeg = piece.contactDeg * EFFECTIVE_SHARE;
      const radiusMm = filmJump({ flowLMin: way.flowLMin, tempC: STREAM_C, contactDeg }).radiusMm;
      const wettableM = (flowLS * 0.96) / wettingRate({ tempC: STREAM_C, contactDeg }).rateKgMS;
      const widthM = Math.min((8 / 3) * (radiusMm / 1000), wettableM);
      return (piece.areaM2 * flowLS) / (widthM * (1 - hand.overlapShare) * way.handSpeedMS);
    }
    case 'edge':
      return (piece.lengthM * flowLS) / way.handSpeedMS;
    case 'fitting':
      return piece.count * FITTING_S * flowLS;
  }
}

export type PourDemandInput = {
  readonly pieces: readonly PourPiece[];
  /** What one filling gives, up to its mark. */
  readonly usableKettleL: number;
  readonly flowLMin?: number | Band;
  readonly handSpeedMS?: number | Band;
  readonly overlapShare?: number;
  readonly lossShare?: number;
};

function asBand(value: number | Band | undefined, otherwise: Band): Band {
  return value === undefined ? otherwise : typeof value === 'number' ? exactly(value) : value;
}

/**
 * Litres, kettles (rounded up, so that nothing is left half poured), seconds
 * of pouring. The band spans slow and quick hands and both schools of the
 * level jump. Defaults: `ORDINARY_HAND`.
 * @throws OutOfRangeError
 */
export function pourDemand(input: PourDemandInput): PourDemand {
  const { pieces, usableKettleL } = input;
  const hand: PourHand = {
    flowLMin: asBand(input.flowLMin, ORDINARY_HAND.flowLMin),
    handSpeedMS: asBand(input.handSpeedMS, ORDINARY_HAND.handSpeedMS),
    overlapShare: input.overlapShare ?? ORDINARY_HAND.overlapShare,
    lossShare: input.lossShare ?? ORDINARY_HAND.lossShare,
  };
  inRange('usableKettleL', usableKettleL, 0.2, 100);
  inRange('overlapShare', hand.overlapShare, 0, 0.5);
  inRange('lossShare', hand.lossShare, 0, 0.5);
  const ways: Readonly<Record<keyof Band, Way>> = {
    low: { flowLMin: hand.flowLMin.low, handSpeedMS: hand.handSpeedMS.high, jump: 'high' },
    typical: {
      flowLMin: hand.flowLMin.typical,
      handSpeedMS: hand.handSpeedMS.typical,
      jump: 'typical',
    },
    high: { flowLMin: hand.flowLMin.high, handSpeedMS: hand.handSpeedMS.low, jump: 'low' },
  };
  const litres = pieces
    .map((piece) =>
      band(
        pieceL(piece, ways.low, hand),
        pieceL(piece, ways.typical, hand),
        pieceL(piece, ways.high, hand),
      ),
    )
    .reduce(addBands, exactly(0));
  const filled = usableKettleL * (1 - hand.lossShare);
  const kettles = (l: number): number => Math.ceil(l / filled - 1e-9);
  return {
    litres,
    kettles: band(kettles(litres.low), kettles(litres.typical), kettles(litres.high)),
    pourS: inOrder(
      (litres.low / ways.low.flowLMin) * 60,
      (litres.typical / ways.typical.flowLMin) * 60,
      (litres.high / ways.high.flowLMin) * 60,
    ),
    swathM: band(
      swathLevelM({ ...ways.typical, jump: 'low' }),
      swathLevelM(ways.typical),
      swathLevelM({ ...ways.typical, jump: 'high' }),
    ),
  };
}

/** A quick hand may take as long with its water as an ordinary one: the ends are the extremes. */
function inOrder(a: number, typical: number, c: number): Band {
  return band(Math.min(a, typical, c), typical, Math.max(a, typical, c));
}
