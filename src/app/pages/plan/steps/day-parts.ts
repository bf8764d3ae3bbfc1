import { dayNumber, wallTime } from '../../../../core/calendar/index.ts';
import { stepGroups, type Plan, type StepGroup } from '../../../../core/plan/index.ts';
import { partOfDay } from '../../../pictures/course/days.ts';
import type { WallClock } from '../../../pictures/course/frame.ts';
import { t } from '../../../context/language.ts';
import { wallAt } from './step-words.ts';

/** Work of one part of one day. */
export type DayPart = { readonly heading: string; readonly groups: readonly StepGroup[] };

/** The work of a plan by evening and morning, in the order of the timetable. */
export function dayParts(plan: Plan, clock: WallClock): readonly DayPart[] {
  const parts: { key: string; heading: string; groups: StepGroup[] }[] = [];
  for (const group of stepGroups(plan)) {
    const at = wallAt(clock, group.fromS);
    const part = partOfDay(at.wallMs, at.zone);
    const key = `${dayNumber(wallTime(at.wallMs, at.zone))} ${part}`;
    const last = parts.at(-1);
    if (last?.key === key) last.groups.push(group);
    else
      parts.push({
        key,
        heading: t(`plan-page.steps.day.${part}`, at),
        groups: [group],
      });
  }
  return parts;
}
