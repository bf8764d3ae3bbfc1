import table from '../../../../shared/covers/rolls.json';
import { bestPurchase, CutsRefusal, purchaseFrom, type Joins } from '../../cutting/index.ts';
import type { CoverMaterial } from '../../custom/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { CoverGroup, CoverPiece, CoverPlan, CoverStock } from '../model/types.ts';
import { coverPieces, USUAL_ALLOWANCES } from '../pieces/cover-pieces.ts';

/** Rolls and sheets that are usually sold. */
const USUAL_STOCK = table.rolls as readonly CoverStock[];

/** A join keeps this far from a cut-out, m: water runs there; common practice, no published source. */
const CLEAR_M = 0.1;

type CoverOptions = {
  /** Rolls that can be had, with prices; absent: those usually sold. */
  readonly stock?: readonly CoverStock[];
  /** May a piece be joined from two, never over a cut-out? Absent: yes. */
  readonly joins?: boolean;
};

function liesOn(piece: CoverPiece, stock: CoverStock, joins: Joins | undefined): boolean {
  try {
    purchaseFrom(stock, [piece], joins);
    return true;
  } catch (fault) {
    if (fault instanceof CutsRefusal) return false;
    throw fault;
  }
}

/**
 * What to buy to cover and line a kitchen as its plan says, and how each roll
 * is cut.
 */
export function planCovers(
  kitchen: Kitchen,
  plan: Pick<Plan, 'methods'>,
  { stock = USUAL_STOCK, joins = true }: CoverOptions = {},
): CoverPlan {
  const { pieces, unmeasured } = coverPieces(kitchen, plan, joins);
  const how: Joins | undefined = joins
    ? { overlapM: USUAL_ALLOWANCES.overlapM, clearM: CLEAR_M }
    : undefined;
  const byMaterial = new Map<CoverMaterial, CoverPiece[]>();
  for (const piece of pieces)
    byMaterial.set(piece.coverWith, [...(byMaterial.get(piece.coverWith) ?? []), piece]);
  const groups: CoverGroup[] = [];
  const tooLarge: CoverPiece[] = [];
  for (const [coverWith, wanted] of byMaterial) {
    const rolls = stock.filter((one) => one.coverWith.includes(coverWith));
    // The widest roll takes whatever any takes; a piece too large for it is told by itself.
    const widest = rolls.toSorted((a, b) => b.widthM - a.widthM || b.lengthM - a.lengthM)[0];
    const fits = widest ? wanted.filter((piece) => liesOn(piece, widest, how)) : [];
    tooLarge.push(...wanted.filter((piece) => !fits.includes(piece)));
    if (fits.length > 0)
      groups.push({ coverWith, pieces: fits, purchase: bestPurchase(rolls, fits, how) });
  }
  return { groups, tooLarge, unmeasured };
}
