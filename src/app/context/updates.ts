import { createSignal } from 'solid-js';
import { watchUpdates, type UpdateState } from '../../host/updates.ts';

/** A newer version of the app: told when no run is open, taken only by a person's choice. */
export function createUpdates(isRunOpen: () => Promise<boolean>) {
  const [state, setState] = createSignal<UpdateState>('none');
  // In development there is no built worker to register.
  const updates = import.meta.env.PROD
    ? watchUpdates({ onState: setState, isRunOpen, worker: '/service-worker.js' })
    : undefined;
  return {
    waiting: () => state() === 'waiting' || state() === 'replaced',
    take: () => void updates?.apply(),
    check: () => updates?.check(),
  };
}
