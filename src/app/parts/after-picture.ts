import { createEffect, createSignal, on, onCleanup, untrack } from 'solid-js';

/**
 * The value as it was when the last picture was painted: what hangs on it is drawn in a task of its
 * own right after what was pressed, and a press is answered without it. At first it is the value itself.
 */
export function afterPicture<T>(of: () => T): () => T {
  const [shown, setShown] = createSignal(untrack(of));
  createEffect(
    on(
      of,
      (value) => {
        let task: ReturnType<typeof setTimeout> | undefined;
        const frame = requestAnimationFrame(() => (task = setTimeout(() => setShown(() => value))));
        onCleanup(() => {
          cancelAnimationFrame(frame);
          clearTimeout(task);
        });
      },
      { defer: true },
    ),
  );
  return shown;
}
