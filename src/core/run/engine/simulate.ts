import type { Plan, Step } from '../../plan/index.ts';
import type { Fact } from '../model/facts.ts';
import { createRun, perform } from './perform.ts';
import type { RunState } from '../model/state.ts';
import type { Readings, Request, RunView, StepView } from '../model/types.ts';
import { view } from '../view/index.ts';

export type SimulateOptions = {
  /** What the person does besides working: asked before every look at the run, with the seconds since the start. */
  readonly script?: (seen: RunView, atS: number) => readonly Request[];
  /** Wall time at the start, ms. Default: when the plan's days begin. */
  readonly startWallMs?: number;
  /** Work as soon as it can be done, not before the timetable says (default: keep to the timetable). */
  readonly eager?: boolean;
  /** Stop looking after this long, s. Default 14 days. */
  readonly untilS?: number;
};

export type Simulated = {
  readonly facts: readonly Fact[];
  readonly state: RunState;
  readonly view: RunView;
  /** When the run closed, or where it stood still, s after the start. */
  readonly finishS: number;
};

const UNTIL_S = 14 * 24 * 3600;
const SESSION = 'simulated';
// not shown: nobody reads a simulated run.
const REASON = 'Simulated.';
/** Rounding of seconds to milliseconds must not leave a timer a hair short. */
const HAIR_S = 0.001;

type Stand = {
  state: RunState;
  facts: Fact[];
  atS: number;
  readonly workEndsS: Map<string, number>;
};

/**
 * Plays a plan through the engine with a simulated clock and a person who
 * confirms when the work is done, answers gates with yes, confirms the last hot
 * uses that the plan counts from, and starts what can be started in the order of the timetable. Work with no clock of its own
 * takes its share of the step's typical duration.
 */
export function simulateRun(plan: Plan, options: SimulateOptions = {}): Simulated {
  const startWallMs = options.startWallMs ?? plan.days?.startWallMs ?? 0;
  const readings = (atS: number): Readings => ({
    wallMs: startWallMs + atS * 1000,
    monoMs: atS * 1000,
    session: SESSION,
  });
  const begun = createRun(plan, readings(0));
  const stand: Stand = {
    state: begun.state,
    facts: [...begun.facts],
    atS: 0,
    workEndsS: new Map(),
  };
  const untilS = options.untilS ?? UNTIL_S;
  while (stand.state.status !== 'closed' && stand.atS < untilS) {
    const now = readings(stand.atS);
    const seen = work(stand, now, options);
    if (seen === null) break;
    const nextS = nextLookS(stand, seen, options.eager === true);
    if (nextS === null) break;
    stand.atS = Math.min(untilS, nextS + HAIR_S);
    ask(stand, { kind: 'tick' }, readings(stand.atS));
  }
  const last = view(stand.state, readings(stand.atS));
  return { facts: stand.facts, state: stand.state, view: last, finishS: stand.atS };
}

function ask(stand: Stand, asked: Request | { kind: 'tick' }, now: Readings): boolean {
  const done = perform(stand.state, asked, now);
  if ('refusal' in done) return false;
  stand.state = done.state;
  stand.facts.push(...done.facts);
  return true;
}

/** Does everything that can be done at this moment, one thing after the other; gives the last look at it, null once the run closed. */
function work(stand: Stand, now: Readings, options: SimulateOptions): RunView | null {
  const extra = options.script?.(view(stand.state, now), stand.atS) ?? [];
  for (const asked of extra) ask(stand, asked, now);
  for (;;) {
    const seen = view(stand.state, now);
    noteWork(stand, seen);
    const wanted = wishes(stand, seen, options.eager === true);
    // What another of them has overtaken is refused, and harmless.
    const did = wanted.filter((asked) => ask(stand, asked, now));
    if (stand.state.status === 'closed') return null;
    if (did.length === 0) return seen;
  }
}

function stageKey(step: StepView): string {
  return `${step.step.id}#${step.attempt}/${step.stage}`;
}

/** Writes down when the work of each stage now begun will be done. */
function noteWork(stand: Stand, seen: RunView): void {
  for (const step of seen.steps) {
    if (step.status !== 'active' && step.status !== 'checking') continue;
    const key = stageKey(step);
    if (!stand.workEndsS.has(key)) {
      stand.workEndsS.set(key, stand.atS + workS(step.step, step.stage));
    }
  }
}

/** Share of a stage without a hold in the typical duration that no hold accounts for, s. */
function workS(step: Step, stage: number): number {
  const holdS = (number: number): number =>
    (step.stages[number]?.timers ?? [])
      .filter((timer) => timer.role === 'hold')
      .reduce((longest, timer) => Math.max(longest, timer.lengthS), 0);
  if (holdS(stage) > 0) return 0;
  const all = step.stages.map((_, number) => holdS(number));
  const free = all.filter((length) => length === 0).length;
  const heldS = all.reduce((sum, length) => sum + length, 0);
  return Math.max(0, (step.durationS.typical - heldS) / Math.max(1, free));
}

/** Requests worth trying now, most urgent first. */
function wishes(stand: Stand, seen: RunView, eager: boolean): readonly Request[] {
  // Refused inside a rest day, and asked again when it is over.
  if (seen.status === 'drafting') return [{ kind: 'start-run' }];
  const wanted: Request[] = [];
  for (const clock of seen.timers) {
    if (clock.alerting) wanted.push({ kind: 'acknowledge-timer', timer: clock.id });
    if (clock.lastHot) wanted.push(...lastHotWishes(clock.id, clock.lastHot.wallMs));
  }
  for (const fault of seen.faults) {
    if (!fault.cleared) wanted.push({ kind: 'clear-fault', faultId: fault.id });
  }
  for (const { fault, over } of seen.coolings) {
    if (over) wanted.push({ kind: 'end-cooling', faultId: fault, as: 'cooled' });
  }
  for (const { step, confirmed } of seen.hot) {
    if (!confirmed) wanted.push({ kind: 'confirm-safe', step });
  }
  for (const step of seen.currentSteps) wanted.push(...stepWishes(stand, seen, step, eager));
  if (seen.status === 'suspended' && seen.resumeBlockedBy.length === 0) {
    wanted.push({ kind: 'resume' });
  }
  return wanted;
}

/** What was told of the last hot use when planning is told again in the run, by a clock that is right. */
function lastHotWishes(timer: string, sinceWallMs: number): readonly Request[] {
  return [{ kind: 'correct-time', timer, sinceWallMs, reason: REASON, clockRight: true }];
}

function stepWishes(stand: Stand, seen: RunView, step: StepView, eager: boolean): Request[] {
  const { id } = step.step;
  if (step.canConfirm && stand.atS >= (stand.workEndsS.get(stageKey(step)) ?? Infinity)) {
    const stage = step.step.stages[step.stage];
    return stage ? [{ kind: 'confirm', step: id, stage: stage.id }] : [];
  }
  if (step.status === 'stalled' && seen.status === 'running') {
    return step.step.needs
      .filter((need) => need.withinS !== undefined)
      .map((need) => ({ kind: 'repeat-step', step: need.step, reason: REASON }));
  }
  if (step.again && seen.status === 'running')
    return [{ kind: 'repeat-step', step: id, reason: REASON }];
  const early = !eager && stand.atS < (seen.plan.timetable.startS[id] ?? 0);
  if (step.status !== 'ready' || seen.status !== 'running' || early) return [];
  const answers = step.gates
    .filter((gate) => gate.value !== 'yes')
    .map(({ gate, scopeKey }): Request => ({
      kind: 'answer-gate',
      gate: gate.id,
      scopeKey,
      answer: 'yes',
    }));
  return answers.length > 0 ? answers : [{ kind: 'start-step', step: id }];
}

/** When to look again: a clock, work done, or the timetable; null when nothing will ever happen. */
function nextLookS(stand: Stand, seen: RunView, eager: boolean): number | null {
  const times: number[] = [];
  if (seen.wakeInS !== null) times.push(stand.atS + seen.wakeInS);
  for (const step of seen.steps) {
    if (step.status === 'settled') continue;
    const begun = step.status === 'active' || step.status === 'checking';
    const atS = begun
      ? stand.workEndsS.get(stageKey(step))
      : eager
        ? undefined
        : seen.plan.timetable.startS[step.step.id];
    if (atS !== undefined && atS > stand.atS) times.push(atS);
  }
  return times.length === 0 ? null : Math.min(...times);
}
