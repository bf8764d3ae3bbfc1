import { isSaid } from '../model/reason.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';
import { confirmObstacles, startObstacles } from '../decide/steps.ts';
import { isAlerting } from '../decide/timers.ts';
import { ALLOWED, type Refusal } from '../decide/refusal.ts';
import { faultsOf } from '../rules/faults.ts';
import { gatesOfStep, settlesInS } from '../rules/gates.ts';
import { stageOf } from '../model/plan-index.ts';
import type { RunState, StepState, Timer } from '../model/state.ts';
import { isDue, isHold } from '../timers/timer.ts';
import type { GateView, Readings, StepStatus, StepView } from '../model/types.ts';
import { isUndone } from '../rules/undone.ts';
import { timerView } from './timers.ts';

/** One sorting of the timers serves every step of a view. */
const sorted = new WeakMap<RunState['timers'], ReadonlyMap<string, readonly Timer[]>>();

function timersOf(state: RunState, step: string): readonly Timer[] {
  const known = sorted.get(state.timers);
  if (known) return known.get(step) ?? [];
  const byStep = new Map<string, Timer[]>();
  for (const timer of Object.values(state.timers)) {
    const list = byStep.get(timer.step) ?? [];
    list.push(timer);
    byStep.set(timer.step, list);
  }
  sorted.set(state.timers, byStep);
  return byStep.get(step) ?? [];
}

/**
 * - `ready`: needs are done and resources free; gates may still ask;
 * - `stalled`: what it needs was done too long ago, or a fault about it is open;
 * - `checking`: the time is over and a person is to say so.
 */
function statusOf(
  state: RunState,
  step: Step,
  one: StepState,
  obstacles: readonly Refusal[],
  now: Readings,
): StepStatus {
  switch (one.status) {
    case 'settled':
    case 'unwinding':
      return one.status;
    case 'active':
      return activeStatus(state, step, one, now);
    case 'waiting': {
      const codes = obstacles.map(({ code }) => code).filter((code) => code !== 'gate-shut');
      if (codes.length === 0) return 'ready';
      const needs = codes.filter((code) => code === 'needs-unmet' || code === 'needs-late');
      const late = needs.length > 0 && needs.every((code) => code === 'needs-late');
      return late ? 'stalled' : 'waiting';
    }
  }
}

function activeStatus(state: RunState, step: Step, one: StepState, now: Readings): StepStatus {
  if (faultsOf(state, step.id).length > 0) return 'stalled';
  const stage = stageOf(step, one.stage);
  if (stage?.say === undefined) return 'active';
  const holds = timersOf(state, step.id).filter(
    (timer) => timer.mode === 'running' && timer.stage !== '' && isHold(timer),
  );
  return holds.length > 0 && holds.every((timer) => isDue(timer, now)) ? 'checking' : 'active';
}

function blockedBy(
  state: RunState,
  one: StepState,
  obstacles: readonly Refusal[],
): readonly Message[] {
  if (one.status !== 'waiting') return [];
  const { status } = state;
  return [
    ...(status === 'running' ? [] : [message(`engine.halted.${status}`)]),
    ...(state.storageDown ? [message('engine.storage.down')] : []),
    ...obstacles.map((obstacle) => obstacle.message),
  ];
}

function gateViews(state: RunState, step: Step, attempt: number, now: Readings): GateView[] {
  return gatesOfStep(state, step, attempt, now).map(({ gate, known }) => ({
    gate,
    scopeKey: known.scopeKey,
    value: known.value,
    settlesInS: settlesInS(gate, known, now),
  }));
}

export function stepView(state: RunState, step: Step, now: Readings): StepView {
  const one = state.steps[step.id];
  if (!one) throw new RangeError(`step is "${step.id}"; allowed: a step of the plan.`);
  const clocks = timersOf(state, step.id)
    .filter((timer) => timer.mode === 'running' || isAlerting(timer))
    .map((timer) => timerView(state, timer, now));
  // Looked for once: they decide the status and say why.
  const obstacles = one.status === 'waiting' ? startObstacles(state, step, now) : [];
  const settled = one.status === 'settled' && one.outcome !== null;
  const canConfirm =
    one.status === 'active' &&
    ALLOWED.confirm.includes(state.status) &&
    !state.storageDown &&
    stageOf(step, one.stage) !== undefined &&
    confirmObstacles(state, step, now).length === 0;
  return {
    step,
    attempt: one.attempt,
    status: statusOf(state, step, one, obstacles, now),
    ...(settled && one.outcome !== null ? { outcome: one.outcome } : {}),
    ...(!isSaid(one.reason) ? {} : { reason: one.reason }),
    stage: one.stage,
    ...(one.begunWallMs === null ? {} : { begunWallMs: one.begunWallMs }),
    timers: clocks,
    gates: gateViews(state, step, one.attempt, now),
    blockedBy: blockedBy(state, one, obstacles),
    again: isUndone(state, step),
    canConfirm,
  };
}
