import { message } from '../../messages/index.ts';
import type { RunState } from '../model/state.ts';
import type { Observation, Readings, Request } from '../model/types.ts';
import { amendPlan } from './amend.ts';
import {
  pause,
  reportRecheck,
  resume,
  startRun,
  stopRun,
  takeNote,
  withdrawRecheck,
} from './control.ts';
import { clearFault, confirmSafe, endCooling, reportFault } from './faults.ts';
import { answerGate, overrideGate } from './gates.ts';
import { observe } from './observe.ts';
import { accept, ALLOWED, PROGRESS, refuse, refuseByStatus, type Decision } from './refusal.ts';
import {
  answerClockQuestion,
  answerReview,
  withdrawClockAnswer,
  withdrawReviewAnswer,
} from './review.ts';
import { confirm, repeatStep, skipStep, startStep, stopStep } from './steps.ts';
import { acknowledgeTimer, correctTime, extendTimer } from './timers.ts';

/**
 * Facts that follow from a request or observation at these readings, or a
 * named refusal. Pure; every rule of refusal is inside, so nobody goes round
 * it. What follows by itself (due timers, chained steps) is left to the turn.
 */
export function decide(
  state: RunState,
  asked: Request | Observation,
  readings: Readings,
): Decision {
  switch (asked.kind) {
    case 'session-opened':
    case 'session-closed':
    case 'storage-failed':
    case 'storage-mended':
    case 'alarm-handed':
    case 'alarm-failed':
    case 'tick':
      return observe(state, asked, readings);
    default:
      return request(state, asked, readings);
  }
}

function request(state: RunState, asked: Request, now: Readings): Decision {
  if (!ALLOWED[asked.kind].includes(state.status)) return refuseByStatus(state.status);
  if (now.session !== state.clock.anchor.session) {
    return refuse('session-not-opened', message('engine.session.not-open'));
  }
  if (state.storageDown && PROGRESS.has(asked.kind)) {
    return refuse('storage-down', message('engine.storage.no-progress'));
  }
  return handle(state, asked, now);
}

function handle(state: RunState, asked: Request, now: Readings): Decision {
  switch (asked.kind) {
    case 'start-run':
      return startRun(state, asked, now);
    case 'start-step':
      return startStep(state, asked, now);
    case 'confirm':
      return confirm(state, asked, now);
    case 'answer-gate':
      return answerGate(state, asked);
    case 'override-gate':
      return overrideGate(state, asked);
    case 'pause':
      return pause();
    case 'resume':
      return resume(state, now);
    case 'report-fault':
      return reportFault(state, asked);
    case 'clear-fault':
      return clearFault(state, asked);
    case 'end-cooling':
      return endCooling(state, asked, now);
    case 'skip-step':
      return skipStep(state, asked);
    case 'stop-step':
      return stopStep(state, asked);
    case 'repeat-step':
      return repeatStep(state, asked, now);
    case 'stop-run':
      return stopRun(state, asked);
    case 'confirm-safe':
      return confirmSafe(state, asked);
    case 'acknowledge-timer':
      return acknowledgeTimer(state, asked);
    case 'extend-timer':
      return extendTimer(state, asked);
    case 'answer-review':
      return answerReview(state, asked, now);
    case 'answer-clock':
      return answerClockQuestion(state, asked, now);
    case 'withdraw-clock-answer':
      return withdrawClockAnswer(state);
    case 'withdraw-review-answer':
      return withdrawReviewAnswer(state, asked);
    case 'report-recheck':
      return reportRecheck(state, asked);
    case 'withdraw-recheck':
      return withdrawRecheck(state, asked);
    case 'correct-time':
      return correctTime(state, asked, now);
    case 'amend-plan':
      return amendPlan(state, asked);
    case 'note':
      return takeNote(asked);
    default:
      return unknownRequest(asked);
  }
}

/** The compiler proves that this is never reached; at run time it changes nothing. */
function unknownRequest(asked: never): Decision {
  void asked;
  return accept();
}
