import type { ClockFact, Fact, HostFact } from '../model/facts.ts';
import type { ClockState, Doubt, RunState } from '../model/state.ts';
import { agreement } from '../model/elapsed-interval.ts';
import type { Readings } from '../model/types.ts';
import { applyAlarm } from './alarms.ts';
import { applyAmendment } from './amend.ts';
import { applyClockAnswer, applyClocks, applyReview, applySession } from './clocks.ts';
import { beginState } from './begin.ts';
import { withHands } from '../rules/hands.ts';
import { applyReviewWithdrawal, applyWithdrawal } from './withdraw.ts';
import { applyRecheck, applyRecheckWithdrawal, canTakeBack } from './recheck.ts';
import { applyCleared, applyCoolingEnd, applyFault, applyStorage } from './faults.ts';
import { applyGateAnswer, applyOverride } from './gates.ts';
import { applyClosing, applyPause, applyResume, applyRunClosed, applyRunStart } from './run.ts';
import {
  applyRepeat,
  applyRestart,
  applySafe,
  applySettled,
  applyStageEnd,
  applyStart,
  applyUnwinding,
} from './steps.ts';
import { applyAcknowledge, applyCorrection, applyDue, applyExtension } from './timers.ts';

/**
 * Folds one fact into the state. Pure; the only way a state changes.
 * `state` is null for the first fact, which must be `drafted` with seq 1.
 * @throws RangeError when the fact does not follow the last one (I-02), or the run is closed (I-04)
 */
export function apply(state: RunState | null, fact: Fact): RunState {
  if (state === null) {
    if (fact.body.kind !== 'drafted' || fact.seq !== 1) {
      throw new RangeError(
        `first fact is "${fact.body.kind}" with seq ${fact.seq}; allowed: "drafted" with seq 1. Check the journal.`,
      );
    }
    return beginState(fact, fact.body);
  }
  if (fact.seq !== state.seq + 1) {
    throw new RangeError(
      `seq is ${fact.seq}; allowed: ${state.seq + 1}, the next one. Check the journal.`,
    );
  }
  if (state.status === 'closed') {
    throw new RangeError(
      `fact is "${fact.body.kind}"; allowed: none, the run is closed. Check the journal.`,
    );
  }
  const next = withHands(state, fact, (before) => change(before, fact));
  return {
    ...next,
    seq: fact.seq,
    clock: seen(next.clock, fact.at),
    doubt: doubtAfter(state, fact),
  };
}

/** Any fact but a note ends the time in which the word before it can be taken back. */
function doubtAfter(before: RunState, { body }: Fact): Doubt | null {
  if (body.kind === 'noted') return before.doubt;
  if (body.kind !== 'recheck-reported' || !canTakeBack(before, body.fixture)) return null;
  return { fixture: body.fixture, before: { ...before, doubt: null } };
}

/** What the clocks of a fact teach: proof of life, and where they agree a nearer point to compare with. */
function seen(clock: ClockState, at: Readings): ClockState {
  const near = at.session === clock.anchor.session && agreement(clock.anchor, at) === 'agree';
  return {
    ...clock,
    ...(near ? { anchor: at } : {}),
    lastAt: at,
    shownMs: Math.max(clock.shownMs, at.wallMs),
  };
}

function change(state: RunState, { at, body, seq }: Fact): RunState {
  switch (body.kind) {
    case 'drafted':
      throw new RangeError('fact is "drafted"; allowed: only as the first. Check the journal.');
    case 'run-started':
      return applyRunStart(state, body, at);
    case 'paused':
      return applyPause(state);
    case 'resumed':
      return applyResume(state);
    case 'closing-begun':
      return applyClosing(state, body);
    case 'run-closed':
      return applyRunClosed(state, body);
    case 'plan-amended':
      return applyAmendment(state, body);
    case 'noted':
    case 'session-closed':
      return state;
    case 'recheck-reported':
      return applyRecheck(state, body, at);
    case 'recheck-withdrawn':
      return applyRecheckWithdrawal(state);
    case 'step-started':
      return applyStart(state, body, at);
    case 'stage-ended':
      return applyStageEnd(state, body, at);
    case 'stage-restarted':
      return applyRestart(state, body, at);
    case 'step-unwinding':
      return applyUnwinding(state, body);
    case 'safe-confirmed':
      return applySafe(state, body, at);
    case 'step-settled':
      return applySettled(state, body, at);
    case 'step-repeated':
      return applyRepeat(state, body);
    case 'timer-due':
      return applyDue(state, body, at);
    case 'timer-acknowledged':
      return applyAcknowledge(state, body, at);
    case 'timer-extended':
      return applyExtension(state, body);
    case 'time-corrected':
      return applyCorrection(state, body, at);
    case 'gate-answered':
      return applyGateAnswer(state, body, at);
    case 'gate-overridden':
      return applyOverride(state, body);
    case 'fault-raised':
      return applyFault(state, body, at);
    case 'fault-cleared':
      return applyCleared(state, body);
    case 'cooling-ended':
      return applyCoolingEnd(state, body);
    default:
      return changeByHost(state, { at, body, seq });
  }
}

/** What clocks, pages and storage tell, and what a person says of them. */
function changeByHost(
  state: RunState,
  {
    at,
    body,
    seq,
  }: { at: Readings; body: Exclude<ClockFact | HostFact, { kind: 'session-closed' }>; seq: number },
): RunState {
  switch (body.kind) {
    case 'clocks-disagree':
      return applyClocks(state, at, seq);
    case 'clock-answered':
      return applyClockAnswer(state, body, at, seq);
    case 'clock-answer-withdrawn':
      return applyWithdrawal(state, at);
    case 'review-answered':
      return applyReview(state, body);
    case 'review-answer-withdrawn':
      return applyReviewWithdrawal(state, body);
    case 'session-opened':
      return applySession(state, body, at, seq);
    case 'storage-failed':
    case 'storage-mended':
      return applyStorage(state, body);
    case 'alarm-handed':
    case 'alarm-failed':
      return applyAlarm(state, body);
    default:
      return unknownFact(body);
  }
}

function unknownFact(body: never): never {
  throw new RangeError(
    `fact is "${(body as { kind: string }).kind}"; allowed: the kinds of journal version 1. A newer app wrote this; open it read-only.`,
  );
}

/**
 * State of a run from its facts (I-01).
 * @throws RangeError on an empty journal or a gap in the numbers
 */
export function fold(facts: readonly Fact[]): RunState {
  let state: RunState | null = null;
  for (const fact of facts) state = apply(state, fact);
  if (state === null) throw new RangeError('facts is empty; allowed: at least "drafted".');
  return state;
}
