import { reasonOf } from '../model/reason.ts';
import { message } from '../../messages/index.ts';
import { stepsAbout, usesVessel } from '../rules/belonging.ts';
import { trippedGates } from '../rules/gates.ts';
import { openFaults, policyOf } from '../rules/faults.ts';
import { restDayAt, rightWallMs } from '../rules/rest-days.ts';
import type { RunState } from '../model/state.ts';
import { clockQuestion } from '../timers/unproved-time.ts';
import type { Readings, Request } from '../model/types.ts';
import { insideRestDay } from '../rules/obstacles.ts';
import { goOnObstacle } from '../rules/work-guard.ts';
import { accept, refuse, workRefusal, type Decision, type Refusal } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

/** Not inside a rest day (I-19), nor with a clock that shows a time before the app was built (I-20). */
export function startRun(state: RunState, asked: Asked<'start-run'>, now: Readings): Decision {
  if (!(now.wallMs >= state.notBeforeWallMs)) {
    return refuse(
      'clock-wrong',
      message('engine.clock.below-build', {
        shownWallMs: now.wallMs,
        fromWallMs: state.notBeforeWallMs,
      }),
    );
  }
  const day = restDayAt(state.plan, rightWallMs(state, now));
  if (day) return refuse('rest-day', insideRestDay(day));
  return accept({ kind: 'run-started', clockRight: asked.clockRight === true });
}

export function pause(): Decision {
  return accept({ kind: 'paused' });
}

/** Everything that keeps a person from going on, gravest first. */
export function resumeObstacles(state: RunState, now: Readings): readonly Refusal[] {
  const found: Refusal[] = [];
  if (state.status === 'reviewing') {
    if (state.questions.length > 0)
      found.push({ code: 'review-open', message: message('engine.resume.review-gap') });
    if (clockQuestion(state))
      found.push({ code: 'review-open', message: message('engine.resume.review-clock') });
    return found;
  }
  if (state.storageDown)
    found.push({ code: 'storage-down', message: message('engine.resume.storage') });
  if (Object.values(state.steps).some((one) => one.status === 'unwinding'))
    found.push({ code: 'make-safe-first', message: message('engine.resume.hot') });
  for (const fault of openFaults(state)) {
    const { name } = policyOf(state.plan, fault.kind);
    found.push({ code: 'fault-open', message: message('engine.resume.fault', { fault: name }) });
  }
  for (const { gate, known } of trippedGates(state, now)) {
    const key = known.value === 'yes' ? 'engine.resume.gate-settling' : 'engine.resume.gate-asked';
    found.push({ code: 'gate-shut', message: message(key, { ask: gate.ask }) });
  }
  const day = goOnObstacle(state, now);
  if (day) found.push(workRefusal(day));
  return found;
}

/** Only a person resumes, and only when nothing is in the way (I-06). */
export function resume(state: RunState, now: Readings): Decision {
  const [first] = resumeObstacles(state, now);
  return first ? { refusal: first } : accept({ kind: 'resumed' });
}

/** Always accepted (I-13); a second time changes nothing. */
export function stopRun(state: RunState, asked: Asked<'stop-run'>): Decision {
  if (state.status === 'closing') return accept();
  const reason = reasonOf(asked.reason, message('engine.because.stopped'));
  return accept({ kind: 'closing-begun', as: 'stopped', reason });
}

export function takeNote(asked: Asked<'note'>): Decision {
  if (asked.text.trim() === '') return refuse('reason-missing', message('engine.reason.note'));
  return accept({ kind: 'noted', text: asked.text });
}

/** Gives back only what nothing has been built upon since. */
export function withdrawRecheck(state: RunState, asked: Asked<'withdraw-recheck'>): Decision {
  const { fixture } = asked;
  return state.doubt?.fixture === fixture
    ? accept({ kind: 'recheck-withdrawn', fixture })
    : refuse('recheck-stands', message('engine.recheck.stands'));
}

/**
 * A vessel that the plan uses and does not purge has no rest that could begin
 * again: the run waits until a person has put another in its place, or says
 * that it is fit.
 */
export function reportRecheck(state: RunState, asked: Asked<'report-recheck'>): Decision {
  const { fixture } = asked;
  // A doubt without words is a doubt all the same; the report says so in its own.
  const text = asked.text.trim();
  const doubt = { kind: 'recheck-reported', fixture, text } as const;
  if (stepsAbout(state.plan, fixture).some(({ kind }) => kind !== 'boil')) return accept(doubt);
  const uses = state.plan.steps.filter((step) => usesVessel(step, fixture));
  if (uses.length === 0)
    return refuse('unknown-fixture', message('engine.unknown.fixture', { id: fixture }));
  const next = uses.find(({ id }) => state.steps[id]?.status !== 'settled');
  if (!next) return accept(doubt);
  return accept(doubt, {
    kind: 'fault-raised',
    fault: `fault-${state.seq + 2}`,
    faultKind: 'undefined',
    step: next.id,
    text,
    timer: null,
    cause: 0,
  });
}
