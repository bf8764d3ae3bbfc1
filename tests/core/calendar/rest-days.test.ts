import { inEnglish } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import {
  civilDate,
  dateText,
  dayNumber,
  leavenHours,
  restDays,
  restDayIds,
} from '../../../src/core/calendar/index.ts';
import {
  hebcalEvents,
  hebcalRests,
  kosherLeaven,
  kosherRests,
  PLACES,
  TEST_LIGHTING_MIN,
} from './references.ts';

const FROM = { year: 2024, month: 1, day: 1 };
const TO = { year: 2034, month: 12, day: 31 };
const DAYS = dayNumber(TO) - dayNumber(FROM) + 1;

describe('rest days beside two libraries that this project did not make', () => {
  it.each(['israel', 'diaspora'] as const)('%s: no wrong day, 2024 to 2034', (land) => {
    const wrong: string[] = [];
    for (let day = dayNumber(FROM); day <= dayNumber(TO); day++) {
      const date = civilDate(day);
      const own = restDayIds(day, land).length > 0;
      if (own !== hebcalRests(date, land) || own !== kosherRests(date, land))
        wrong.push(dateText(date));
    }
    expect(wrong).toEqual([]);
  });

  it.each(PLACES)('$name: lighting and nightfall as hebcal tells them', (place) => {
    const spans = restDays({ ...place, from: FROM, days: DAYS, lightingMin: TEST_LIGHTING_MIN });
    const events = hebcalEvents(place, place.land, FROM, TO);
    const starts = events.filter((event) => event.starts).map(({ atMs }) => atMs);
    const ends = events.filter((event) => !event.starts).map(({ atMs }) => atMs);
    const offS = (list: readonly number[], atMs: number): number => {
      const near = list.reduce((a, b) => (Math.abs(b - atMs) < Math.abs(a - atMs) ? b : a));
      return (atMs - near) / 1000;
    };
    const off = spans.slice(1, -1).flatMap(({ startsAtMs, endsAtMs, name, last }) => [
      {
        offS: offS(starts, startsAtMs ?? 0),
        about: `start of ${inEnglish.say(name)} ${dateText(last)}`,
      },
      ...(endsAtMs === null
        ? []
        : [
            {
              offS: offS(ends, endsAtMs),
              about: `end of ${inEnglish.say(name)} ${dateText(last)}`,
            },
          ]),
    ]);
    const sorted = off.toSorted((a, b) => a.offS - b.offS);
    console.log(place.name, spans.length, 'spans beside whole minutes', sorted[0], sorted.at(-1));
    expect(off.length).toBeGreaterThan(1000);
    for (const one of off) {
      expect(one.offS, one.about).toBeGreaterThan(-60);
      expect(one.offS, one.about).toBeLessThan(60 + 6);
    }
  });
});

describe('the hours of leaven', () => {
  it.each(PLACES)('$name: fourth and fifth hour as kosher-zmanim tells them', (place) => {
    let worstS = 0;
    for (let year = FROM.year; year <= TO.year; year++) {
      const own = leavenHours({ ...place, year });
      const { eat, shaahMs, sunriseMs, eatMagenAvraham } = kosherLeaven(place, own.eveDate);
      const off = (a: number | null, b: number | null) =>
        Math.abs((a ?? Number.NaN) - (b ?? Number.NaN)) / 1000;
      const strict = leavenHours({ ...place, year, reckoning: 'magen-avraham' });
      worstS = Math.max(
        worstS,
        off(own.eatUntilAtMs, eat),
        off(own.burnUntilAtMs, (sunriseMs ?? Number.NaN) + 5 * shaahMs),
        off(strict.eatUntilAtMs, eatMagenAvraham),
      );
    }
    console.log(`${place.name}: hours of leaven off by ${worstS.toFixed(1)} s at most`);
    expect(worstS).toBeLessThanOrEqual(60);
  });
});
