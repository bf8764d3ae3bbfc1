import * as fc from 'fast-check';
import { momentOf } from '../../../../src/core/calendar/index.ts';
import type { Kitchen, Place } from '../../../../src/core/kitchen/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';

export const NEW_YORK: Place = {
  latDeg: 40.7,
  lonDeg: -74,
  zone: 'America/New_York',
  land: 'diaspora',
};

/** The moment of "2026-11-16T09:00" on the wall of a zone, ms. */
export function at(text: string, zone = NEW_YORK.zone): number {
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = text.split(/[-T:]/).map(Number);
  return momentOf({ year, month, day, hour, minute }, zone);
}

/** A Monday far from any festival. */
export const MONDAY = at('2026-11-16T09:00');

/** Monday 9:00 less so many hours, as a household writes it. November has no change of the clock. */
export function hoursBefore(hours: number): string {
  return new Date(Date.UTC(2026, 10, 16, 9) - hours * 3_600_000).toISOString().slice(0, 16);
}

export function lastHot(kitchen: Kitchen, lastHotAt: string): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, lastHotAt } };
}

/** Random kitchens in New York, of which some of the last hot uses were told, true, stale or ahead. */
export function lastHotKitchens(): fc.Arbitrary<Kitchen> {
  const hours = fc.option(fc.integer({ min: -6, max: 500 }), { nil: undefined });
  const custom = fc.constantFrom('sephardic', 'ashkenazic');
  return fc
    .tuple(kitchens(), hours, fc.array(hours, { minLength: 20, maxLength: 20 }), custom)
    .map(([kitchen, all, own, by]): Kitchen => {
      const told = (one: number | undefined) =>
        one === undefined ? {} : { lastHotAt: hoursBefore(one) };
      return {
        ...kitchen,
        place: NEW_YORK,
        household: { ...kitchen.household, custom: by, ...told(all) },
        fixtures: kitchen.fixtures.map((one, i) => ({ ...one, ...told(own[i]) })),
        vessels: kitchen.vessels.map((one, i) => ({ ...one, ...told(own[19 - i]) })),
      };
    });
}
