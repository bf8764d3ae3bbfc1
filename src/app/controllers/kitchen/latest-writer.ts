export type WriteState = 'idle' | 'writing' | 'failed';

/**
 * Writes what it is given, one at a time. While one is being written only the
 * latest of each key is kept: a drag gives thirty kitchens a second, and the
 * last one is what counts.
 */
export function latestWriter<T extends { readonly id: string }>(
  write: (value: T) => Promise<void>,
  onState: (state: WriteState) => void,
  onFailed: (error: unknown) => void,
) {
  const waiting = new Map<string, T>();
  const unwritten = new Map<string, T>();
  let working: Promise<void> | undefined;

  const work = async (): Promise<void> => {
    for (let [next] = waiting.values(); next; [next] = waiting.values()) {
      waiting.delete(next.id);
      try {
        await write(next);
        unwritten.delete(next.id);
      } catch (error) {
        unwritten.set(next.id, next);
        onFailed(error);
      }
    }
    working = undefined;
    onState(unwritten.size > 0 ? 'failed' : 'idle');
  };
  const begin = (): void => {
    if (working || waiting.size === 0) return;
    onState('writing');
    working = work();
  };
  return {
    put(value: T): void {
      waiting.set(value.id, value);
      begin();
    },
    /** Once more what could not be written, unless something later of it waits. */
    again(): void {
      for (const [id, value] of unwritten) if (!waiting.has(id)) waiting.set(id, value);
      begin();
    },
    /** When everything given so far was written, or could not be. */
    done: async (): Promise<void> => working,
  };
}
