import type { FilledIn, Fixture, Kitchen } from '../kitchen/index.ts';
import type { Assumption } from './types.ts';

/** What the kitchen leaves open and the plan therefore took as usual, or as the stricter. */
export function assumptions(kitchen: Kitchen, filled: readonly FilledIn[]): readonly Assumption[] {
  const found: Assumption[] = filled.map(({ path, value, why }) => ({
    what: path,
    taken: `${JSON.stringify(value)} (${why})`,
  }));
  if (kitchen.place === undefined && kitchen.household.keepsRestDays) {
    found.push({ what: 'Place', taken: 'not told: rest days were not worked out' });
  }
  for (const fixture of kitchen.fixtures) found.push(...ofFixture(fixture));
  return found;
}

function ofFixture(fixture: Fixture): readonly Assumption[] {
  const found: Assumption[] = [];
  const stricter = 'not told: the stricter method was planned';
  if ('material' in fixture && fixture.material === 'unknown')
    found.push({ what: `${fixture.name}: material`, taken: stricter });
  if ('condition' in fixture && fixture.condition === 'unknown')
    found.push({ what: `${fixture.name}: condition`, taken: stricter });
  if (fixture.kind === 'oven' && fixture.cleaning === 'pyrolytic' && fixture.cycleMin === undefined)
    found.push({
      what: `${fixture.name}: length of the self-clean cycle`,
      taken: 'not told: the usual length was planned',
    });
  return found;
}
