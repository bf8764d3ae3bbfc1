import { COUNTRY_CODES, countryOf } from '../model/country.ts';
import { problemAt, type KitchenProblem } from '../model/problem.ts';
import type { Kitchen } from '../model/kitchen.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return month === 2 && leap ? 29 : (DAYS[month - 1] ?? 0);
}

type Dated = { readonly path: string; readonly date: string };

/** Every date a household wrote. */
function datesOf({ household }: Kitchen): readonly Dated[] {
  return [
    ...household.overrides.map(({ saidOn }, i) => ({
      path: `household.overrides[${i}].saidOn`,
      date: saidOn,
    })),
    ...(household.ownCustom?.changedRows ?? []).map(({ saidOn }, i) => ({
      path: `household.ownCustom.changedRows[${i}].saidOn`,
      date: saidOn,
    })),
  ];
}

/** A date that its month has. */
export function* datesExist(kitchen: Kitchen): Generator<KitchenProblem> {
  for (const { path, date } of datesOf(kitchen)) {
    const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
    const last = daysIn(year, month);
    if (day > last) {
      const advice = 'Look the date up again.';
      yield problemAt(path, JSON.stringify(date), `day 1 to ${last} in that month`, advice);
    }
  }
}

function zoneIsKnown(zone: string): boolean {
  try {
    // The only list of time zones that is always at hand is the engine's own.
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

/** A time zone that exists. */
export function* zoneExists(kitchen: Kitchen): Generator<KitchenProblem> {
  const zone = kitchen.place?.zone;
  if (zone !== undefined && !zoneIsKnown(zone)) {
    const allowed = 'an IANA time-zone name';
    const advice = 'Write it like "Europe/Paris": area, slash, city.';
    yield problemAt('place.zone', JSON.stringify(zone), allowed, advice);
  }
}

/** A country without a row tells no mains voltage and no usual kettle: the file must. */
export function* powerIsTold(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = countryOf(kitchen.country) !== undefined;
  if (!known && kitchen.supplyV === 0) {
    const found = `nothing, and no usual mains voltage for "${kitchen.country}"`;
    const allowed = `a number from 90 to 440, or one of the countries ${COUNTRY_CODES.join(', ')}`;
    yield problemAt('supplyV', found, allowed, 'Write the mains voltage, such as 120 or 230.');
  }
  for (const [i, vessel] of kitchen.vessels.entries()) {
    const electric = vessel.kind === 'electric-kettle' || vessel.kind === 'urn';
    if (electric && vessel.ratedW < LEAST_HEATING_W) {
      const found = vessel.ratedW === 0 ? 'no power (0 or missing)' : String(vessel.ratedW);
      const allowed = `at least ${LEAST_HEATING_W} W for an electric one`;
      const advice = 'Read the watts on the plate under it.';
      yield problemAt(`vessels[${i}].ratedW`, found, allowed, advice);
    }
  }
}

/** Weakest electric vessel that ever boils a litre: a travel kettle has about 300 W. */
const LEAST_HEATING_W = 100;
