import { reasonOf } from '../model/reason.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import { UTENSILS, type Step } from '../../plan/index.ts';
import { stepsAbout } from '../rules/belonging.ts';
import { staleNeed } from '../rules/boiled-water.ts';
import type { FactBody } from '../model/facts.ts';
import { faultsOf } from '../rules/faults.ts';
import { shutGates, trippedGates } from '../rules/gates.ts';
import { unmetNeeds } from '../rules/needs.ts';
import { indexOf, needsMakeSafe, owesCold, stageOf } from '../model/plan-index.ts';
import { restDayAt, rightWallMs } from '../rules/rest-days.ts';
import { shortages, shortagesOfPour } from '../rules/resources.ts';
import type { Signed } from '../model/signed.ts';
import type { RunState, StepState } from '../model/state.ts';
import { isDue, isHold } from '../timers/timer.ts';
import type { Readings, Request } from '../model/types.ts';
import { gateObstacle, insideRestDay, needObstacle, shortageMessage } from '../rules/obstacles.ts';
import { isUndone } from '../rules/undone.ts';
import { startObstacle, stageObstacle } from '../rules/work-guard.ts';
import { accept, refuse, workRefusal, type Decision, type Refusal } from './refusal.ts';

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
  const day = startObstacle(state, step, now, 'person');
  if (day) found.push(workRefusal(day));
  for (const problem of unmetNeeds(state, step, now)) {
    found.push({
      code: problem.why === 'late' ? 'needs-late' : 'needs-unmet',
      message: needObstacle(state, problem),
    });
  }
  for (const shortage of shortages(state, step)) {
    found.push({ code: 'resource-taken', message: shortageMessage(shortage) });
  }
  for (const shortage of shortagesOfPour(state, step, now)) {
    found.push({ code: 'resource-taken', message: shortageMessage(shortage) });
  }
  const attempt = state.steps[step.id]?.attempt ?? 1;
  for (const shut of shutGates(state, step, attempt, now)) {
    found.push({ code: 'gate-shut', message: gateObstacle(shut, now) });
  }
  return found;
}

/** Who did it, where several work. What is done is taken whoever did it: nobody of that number is no reason to refuse. */
function worker({ plan }: RunState, { person = -1 }: Signed): Signed {
  const { people } = plan.kitchen.household;
  return people > 1 && Number.isInteger(person) && person >= 0 && person < people ? { person } : {};
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
  return accept({
    kind: 'step-started',
    step: step.id,
    attempt: one.attempt,
    by: 'person',
    ...worker(state, asked),
  });
}

/** While a burn is cooled nobody goes on into water or heat. */
function heatsWhileCooling({ coolings }: RunState, step: Step, stage: number): boolean {
  return coolings.length > 0 && (stageOf(step, stage)?.hazards.length ?? 0) > 0;
}

/** What keeps the stage in progress from being confirmed. */
export function confirmObstacles(state: RunState, step: Step, now: Readings): readonly Refusal[] {
  const one = state.steps[step.id];
  const stage = one && stageOf(step, one.stage);
  if (!stage) return [];
  const found: Refusal[] = [];
  if (stage.say === undefined)
    found.push({ code: 'ends-by-itself', message: message('engine.step.ends-by-itself') });
  if (faultsOf(state, step.id).length > 0 || heatsWhileCooling(state, step, one.stage + 1))
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
  const stale = staleNeed(state, step, now);
  if (stale)
    found.push({ code: 'needs-late', message: needObstacle(state, { need: stale, why: 'late' }) });
  const day = stageObstacle(state, step, one, one.stage + 1, now);
  if (day) found.push(workRefusal(day));
  return found;
}

/**
 * Inside a rest day only towards an end: heat off, cold water, or the end of
 * the step; into a stage that needs hands or heat it is refused (I-21).
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
    return refuse('unknown-stage', message('engine.unknown.stage'));
  }
  const [first] = confirmObstacles(state, step, now);
  if (first) return { refusal: first };
  return accept({
    kind: 'stage-ended',
    step: step.id,
    attempt: one.attempt,
    stage: stage.id,
    by: 'person',
    ...worker(state, asked),
  });
}

/** Leaves a step out, with a reason. What is hot is stopped instead; a pour first gets its cold water (I-18). */
export function skipStep(state: RunState, asked: Asked<'skip-step'>): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  if (asked.reason.trim() === '') return refuse('reason-missing', message('engine.reason.skip'));
  if (isUndone(state, step)) return leaveOut(step, one, asWritten(asked.reason));
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
    reason: asWritten(asked.reason),
  });
}

/** What was stopped or failed is left out: as a new attempt, since an outcome is set once (I-04). */
function leaveOut(step: Step, one: StepState, reason: Message): Decision {
  const common = { step: step.id, attempt: one.attempt + 1, reason } as const;
  return accept(
    { kind: 'step-repeated', ...common },
    { kind: 'step-settled', ...common, outcome: 'skipped' },
  );
}

export function stopStep(state: RunState, asked: Asked<'stop-step'>): Decision {
  const found = find(state, asked.step);
  if (!found) return unknownStep(asked.step);
  const { step, one } = found;
  const reason = reasonOf(asked.reason, message('engine.because.stopped'));
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
  return accept(...restsAgain(state, step, asked.reason), {
    kind: 'step-repeated',
    step: step.id,
    attempt: one.attempt + 1,
    reason: asWritten(asked.reason),
  });
}

/**
 * Cleaning with hot water is hot use: what was cleaned so rests again from the
 * end of the cleaning, and what was done upon the old rest will be done again;
 * until then heat and water are kept off (I-24).
 */
function restsAgain(state: RunState, step: Step, reason: string): readonly FactBody[] {
  if (step.kind !== 'clean') return [];
  const about = thingOf(state, step);
  if (about === undefined) return [];
  const rests = stepsAbout(state.plan, about).filter(
    (rest) =>
      rest.kind === 'rest' &&
      rest.needs.some((need) => need.step === step.id) &&
      state.steps[rest.id]?.status !== 'waiting',
  );
  if (rests.length === 0) return [];
  return [
    { kind: 'recheck-reported', fixture: about, text: reason },
    // The doubt began a new attempt at once; the cleaning is to end first.
    ...rests.map((rest) => ({
      kind: 'step-repeated' as const,
      step: rest.id,
      attempt: (state.steps[rest.id]?.attempt ?? 1) + 2,
      reason: asWritten(reason),
    })),
  ];
}

/** What is cleaned: a fixture, all utensils, or a vessel. */
function thingOf({ plan }: RunState, clean: Step): string | undefined {
  if (clean.fixture !== undefined) return clean.fixture;
  if (clean.work.on === 'utensils') return UTENSILS;
  return plan.kitchen.vessels
    .map(({ id }) => id)
    .find((id) => stepsAbout(plan, id).some((step) => step.id === clean.id));
}
