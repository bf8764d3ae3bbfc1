import type { Step } from '../../plan/index.ts';
import type { Request, RunView, StepView } from '../model/types.ts';

// not shown: nobody reads what a played person gave as a reason.
const REASON = 'Simulated.';

/**
 * Someone who does what a plan asks: confirms when the work is done, answers
 * gates with yes, confirms the last hot uses that the plan counts from, and
 * starts what can be started in the order of the timetable. Work with no clock
 * of its own takes its share of the step's typical duration. Seconds since the start.
 */
export type Person = {
  /** Writes down when the work of each stage now begun will be done; before anything is wished of that look. */
  readonly look: (seen: RunView, atS: number) => void;
  /** Requests worth trying now, most urgent first; one may be overtaken by another, and is then refused. */
  readonly wishes: (seen: RunView, atS: number) => readonly Request[];
  /** When to look again: a clock, work done, or the timetable; null when nothing will ever happen. */
  readonly nextLookS: (seen: RunView, atS: number) => number | null;
};

type Hand = { readonly workEndsS: Map<string, number>; readonly eager: boolean };

/** @param eager works as soon as it can be done, not before the timetable says (default: keeps to the timetable) */
export function createPerson(eager = false): Person {
  const hand: Hand = { workEndsS: new Map(), eager };
  return {
    look: (seen, atS) => noteWork(hand, seen, atS),
    wishes: (seen, atS) => wishes(hand, seen, atS),
    nextLookS: (seen, atS) => nextLookS(hand, seen, atS),
  };
}

function stageKey(step: StepView): string {
  return `${step.step.id}#${step.attempt}/${step.stage}`;
}

function noteWork({ workEndsS }: Hand, seen: RunView, atS: number): void {
  for (const step of seen.steps) {
    if (step.status !== 'active' && step.status !== 'checking') continue;
    const key = stageKey(step);
    if (!workEndsS.has(key)) workEndsS.set(key, atS + workS(step.step, step.stage));
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

function wishes(hand: Hand, seen: RunView, atS: number): readonly Request[] {
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
  for (const step of seen.currentSteps) wanted.push(...stepWishes(hand, seen, step, atS));
  if (seen.status === 'suspended' && seen.resumeBlockedBy.length === 0) {
    wanted.push({ kind: 'resume' });
  }
  return wanted;
}

/** What was told of the last hot use when planning is told again in the run, by a clock that is right. */
function lastHotWishes(timer: string, sinceWallMs: number): readonly Request[] {
  return [{ kind: 'correct-time', timer, sinceWallMs, reason: REASON, clockRight: true }];
}

function stepWishes(hand: Hand, seen: RunView, step: StepView, atS: number): Request[] {
  const { id } = step.step;
  if (step.canConfirm && atS >= (hand.workEndsS.get(stageKey(step)) ?? Infinity)) {
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
  const early = !hand.eager && atS < (seen.plan.timetable.startS[id] ?? 0);
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

function nextLookS({ workEndsS, eager }: Hand, seen: RunView, atS: number): number | null {
  const times: number[] = [];
  if (seen.wakeInS !== null) times.push(atS + seen.wakeInS);
  for (const step of seen.steps) {
    if (step.status === 'settled') continue;
    const begun = step.status === 'active' || step.status === 'checking';
    const toS = begun
      ? workEndsS.get(stageKey(step))
      : eager
        ? undefined
        : seen.plan.timetable.startS[step.step.id];
    if (toS !== undefined && toS > atS) times.push(toS);
  }
  return times.length === 0 ? null : Math.min(...times);
}
