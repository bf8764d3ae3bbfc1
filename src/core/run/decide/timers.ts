import { message } from '../../messages/index.ts';
import { CORRECT_MAX_S, EXTEND_MAX_S } from '../model/constants.ts';
import type { RunState, Timer } from '../model/state.ts';
import { isHold } from '../timers/timer.ts';
import type { Readings, Request } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

function timerClosed(id: string): Decision {
  return refuse('timer-closed', message('engine.timer.ended', { id }));
}

/** Is it sounding for an answer? Also after its stage ended by itself. */
export function isAlerting(timer: Timer): boolean {
  return timer.announced && !timer.acknowledged;
}

export function acknowledgeTimer(state: RunState, asked: Asked<'acknowledge-timer'>): Decision {
  const timer = state.timers[asked.timer];
  if (!timer) return timerClosed(asked.timer);
  if (!isAlerting(timer)) return refuse('not-alerting', message('engine.timer.does-not-call'));
  return accept({ kind: 'timer-acknowledged', timer: timer.id, cause: timer.cause });
}

/** A minimum may be made longer. An alarm may not be put off (I-07). */
export function extendTimer(state: RunState, asked: Asked<'extend-timer'>): Decision {
  const timer = state.timers[asked.timer];
  if (!timer) return timerClosed(asked.timer);
  if (timer.mode !== 'running') return timerClosed(timer.id);
  if (timer.spec.purpose === 'at-most')
    return refuse('cannot-extend', message('engine.timer.cannot-extend'));
  if (!(asked.byS > 0 && asked.byS <= EXTEND_MAX_S)) {
    return refuse(
      'out-of-range',
      message('engine.timer.extend-range', { byS: asked.byS, mostS: EXTEND_MAX_S }),
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
    return refuse('cannot-correct', message('engine.timer.cannot-correct'));
  }
  if (asked.reason.trim() === '') return refuse('reason-missing', message('engine.reason.correct'));
  const backS = (timer.startedWallMs - asked.sinceWallMs) / 1000;
  const future = !(asked.sinceWallMs <= now.wallMs);
  if (future || !(backS >= 0 && backS <= CORRECT_MAX_S)) {
    return refuse(
      'out-of-range',
      message('engine.timer.correct-range', {
        sinceWallMs: asked.sinceWallMs,
        mostS: CORRECT_MAX_S,
        startedWallMs: timer.startedWallMs,
      }),
    );
  }
  return accept({
    kind: 'time-corrected',
    timer: timer.id,
    sinceWallMs: asked.sinceWallMs,
    reason: asked.reason,
  });
}
