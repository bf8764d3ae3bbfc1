import type { Plan, Step } from '../types.ts';
import { dayOf, momentText, spreadText } from './times.ts';

function ordered(plan: Plan): readonly Step[] {
  const place = new Map(plan.steps.map(({ id }, at) => [id, at]));
  const startS = ({ id }: Step): number => plan.timetable.startS[id] ?? Infinity;
  return plan.steps.toSorted(
    (a, b) => startS(a) - startS(b) || (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0),
  );
}

function stepLine(plan: Plan, step: Step): string {
  const startS = plan.timetable.startS[step.id];
  const when = startS === undefined ? 'not timed' : momentText(startS);
  const self = step.startsBy === 'chain' ? ', starts by itself' : '';
  return `  ${when}  ${step.title}  [${spreadText(step.durationS)}${self}]`;
}

/** What is done and when, day by day. */
export function timetableLines(plan: Plan): readonly string[] {
  const lines: string[] = [];
  let day = 0;
  for (const step of ordered(plan)) {
    const on = dayOf(plan.timetable.startS[step.id] ?? 0);
    if (on !== day) lines.push(`Day ${on}`);
    day = on;
    lines.push(stepLine(plan, step));
  }
  return lines;
}
