import { describe, expect, it } from 'vitest';
import { civilDate, dateText, dayNumber, sunTimes } from '../../../src/core/calendar/index.ts';
import { hebcalTimes, kosherTimes, PLACES, type Times } from './references.ts';

const FROM = dayNumber({ year: 2024, month: 1, day: 1 });
const TO = dayNumber({ year: 2034, month: 12, day: 31 });
/** Every day of the year comes up, each in some of the years. */
const STEP_DAYS = 5;
/** A minute, as people read clocks. Both references are NOAA's equations, good to about that. */
const ALLOWED_S = 60;

/** Days within these eleven years on which a library and this project differ on whether night falls. */
const GRAZING_DAYS: Readonly<Record<string, number>> = { '59.9 N': 2 };

type Worst = { atS: number; on: string };

describe('sun times beside two libraries that this project did not make', () => {
  it.each(PLACES)('$name: every fifth day, 2024 to 2034', (place) => {
    const worst = new Map<string, Worst>();
    const unlike = new Set<string>();
    for (let day = FROM; day <= TO; day += STEP_DAYS) {
      const date = civilDate(day);
      const found = sunTimes({ ...place, date });
      const own: Times = {
        sunrise: found.sunriseAtMs,
        sunset: found.sunsetAtMs,
        nightfall: found.nightfallAtMs,
      };
      for (const [library, times] of [
        ['hebcal', hebcalTimes(place, date)],
        ['kosher-zmanim', kosherTimes(place, date)],
      ] as const) {
        for (const what of ['sunrise', 'sunset', 'nightfall'] as const) {
          const [a, b] = [own[what], times[what]];
          const key = `${what} by ${library}`;
          if ((a === null) !== (b === null)) unlike.add(`${what} ${dateText(date)}`);
          if (a === null || b === null) continue;
          const atS = (a - b) / 1000;
          if (Math.abs(atS) >= Math.abs(worst.get(key)?.atS ?? 0))
            worst.set(key, { atS, on: dateText(date) });
        }
      }
    }
    const told = [...worst].map(([key, { atS, on }]) => `${key} ${atS.toFixed(1)} s ${on}`);
    console.log(
      `${place.name}: only one of us sees ${unlike.size === 0 ? 'nothing' : [...unlike].join(', ')}; worst ${told.join('; ')}`,
    );
    for (const [key, { atS }] of worst) expect(Math.abs(atS), key).toBeLessThanOrEqual(ALLOWED_S);
    // Where the sun only grazes the angle around midsummer the libraries may miss that it does.
    expect(unlike.size).toBeLessThanOrEqual(GRAZING_DAYS[place.name] ?? 0);
  });
});
