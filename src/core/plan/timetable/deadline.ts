import { message, type Message } from '../../messages/index.ts';
import { MS_PER_HOUR } from '../../units/index.ts';
import {
  civilDate,
  dayNumber,
  hebrewDate,
  isMonth,
  leavenHours,
  momentOf,
  nextHebrew,
  wallTime,
} from '../../calendar/index.ts';
import type { Kitchen, Place } from '../../kitchen/index.ts';
import type { PlanDays } from '../model/index.ts';

/** Purging is planned to end this long before the hour of leaven: common practice, no published source. */
const DEADLINE_MARGIN_H = 1;
/** Further ahead than this Passover sets no deadline yet: a judgement. */
const AHEAD_DAYS = 60;
// not shown: a month's key in the calendar.
const MONTH = 'Nisan';
/** By day the festival lasts to the 21st of Nisan, outside the land to the 22nd. */
const LAST_OF_PASSOVER = { israel: 21, diaspora: 22 } as const;

export type DeadlineFound = {
  readonly deadline?: NonNullable<PlanDays['deadline']>;
  readonly notices: readonly Message[];
};

const PASSED = message('plan.notice.leaven-passed');

function ofSpring(place: Place, year: number, startWallMs: number): DeadlineFound {
  const hours = leavenHours({ ...place, year });
  const { purgeDate, purgeUntilAtMs, eveIsSabbath } = hours;
  const said: Message[] = [];
  if (eveIsSabbath) said.push(message('plan.notice.eve-is-sabbath'));
  if (purgeUntilAtMs === null) {
    const atWallMs = momentOf({ ...purgeDate, hour: 0, minute: 0 }, place.zone);
    said.push(message('plan.notice.no-sun-on-eve'));
    return {
      deadline: { name: message('plan.deadline.before-eve'), atWallMs },
      notices: said,
    };
  }
  const atWallMs = purgeUntilAtMs - DEADLINE_MARGIN_H * MS_PER_HOUR;
  if (purgeUntilAtMs < startWallMs) said.unshift(PASSED);
  else
    said.push(
      message('plan.notice.leaven-hour', {
        leavenWallMs: purgeUntilAtMs,
        purgeWallMs: atWallMs,
        zone: place.zone,
      }),
    );
  const name = message('plan.deadline.before-leaven', { marginH: DEADLINE_MARGIN_H });
  return { deadline: { name, atWallMs }, notices: said };
}

/** By when a kitchen for Passover must be purged, when that hour is near enough to plan by. */
export function deadlineOf(kitchen: Kitchen, place: Place, startWallMs: number): DeadlineFound {
  if (kitchen.household.purpose !== 'passover') return { notices: [] };
  const today = dayNumber(wallTime(startWallMs, place.zone));
  const hebrew = hebrewDate(today);
  const { day } = hebrew;
  if (isMonth(hebrew, MONTH) && day > 14 && day <= LAST_OF_PASSOVER[place.land])
    return { notices: [PASSED] };
  const eve = nextHebrew(today, MONTH, 14);
  if (eve - today > AHEAD_DAYS) return { notices: [] };
  return ofSpring(place, civilDate(eve).year, startWallMs);
}
