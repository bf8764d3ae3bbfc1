import { asWritten, message } from '../../messages/index.ts';
import type { FilledIn, Fixture, Kitchen } from '../../kitchen/index.ts';
import type { Assumption } from '../model/report.ts';

/** What the kitchen leaves open and the plan therefore took as usual, or as the stricter. */
export function assumptions(kitchen: Kitchen, filled: readonly FilledIn[]): readonly Assumption[] {
  const found: Assumption[] = filled.map(({ path, value, why }) => ({
    what: asWritten(path),
    taken: message('report.assumed.filled', {
      value: JSON.stringify(value),
      why,
    }),
  }));
  if (kitchen.place === undefined && kitchen.household.keepsRestDays) {
    found.push({
      what: message('report.assumed.place'),
      taken: message('report.assumed.no-place'),
    });
  }
  for (const fixture of kitchen.fixtures) found.push(...ofFixture(fixture));
  return found;
}

function ofFixture(fixture: Fixture): readonly Assumption[] {
  const found: Assumption[] = [];
  const stricter = message('report.assumed.stricter');
  if ('material' in fixture && fixture.material === 'unknown')
    found.push({
      what: message('report.assumed.material', { fixture: fixture.name }),
      taken: stricter,
    });
  if ('condition' in fixture && fixture.condition === 'unknown')
    found.push({
      what: message('report.assumed.condition', { fixture: fixture.name }),
      taken: stricter,
    });
  if (fixture.kind === 'oven' && fixture.cleaning === 'pyrolytic' && fixture.cycleMin === undefined)
    found.push({
      what: message('report.assumed.cycle', { fixture: fixture.name }),
      taken: message('report.assumed.usual-cycle'),
    });
  return found;
}
