import { CORRECT_MAX_S, EXTEND_MAX_S } from '../model/constants.ts';
import type { RunState, Timer } from '../model/state.ts';
import { isHold } from '../timers/timer.ts';
import type { Readings, Request } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

function timerClosed(id: string): Decision {
  return refuse('timer-closed', `Timer is “${id}”; allowed: one that runs or calls. It has ended.`);
}

/** Is it sounding for an answer? Also after its stage ended by itself. */
export function isAlerting(timer: Timer): boolean {
  return timer.announced && !timer.acknowledged;
}

export function acknowledgeTimer(state: RunState, asked: Asked<'acknowledge-timer'>): Decision {
  const timer = state.timers[asked.timer];
  if (!timer) return timerClosed(asked.timer);
  if (!isAlerting(timer)) return refuse('not-alerting', 'This clock does not call for an answer.');
  return accept({ kind: 'timer-acknowledged', timer: timer.id, cause: timer.cause });
}

/** A minimum may be made longer. An alarm may not be put off (I-07). */
export function extendTimer(state: RunState, asked: Asked<'extend-timer'>): Decision {
  const timer = state.timers[asked.timer];
  if (!timer) return timerClosed(asked.timer);
  if (timer.mode !== 'running') return timerClosed(timer.id);
  if (timer.spec.purpose === 'at-most')
    return refuse('cannot-extend', 'An alarm cannot be put off. Answer it when it sounds.');
  if (!(asked.byS > 0 && asked.byS <= EXTEND_MAX_S)) {
    return refuse(
      'out-of-range',
      `byS is ${asked.byS}; allowed: more than 0, at most ${EXTEND_MAX_S}. Enter the time to add.`,
    );
  }
  return accept({ kind: 'timer-extended', timer: timer.id, byS: asked.byS });
}

/** Dates a rest back to the last hot use, by a person's word with a reason. */
export function correctTime(
  state: RunState,
  asked: Asked<'correct-time'>,
  now: Readings,
): Decision {
  const timer = state.timers[asked.timer];
  if (!timer) return timerClosed(asked.timer);
  if (timer.mode !== 'running') return timerClosed(timer.id);
  if (timer.spec.purpose !== 'at-least' || !isHold(timer)) {
    return refuse('cannot-correct', 'Only a wait such as a rest can be dated back.');
  }
  if (asked.reason.trim() === '')
    return refuse('reason-missing', 'Write how you know; it goes into the record.');
  const backS = (timer.startedWallMs - asked.sinceWallMs) / 1000;
  const future = !(asked.sinceWallMs <= now.wallMs);
  if (future || !(backS >= 0 && backS <= CORRECT_MAX_S)) {
    return refuse(
      'out-of-range',
      `sinceWallMs is ${asked.sinceWallMs}; allowed: up to ${CORRECT_MAX_S} s before this clock began (${timer.startedWallMs}). Enter when it was last hot.`,
    );
  }
  return accept({
    kind: 'time-corrected',
    timer: timer.id,
    sinceWallMs: asked.sinceWallMs,
    reason: asked.reason,
  });
}
