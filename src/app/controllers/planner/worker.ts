/** The planner's own thread. It answers what it is asked, several jobs in turns, and keeps nothing. */
import { errorData, type Answered, type Asked } from './wire.ts';
import { workOff } from './work-off.ts';

declare const self: {
  postMessage: (data: Answered) => void;
  addEventListener: (name: 'message', heard: (event: { readonly data: Asked }) => void) => void;
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
    onProgress: (progress) => self.postMessage({ id, progress }),
  })
    .then((output) => self.postMessage({ id, output }))
    .catch((error: unknown) => self.postMessage({ id, error: errorData(error) }))
    .finally(() => wanted.delete(id));
});
self.postMessage({ ready: true });
