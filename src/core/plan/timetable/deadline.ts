import { message, type Message } from '../../messages/index.ts';
import { MS_PER_HOUR } from '../../units/index.ts';
import {
  civilDate,
  dayNumber,
  isPassover,
  leavenHours,
  momentOf,
  nextHebrew,
  wallTime,
} from '../../calendar/index.ts';
import type { Kitchen, Place } from '../../kitchen/index.ts';
import type { Deadline } from '../model/index.ts';

/** Purging is planned to end this long before the hour of leaven: common practice, no published source. */
const DEADLINE_MARGIN_H = 1;
/** Further ahead than this Passover sets no deadline yet: a judgement. */
const AHEAD_DAYS = 60;
// not shown: a month's key in the calendar.
const MONTH = 'Nisan';
/** How the two ways to count the day are called in the calendar. */
const RECKONING = {
  'dawn-nightfall': 'magen-avraham',
  'sunrise-sunset': 'sunrise-sunset',
} as const;

export type DeadlineFound = {
  readonly deadline?: Deadline;
  readonly notices: readonly Message[];
};

function hoursOf(kitchen: Kitchen, place: Place, year: number) {
  const { leavenDay = 'dawn-nightfall', lightingMin } = kitchen.household;
  const reckoning = RECKONING[leavenDay];
  return leavenHours({
    ...place,
    year,
    reckoning,
    ...(lightingMin !== undefined && { lightingMin }),
  });
}

/** Where the sun tells no hour of the eve: a day earlier. */
function withoutSun(place: Place, { purgeDate }: ReturnType<typeof leavenHours>): DeadlineFound {
  const atWallMs = momentOf({ ...purgeDate, hour: 0, minute: 0 }, place.zone);
  return {
    deadline: { name: message('custom.deadline.before-eve'), atWallMs },
    notices: [message('plan.notice.no-sun-on-eve')],
  };
}

function ofSpring(
  kitchen: Kitchen,
  place: Place,
  year: number,
  startWallMs: number,
): DeadlineFound {
  const hours = hoursOf(kitchen, place, year);
  const { purgeUntilAtMs, candlesAtMs, eveIsSabbath } = hours;
  const sabbath = eveIsSabbath ? [message('plan.notice.eve-is-sabbath')] : [];
  if (purgeUntilAtMs === null || candlesAtMs === null) {
    const found = withoutSun(place, hours);
    return { ...found, notices: [...sabbath, ...found.notices] };
  }
  const { zone } = place;
  const atWallMs = purgeUntilAtMs - DEADLINE_MARGIN_H * MS_PER_HOUR;
  const deadline: Deadline = {
    name: message('custom.deadline.before-leaven', { marginH: DEADLINE_MARGIN_H }),
    atWallMs,
    hard: {
      name: message('custom.deadline.candles'),
      atWallMs: candlesAtMs,
      asks: message(eveIsSabbath ? 'custom.deadline.asks-friday' : 'custom.deadline.asks'),
    },
  };
  const told = { fourthWallMs: purgeUntilAtMs, candlesWallMs: candlesAtMs, zone };
  const said =
    startWallMs > purgeUntilAtMs
      ? message('plan.notice.past-fourth-hour', told)
      : message('plan.notice.leaven-hour', {
          ...told,
          fifthWallMs: hours.burnUntilAtMs ?? purgeUntilAtMs,
          purgeWallMs: atWallMs,
        });
  return { deadline, notices: [said, ...sabbath] };
}

/** By when a kitchen for Passover must be purged, when that hour is near enough to plan by. */
export function deadlineOf(kitchen: Kitchen, place: Place, startWallMs: number): DeadlineFound {
  const { lightingMin } = kitchen.household;
  if (isPassover({ ...place, lightingMin }, startWallMs))
    return { notices: [message('plan.notice.inside-passover')] };
  if (kitchen.household.purpose !== 'passover') return { notices: [] };
  const today = dayNumber(wallTime(startWallMs, place.zone));
  const eve = nextHebrew(today, MONTH, 14);
  if (eve - today > AHEAD_DAYS) return { notices: [] };
  return ofSpring(kitchen, place, civilDate(eve).year, startWallMs);
}
