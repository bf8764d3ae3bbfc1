import { inEnglish } from '../../messages/temporary.ts';
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
  gateSentence,
  insideSentence,
  needSentence,
  restDaySentence,
  shortageSentence,
} from '../rules/words.ts';
import { accept, refuse, type Decision, type Refusal } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

type Found = { readonly step: Step; readonly one: StepState };

function find(state: RunState, id: string): Found | null {
  const step = indexOf(state.plan).steps.get(id);
  const one = state.steps[id];
  return step && one ? { step, one } : null;
}

function unknownStep(id: string): Decision {
  return refuse('unknown-step', `Step is “${id}”; allowed: a step of the plan.`);
}

function reasonMissing(what: string): Decision {
  return refuse('reason-missing', `Say why you ${what}; it goes into the record.`);
}

/** What keeps a waiting step from starting: a rest day (I-19), needs, gates, resources (I-11). */
export function startObstacles(state: RunState, step: Step, now: Readings): readonly Refusal[] {
  const found: Refusal[] = [];
  const day = restDayObstacle(state, step, now, 'person');
  if (day)
    found.push({
      code: day.why === 'inside' ? 'rest-day' : 'reaches-rest-day',
      message: restDaySentence(day),
    });
  for (const problem of unmetNeeds(state, step, now)) {
    found.push({
      code: problem.why === 'late' ? 'needs-late' : 'needs-unmet',
      message: needSentence(state, problem),
    });
  }
  for (const shortage of shortages(state, step)) {
    found.push({ code: 'resource-taken', message: shortageSentence(shortage) });
  }
  const attempt = state.steps[step.id]?.attempt ?? 1;
  for (const shut of shutGates(state, step, attempt, now)) {
    found.push({ code: 'gate-shut', message: gateSentence(shut, now) });
  }
  return found;
}

export function startStep(state: RunState, asked: Asked<'start-step'>, now: Readings): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  if (one.status === 'settled')
    return refuse(
      'already-settled',
      `“${inEnglish(step.title)}” is over. Repeat it to do it again.`,
    );
  if (one.status !== 'waiting')
    return refuse('already-begun', `“${inEnglish(step.title)}” has begun.`);
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
    found.push({ code: 'ends-by-itself', message: 'This part ends by its clock.' });
  if (faultsOf(state, step.id).length > 0)
    found.push({
      code: 'fault-open',
      message: 'Put right first what was reported about this step.',
    });
  const holds = Object.values(state.timers).filter(
    (timer) =>
      timer.mode === 'running' &&
      timer.step === step.id &&
      timer.stage === stage.id &&
      isHold(timer),
  );
  if (holds.some((timer) => !isDue(timer, now)))
    found.push({ code: 'hold-not-due', message: 'The time is not over yet.' });
  const shut = trippedGates(state, now).find(({ gate }) => step.gates.includes(gate.id));
  if (shut) found.push({ code: 'gate-shut', message: gateSentence(shut, now) });
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
    return refuse('already-settled', `“${inEnglish(step.title)}” is over.`);
  if (one.status === 'waiting')
    return refuse('not-begun', `“${inEnglish(step.title)}” has not begun.`);
  if (one.status === 'unwinding')
    return refuse('make-safe-first', `“${inEnglish(step.title)}” was stopped. Make it safe.`);
  const stage = stageOf(step, one.stage);
  if (!stage || stage.id !== asked.stage) {
    return refuse(
      'unknown-stage',
      `Stage is “${asked.stage}”; allowed: “${stage?.id ?? 'none'}”, the one in progress.`,
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
  if (asked.reason.trim() === '') return reasonMissing('skip this step');
  if (one.status === 'settled')
    return refuse('already-settled', `“${inEnglish(step.title)}” is over.`);
  if (one.status !== 'waiting') {
    if (owesCold(step, one.stage) && !one.safe)
      return refuse('cold-first', 'Boiling water was poured here. Confirm the cold water first.');
    if (one.status === 'unwinding' || needsMakeSafe(step, one.stage))
      return refuse('make-safe-first', 'It is hot. Stop the step and make it safe.');
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
    return refuse('already-settled', `“${inEnglish(step.title)}” is over.`);
  if (one.status === 'waiting')
    return refuse('not-begun', `“${inEnglish(step.title)}” has not begun.`);
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
  if (asked.reason.trim() === '') return reasonMissing('repeat this step');
  if (one.status !== 'settled')
    return refuse('not-settled', `“${inEnglish(step.title)}” is not over yet. Stop it first.`);
  if (one.begun && step.stages.some((stage) => stage.resumption === 'void'))
    return refuse('cannot-repeat', `“${inEnglish(step.title)}” cannot be repeated.`);
  const day = restDayAt(state.plan, rightWallMs(state, now));
  if (day) return refuse('rest-day', insideSentence(day.name));
  return accept({
    kind: 'step-repeated',
    step: step.id,
    attempt: one.attempt + 1,
    reason: asked.reason,
  });
}
