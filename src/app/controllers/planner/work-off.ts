import { JOBS, type InputOf, type JobName, type OutputOf, type Progress } from './jobs.ts';
import { JobStopped } from './job-stopped.ts';

/** Whom a job answers to while it runs. */
export type Watcher = {
  readonly isStopped: () => boolean;
  readonly onProgress: (progress: Progress) => void;
};

/** Lets everything else that waits for this thread have its turn. */
const breathe = (): Promise<void> => new Promise((go) => setTimeout(go));

/**
 * Works a job off on the thread it is called on, piece by piece.
 * @throws JobStopped when it was stopped between two pieces; whatever the job throws
 */
export async function workOff<K extends JobName>(
  name: K,
  input: InputOf<K>,
  { isStopped, onProgress }: Watcher,
): Promise<OutputOf<K>> {
  const job = JOBS[name] as (given: InputOf<K>) => Generator<Progress, OutputOf<K>>;
  const pieces = job(input);
  for (;;) {
    await breathe();
    if (isStopped()) throw new JobStopped();
    const { done, value } = pieces.next();
    if (done) return value;
    onProgress(value);
  }
}
