import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { view, type RunState } from '../../run/index.ts';

/** When a step that is not over is expected to begin and to end, wall ms. */
export type TimeRange = { readonly startMs: number; readonly endMs: number };

type Placed = TimeRange & { readonly demands: Step['demands'] };

/**
 * Expected times of every step that is not over. Of a plan: its timetable. Of
 * a run in progress: what is begun ends by its clocks; the rest keeps the
 * timetable, or follows as soon as what it needs is over and hands and kettles
 * are free, whichever is later. Never earlier than the timetable, since only
 * the plan knows about nights and days of rest.
 * @param startWallMs wall time of second 0 of the timetable
 */
export function projectedTimes(
  plan: Plan,
  startWallMs: number,
  state?: RunState,
): ReadonlyMap<string, TimeRange> {
  const times = new Map<string, TimeRange>();
  const placed: Placed[] = [];
  const put = (step: Step, span: TimeRange): void => {
    times.set(step.id, span);
    placed.push({ ...span, demands: step.demands });
  };
  for (const step of plan.steps) {
    if (!state || !isBegun(state, step)) continue;
    const { wallMs } = state.clock.lastAt;
    put(step, { startMs: wallMs, endMs: wallMs + leftS(state, step) * MS_PER_SECOND });
  }
  for (const step of inOrder(plan)) {
    if (times.has(step.id) || (state && state.steps[step.id]?.status === 'settled')) continue;
    const needed = step.needs.map((need) => times.get(need.step)?.endMs ?? -Infinity);
    const plannedMs = startWallMs + (plan.timetable.startS[step.id] ?? 0) * MS_PER_SECOND;
    const nowMs = state && state.status !== 'drafting' ? state.clock.lastAt.wallMs : startWallMs;
    const fromMs = Math.max(plannedMs, nowMs, ...needed);
    put(step, fit(plan, step, fromMs, placed));
  }
  return times;
}

function isBegun(state: RunState, step: Step): boolean {
  const status = state.steps[step.id]?.status;
  return status === 'active' || status === 'unwinding';
}

/** Steps by the timetable, but never before what they need. */
function inOrder(plan: Plan): readonly Step[] {
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

/** Seconds until a begun step is expected to be over: its clocks, then the minimums of its later stages. */
function leftS(state: RunState, step: Step): number {
  const one = state.steps[step.id];
  if (!one || one.status === 'unwinding') return 0;
  const holdS = (stage: Step['stages'][number]): number =>
    Math.max(
      0,
      ...stage.timers.filter(({ role }) => role === 'hold').map((timer) => timer.lengthS),
    );
  const later = step.stages.slice(one.stage + 1).reduce((sum, stage) => sum + holdS(stage), 0);
  const now = step.stages[one.stage];
  const clocks = view(state, state.clock.lastAt).timers.filter(
    (clock) => clock.step === step.id && clock.role === 'hold',
  );
  const runningS = Math.max(0, ...clocks.map((clock) => clock.leftS));
  const timed = clocks.length > 0 || later > 0 || !now;
  return timed ? runningS + later : step.durationS.typical;
}

/** The earliest span from `fromMs` on in which nothing is asked for twice. */
function fit(plan: Plan, step: Step, fromMs: number, placed: readonly Placed[]): TimeRange {
  const lengthMs = step.durationS.typical * MS_PER_SECOND;
  const starts = [fromMs, ...placed.map(({ endMs }) => endMs).filter((endMs) => endMs > fromMs)];
  for (const startMs of starts.toSorted((a, b) => a - b)) {
    const span = { startMs, endMs: startMs + lengthMs };
    if (fits(plan, step, span, placed)) return span;
  }
  return { startMs: fromMs, endMs: fromMs + lengthMs };
}

function fits(plan: Plan, step: Step, span: TimeRange, placed: readonly Placed[]): boolean {
  const beside = placed.filter((one) => one.startMs < span.endMs && span.startMs < one.endMs);
  const moments = [span.startMs, ...beside.map(({ startMs }) => startMs)];
  return Object.entries(step.demands).every(([id, demand]) => {
    const capacity = plan.resources.find((one) => one.id === id)?.capacity ?? Infinity;
    return moments.every(
      (atMs) => atMs < span.startMs || takenAt(beside, id, atMs) + demand <= capacity,
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
