import { planCuts, planRolls } from '../rolls/plan-cuts.ts';
import { CutsRefusal, type CutPlan } from '../model/types.ts';
import { partsFor, type Joins, type Part, type WantedPiece } from './joins.ts';

/** A roll or sheet as it is sold. */
export type Stock = {
  readonly id: string;
  readonly widthM: number;
  /** Of one roll or sheet, m; by the metre: the most that is cut off at once. */
  readonly lengthM: number;
  readonly soldBy: 'roll' | 'metre';
  /** Price of one roll, or of one metre, in any currency. */
  readonly price?: number;
  /** It has a print or grain: a piece that may not be turned is not. */
  readonly grain: boolean;
};

export type Purchase = {
  readonly stock: Stock;
  /** Rolls, or metres rounded up to whole tenths. */
  readonly amount: number;
  readonly price?: number;
  readonly rolls: readonly CutPlan[];
  readonly parts: readonly Part[];
  readonly usedLengthM: number;
  /** Share of the used length that is no piece. */
  readonly wasteShare: number;
};

/** Shops cut in tenths of a metre. */
const PER_METRE = 10;
/** Below this two lengths are one, m. */
const SAME_M = 1e-9;

function purchaseOf(stock: Stock, parts: readonly Part[], rolls: readonly CutPlan[]): Purchase {
  const usedLengthM = rolls.reduce((sum, roll) => sum + roll.usedLengthM, 0);
  const amount =
    stock.soldBy === 'roll'
      ? rolls.length
      : Math.ceil(usedLengthM * PER_METRE - SAME_M) / PER_METRE;
  const areaM2 = parts.reduce((sum, { widthM, lengthM: alongM }) => sum + widthM * alongM, 0);
  return {
    stock,
    amount,
    ...(stock.price !== undefined && { price: amount * stock.price }),
    rolls,
    parts,
    usedLengthM,
    wasteShare: usedLengthM === 0 ? 0 : Math.max(0, 1 - areaM2 / (usedLengthM * stock.widthM)),
  };
}

/**
 * What to buy of one stock for these pieces, and how it is cut roll by roll.
 * @throws CutsRefusal when a piece does not lie on it
 */
export function purchaseFrom(
  stock: Stock,
  wanted: readonly WantedPiece[],
  joins?: Joins,
): Purchase {
  const parts = wanted.flatMap((piece) =>
    partsFor(piece, stock, !stock.grain || (piece.turns ?? true), joins),
  );
  const pieces = parts.map(({ piece }) => piece);
  const problem = { rollWidthM: stock.widthM, rollLengthM: stock.lengthM, pieces };
  if (pieces.length === 0) return purchaseOf(stock, parts, []);
  const rolls = stock.soldBy === 'metre' ? [planCuts(problem)] : planRolls(problem);
  return purchaseOf(stock, parts, rolls);
}

/** Cheapest first; where a price is missing, what uses the least material. */
function cheaper(a: Purchase, b: Purchase): number {
  if (a.price !== undefined && b.price !== undefined && a.price !== b.price)
    return a.price - b.price;
  const materialM2 = ({ stock, amount }: Purchase) =>
    amount * stock.widthM * (stock.soldBy === 'roll' ? stock.lengthM : 1);
  return a.parts.length - b.parts.length || materialM2(a) - materialM2(b);
}

/**
 * The best of several stocks: the cheapest, or without prices the one with the
 * fewest joins and the least material.
 * @throws CutsRefusal of the last stock when the pieces lie on none
 */
export function bestPurchase(
  stocks: readonly Stock[],
  wanted: readonly WantedPiece[],
  joins?: Joins,
): Purchase {
  const found: Purchase[] = [];
  let refusal: unknown = new CutsRefusal(
    'input',
    'stocks',
    0,
    'at least one roll or sheet',
    'Tell which rolls can be had.',
  );
  for (const stock of stocks) {
    try {
      found.push(purchaseFrom(stock, wanted, joins));
    } catch (fault) {
      if (!(fault instanceof CutsRefusal)) throw fault;
      refusal = fault;
    }
  }
  const [best] = found.toSorted(cheaper);
  if (!best) throw refusal;
  return best;
}
