import { message, type Message } from '../../messages/index.ts';
import { isSaid, NO_REASON } from '../model/reason.ts';
import type { Step } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import { staleNeed } from '../rules/boiled-water.ts';
import { isBroken, isFrozen } from '../rules/faults.ts';
import { shutGates } from '../rules/gates.ts';
import { chainIsDue, chainIsIdle } from '../rules/needs.ts';
import { dependentsOf, needsMakeSafe, restartStage, stageOf } from '../model/plan-index.ts';
import { begunSteps, shortages } from '../rules/resources.ts';
import type { RunState, StepState, Timer } from '../model/state.ts';
import { coolingsDue } from '../timers/cooling.ts';
import { agreement, differences } from '../model/elapsed-interval.ts';
import { isAlarm, isDue, isHold, lateByS } from '../timers/timer.ts';
import type { Readings } from '../model/types.ts';
import { isUndone } from '../rules/undone.ts';
import { stageObstacle, startObstacle } from '../rules/work-guard.ts';
import { needObstacle, workMessage } from '../rules/obstacles.ts';

type Rule = (state: RunState, now: Readings) => readonly FactBody[];

/**
 * What follows by itself from the state at these readings: the facts of the
 * first rule that has any, in the order of a turn. Empty: the turn is quiet.
 * Closed and drafted runs are quiet.
 */
export function nextFacts(state: RunState, now: Readings): readonly FactBody[] {
  if (state.status === 'closed' || state.status === 'drafting') return [];
  for (const rule of RULES) {
    const facts = rule(state, now);
    if (facts.length > 0) return facts;
  }
  return [];
}

const RULES: readonly Rule[] = [
  clocks,
  coolingsDue,
  closing,
  alarms,
  limitFaults,
  staleWater,
  minimums,
  restarts,
  checks,
  starts,
  renewals,
  completion,
];

/** What the two clocks tell before anything else of a turn. */
export function clocks(state: RunState, now: Readings): readonly FactBody[] {
  const { anchor } = state.clock;
  if (anchor.session !== now.session) return [];
  const cause = agreement(anchor, now);
  return cause === 'agree' ? [] : [{ kind: 'clocks-disagree', cause, ...differences(anchor, now) }];
}

/** Stopping: what never began is not run, what is not hot is stopped, and then the run is closed; never while a burn is cooled. */
function closing(state: RunState): readonly FactBody[] {
  if (state.status !== 'closing') return [];
  const facts: FactBody[] = [];
  let open = false;
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    if (!one || one.status === 'settled') continue;
    const common = { kind: 'step-settled', step: step.id, attempt: one.attempt } as const;
    if (one.status === 'unwinding' && !one.safe) open = true;
    else if (one.status === 'unwinding')
      facts.push({ ...common, outcome: one.outcome ?? 'stopped', reason: one.reason });
    else if (one.status === 'active' && one.stage >= step.stages.length)
      facts.push({ ...common, outcome: 'done', reason: NO_REASON });
    else
      facts.push({
        ...common,
        outcome: one.status === 'active' ? 'stopped' : 'not-run',
        reason: state.reason,
      });
  }
  if (facts.length > 0 || open || state.coolings.length > 0) return facts;
  return [{ kind: 'run-closed', as: state.closingAs ?? 'stopped', reason: state.reason }];
}

function running(state: RunState): readonly Timer[] {
  return Object.values(state.timers).filter((timer) => timer.mode === 'running');
}

function dueFact(timer: Timer, now: Readings): FactBody {
  return {
    kind: 'timer-due',
    timer: timer.id,
    cause: timer.cause,
    lateByS: Math.round(lateByS(timer, now)),
  };
}

/** Alarms come due in every status: held, suspended, reviewing (I-07). */
function alarms(state: RunState, now: Readings): readonly FactBody[] {
  return running(state)
    .filter((timer) => isAlarm(timer) && !timer.announced && isDue(timer, now))
    .map((timer) => dueFact(timer, now));
}

/** A limit that came due raises its own fault, once for each cause. */
function limitFaults(state: RunState): readonly FactBody[] {
  if (state.status === 'closing') return [];
  const facts: FactBody[] = [];
  for (const timer of running(state)) {
    const { fault } = timer.spec;
    if (!timer.announced || fault === undefined || timer.spec.role !== 'limit') continue;
    const raised = state.faults.some((one) => one.timer === timer.id && one.cause === timer.cause);
    if (raised) continue;
    facts.push({
      kind: 'fault-raised',
      fault: `fault-${state.seq + 1 + facts.length}`,
      faultKind: fault,
      step: timer.step,
      // Its timer says what ran out.
      text: '',
      timer: timer.id,
      cause: timer.cause,
    });
  }
  return facts;
}

/** Boiled water is fresh until the last drop: past its limit, what pours it is made safe, and it is boiled again. */
function staleWater(state: RunState, now: Readings): readonly FactBody[] {
  if (state.status === 'closing') return [];
  return state.plan.steps.flatMap((step): FactBody[] => {
    const need = staleNeed(state, step, now);
    const one = state.steps[step.id];
    if (!need || !one) return [];
    const reason = needObstacle(state, { need, why: 'late' });
    return [{ ...ending(step, one, reason), renew: reason } as FactBody];
  });
}

/** No minimum completes while a gap is unanswered, its process is broken, or nothing can be written. */
function minimums(state: RunState, now: Readings): readonly FactBody[] {
  if (state.status === 'reviewing' || state.storageDown) return [];
  return running(state)
    .filter((timer) => !isAlarm(timer) && !timer.announced && isDue(timer, now))
    .filter((timer) => !isFrozen(state, timer.step))
    .map((timer) => dueFact(timer, now));
}

/** What broke off begins again, once everything about it is cleared. */
function restarts(state: RunState, now: Readings): readonly FactBody[] {
  if (state.status === 'closing') return [];
  const facts: FactBody[] = [];
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    if (one?.status !== 'active' || !isSaid(one.restart) || isBroken(state, step.id)) continue;
    const number = restartStage(step, one.stage);
    const stage = stageOf(step, number);
    if (!stage) continue;
    const day = stageObstacle(state, step, one, number, now);
    if (day) {
      // It broke off, and nothing is begun again now: it is made safe.
      facts.push(ending(step, one, workMessage(day)));
      continue;
    }
    facts.push({
      kind: 'stage-restarted',
      step: step.id,
      attempt: one.attempt,
      stage: stage.id,
      reason: one.restart,
    });
  }
  return facts;
}

/** The end of an attempt that cannot go on; what is hot is made safe first. */
function ending(step: Step, one: StepState, reason: Message): FactBody {
  const kind = needsMakeSafe(step, one.stage) ? 'step-unwinding' : 'step-settled';
  return { kind, step: step.id, attempt: one.attempt, outcome: 'stopped', reason };
}

/** Stages end by their clocks; steps settle after their last stage, or once made safe. */
function checks(state: RunState): readonly FactBody[] {
  if (state.status === 'closing') return [];
  const facts: FactBody[] = [];
  for (const step of state.plan.steps) {
    const fact = check(state, step);
    if (fact) facts.push(fact);
  }
  return facts;
}

function check(state: RunState, step: Step): FactBody | null {
  const one = state.steps[step.id];
  if (!one || one.status === 'waiting' || one.status === 'settled') return null;
  const common = { step: step.id, attempt: one.attempt };
  if (one.status === 'unwinding') {
    return one.safe
      ? { kind: 'step-settled', ...common, outcome: one.outcome ?? 'stopped', reason: one.reason }
      : null;
  }
  const stage = stageOf(step, one.stage);
  if (!stage) return { kind: 'step-settled', ...common, outcome: 'done', reason: NO_REASON };
  if (coolsWhileHeated(state, step)) {
    return {
      kind: 'step-settled',
      ...common,
      outcome: 'stopped',
      reason: message('engine.because.heated-again'),
    };
  }
  if (stage.say !== undefined || state.storageDown || state.status === 'reviewing') return null;
  const holds = running(state).filter(
    (timer) => timer.step === step.id && timer.stage === stage.id && isHold(timer),
  );
  return holds.every((timer) => timer.announced)
    ? { kind: 'stage-ended', ...common, stage: stage.id, by: 'timer' }
    : null;
}

/** A cool-down whose heating began again cools nothing. */
function coolsWhileHeated(state: RunState, step: Step): boolean {
  return (
    step.kind === 'cool' &&
    step.startsBy === 'chain' &&
    step.needs.some((need) => {
      const status = state.steps[need.step]?.status;
      return status === 'active' || status === 'unwinding';
    })
  );
}

/**
 * Chained steps that need nobody measure what happens anyway, so they also
 * start while the run is held or suspended; others only while it runs.
 */
function mayStart(state: RunState, step: Step): boolean {
  if (state.storageDown) return false;
  if (state.status === 'running') return true;
  return (state.status === 'held' || state.status === 'suspended') && step.attention === 'none';
}

function starts(state: RunState, now: Readings): readonly FactBody[] {
  const facts: FactBody[] = [];
  const begun = [...begunSteps(state)];
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    if (!one || !mayStart(state, step)) continue;
    if (chainIsIdle(state, step)) {
      facts.push({
        kind: 'step-settled',
        step: step.id,
        attempt: one.attempt,
        outcome: 'skipped',
        reason: message('engine.because.nothing-heated'),
      });
      continue;
    }
    if (!chainIsDue(state, step) || shortages(state, step, begun).length > 0) continue;
    if (startObstacle(state, step, now, 'chain')) continue;
    if (shutGates(state, step, one.attempt, now).length > 0) continue;
    begun.push(step);
    facts.push({ kind: 'step-started', step: step.id, attempt: one.attempt, by: 'chain' });
  }
  return facts;
}

/** New attempts for what was doubted or is heated again, after what follows from the old attempt has begun. */
function renewals(state: RunState): readonly FactBody[] {
  if (state.status === 'closing') return [];
  const facts: FactBody[] = [];
  for (const step of state.plan.steps) {
    const one = state.steps[step.id];
    if (one?.status !== 'settled') continue;
    const again =
      one.begun && coolsWhileHeated(state, step)
        ? message('engine.because.heated-again')
        : one.renew;
    const chainWaits = dependentsOf(state.plan, step.id).some(
      (dependent) => dependent.kind === 'cool' && chainIsDue(state, dependent),
    );
    if (!isSaid(again) || chainWaits) continue;
    facts.push({ kind: 'step-repeated', step: step.id, attempt: one.attempt + 1, reason: again });
  }
  return facts;
}

/** Every step is done, or left out by a person: the run closes by itself, if nothing stops it (I-22). */
function completion(state: RunState): readonly FactBody[] {
  if (state.status !== 'running') return [];
  const open = state.plan.steps.some(
    (step) => state.steps[step.id]?.status !== 'settled' || isUndone(state, step),
  );
  return open
    ? []
    : [{ kind: 'closing-begun', as: 'completed', reason: message('engine.because.all-settled') }];
}
