import { nextTurnMs } from './next-turn.ts';

/** `beat`: the timer; `woke`: the page came back, was shown, or resumed; `hiding`: the last event that may come while the page lives. */
type TurnCause = 'beat' | 'woke' | 'hiding';

type TurnDriver = {
  /** Seconds until something can come due, from the view; null: nothing can. */
  wakeIn(seconds: number | null): void;
  stop(): void;
};

/** Interval of heartbeats, s. The tighter, the more of a rest is proved after a crash. */
const HEARTBEAT_S = 30;

type DriverOptions = {
  readonly onTurn: (cause: TurnCause) => void;
  /** Every 30 s, and when the page is being hidden, but not left. */
  readonly onHeartbeat: () => void;
};

/**
 * Calls back at every moment worth looking at the clocks. Every call is only a
 * hint: a lost one loses nothing, since each turn computes from anchors.
 */
export function driveTurns({ onTurn, onHeartbeat }: DriverOptions): TurnDriver {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let dueAtMonoMs: number | null = null;
  const seen = (): boolean => document.visibilityState === 'visible';

  const arm = (): void => {
    clearTimeout(timer);
    const wakeInS = dueAtMonoMs === null ? null : (dueAtMonoMs - performance.now()) / 1000;
    timer = setTimeout(beat, nextTurnMs(Date.now(), wakeInS, seen()));
  };
  const beat = (): void => {
    // Answered by the turn's own view; without one, the next second asks again.
    dueAtMonoMs = null;
    arm();
    onTurn('beat');
  };
  const woke = (): void => {
    arm();
    onTurn('woke');
  };
  // WebKitGTK never ends a transaction that is begun while the page is left, and
  // the next page waits for it in vain: whoever leaves writes nothing more.
  let isLeft = false;
  const left = (): void => void (isLeft = true);
  const shown = (): void => {
    isLeft = false;
    woke();
  };
  const changed = (): void => {
    if (seen()) return woke();
    if (isLeft) return;
    onHeartbeat();
    onTurn('hiding');
    arm();
  };
  const heartbeat = setInterval(onHeartbeat, HEARTBEAT_S * 1000);
  document.addEventListener('visibilitychange', changed);
  document.addEventListener('resume', woke);
  window.addEventListener('pagehide', left);
  window.addEventListener('pageshow', shown);
  window.addEventListener('focus', woke);
  arm();

  return {
    wakeIn(seconds) {
      dueAtMonoMs = seconds === null ? null : performance.now() + seconds * 1000;
      arm();
    },
    stop() {
      clearTimeout(timer);
      clearInterval(heartbeat);
      document.removeEventListener('visibilitychange', changed);
      document.removeEventListener('resume', woke);
      window.removeEventListener('pagehide', left);
      window.removeEventListener('pageshow', shown);
      window.removeEventListener('focus', woke);
    },
  };
}
