/**
 * - `asking`: not known yet;
 * - `leader`: this tab may write;
 * - `follower`: another tab writes; this one waits in line and only shows;
 * - `replaced`: a person let another tab take over; this one only shows;
 * - `not-supported`: no locks here; only the epoch in the store guards writing.
 */
export type LockState = 'asking' | 'leader' | 'follower' | 'replaced' | 'not-supported';

type TabLock = {
  /**
   * Takes the lock from a tab that no longer beats. Only on a person's word,
   * and only when `leaderSilence` says silent: a frozen leader keeps the lock,
   * and loses it here; the epoch of the store stops its late writes.
   */
  steal(): void;
  /**
   * Asks the tab that leads to hand the lock over, by a person's word. A tab
   * that lives finishes its writing first and goes to the end of the line; one
   * that is frozen does not hear it: see `steal`.
   */
  askFor(): void;
};

type TabLockOptions = {
  readonly onState: (state: LockState) => void;
  /** Another tab asks for the lock: finish writing, then true; false keeps it. */
  readonly onAsked: () => Promise<boolean>;
};

const LOCK_NAME = 'glowpour-writer';
/** Channel on which a tab asks for the lock; any message on it is the question. */
const CHANNEL_NAME = 'glowpour-hand-over';

/** Enters the line for the one writer's lock; a leader that ends frees it for the next by itself. */
export function createTabLock({ onState, onAsked }: TabLockOptions): TabLock {
  let state: LockState = 'asking';
  let letGo: (() => void) | undefined;
  let waiting: AbortController | undefined;
  const set = (next: LockState): void => {
    if (next === state) return;
    state = next;
    onState(next);
  };
  const locks = 'locks' in navigator ? navigator.locks : undefined;

  /** Holds the lock until `letGo`. Called with null when it was asked for at once and is taken. */
  const hold = (lock: Lock | null): Promise<void> | undefined => {
    if (!lock) {
      set('follower');
      wait();
      return undefined;
    }
    return new Promise((resolve) => {
      letGo = resolve;
      set('leader');
    });
  };
  const ask = (options: LockOptions): void => {
    if (!locks) return set('not-supported');
    locks.request(LOCK_NAME, options, hold).catch((error: unknown) => {
      const aborted = error instanceof DOMException && error.name === 'AbortError';
      // Aborted while leading: stolen. Aborted while waiting: by this tab's own steal.
      if (aborted && state === 'leader') set('replaced');
      else if (!aborted) set('not-supported');
    });
  };
  const wait = (): void => {
    waiting = new AbortController();
    ask({ signal: waiting.signal });
  };

  /** Leaves the lead and stands in line again, behind the tab that asked. */
  const handOver = async (): Promise<void> => {
    if (state !== 'leader' || !(await onAsked())) return;
    set('follower');
    wait();
    letGo?.();
  };
  const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(CHANNEL_NAME) : undefined;
  channel?.addEventListener('message', () => void handOver());

  ask({ ifAvailable: true });
  return {
    steal() {
      if (state !== 'follower' && state !== 'replaced') return;
      waiting?.abort();
      ask({ steal: true });
    },
    askFor() {
      // A tab that was replaced no longer stands in line.
      if (state === 'replaced') {
        set('follower');
        wait();
      }
      // A channel reaches only pages of this origin and takes no target.
      // oxlint-disable-next-line unicorn/require-post-message-target-origin
      channel?.postMessage('please');
    },
  };
}
