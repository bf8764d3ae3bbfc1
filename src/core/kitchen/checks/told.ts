import { message } from '../../messages/index.ts';
import { COUNTRY_CODES, countryOf } from '../model/country.ts';
import { LIMITS } from '../model/limits.ts';
import { foundValue, problemAt, quoted, type KitchenProblem } from '../model/problem.ts';
import type { Kitchen } from '../model/kitchen.ts';
import { isElectric } from '../queries/vessels.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function daysIn(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return month === 2 && leap ? 29 : (DAYS[month - 1] ?? 0);
}

type Dated = { readonly path: string; readonly date: string };

type LastHot = Dated & { readonly written: string };

/** Every moment of a last hot use, with the day it lies on. */
function lastHotsOf({ household, fixtures, vessels }: Kitchen): readonly LastHot[] {
  const told = (path: string, { lastHotAt }: { readonly lastHotAt?: string }): LastHot[] =>
    lastHotAt === undefined
      ? []
      : [{ path: `${path}.lastHotAt`, date: lastHotAt.slice(0, 10), written: lastHotAt }];
  return [
    ...told('household', household),
    ...vessels.flatMap((one, i) => told(`vessels[${i}]`, one)),
    ...fixtures.flatMap((one, i) => told(`fixtures[${i}]`, one)),
  ];
}

/** Every date a household wrote. */
function datesOf(kitchen: Kitchen): readonly (Dated & Partial<LastHot>)[] {
  const { household, utensils = [] } = kitchen;
  return [
    ...lastHotsOf(kitchen),
    ...utensils.flatMap(({ answer }, i) =>
      answer ? [{ path: `utensils[${i}].answer.saidOn`, date: answer.saidOn }] : [],
    ),
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
  for (const { path, date, written = date } of datesOf(kitchen)) {
    const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
    const last = daysIn(year, month);
    if (day > last) {
      const allowed = message('problems.date.days', { last });
      yield problemAt(path, quoted(written), allowed, message('problems.date.look-up'));
    }
  }
}

/** A wall time tells no moment where nobody knows the zone of that wall. */
export function* lastHotsHaveTheirZone(kitchen: Kitchen): Generator<KitchenProblem> {
  const [first] = lastHotsOf(kitchen);
  if (first && kitchen.place === undefined)
    yield problemAt(
      first.path,
      quoted(first.written),
      message('problems.last-hot.zone.allowed'),
      message('problems.last-hot.zone.advice'),
    );
}

function zoneIsKnown(zone: string): boolean {
  try {
    // The only list of time zones that is always at hand is the engine's own.
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone !== '';
  } catch (fault) {
    // It throws a RangeError for a name it does not know, and nothing else.
    if (fault instanceof RangeError) return false;
    throw fault;
  }
}

/** A time zone that exists. */
export function* zoneExists(kitchen: Kitchen): Generator<KitchenProblem> {
  const zone = kitchen.place?.zone;
  if (zone !== undefined && !zoneIsKnown(zone)) {
    const allowed = message('problems.zone.allowed');
    yield problemAt('place.zone', quoted(zone), allowed, message('problems.zone.advice'));
  }
}

/** A country without a row tells no mains voltage and no usual kettle: the file must. */
export function* powerIsTold(kitchen: Kitchen): Generator<KitchenProblem> {
  const known = countryOf(kitchen.country) !== undefined;
  if (!known && kitchen.supplyV === 0) {
    yield problemAt(
      'supplyV',
      message('problems.mains.found', { country: kitchen.country }),
      message('problems.mains.allowed', { ...LIMITS.voltsV, countries: COUNTRY_CODES.join(', ') }),
      message('problems.mains.advice'),
    );
  }
  for (const [i, vessel] of kitchen.vessels.entries()) {
    if (isElectric(vessel) && vessel.ratedW < LEAST_HEATING_W) {
      const found =
        vessel.ratedW === 0 ? message('problems.vessel-power.none') : foundValue(vessel.ratedW);
      const allowed = message('problems.vessel-power.allowed', { leastW: LEAST_HEATING_W });
      const advice = message('problems.vessel-power.advice');
      yield problemAt(`vessels[${i}].ratedW`, found, allowed, advice);
    }
  }
}

/** Weakest electric vessel that ever boils a litre: a travel kettle has about 300 W. */
const LEAST_HEATING_W = 100;
