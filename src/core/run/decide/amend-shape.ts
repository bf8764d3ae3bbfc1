import { message, type Message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';

/** A number that a step carries and that is none, below nothing, or beyond all bounds. */
function badNumber(step: Step): Message | undefined {
  const numbers: readonly (readonly [string, number, boolean])[] = [
    ...Object.entries(step.durationS).map(([name, s]) => [`durationS.${name}`, s, true] as const),
    ...Object.entries(step.demands).map(([id, n]) => [`demands.${id}`, n, true] as const),
    ...step.needs.flatMap(({ step: id, withinS }) =>
      withinS === undefined ? [] : [[`needs.${id}.withinS`, withinS, false] as const],
    ),
    ...step.stages.flatMap(({ timers }) =>
      timers.map(
        ({ id, lengthS, role }) => [`timers.${id}.lengthS`, lengthS, role === 'estimate'] as const,
      ),
    ),
  ];
  const bad = numbers.find(
    ([, value, orZero]) => !(Number.isFinite(value) && (orZero ? value >= 0 : value > 0)),
  );
  return (
    bad && message('engine.amend.bad-number', { id: step.id, found: String(bad[1]), field: bad[0] })
  );
}

function twice(all: readonly string[]): string | undefined {
  return all.find((one, place) => all.indexOf(one) !== place);
}

/** What is wrong with a step in itself, before it is held against the plan (I-28). */
export function shapeProblem(step: Step): Message | undefined {
  const { id } = step;
  const need = twice(step.needs.map((one) => one.step));
  if (need !== undefined) return message('engine.amend.need-twice', { id, need });
  if (step.stages.length === 0) return message('engine.amend.no-stage', { id });
  const stage = twice(step.stages.map((stage) => stage.id));
  if (stage !== undefined) return message('engine.amend.stage-twice', { id, stage });
  for (const { timers } of step.stages) {
    const timer = twice(timers.map((timer) => timer.id));
    if (timer !== undefined) return message('engine.amend.timer-twice', { id, timer });
  }
  return badNumber(step);
}

/** A start that is no time, or of a step that does not exist. */
export function startsProblem(
  startS: Readonly<Record<string, number>>,
  ids: ReadonlySet<string>,
): Message | undefined {
  for (const [id, atS] of Object.entries(startS)) {
    if (!ids.has(id)) return message('engine.amend.start-of-none', { id });
    if (!(Number.isFinite(atS) && atS >= 0))
      return message('engine.amend.start-range', { id, found: String(atS) });
  }
  return undefined;
}
