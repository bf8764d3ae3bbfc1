import type { Rect, WantedPiece, Purchase, Stock } from '../../cutting/index.ts';
import type { CoverMaterial } from '../../custom/index.ts';
import type { Message } from '../../messages/index.ts';

/** A roll or sheet, and what it is used for. */
export type CoverStock = Stock & { readonly coverWith: readonly CoverMaterial[] };

/**
 * A piece of cover: its width is the depth of the counter, its length runs
 * along it. Cut-outs lie in the piece's own frame.
 */
export type CoverPiece = WantedPiece & {
  readonly fixture: string;
  readonly name: Message;
  readonly coverWith: CoverMaterial;
  /** Cut out by hand after the piece is cut. */
  readonly cutOuts: readonly Rect[];
  /** The fixture is no rectangle: what lies beside it is cut away on the spot. */
  readonly trimmed: boolean;
};

/** Pieces of one material with what to buy for them. */
export type CoverGroup = {
  readonly coverWith: CoverMaterial;
  readonly pieces: readonly CoverPiece[];
  readonly purchase: Purchase;
};

export type CoverPlan = {
  readonly groups: readonly CoverGroup[];
  /** Pieces that lie on no roll that is known. */
  readonly tooLarge: readonly CoverPiece[];
  /** Covered, but nobody told how large. */
  readonly unmeasured: readonly { readonly fixture: string; readonly name: string }[];
};
