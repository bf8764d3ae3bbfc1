import { createEffect, createSignal } from 'solid-js';
import type { RunEntry } from '../../core/journal/index.ts';
import { openRunTrace, type OpenRunTrace } from '../../host/trace/index.ts';

/** An open run that was here and is not in the store any more: told, so that an emptied store is no silent reset. */
export function createLostRun(openRun: () => RunEntry | undefined) {
  const [lost, setLost] = createSignal<OpenRunTrace>();
  createEffect(() => {
    const open = openRun();
    if (!open) return;
    openRunTrace.write({ id: open.id, name: open.name, openedWallMs: open.openedWallMs });
    setLost(undefined);
  });
  return {
    lost,
    /** Call it with the list of runs once it was read. */
    check(runs: readonly RunEntry[]): void {
      const trace = openRunTrace.read();
      if (!trace) return;
      if (!runs.some((run) => run.id === trace.id)) setLost(trace);
      else if (runs.some((run) => run.id === trace.id && run.closed)) openRunTrace.clear();
    },
    /** A person has read it. */
    dismiss(): void {
      openRunTrace.clear();
      setLost(undefined);
    },
  };
}

export type LostRun = ReturnType<typeof createLostRun>;
