/** What comes back from a worker. */
export type WorkerEvents = {
  readonly onMessage: (data: unknown) => void;
  /** It could not be loaded, or something in it was caught by nobody. */
  readonly onFailed: () => void;
};

/** A second thread. What is sent is copied: data only. */
export type WorkerPort = {
  /** @throws DataCloneError when what is sent is no plain data */
  readonly send: (data: unknown) => void;
  /** Ends it at once, whatever it is doing. */
  readonly end: () => void;
};

/**
 * Starts a module in a thread of its own.
 * @throws when the browser has no workers, or forbids this one
 */
export function startWorker(url: string, { onMessage, onFailed }: WorkerEvents): WorkerPort {
  const worker = new Worker(url, { type: 'module' });
  worker.addEventListener('message', ({ data }) => onMessage(data));
  worker.addEventListener('messageerror', onFailed);
  worker.addEventListener('error', (event) => {
    // It is taken care of here: no page-wide notice.
    event.preventDefault();
    onFailed();
  });
  return {
    // A worker belongs to its page: there is no origin to name.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    send: (data) => worker.postMessage(data),
    end: () => worker.terminate(),
  };
}
