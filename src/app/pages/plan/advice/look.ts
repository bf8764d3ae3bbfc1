import { createEffect, createSignal, on, onCleanup } from 'solid-js';
import type { Planned } from '../../../../core/advice/index.ts';
import { t } from '../../../context/language.ts';
import type { Helpful, Progress } from '../../../controllers/planner/jobs.ts';
import { planner } from '../../../controllers/planner/planner.ts';
import { JobStopped } from '../../../controllers/planner/job-stopped.ts';

function namesOf() {
  return {
    kettle: t('advice.vessel.kettle'),
    'stove-kettle': t('advice.vessel.stove-kettle'),
    urn: t('advice.vessel.urn'),
  };
}

/** What would help a plan, one plan after the other; another plan ends the search, and its answer is gone. */
export function createLook(before: () => Planned) {
  const [found, setFound] = createSignal<Helpful>();
  const [progress, setProgress] = createSignal<Progress>();
  let search: AbortController | undefined;
  const stop = (): void => {
    search?.abort();
    search = undefined;
    setProgress(undefined);
  };
  const forget = (): void => {
    stop();
    setFound(undefined);
  };
  createEffect(on(() => before().plan, forget));
  onCleanup(stop);

  const look = async (): Promise<void> => {
    forget();
    const mine = new AbortController();
    search = mine;
    const options = { names: namesOf(), earliestWallMs: Date.now() };
    try {
      const list = await planner.ask(
        'advice',
        { before: before(), options },
        { signal: mine.signal, onProgress: (now) => now && setProgress(now) },
      );
      setFound(list);
      setProgress(undefined);
    } catch (error) {
      if (error instanceof JobStopped) return;
      setProgress(undefined);
      throw error;
    }
  };
  return { found, progress, look, stop };
}
