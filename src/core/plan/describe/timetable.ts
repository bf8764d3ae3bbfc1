import type { Plan, Step } from '../types.ts';
import { dayOf, lengthText, momentText, spreadText } from './times.ts';
import { nameOf } from './sections.ts';

function ordered(plan: Plan): readonly Step[] {
  const place = new Map(plan.steps.map(({ id }, at) => [id, at]));
  const startS = ({ id }: Step): number => plan.timetable.startS[id] ?? Infinity;
  return plan.steps.toSorted(
    (a, b) => startS(a) - startS(b) || (place.get(a.id) ?? 0) - (place.get(b.id) ?? 0),
  );
}

function needLines(plan: Plan, step: Step): readonly string[] {
  return step.needs.flatMap(({ step: id, withinS }) => {
    if (withinS === undefined) return [];
    const needed = plan.steps.find((one) => one.id === id);
    return [`Within ${lengthText(withinS)} of: ${needed?.title ?? id}`];
  });
}

function cautionList(step: Step): readonly string[] {
  const line = (what: string, ids: readonly string[]): readonly string[] =>
    ids.length === 0 ? [] : [`${what}: ${ids.join(', ')}`];
  return [
    ...line('Confirm before', step.gates),
    ...line('Mind', step.standing),
    ...line('After it', step.after),
  ];
}

function stepLines(plan: Plan, step: Step): readonly string[] {
  const startS = plan.timetable.startS[step.id];
  const when = startS === undefined ? 'not timed' : momentText(startS);
  const self = step.startsBy === 'chain' ? ', starts by itself' : '';
  return [
    `${when}  ${step.title}  [${spreadText(step.durationS)}${self}]`,
    ...[...needLines(plan, step), ...cautionList(step)].map((line) => `        ${line}`),
  ];
}

/** What is done and when, day by day. */
export function timetableLines(plan: Plan): readonly string[] {
  const lines: string[] = [];
  let day = 0;
  for (const step of ordered(plan)) {
    const on = dayOf(plan.timetable.startS[step.id] ?? 0);
    if (on !== day) lines.push(`Day ${on}`);
    day = on;
    lines.push(...stepLines(plan, step).map((line) => `  ${line}`));
  }
  return lines;
}

/** How each kind of work on each fixture goes, stage by stage: alike steps are told once. */
export function workLines(plan: Plan): readonly string[] {
  const seen = new Set<string>();
  const lines: string[] = [];
  for (const step of plan.steps) {
    const key = `${step.kind}/${step.fixture ?? step.id}`;
    if (step.kind === 'rest' || step.kind === 'cool' || seen.has(key)) continue;
    seen.add(key);
    const where = step.fixture === undefined ? '' : `${nameOf(plan, step.fixture)}: `;
    lines.push(`${where}${step.title}`);
    for (const { title, detail, timers } of step.stages) {
      const clocks = timers.map(({ label, lengthS }) => `${label}, ${lengthText(lengthS)}`);
      lines.push(`    ${title}${clocks.length > 0 ? ` [${clocks.join('; ')}]` : ''}`);
      lines.push(...detail.map((line) => `        ${line}`));
    }
  }
  return lines;
}
