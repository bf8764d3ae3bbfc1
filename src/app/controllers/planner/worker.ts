/** The planner's own thread. It answers what it is asked, several jobs in turns, and keeps nothing. */
import { errorData, type Answered, type Asked } from './wire.ts';
import { workOff } from './work-off.ts';

declare const self: {
  postMessage: (data: Answered) => void;
  addEventListener: (name: 'message', heard: (event: { readonly data: Asked }) => void) => void;
};

const answer = (data: Answered): void => {
  // A worker speaks to its own page only: there is no origin to name.
  // oxlint-disable-next-line unicorn/require-post-message-target-origin
  self.postMessage(data);
};

/** Jobs at work: whether each is wanted still. */
const wanted = new Set<number>();

self.addEventListener('message', ({ data }) => {
  const { id } = data;
  if ('stop' in data) {
    wanted.delete(id);
    return;
  }
  wanted.add(id);
  workOff(data.name, data.input as never, {
    isStopped: () => !wanted.has(id),
    onProgress: (progress) => answer({ id, progress }),
  })
    .then((output) => answer({ id, output }))
    .catch((error: unknown) => answer({ id, error: errorData(error) }))
    .finally(() => wanted.delete(id));
});
answer({ ready: true });
