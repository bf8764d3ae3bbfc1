import { createEffect, createSignal } from 'solid-js';
import type { StoredRun } from '../../../core/journal/index.ts';
import { openRunMarker, type OpenRunMarker } from '../../../host/marker/index.ts';

/** An open run that was here and is not in the store any more: told, so that an emptied store is no silent reset. */
export function createLostRun(openRun: () => StoredRun | undefined) {
  const [lost, setLost] = createSignal<OpenRunMarker>();
  createEffect(() => {
    const open = openRun();
    if (!open) return;
    openRunMarker.write({ id: open.id, name: open.name, openedWallMs: open.openedWallMs });
    setLost(undefined);
  });
  return {
    lost,
    /** Call it with the list of runs once it was read. */
    check(runs: readonly StoredRun[]): void {
      const marker = openRunMarker.read();
      if (!marker) return;
      if (!runs.some((run) => run.id === marker.id)) setLost(marker);
      else if (runs.some((run) => run.id === marker.id && run.closed)) openRunMarker.clear();
    },
    /** A person has read it. */
    dismiss(): void {
      openRunMarker.clear();
      setLost(undefined);
    },
  };
}

export type LostRun = ReturnType<typeof createLostRun>;
