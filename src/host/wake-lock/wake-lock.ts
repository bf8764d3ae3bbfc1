import { withTimeout } from '../timeout/index.ts';

/**
 * - `off`: not wanted now;
 * - `held`: the screen stays on;
 * - `lost`: wanted, but the device took it or refuses (low battery, hidden page); asked again when seen, and every half minute while seen;
 * - `not-supported`: set the device's own screen time-out to never.
 */
export type WakeState = 'off' | 'held' | 'lost' | 'not-supported';

type WakeLock = {
  /** Wanted from now on. Call it at the start of a run, from a person's touch. */
  keep(): void;
  letGo(): void;
};

/** Longest wait for the device's answer, ms. Common practice, no published source. */
const ANSWER_LIMIT_MS = 5000;

/** Pause before asking again after the device took the lock, ms, so that two stubborn sides do not spin. */
const ASK_AGAIN_MS = 1000;

/** Pause before asking again after the device refused, ms. Common practice, no published source: a tablet that was plugged in soon keeps its screen on. */
const REFUSED_MS = 30_000;

/** Keeps the screen on, and tells the truth about it: the lock is never given back by itself. */
export function createWakeLock(onState: (state: WakeState) => void): WakeLock {
  let state: WakeState = 'off';
  let wanted = false;
  let asking = false;
  let sentinel: WakeLockSentinel | undefined;
  let again: ReturnType<typeof setTimeout> | undefined;
  const api = 'wakeLock' in navigator ? navigator.wakeLock : undefined;
  const set = (next: WakeState): void => {
    if (next === state) return;
    state = next;
    onState(next);
  };

  /** Takes what the device gave, even when it came after the limit. */
  const accept = (given: WakeLockSentinel): void => {
    if (!wanted || sentinel) {
      void given.release().catch(() => undefined);
      return;
    }
    sentinel = given;
    set('held');
    given.addEventListener('release', () => {
      if (sentinel !== given) return;
      sentinel = undefined;
      lost(ASK_AGAIN_MS);
    });
  };
  /** Says so and asks again, unless an answer that came late gave it. */
  const lost = (askInMs: number): void => {
    if (sentinel) return;
    set(wanted ? 'lost' : 'off');
    clearTimeout(again);
    if (wanted) again = setTimeout(request, askInMs);
  };
  const request = (): void => {
    if (!wanted || asking || sentinel || document.visibilityState !== 'visible') return;
    if (!api) return set('not-supported');
    asking = true;
    const answer = api.request('screen');
    answer.then(accept, () => undefined);
    withTimeout('keeping-screen-on', ANSWER_LIMIT_MS, answer)
      .catch(() => lost(REFUSED_MS))
      .finally(() => {
        asking = false;
      });
  };
  document.addEventListener('visibilitychange', request);

  return {
    keep() {
      wanted = true;
      request();
    },
    letGo() {
      wanted = false;
      clearTimeout(again);
      const held = sentinel;
      sentinel = undefined;
      if (state !== 'not-supported') set('off');
      void held?.release().catch(() => undefined);
    },
  };
}
