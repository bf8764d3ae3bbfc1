import type { Alert } from '../../core/run/index.ts';
import { alertKey, type TimedAlert } from './plan-soundings.ts';

/** What is remembered of an alert's sound between two calls. Seconds of the page's monotonic clock. */
export type TrackedAlert = {
  readonly family: Alert['family'];
  readonly startMonoS: number;
  readonly round: number;
  /** One of its soundings has really been played by the audio clock. */
  readonly heard: boolean;
};

/** Differences of due times below this are jitter of reading clocks, s. */
const JITTER_S = 0.05;
/** An alert not heard this long after its start was missed (blocked, frozen) and starts afresh, s. */
const MISSED_S = 0.5;
/** An alert due again no sooner than this after being heard is a new one (extended), s. */
const AGAIN_S = 2;

/**
 * Follows alerts from view to view. A start is kept once heard, so that growth
 * goes on; an alert that should have sounded and did not starts now, from the
 * first step, as soon as sound is possible.
 */
export function trackAlerts(
  before: ReadonlyMap<string, TrackedAlert>,
  alerts: readonly Alert[],
  nowMonoS: number,
  heardNow: (alert: string) => boolean,
): ReadonlyMap<string, TrackedAlert> {
  const tracked = new Map<string, TrackedAlert>();
  for (const alert of alerts) {
    const old = before.get(alert.id);
    const heard =
      old !== undefined && (old.heard || heardNow(alertKey({ id: alert.id, round: old.round })));
    tracked.set(alert.id, follow(old && { ...old, heard }, alert, nowMonoS));
  }
  return tracked;
}

function follow(old: TrackedAlert | undefined, alert: Alert, nowMonoS: number): TrackedAlert {
  const dueMonoS = nowMonoS + alert.inS;
  const fresh = { family: alert.family, startMonoS: dueMonoS, round: 1, heard: false };
  if (!old) return fresh;
  if (old.heard) {
    const again = !alert.sounding && alert.inS > AGAIN_S;
    return again ? { ...fresh, round: old.round + 1 } : old;
  }
  if (alert.sounding) {
    if (nowMonoS - old.startMonoS > MISSED_S) return { ...fresh, round: old.round + 1 };
    return old.startMonoS <= nowMonoS ? old : { ...old, startMonoS: nowMonoS };
  }
  return Math.abs(old.startMonoS - dueMonoS) <= JITTER_S ? old : { ...old, startMonoS: dueMonoS };
}

/** Alerts as the planner wants them. */
export function timedAlerts(
  tracked: ReadonlyMap<string, TrackedAlert>,
  nowMonoS: number,
): readonly TimedAlert[] {
  return [...tracked].map(([id, { family, startMonoS, round }]) => ({
    id,
    family,
    round,
    startInS: startMonoS - nowMonoS,
  }));
}
