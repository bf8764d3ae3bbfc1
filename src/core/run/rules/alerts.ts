import { ALERT_AHEAD_S } from '../model/constants.ts';
import type { TimerView, RunView } from '../model/types.ts';

/**
 * - `due`: must be answered; repeats and grows.
 * - `soon`: a look, or a minimum that will be over shortly.
 * - `done`: a wait is over.
 * - `hazard`: a limit with a fault behind it.
 */
export type AlertFamily = 'due' | 'soon' | 'done' | 'hazard';

export type Alert = {
  /** Timer id and family; the same alert keeps its id from view to view. */
  readonly id: string;
  readonly timer: string;
  readonly family: AlertFamily;
  /** Seconds from now; 0 when it is sounding. */
  readonly inS: number;
  /** It is sounding now and nobody has answered. */
  readonly sounding: boolean;
  /** Seconds from now when it must fall silent because a rest day begins; absent: no rest day is known. */
  readonly silentInS?: number;
};

/** Seconds from now during which nothing sounds (a rest day); reported afterwards. */
export type QuietSpan = { readonly fromS: number; readonly toS: number };

/** The rest day that is now and the next one, as spans of silence (I-19). */
function restDaysOf(view: RunView): readonly QuietSpan[] {
  const { restDay, nextRestDay } = view;
  return [
    ...(restDay ? [{ fromS: 0, toS: restDay.leftS }] : []),
    ...(nextRestDay ? [{ fromS: nextRestDay.inS, toS: nextRestDay.overInS }] : []),
  ];
}

/** A wait that a person is to end must be answered; one that ends by itself only tells. */
function familyOf(view: RunView, clock: TimerView): AlertFamily {
  switch (clock.role) {
    case 'limit':
      return 'hazard';
    case 'estimate':
      return 'soon';
    case 'hold': {
      const stages = view.steps.find(({ step }) => step.id === clock.step)?.step.stages;
      const ofTimer = stages?.find(({ id }) => id === clock.stage);
      return ofTimer?.say === undefined ? 'done' : 'due';
    }
    case 'reminder':
    case 'freshness':
      return 'due';
  }
}

/** Would it come due by itself while the run stands as it does? No minimum does that cannot be written (I-03). */
function comes(view: RunView, clock: TimerView): boolean {
  if (clock.status !== 'running' && clock.status !== 'unproved') return false;
  return clock.purpose === 'at-most' || !(view.storageDown || view.status === 'reviewing');
}

/**
 * What sounds now and what will within the next 150 s, for a scheduler that
 * works ahead; soonest first. Sounds inside a quiet span are left out: the
 * clock stays due, so it sounds at the first call after the span; one that
 * begins before a span says when it must fall silent.
 * @param quiet default: the rest days of the view
 */
export function alertsDue(
  view: RunView,
  quiet: readonly QuietSpan[] = restDaysOf(view),
): readonly Alert[] {
  if (view.status === 'closed' || view.status === 'drafting') return [];
  const alerts: Alert[] = [];
  const add = (timer: string, family: AlertFamily, inS: number, sounding: boolean): void => {
    if (quiet.some((span) => inS >= span.fromS && inS < span.toS)) return;
    const silentInS = Math.min(...quiet.map((span) => span.fromS).filter((fromS) => fromS > inS));
    alerts.push({
      id: `${timer}!${family}`,
      timer,
      family,
      inS,
      sounding,
      ...(Number.isFinite(silentInS) ? { silentInS } : {}),
    });
  };
  for (const clock of view.timers) {
    const sounding = clock.alerting;
    if (!sounding && !(comes(view, clock) && clock.leftS <= ALERT_AHEAD_S)) continue;
    add(clock.id, familyOf(view, clock), sounding ? 0 : clock.leftS, sounding);
  }
  for (const cooling of view.coolings) {
    const inS = cooling.alerting ? 0 : cooling.leftS;
    if ((cooling.over && !cooling.alerting) || inS > ALERT_AHEAD_S) continue;
    add(cooling.id, 'due', inS, cooling.alerting);
  }
  return alerts.toSorted((a, b) => a.inS - b.inS);
}
