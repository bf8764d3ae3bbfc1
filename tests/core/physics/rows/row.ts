/** How far a published number may be trusted. */
type Confidence = 'read in a copy' | 'from memory' | 'computed';

/**
 * One number that this project did not make, beside what it computes.
 * `computed`: from the published formula and inputs, worked out apart from
 * these sources; worth less than a measured or printed value.
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
