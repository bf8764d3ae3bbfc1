import type { UnitSystem } from '../../units/index.ts';
import type { Kitchen } from '../model/kitchen.ts';

/** The United States and the territories that are under their law of weights and measures (15 U.S.C. 204). */
const CUSTOMARY = ['US', 'AS', 'GU', 'MP', 'PR', 'UM', 'VI'];

/** The units a household reads: those it chose, else those that are usual in its country. */
export function unitsOf({
  country,
  household,
}: Pick<Kitchen, 'country' | 'household'>): UnitSystem {
  return household.units ?? (CUSTOMARY.includes(country) ? 'us-customary' : 'metric');
}
