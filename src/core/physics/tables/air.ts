import table from '../../../../shared/air/dry-air.json';
import { inRange } from '../../units/index.ts';

/** Dry air at sea-level pressure. */
export type AirRow = {
  readonly tempK: number;
  /** Kinematic viscosity. */
  readonly viscosityM2S: number;
  readonly conductivityWMK: number;
  /** Thermal diffusivity. */
  readonly diffusivityM2S: number;
};

const ROWS: readonly AirRow[] = table.rows;
const COLDEST_K = ROWS[0]?.tempK ?? 0;
const HOTTEST_K = ROWS.at(-1)?.tempK ?? 0;

/**
 * Air at a temperature, linear between the rows.
 * @param tempK 250 to 1000 K
 * @throws OutOfRangeError
 */
export function airAt(tempK: number): AirRow {
  inRange('tempK', tempK, COLDEST_K, HOTTEST_K);
  const above = ROWS.find((row, at) => at > 0 && row.tempK >= tempK);
  const below = above && ROWS[ROWS.indexOf(above) - 1];
  if (!below || !above) throw new RangeError('shared/air/dry-air.json has fewer than two rows');
  const share = (tempK - below.tempK) / (above.tempK - below.tempK);
  const between = (of: (row: AirRow) => number) => of(below) + share * (of(above) - of(below));
  return {
    tempK,
    viscosityM2S: between((row) => row.viscosityM2S),
    conductivityWMK: between((row) => row.conductivityWMK),
    diffusivityM2S: between((row) => row.diffusivityM2S),
  };
}
