import type { Band } from '../../units/index.ts';

/**
 * A part of a surface as the water meets it. level: a top or a bowl's floor;
 * upright: a wall; edge: a rim or front edge, one pass along it; fitting: a
 * spout, a tap or a handle, gone round. `contactDeg` is the advancing contact
 * angle of water on it.
 */
export type PourPiece =
  | {
      readonly kind: 'level' | 'upright';
      readonly areaM2: number;
      readonly contactDeg: number;
    }
  | { readonly kind: 'edge'; readonly lengthM: number }
  | { readonly kind: 'fitting'; readonly count: number };

/** How a person pours. */
export type PourHand = {
  /** Stream out of the spout, L/min. */
  readonly flowLMin: Band;
  /** What of each strip the next one covers again, 0 to 0.5. */
  readonly overlapShare: number;
  /** Of each filling: first splash, drips, and what stays in the kettle, 0 to 0.5. */
  readonly lossShare: number;
};

/** What sets the litres of a piece. */
export type PourGovern = 'stream' | 'standing-film' | 'wetting-rate' | 'length' | 'round';

export type PiecePour = {
  readonly kind: PourPiece['kind'];
  /** On the surface, before losses. */
  readonly litres: Band;
  readonly pourS: Band;
  readonly governedBy: PourGovern;
};

export type PourDemand = {
  /** Boiled for it, losses included. */
  readonly litres: Band;
  /** Whole fillings: nothing is left half poured. */
  readonly kettles: Band;
  readonly pourS: Band;
  /** Width of a strip on a level top. */
  readonly swathM: Band;
  readonly perPiece: readonly PiecePour[];
};
