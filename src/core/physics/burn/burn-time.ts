import { inRange } from '../../units/index.ts';
import { WATER_BURNS, type WaterBurnRow } from '../tables/burns.ts';

function between(tempC: number, of: (row: WaterBurnRow) => number): number {
  const above = Math.max(
    1,
    WATER_BURNS.findIndex((row) => row.tempC >= tempC),
  );
  const cool = WATER_BURNS[above - 1];
  const hot = WATER_BURNS[above];
  if (!cool || !hot) throw new RangeError(`no burn row around ${tempC} °C`);
  const share = (tempC - cool.tempC) / (hot.tempC - cool.tempC);
  return Math.exp(Math.log(of(cool)) * (1 - share) + Math.log(of(hot)) * share);
}

/**
 * Seconds of hot water on adult skin to a second and a third degree burn. A
 * child's skin burns in a quarter to a half of that. Above 60 °C: refused;
 * say "under 3 seconds".
 * @param tempC 45 to 60 °C
 * @throws OutOfRangeError
 * Source: Moritz & Henriques (1947) as tabulated; ln t is linear in T between rows.
 */
export function burnTime({ tempC }: { readonly tempC: number }): {
  readonly secondDegreeS: number;
  readonly thirdDegreeS: number;
} {
  const first = WATER_BURNS[0]?.tempC ?? 0;
  const last = WATER_BURNS.at(-1)?.tempC ?? 0;
  inRange('tempC', tempC, first, last);
  return {
    secondDegreeS: between(tempC, (row) => row.secondDegreeS),
    thirdDegreeS: between(tempC, (row) => row.thirdDegreeS),
  };
}
