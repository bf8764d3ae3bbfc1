import { startWorker, type WorkerEvents, type WorkerPort } from '../../../host/worker/index.ts';
import type { InputOf, JobName, OutputOf, Progress } from './jobs.ts';
import { Stopped } from './stopped.ts';
import { errorOf, type Answered, type Asked } from './wire.ts';

/** Address of the worker's chunk. Set by the build. */
declare const PLANNER_WORKER_URL: string;

/** A worker that is not there by then is not coming, ms: it is a file of this tablet. */
const START_MS = 15_000;
/** Nothing heard for as long, with a job open: it is stuck, ms. One piece of a job takes a second or two. */
const SILENT_MS = 60_000;
/** So often a worker that once worked is started anew after it died. */
const MOST_DEATHS = 2;

export type AskOptions = {
  readonly onProgress?: (progress: Progress) => void;
  /** Aborted: the job is stopped at its next piece, and the promise rejects with Stopped. */
  readonly signal?: AbortSignal;
};

/** Has a job done; rejects with what the job throws, or with Stopped. */
export type Ask = <K extends JobName>(
  name: K,
  input: InputOf<K>,
  options?: AskOptions,
) => Promise<OutputOf<K>>;

export type PlannerPorts = {
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

/**
 * Has plans worked out on a thread of their own. Where there is no such thread, or it died, the
 * same jobs run on the page's: it may stand still for a moment, and no plan is lost.
 */
export function createPlanner({ start, here }: PlannerPorts) {
  const open = new Map<number, Open>();
  let worker: WorkerPort | undefined;
  let limit: ReturnType<typeof setTimeout> | undefined;
  let last = 0;
  let deaths = 0;
  /** It may be tried (again). */
  let mayStart = true;
  let answered = false;

  const watch = (ms: number): void => {
    clearTimeout(limit);
    limit = worker && open.size > 0 ? setTimeout(died, ms) : undefined;
  };
  const workHere = async (id: number): Promise<void> => {
    const job = open.get(id);
    if (!job) return;
    const { asked, options, resolve, reject } = job;
    try {
      const { workOff } = await here();
      const onProgress = (progress: Progress): void => options.onProgress?.(progress);
      const watcher = { isStopped: () => !open.has(id), onProgress };
      resolve(await workOff(asked.name, asked.input as never, watcher));
    } catch (error) {
      reject(error);
    } finally {
      open.delete(id);
    }
  };
  function died(): void {
    if (!worker) return;
    worker.end();
    worker = undefined;
    clearTimeout(limit);
    deaths += 1;
    mayStart = answered && deaths < MOST_DEATHS;
    for (const id of open.keys()) void workHere(id);
  }
  const heard = (data: Answered): void => {
    answered = true;
    if (!('ready' in data)) {
      const job = open.get(data.id);
      if (job && 'progress' in data) job.options.onProgress?.(data.progress);
      else {
        open.delete(data.id);
        if ('output' in data) job?.resolve(data.output);
        else if ('error' in data) job?.reject(errorOf(data.error));
      }
    }
    watch(SILENT_MS);
  };
  const started = (): WorkerPort | undefined => {
    if (worker || !mayStart) return worker;
    answered = false;
    try {
      const mine: WorkerPort = start({
        onMessage: (data) => worker === mine && heard(data as Answered),
        onFailed: () => worker === mine && died(),
      });
      worker = mine;
    } catch {
      mayStart = false;
    }
    return worker;
  };

  const ask: Ask = (name, input, options = {}) =>
    new Promise((resolve, reject) => {
      if (options.signal?.aborted) return reject(new Stopped());
      last += 1;
      const id = last;
      const asked = { id, name, input };
      open.set(id, { asked, options, resolve: resolve as Open['resolve'], reject });
      options.signal?.addEventListener('abort', () => {
        if (!open.delete(id)) return;
        worker?.send({ id, stop: true } satisfies Asked);
        reject(new Stopped());
      });
      const at = started();
      if (!at) return void workHere(id);
      try {
        at.send(asked satisfies Asked);
        watch(answered ? SILENT_MS : START_MS);
      } catch {
        // What cannot be copied can be worked on where it is.
        void workHere(id);
      }
    });
  return {
    ask,
    /** Work is done on the page's own thread: there is no other. */
    isHere: () => !worker && !mayStart,
  };
}

/** The page's planner: one thread for all that plans. */
export const planner = createPlanner({
  start: (events) => startWorker(PLANNER_WORKER_URL, events),
  here: () => import('./work-off.ts'),
});
