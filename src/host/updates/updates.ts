import { Workbox } from 'workbox-window';

/**
 * - `none`: nothing new;
 * - `waiting`: a new version is here and waits;
 * - `replaced`: another tab let the new version in; reload when no run is open;
 * - `not-supported`: no offline use here.
 */
export type UpdateState = 'none' | 'waiting' | 'replaced' | 'not-supported';

export type Updates = {
  /**
   * Lets the new version in and reloads, by a person's choice. Refused while a
   * run is open in any tab: the reload would tear it.
   */
  apply(): Promise<'reloading' | 'run-open' | 'nothing-waits'>;
  /** Looks for a new version now; a lost network is no error. */
  check(): void;
};

type UpdateOptions = {
  readonly onState: (state: UpdateState) => void;
  /** Asks the store, not the page: another tab may hold the run. */
  readonly isRunOpen: () => Promise<boolean>;
  /** Address of the worker, beside the page, at the root of what it serves. */
  readonly worker: string;
};

/** Registers the offline worker and tells when a new version waits; nothing happens by itself. */
export function watchUpdates({ onState, isRunOpen, worker }: UpdateOptions): Updates {
  let state: UpdateState = 'none';
  let applying = false;
  const set = (next: UpdateState): void => {
    if (next === state) return;
    state = next;
    onState(next);
  };
  const box = 'serviceWorker' in navigator ? new Workbox(worker) : undefined;
  if (box) {
    // The browser's own stay of a waiting worker keeps an open run undisturbed.
    box.addEventListener('waiting', () => set('waiting'));
    box.addEventListener('controlling', ({ isUpdate }) => {
      if (applying) location.reload();
      else if (isUpdate) set('replaced');
    });
    // Why is the browser's own affair: to the app it is the same as a browser without workers.
    box.register().catch(() => set('not-supported'));
  } else {
    state = 'not-supported';
  }
  return {
    async apply() {
      if (state !== 'waiting' && state !== 'replaced') return 'nothing-waits';
      if (await isRunOpen()) return 'run-open';
      applying = true;
      if (state === 'replaced') location.reload();
      else box?.messageSkipWaiting();
      return 'reloading';
    },
    check() {
      box?.update().catch(() => undefined);
    },
  };
}
