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
import { momentInZone } from './day-text.ts';
import type { PlanDays } from '../model/types.ts';

const MS_H = 3_600_000;
/** Purging is planned to end this long before the hour of leaven: common practice, no published source. */
export const DEADLINE_MARGIN_H = 1;
/** Further ahead than this Passover sets no deadline yet: a judgement. */
const AHEAD_DAYS = 60;
/** By day the festival lasts to the 21st of Nisan, outside the land to the 22nd. */
const LAST_OF_PASSOVER = { israel: 21, diaspora: 22 } as const;

export type DeadlineFound = {
  readonly deadline?: NonNullable<PlanDays['deadline']>;
  readonly notices: readonly string[];
};

const PASSED =
  'The hour at which leaven becomes forbidden has passed: what is not purged by now is cleaned, closed up and kept out of use over Passover. Ask your rabbi.';

function ofSpring(place: Place, year: number, startWallMs: number): DeadlineFound {
  const hours = leavenHours({ ...place, year });
  const { purgeDate, purgeUntilAtMs, eveIsSabbath } = hours;
  const said: string[] = [];
  if (eveIsSabbath)
    said.push(
      'This year the eve of Passover is a Sabbath: purging and burning are planned to end on the Friday before, by its fifth hour as in other years (Orach Chaim 444:1–2, from memory, not yet checked). Some let the rest of Friday serve: ask your rabbi.',
    );
  if (purgeUntilAtMs === null) {
    const atWallMs = momentOf({ ...purgeDate, hour: 0, minute: 0 }, place.zone);
    said.push(
      'At this place the sun does not rise and set on the eve of Passover, so its hours are not reckoned: the plan ends a day earlier. Ask your rabbi for the hour.',
    );
    return {
      deadline: { name: 'Purging ends before the eve of Passover', atWallMs },
      notices: said,
    };
  }
  const atWallMs = purgeUntilAtMs - DEADLINE_MARGIN_H * MS_H;
  if (purgeUntilAtMs < startWallMs) said.unshift(PASSED);
  else
    said.push(
      `Leaven becomes forbidden at ${momentInZone(purgeUntilAtMs, place.zone)} (the end of the fifth hour of the day; many say the fourth); the plan purges until ${momentInZone(atWallMs, place.zone)}.`,
    );
  const name = `Purging ends, ${DEADLINE_MARGIN_H} h before leaven is forbidden`;
  return { deadline: { name, atWallMs }, notices: said };
}

/** By when a kitchen for Passover must be purged, when that hour is near enough to plan by. */
export function deadlineOf(kitchen: Kitchen, place: Place, startWallMs: number): DeadlineFound {
  if (kitchen.household.purpose !== 'passover') return { notices: [] };
  const today = dayNumber(wallTime(startWallMs, place.zone));
  const hebrew = hebrewDate(today);
  const { day } = hebrew;
  if (isMonth(hebrew, 'Nisan') && day > 14 && day <= LAST_OF_PASSOVER[place.land])
    return { notices: [PASSED] };
  const eve = nextHebrew(today, 'Nisan', 14);
  if (eve - today > AHEAD_DAYS) return { notices: [] };
  return ofSpring(place, civilDate(eve).year, startWallMs);
}
