import { inEnglish } from '../../messages/temporary.ts';
import { clockText, dayText, momentInZone } from '../timetable/day-text.ts';
import type { Plan, Step } from '../model/types.ts';
import { dayOf, momentText, spreadText } from './times.ts';

function ordered(plan: Plan): readonly Step[] {
  const place = new Map(plan.steps.map(({ id }, at) => [id, at]));
  const startS = ({ id }: Step): number => plan.timetable.startS[id] ?? Infinity;
  return plan.steps.toSorted(
    (a, b) => startS(a) - startS(b) || (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0),
  );
}

const MS_S = 1000;
const UTC = 'UTC';

/** When a step starts: on the wall of the kitchen where the plan knows its days, else counted from the start. */
function momentOf({ days, kitchen }: Plan, atS: number): string {
  return days
    ? clockText(days.startWallMs + atS * MS_S, kitchen.place?.zone ?? UTC)
    : momentText(atS);
}

/** The heading of a step's day. */
function headingOf({ days, kitchen }: Plan, atS: number): string {
  return days
    ? dayText(days.startWallMs + atS * MS_S, kitchen.place?.zone ?? UTC)
    : `Day ${dayOf(atS)}`;
}

/** The rest days ahead until a while after the work, and the deadline. */
export function dayLines(plan: Plan): readonly string[] {
  const { days, kitchen, timetable } = plan;
  if (!days) return [];
  const zone = kitchen.place?.zone ?? UTC;
  const text = (atWallMs: number): string => momentInZone(atWallMs, zone);
  const endMs = days.startWallMs + timetable.finishS * MS_S;
  const near = days.restDays.filter(
    ({ fromWallMs }, at) => fromWallMs <= endMs || days.restDays[at - 1] === undefined,
  );
  return [
    `Begins ${text(days.startWallMs)}, done ${text(endMs)} (${zone})`,
    ...near.map(
      ({ name, fromWallMs, toWallMs }) =>
        `${name}: ${text(fromWallMs)} to ${text(toWallMs)}; nothing is planned in it`,
    ),
    ...(days.deadline ? [`${days.deadline.name}: ${text(days.deadline.atWallMs)}`] : []),
  ];
}

function stepLine(plan: Plan, step: Step): string {
  const startS = plan.timetable.startS[step.id];
  const when = startS === undefined ? 'not timed' : momentOf(plan, startS);
  const self = step.startsBy === 'chain' ? ', starts by itself' : '';
  return `  ${when}  ${inEnglish(step.title)}  [${spreadText(step.durationS)}${self}]`;
}

/** What is done and when, day by day. */
export function timetableLines(plan: Plan): readonly string[] {
  const lines: string[] = [];
  let day = '';
  for (const step of ordered(plan)) {
    const on = headingOf(plan, plan.timetable.startS[step.id] ?? 0);
    if (on !== day) lines.push(on);
    day = on;
    lines.push(stepLine(plan, step));
  }
  return lines;
}
