import { createSignal } from 'solid-js';
import type { Updates, UpdateState } from '../../host/updates/index.ts';

/** A newer version of the app: told when no run is open, taken only by a person's choice. */
export function createUpdates(isRunOpen: () => Promise<boolean>) {
  const [state, setState] = createSignal<UpdateState>('none');
  let updates: Updates | undefined;
  const watch = async (): Promise<void> => {
    const { watchUpdates } = await import('../../host/updates/index.ts');
    updates = watchUpdates({ onState: setState, isRunOpen, worker: './service-worker.js' });
  };
  // In development there is no built worker to register. An open run comes first, then its updates.
  // Where it does not load there is no network, and nothing newer to be had: the next visit looks again.
  if (import.meta.env.PROD) watch().catch(() => setState('not-supported'));
  return {
    waiting: () => state() === 'waiting' || state() === 'replaced',
    /** Another page let the new version in: pieces of this one's may be gone. */
    isReplaced: () => state() === 'replaced',
    take: () => updates?.apply(),
    check: () => updates?.check(),
  };
}
