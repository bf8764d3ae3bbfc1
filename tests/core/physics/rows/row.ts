/** How far the number that is compared with may be trusted. */
type Confidence = 'read in a copy' | 'from memory' | 'reference library' | 'computed';

/** What a group rests on, best first. `judgement`: no row at all (shared/basis.json). */
export type RowKind = 'published' | 'reference library' | 'computed' | 'judgement';

/**
 * One number beside what it computes.
 * - `read in a copy`, `from memory`: somebody measured or printed it.
 * - `reference library`: other people's program gives it.
 * - `computed`: worked out apart from these sources from the published formula
 *   and inputs, or a table read back: finds slips, not wrong physics.
 */
export type Row = {
  readonly group: string;
  readonly check: string;
  readonly expected: number;
  /** Largest difference that passes, in the unit of `expected`. */
  readonly tolerance: number;
  readonly source: string;
  readonly confidence: Confidence;
  readonly computed: () => number;
  /** It misses, by this much (computed less expected): shown, held, and not tuned away. */
  readonly misses?: { readonly by: number; readonly why: string };
};

/** The kind a row counts as in the printed table. */
export function kindOf({ confidence }: Row): RowKind {
  return confidence === 'read in a copy' || confidence === 'from memory' ? 'published' : confidence;
}

type Common = Pick<Row, 'group' | 'source' | 'confidence'>;

/** Rows of one table: what is checked, expected, tolerance, computed. */
export function rows(
  common: Common,
  list: readonly (readonly [
    check: string,
    expected: number,
    tolerance: number,
    computed: () => number,
  ])[],
): readonly Row[] {
  return list.map(([check, expected, tolerance, computed]) => ({
    ...common,
    check,
    expected,
    tolerance,
    computed,
  }));
}
