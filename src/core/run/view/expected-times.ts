import { runsThroughRestDays, type RestDay, type Step } from '../../plan/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { RunView, StepView } from '../model/types.ts';

/** When a step that is not over is expected to begin and to end, wall ms. */
export type ExpectedTime = { readonly startMs: number; readonly endMs: number };

export type Expectation = {
  /**
   * Wall time of second 0 of the timetable, ms: then nothing is expected before
   * it was planned, and hands, burners and kettles are waited for. Absent: the
   * earliest moments, by what each step needs alone.
   */
  readonly timetableMs?: number;
};

type Placed = ExpectedTime & { readonly demands: Step['demands'] };

/**
 * Expected times of every step of a run that is not over. What is begun ends
 * by its timers; the rest follows when what it needs is over, and does not lie
 * in a rest day that it may not run through.
 */
export function expectedTimes(
  view: RunView,
  nowMs: number,
  { timetableMs }: Expectation = {},
): ReadonlyMap<string, ExpectedTime> {
  const times = new Map<string, ExpectedTime>();
  const placed: Placed[] = [];
  const put = (step: Step, time: ExpectedTime): void => {
    times.set(step.id, time);
    placed.push({ ...time, demands: step.demands });
  };
  for (const one of view.steps)
    if (isBegun(one)) put(one.step, { startMs: nowMs, endMs: nowMs + leftS(one) * MS_PER_SECOND });
  const over = new Set(view.steps.filter(isOver).map(({ step }) => step.id));
  const { startS } = view.plan.timetable;
  for (const step of inOrder(view)) {
    if (times.has(step.id) || over.has(step.id)) continue;
    const needed = step.needs.map((need) => times.get(need.step)?.endMs ?? -Infinity);
    const plannedMs =
      timetableMs === undefined ? -Infinity : timetableMs + (startS[step.id] ?? 0) * MS_PER_SECOND;
    const fromMs = Math.max(plannedMs, nowMs, ...needed);
    put(step, slotFor(view, step, fromMs, timetableMs === undefined ? [] : placed));
  }
  return times;
}

function isOver({ status }: StepView): boolean {
  return status === 'settled';
}

/** Is a step under way? With a fault open a step stands still in its stage, or has not begun: then no timer of a stage runs. */
export function isBegun({ status, timers }: StepView): boolean {
  if (status === 'stalled') return timers.some(({ stage }) => stage !== '');
  return status === 'active' || status === 'checking' || status === 'unwinding';
}

/** Steps by the timetable, but never before what they need. */
function inOrder({ plan }: RunView): readonly Step[] {
  const byId = new Map(plan.steps.map((step) => [step.id, step]));
  const startS = (step: Step): number => plan.timetable.startS[step.id] ?? 0;
  const ordered: Step[] = [];
  const seen = new Set<string>();
  const visit = (step: Step): void => {
    if (seen.has(step.id)) return;
    seen.add(step.id);
    for (const need of step.needs) {
      const needed = byId.get(need.step);
      if (needed) visit(needed);
    }
    ordered.push(step);
  };
  for (const step of plan.steps.toSorted((a, b) => startS(a) - startS(b))) visit(step);
  return ordered;
}

/** What the clocks of a begun step still hold it for, s: its holds, then those of its later stages; undefined: it has none left. */
export function heldS({ step, stage, timers }: StepView): number | undefined {
  const holdS = ({ timers: specs }: Step['stages'][number]): number =>
    Math.max(0, ...specs.filter(({ role }) => role === 'hold').map(({ lengthS }) => lengthS));
  const laterS = step.stages.slice(stage + 1).reduce((sum, later) => sum + holdS(later), 0);
  const holds = timers.filter(({ role }) => role === 'hold');
  if (holds.length === 0 && laterS === 0) return undefined;
  return Math.max(0, ...holds.map((hold) => hold.leftS)) + laterS;
}

/** Seconds until a begun step is expected to be over: its holds, then the holds of its later stages. */
function leftS(one: StepView): number {
  if (one.status === 'unwinding') return 0;
  return heldS(one) ?? (one.step.stages[one.stage] ? one.step.durationS.typical : 0);
}

/** The earliest slot from `fromMs` on that lies in no rest day, and in which nothing is asked for twice. */
function slotFor(
  { plan }: RunView,
  step: Step,
  fromMs: number,
  placed: readonly Placed[],
): ExpectedTime {
  const lengthMs = step.durationS.typical * MS_PER_SECOND;
  const days = runsThroughRestDays(step) ? [] : (plan.days?.restDays ?? []);
  const starts = [
    fromMs,
    ...placed.map(({ endMs }) => endMs),
    ...days.map(({ toWallMs }) => toWallMs),
  ].filter((startMs) => startMs >= fromMs);
  for (const startMs of starts.toSorted((a, b) => a - b)) {
    const slot = { startMs, endMs: startMs + lengthMs };
    if (!days.some((day) => overlaps(slot, day)) && fits(plan.resources, step, slot, placed))
      return slot;
  }
  return { startMs: fromMs, endMs: fromMs + lengthMs };
}

/** Work that should end this little after a rest day begins is let in by the engine too, ms. */
const REACH_SLACK_MS = 60_000;

function overlaps({ startMs, endMs }: ExpectedTime, { fromWallMs, toWallMs }: RestDay): boolean {
  return startMs < toWallMs && endMs > fromWallMs + REACH_SLACK_MS;
}

function fits(
  resources: RunView['plan']['resources'],
  step: Step,
  slot: ExpectedTime,
  placed: readonly Placed[],
): boolean {
  const beside = placed.filter((one) => one.startMs < slot.endMs && slot.startMs < one.endMs);
  const moments = [slot.startMs, ...beside.map(({ startMs }) => startMs)];
  return Object.entries(step.demands).every(([id, demand]) => {
    const capacity = resources.find((one) => one.id === id)?.capacity ?? Infinity;
    return moments.every(
      (atMs) => atMs < slot.startMs || takenAt(beside, id, atMs) + demand <= capacity,
    );
  });
}

function takenAt(beside: readonly Placed[], id: string, atMs: number): number {
  let taken = 0;
  for (const one of beside) {
    if (one.startMs <= atMs && atMs < one.endMs) taken += one.demands[id] ?? 0;
  }
  return taken;
}
