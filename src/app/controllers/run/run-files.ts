import { reasonOf } from '../failures/reason.ts';
import { exportRun } from './export-run.ts';
import type { OpenRun } from './open-run.ts';
import type { RunControllerDeps } from './session-ports.ts';
import { ONLY_SHOWS } from './trouble.ts';

/** Runs as they are stored: read for the record, saved to a file, taken in from one. */
export function createRunFiles(
  deps: RunControllerDeps,
  open: OpenRun,
  refresh: () => Promise<void>,
) {
  return {
    exportText: (runId: string): Promise<string> =>
      exportRun(deps.store, runId, open.recordsOf(runId)),
    async importText(text: string): Promise<void> {
      if (!deps.mayWrite()) return deps.tell(ONLY_SHOWS);
      try {
        // Checking a foreign run needs the reader of kitchens and the rules of plans, which an open run does not.
        const { importRun } = await import('./import-run.ts');
        await importRun(deps.store, text, deps.newId(), deps.readClocks());
        await refresh();
      } catch (error) {
        deps.tell(reasonOf(error));
      }
    },
  };
}
