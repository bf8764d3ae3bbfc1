import { message, type Message } from '../../messages/index.ts';
import { dayNumber, LIGHTING_MIN, noonOf, sunTimes } from '../../calendar/index.ts';
import { MS_PER_DAY, MS_PER_HOUR, MS_PER_MINUTE } from '../../units/index.ts';
import { problemAt, type KitchenProblem } from '../model/problem.ts';
import type { Kitchen, Place } from '../model/kitchen.ts';

/**
 * By how much a zone's clock may be off the sun at noon, hours: from half an
 * hour more than in the east of India or China's coast, to half an hour more
 * than in the west of China or, in summer, of Alaska.
 */
const EARLY_H = -1.75;
const LATE_H = 3.75;

/** A winter's and a summer's Friday; which year they are of is no matter. */
const FRIDAYS = [
  { year: 2027, month: 1, day: 15 },
  { year: 2027, month: 7, day: 16 },
] as const;

/** How long after twelve o'clock of the zone the sun stands highest, hours, −12 to 12. */
function sunLateH({ lonDeg, zone }: Place, date: (typeof FRIDAYS)[number]): number {
  const sunMs = dayNumber(date) * MS_PER_DAY + (12 - lonDeg / 15) * MS_PER_HOUR;
  const lateH = (sunMs - noonOf(date, zone)) / MS_PER_HOUR;
  return lateH - 24 * Math.round(lateH / 24);
}

/** When the Sabbath of that Friday would begin by such a place, as a clock there shows it. */
function meaning(place: Place, date: (typeof FRIDAYS)[number]): Message {
  const { sunsetAtMs } = sunTimes({ ...place, date });
  if (sunsetAtMs === null) return message('problems.lon-zone.wrong-hour');
  return message('problems.lon-zone.sabbath', {
    wallMs: sunsetAtMs - LIGHTING_MIN * MS_PER_MINUTE,
    zone: place.zone,
  });
}

/** A longitude under the sun of its zone: no sign lost, no other continent. */
export function* placeFitsZone({ place }: Kitchen): Generator<KitchenProblem> {
  if (!place) return;
  let late: number[];
  try {
    late = FRIDAYS.map((date) => sunLateH(place, date));
  } catch (fault) {
    // There is no such zone, or no such longitude; that is told already.
    if (fault instanceof RangeError) return;
    throw fault;
  }
  const worst = late.findIndex((hours) => hours < EARLY_H || hours > LATE_H);
  const date = FRIDAYS[worst];
  if (!date) return;
  const found = message('problems.lon-zone.found', { lonDeg: place.lonDeg, zone: place.zone });
  const allowed = message('problems.lon-zone.allowed');
  const advice = message('problems.lon-zone.advice', { meaning: meaning(place, date) });
  yield problemAt('place.lonDeg', found, allowed, advice);
}
