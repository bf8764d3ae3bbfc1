import { flags, GeoLocation, HDate, HebrewCalendar, Location, Zmanim } from '@hebcal/core';
// oxlint-disable-next-line import/default -- CommonJS: its exports come as the default one
import KosherZmanim from 'kosher-zmanim';
import type { CivilDate, Land, Spot } from '../../../src/core/calendar/index.ts';

/** Five latitudes within ±60°, five zones, both lands. */
export const PLACES: readonly (Spot & { readonly name: string; readonly land: Land })[] = [
  { name: '31.8 N', latDeg: 31.78, lonDeg: 35.22, zone: 'Asia/Jerusalem', land: 'israel' },
  { name: '40.7 N', latDeg: 40.7, lonDeg: -74, zone: 'America/New_York', land: 'diaspora' },
  { name: '37.8 S', latDeg: -37.8, lonDeg: 144.96, zone: 'Australia/Melbourne', land: 'diaspora' },
  { name: '0.2 S', latDeg: -0.2, lonDeg: -78.5, zone: 'America/Guayaquil', land: 'diaspora' },
  { name: '59.9 N', latDeg: 59.9, lonDeg: 10.75, zone: 'Europe/Oslo', land: 'diaspora' },
];

const OWN_DEG = 8.5;

export type Times = Readonly<Record<'sunrise' | 'sunset' | 'nightfall', number | null>>;

const orNull = (atMs: number): number | null => (Number.isNaN(atMs) ? null : atMs);
const jsDate = ({ year, month, day }: CivilDate) => new Date(year, month - 1, day);

/** @hebcal/core 6: NOAA's equations, sea level. */
export function hebcalTimes(spot: Spot, date: CivilDate): Times {
  const at = new GeoLocation('', spot.latDeg, spot.lonDeg, 0, spot.zone);
  const zmanim = new Zmanim(at, jsDate(date), false);
  return {
    sunrise: orNull(zmanim.sunrise().getTime()),
    sunset: orNull(zmanim.sunset().getTime()),
    nightfall: orNull(zmanim.tzeit(OWN_DEG).getTime()),
  };
}

type Moment = { toMillis(): number } | null;
const millis = (at: Moment): number | null => at?.toMillis() ?? null;

function zmanimOf(spot: Spot, date: CivilDate) {
  const at = new KosherZmanim.GeoLocation('', spot.latDeg, spot.lonDeg, 0, spot.zone);
  const calendar = new KosherZmanim.ComplexZmanimCalendar(at);
  calendar.setDate(jsDate(date));
  return calendar;
}

/** kosher-zmanim 0.9: its own port of NOAA's equations, sea level. */
export function kosherTimes(spot: Spot, date: CivilDate): Times {
  const calendar = zmanimOf(spot, date);
  return {
    sunrise: millis(calendar.getSeaLevelSunrise()),
    sunset: millis(calendar.getSeaLevelSunset()),
    nightfall: millis(calendar.getSunsetOffsetByDegrees(90 + OWN_DEG)),
  };
}

/** Hours of leaven by kosher-zmanim on a day that is told. */
export function kosherLeaven(spot: Spot, date: CivilDate) {
  const calendar = zmanimOf(spot, date);
  return {
    eat: millis(calendar.getSofZmanTfilaGRA()),
    shaahMs: calendar.getShaahZmanisGra(),
    sunriseMs: millis(calendar.getSeaLevelSunrise()),
    eatMagenAvraham: millis(calendar.getSofZmanTfilaMGA72Minutes()),
  };
}

/** Whether work is forbidden on that day, by each library. */
export function kosherRests(date: CivilDate, land: Land): boolean {
  const calendar = new KosherZmanim.JewishCalendar(jsDate(date));
  calendar.setInIsrael(land === 'israel');
  return calendar.isAssurBemelacha();
}

export function hebcalRests(date: CivilDate, land: Land): boolean {
  const day = new HDate(jsDate(date));
  const events = HebrewCalendar.getHolidaysOnDate(day, land === 'israel') ?? [];
  return day.getDay() === 6 || events.some((event) => (event.getFlags() & flags.CHAG) !== 0);
}

export const TEST_LIGHTING_MIN = 30;

export type Event = { readonly starts: boolean; readonly atMs: number };

/** Candle lighting out of a working day, and the end of rest days, from hebcal's own calendar (whole minutes). */
export function hebcalEvents(spot: Spot, land: Land, from: CivilDate, to: CivilDate): Event[] {
  const location = new Location(spot.latDeg, spot.lonDeg, land === 'israel', spot.zone);
  const events = HebrewCalendar.calendar({
    start: jsDate(from),
    end: jsDate(to),
    location,
    il: land === 'israel',
    candlelighting: true,
    // Not 18: for places in Israel the library takes that as its own default of 20.
    candleLightingMins: TEST_LIGHTING_MIN,
    havdalahDeg: OWN_DEG,
    noMinorFast: true,
    noHolidays: true,
  });
  return events.flatMap((event): Event[] => {
    if (!('eventTime' in event) || !(event.eventTime instanceof Date)) return [];
    const kind = event.getDesc();
    if (kind !== 'Candle lighting' && kind !== 'Havdalah') return [];
    return [{ starts: kind === 'Candle lighting', atMs: event.eventTime.getTime() }];
  });
}
