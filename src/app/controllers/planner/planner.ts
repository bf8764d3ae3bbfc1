import { startWorker, type WorkerEvents, type WorkerPort } from '../../../host/worker/index.ts';
import type { InputOf, JobName, OutputOf, Progress } from './jobs.ts';
import { JobStopped } from './job-stopped.ts';
import { createThread } from './thread.ts';
import { errorOf, type Answered, type Asked } from './wire.ts';

/** Address of the worker's chunk. Set by the build. */
declare const PLANNER_WORKER_URL: string;

/** Before the page's own thread is taken, ms: what the page says of it is drawn first. */
const DRAWN_MS = 40;

type AskOptions = {
  readonly onProgress?: (progress: Progress) => void;
  /** Aborted: the job is stopped at its next piece, and the promise rejects with JobStopped. */
  readonly signal?: AbortSignal;
};

/** Has a job done; rejects with what the job throws, or with JobStopped. */
export type Ask = <K extends JobName>(
  name: K,
  input: InputOf<K>,
  options?: AskOptions,
) => Promise<OutputOf<K>>;

type PlannerPorts = {
  /** @throws when there can be no worker */
  readonly start: (events: WorkerEvents) => WorkerPort;
  /** The same jobs, for the page's own thread; loaded only when they are needed there. */
  readonly here: () => Promise<Pick<typeof import('./work-off.ts'), 'workOff'>>;
};

type Open = {
  readonly asked: Extract<Asked, { input: unknown }>;
  readonly options: AskOptions;
  readonly resolve: (output: unknown) => void;
  readonly reject: (error: unknown) => void;
};

const drawn = (): Promise<void> => new Promise((go) => setTimeout(go, DRAWN_MS));

/**
 * Has plans worked out on a thread of their own. Where there is no such thread, or it died, the
 * same jobs run on the page's: it may stand still for a moment, and no plan is lost.
 */
export function createPlanner({ start, here }: PlannerPorts) {
  const open = new Map<number, Open>();
  let last = 0;

  const workHere = async (id: number): Promise<void> => {
    const job = open.get(id);
    if (!job) return;
    const { asked, options, resolve, reject } = job;
    try {
      const [{ workOff }] = await Promise.all([here(), drawn()]);
      const onProgress = (progress: Progress): void => options.onProgress?.(progress);
      const watcher = { isStopped: () => !open.has(id), onProgress };
      resolve(await workOff(asked.name, asked.input as never, watcher));
    } catch (error) {
      reject(error);
    } finally {
      open.delete(id);
    }
  };
  const heard = (answer: Answered): void => {
    if ('ready' in answer) return;
    const job = open.get(answer.id);
    if ('progress' in answer) return job?.options.onProgress?.(answer.progress);
    open.delete(answer.id);
    if ('output' in answer) job?.resolve(answer.output);
    else job?.reject(errorOf(answer.error));
  };
  const thread = createThread({
    start,
    heard,
    died: () => open.forEach((_job, id) => void workHere(id)),
    isOpen: () => open.size > 0,
  });
  const ask: Ask = (name, input, options = {}) =>
    new Promise((resolve, reject) => {
      if (options.signal?.aborted) return reject(new JobStopped());
      last += 1;
      const id = last;
      const asked = { id, name, input };
      open.set(id, { asked, options, resolve: resolve as Open['resolve'], reject });
      options.signal?.addEventListener('abort', () => {
        if (!open.delete(id)) return;
        thread.stop(id);
        reject(new JobStopped());
      });
      if (!thread.ask(asked)) void workHere(id);
    });
  return {
    ask,
    /** Work is done on the page's own thread: there is no other. */
    isHere: thread.isGone,
  };
}

/** The page's planner: one thread for all that plans. */
export const planner = createPlanner({
  start: (events) => startWorker(PLANNER_WORKER_URL, events),
  here: () => import('./work-off.ts'),
});
