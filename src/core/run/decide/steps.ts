import { message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';
import { faultsOf } from '../rules/faults.ts';
import { shutGates, trippedGates } from '../rules/gates.ts';
import { unmetNeeds } from '../rules/needs.ts';
import { indexOf, needsMakeSafe, owesCold, stageOf } from '../model/plan-index.ts';
import { restDayAt, restDayObstacle, rightWallMs } from '../rules/rest-days.ts';
import { shortages } from '../rules/resources.ts';
import type { RunState, StepState } from '../model/state.ts';
import { isDue, isHold } from '../timers/timer.ts';
import type { Readings, Request } from '../model/types.ts';
import {
  gateObstacle,
  insideRestDay,
  needObstacle,
  restDayMessage,
  shortageMessage,
} from '../rules/obstacles.ts';
import { accept, refuse, type Decision, type Refusal } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

type Found = { readonly step: Step; readonly one: StepState };

function find(state: RunState, id: string): Found | null {
  const step = indexOf(state.plan).steps.get(id);
  const one = state.steps[id];
  return step && one ? { step, one } : null;
}

function unknownStep(id: string): Decision {
  return refuse('unknown-step', message('engine.unknown.step', { id }));
}

/** What keeps a waiting step from starting: a rest day (I-19), needs, gates, resources (I-11). */
export function startObstacles(state: RunState, step: Step, now: Readings): readonly Refusal[] {
  const found: Refusal[] = [];
  const day = restDayObstacle(state, step, now, 'person');
  if (day)
    found.push({
      code: day.why === 'inside' ? 'rest-day' : 'reaches-rest-day',
      message: restDayMessage(day),
    });
  for (const problem of unmetNeeds(state, step, now)) {
    found.push({
      code: problem.why === 'late' ? 'needs-late' : 'needs-unmet',
      message: needObstacle(state, problem),
    });
  }
  for (const shortage of shortages(state, step)) {
    found.push({ code: 'resource-taken', message: shortageMessage(shortage) });
  }
  const attempt = state.steps[step.id]?.attempt ?? 1;
  for (const shut of shutGates(state, step, attempt, now)) {
    found.push({ code: 'gate-shut', message: gateObstacle(shut, now) });
  }
  return found;
}

export function startStep(state: RunState, asked: Asked<'start-step'>, now: Readings): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  if (one.status === 'settled')
    return refuse('already-settled', message('engine.step.over-repeat', { step: step.title }));
  if (one.status !== 'waiting')
    return refuse('already-begun', message('engine.step.begun', { step: step.title }));
  const [first] = startObstacles(state, step, now);
  if (first) return { refusal: first };
  return accept({ kind: 'step-started', step: step.id, attempt: one.attempt, by: 'person' });
}

/** What keeps the stage in progress from being confirmed. */
export function confirmObstacles(state: RunState, step: Step, now: Readings): readonly Refusal[] {
  const one = state.steps[step.id];
  const stage = one && stageOf(step, one.stage);
  if (!stage) return [];
  const found: Refusal[] = [];
  if (stage.say === undefined)
    found.push({ code: 'ends-by-itself', message: message('engine.step.ends-by-itself') });
  if (faultsOf(state, step.id).length > 0)
    found.push({
      code: 'fault-open',
      message: message('engine.step.fault-open'),
    });
  const holds = Object.values(state.timers).filter(
    (timer) =>
      timer.mode === 'running' &&
      timer.step === step.id &&
      timer.stage === stage.id &&
      isHold(timer),
  );
  if (holds.some((timer) => !isDue(timer, now)))
    found.push({ code: 'hold-not-due', message: message('engine.step.not-due') });
  const shut = trippedGates(state, now).find(({ gate }) => step.gates.includes(gate.id));
  if (shut) found.push({ code: 'gate-shut', message: gateObstacle(shut, now) });
  return found;
}

/**
 * Also inside a rest day: it begins no step, and what was begun before is to
 * come to its end, which is heat off or cold water.
 */
export function confirm(state: RunState, asked: Asked<'confirm'>, now: Readings): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  if (one.status === 'settled')
    return refuse('already-settled', message('engine.step.over', { step: step.title }));
  if (one.status === 'waiting')
    return refuse('not-begun', message('engine.step.not-begun', { step: step.title }));
  if (one.status === 'unwinding')
    return refuse('make-safe-first', message('engine.step.stopped', { step: step.title }));
  const stage = stageOf(step, one.stage);
  if (!stage || stage.id !== asked.stage) {
    return refuse(
      'unknown-stage',
      message('engine.unknown.stage', { id: asked.stage, current: stage?.id ?? 'none' }),
    );
  }
  const [first] = confirmObstacles(state, step, now);
  if (first) return { refusal: first };
  return accept({
    kind: 'stage-ended',
    step: step.id,
    attempt: one.attempt,
    stage: stage.id,
    by: 'person',
  });
}

/** Leaves a step out, with a reason. What is hot is stopped instead; a pour first gets its cold water (I-18). */
export function skipStep(state: RunState, asked: Asked<'skip-step'>): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  if (asked.reason.trim() === '') return refuse('reason-missing', message('engine.reason.skip'));
  if (one.status === 'settled')
    return refuse('already-settled', message('engine.step.over', { step: step.title }));
  if (one.status !== 'waiting') {
    if (owesCold(step, one.stage) && !one.safe)
      return refuse('cold-first', message('engine.step.cold-first'));
    if (one.status === 'unwinding' || needsMakeSafe(step, one.stage))
      return refuse('make-safe-first', message('engine.step.hot'));
  }
  return accept({
    kind: 'step-settled',
    step: step.id,
    attempt: one.attempt,
    outcome: 'skipped',
    reason: asked.reason,
  });
}

export function stopStep(state: RunState, asked: Asked<'stop-step'>): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  const reason = asked.reason.trim() === '' ? 'Stopped.' : asked.reason;
  if (one.status === 'settled')
    return refuse('already-settled', message('engine.step.over', { step: step.title }));
  if (one.status === 'waiting')
    return refuse('not-begun', message('engine.step.not-begun', { step: step.title }));
  if (one.status === 'unwinding') return accept();
  const common = { step: step.id, attempt: one.attempt, outcome: 'stopped', reason } as const;
  return needsMakeSafe(step, one.stage)
    ? accept({ kind: 'step-unwinding', ...common })
    : accept({ kind: 'step-settled', ...common });
}

export function repeatStep(state: RunState, asked: Asked<'repeat-step'>, now: Readings): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  if (asked.reason.trim() === '') return refuse('reason-missing', message('engine.reason.repeat'));
  if (one.status !== 'settled')
    return refuse('not-settled', message('engine.step.not-over', { step: step.title }));
  if (one.begun && step.stages.some((stage) => stage.resumption === 'void'))
    return refuse('cannot-repeat', message('engine.step.cannot-repeat', { step: step.title }));
  const day = restDayAt(state.plan, rightWallMs(state, now));
  if (day) return refuse('rest-day', insideRestDay(day));
  return accept({
    kind: 'step-repeated',
    step: step.id,
    attempt: one.attempt + 1,
    reason: asked.reason,
  });
}
