import { createSignal, onMount } from 'solid-js';

/** Where the page of an open run remembers what is no fact of it. */
export type RunMemory = {
  /** Id of the open run: what was remembered of another one is forgotten. */
  readonly run: string;
  readonly settings: {
    readAll(): Promise<Readonly<Record<string, unknown>>>;
    write(name: string, value: string): Promise<void>;
  };
};

const STORED_AS = 'run-note-';

/** What was remembered of this run; undefined where that was of another one, or nobody knows what it is. */
export function readNote(stored: unknown, run: string): unknown {
  if (typeof stored !== 'string') return undefined;
  try {
    const note: unknown = JSON.parse(stored);
    const { run: of, value } = (note ?? {}) as Readonly<Record<string, unknown>>;
    return of === run ? value : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Something small about the open run that outlives a reload and is in no record: an aid. A store
 * that does not answer costs the aid and nothing else; without memory it lives as long as the page.
 * @param read what was stored, checked: an older app may have written it
 */
export function createRunNote<T>(
  memory: () => RunMemory | undefined,
  name: string,
  read: (stored: unknown) => T,
) {
  const [value, setValue] = createSignal<T>(read(undefined));
  let isTouched = false;
  onMount(() => {
    const now = memory();
    if (!now) return;
    now.settings.readAll().then(
      (stored) => {
        const found = readNote(stored[STORED_AS + name], now.run);
        // What was chosen meanwhile goes before what was chosen once.
        if (found !== undefined && !isTouched) setValue(() => read(found));
      },
      () => undefined,
    );
  });
  const write = (next: T): void => {
    isTouched = true;
    setValue(() => next);
    const now = memory();
    const note = JSON.stringify({ run: now?.run, value: next });
    void now?.settings.write(STORED_AS + name, note).catch(() => undefined);
  };
  return [value, write] as const;
}
