import { inRange, MS_PER_MINUTE, OutOfRangeError } from '../units/index.ts';
import { civilDate, dayNumber, YEARS, type CivilDate } from './civil.ts';
import { isSabbath, nextHebrew } from './hebrew.ts';
import { LIGHTING_MIN } from './rest-days.ts';
import { checkSpot, NIGHTFALL_DEG, sunTimes, type Spot } from './sun.ts';

/**
 * From when to when the twelve seasonal hours of a day are counted: sunrise to sunset, or (Magen
 * Avraham) 72 minutes before sunrise to 72 minutes after sunset.
 */
export type Reckoning = 'sunrise-sunset' | 'magen-avraham';

export type LeavenHours = {
  /** 14 Nisan by day, the eve of Passover. */
  readonly eveDate: CivilDate;
  readonly eveIsSabbath: boolean;
  /** End of the 4th seasonal hour of the eve; null where the sun does not rise and set. */
  readonly eatUntilAtMs: number | null;
  /** End of the 5th seasonal hour of the eve. */
  readonly burnUntilAtMs: number | null;
  /** The day on which leaven is burned and purging ends: the eve; the Friday when that is a Sabbath. */
  readonly purgeDate: CivilDate;
  /** End of the 4th seasonal hour of that day: until then water purges without more care. */
  readonly purgeUntilAtMs: number | null;
  /** Candles are lit on that day: after it nothing is purged. */
  readonly candlesAtMs: number | null;
};

/** Minutes from dawn to sunrise and from sunset to nightfall: four mil of 18 minutes. */
const MAGEN_AVRAHAM_MIN = 72;
const HOURS_OF_DAY = 12;
const EAT_HOUR = 4;
const BURN_HOUR = 5;

/** End of a seasonal hour of a day; null where the day has no sunrise or sunset. */
function hourEnd(spot: Spot, date: CivilDate, hour: number, reckoning: Reckoning): number | null {
  const { sunriseAtMs, sunsetAtMs } = sunTimes({ ...spot, date });
  if (sunriseAtMs === null || sunsetAtMs === null) return null;
  const more = reckoning === 'magen-avraham' ? MAGEN_AVRAHAM_MIN * MS_PER_MINUTE : 0;
  const fromMs = sunriseAtMs - more;
  const toMs = sunsetAtMs + more;
  return Math.round(fromMs + ((toMs - fromMs) * hour) / HOURS_OF_DAY);
}

/**
 * The hours of leaven of one spring: it is eaten until the end of the fourth hour of the eve, sold
 * and burned until the end of the fifth (Orach Chaim 443:1). Water purges "before the fifth hour"
 * (452:1); later, until the festival, with more care. When the eve is a Sabbath nothing can be
 * burned or purged on it: both are done on the Friday, by the same hours as in other years
 * (444:1–2, of burning). That is the earlier answer; leaven is still allowed that day.
 * @param input `year` civil, 1950 to 2100; `lightingMin` minutes from lighting to sunset
 * @throws OutOfRangeError
 */
export function leavenHours(
  input: Spot & {
    readonly year: number;
    readonly reckoning?: Reckoning;
    readonly lightingMin?: number;
  },
): LeavenHours {
  const { year, reckoning = 'sunrise-sunset', lightingMin = LIGHTING_MIN } = input;
  checkSpot(input, NIGHTFALL_DEG);
  inRange('year', year, YEARS[0], YEARS[1]);
  if (!Number.isInteger(year)) throw new OutOfRangeError('year', year, 'a whole year');
  const eve = nextHebrew(dayNumber({ year, month: 1, day: 1 }), 'Nisan', 14);
  const eveIsSabbath = isSabbath(eve);
  const eveDate = civilDate(eve);
  const purgeDate = eveIsSabbath ? civilDate(eve - 1) : eveDate;
  return {
    eveDate,
    eveIsSabbath,
    eatUntilAtMs: hourEnd(input, eveDate, EAT_HOUR, reckoning),
    burnUntilAtMs: hourEnd(input, eveDate, BURN_HOUR, reckoning),
    purgeDate,
    purgeUntilAtMs: hourEnd(input, purgeDate, EAT_HOUR, reckoning),
    candlesAtMs: lightingAtMs(input, purgeDate, lightingMin),
  };
}

function lightingAtMs(spot: Spot, date: CivilDate, lightingMin: number): number | null {
  const { sunsetAtMs } = sunTimes({ ...spot, date });
  return sunsetAtMs === null ? null : sunsetAtMs - lightingMin * MS_PER_MINUTE;
}
