import type { WorkerEvents, WorkerPort } from '../../../host/worker/index.ts';
import type { Answered, Asked } from './wire.ts';

/** A worker that is not there by then is not coming, ms: it is a file of this tablet. */
const START_MS = 15_000;
/** Nothing heard for as long, with a job open: it is stuck, ms. One piece of a job takes a second or two. */
const SILENT_MS = 60_000;
/** So often a worker dies at most before no other is started; one that never answered is the last. */
const MOST_DEATHS = 2;

export type ThreadPorts = {
  /** @throws when there can be no worker */
  readonly start: (events: WorkerEvents) => WorkerPort;
  /** An answer came. */
  readonly heard: (answer: Answered) => void;
  /** It is gone with whatever it was asked. */
  readonly died: () => void;
  /** Is anything asked that was not answered? */
  readonly isOpen: () => boolean;
};

/** The planner's worker, started when it is asked first, and given up when it dies or falls silent. */
export function createThread({ start, heard, died, isOpen }: ThreadPorts) {
  let worker: WorkerPort | undefined;
  let limit: ReturnType<typeof setTimeout> | undefined;
  let deaths = 0;
  let mayStart = true;
  let hasAnswered = false;

  const giveUp = (): void => {
    clearTimeout(limit);
    worker?.end();
    worker = undefined;
    deaths += 1;
    mayStart = hasAnswered && deaths < MOST_DEATHS;
    died();
  };
  const watch = (): void => {
    clearTimeout(limit);
    if (worker && isOpen()) limit = setTimeout(giveUp, hasAnswered ? SILENT_MS : START_MS);
  };
  const begin = (): void => {
    hasAnswered = false;
    try {
      const mine: WorkerPort = start({
        onMessage: (data) => {
          if (worker !== mine) return;
          hasAnswered = true;
          heard(data as Answered);
          watch();
        },
        onFailed: () => worker === mine && giveUp(),
      });
      worker = mine;
    } catch {
      mayStart = false;
    }
  };
  return {
    /** False: it was not sent, there is no such thread or it cannot be copied. */
    ask(asked: Asked): boolean {
      if (!worker && mayStart) begin();
      if (!worker) return false;
      try {
        worker.send(asked);
      } catch {
        return false;
      }
      watch();
      return true;
    },
    stop: (id: number): void => worker?.send({ id, stop: true } satisfies Asked),
    isGone: (): boolean => !worker && !mayStart,
  };
}
