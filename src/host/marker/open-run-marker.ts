/** What is remembered of an open run outside the database, only to notice that the database was emptied. */
export type OpenRunMarker = {
  readonly id: string;
  readonly name: string;
  /** Wall time at which it was drafted, ms. */
  readonly openedWallMs: number;
};

const KEY = 'glowpour-open-run';

function isMarker(value: unknown): value is OpenRunMarker {
  const { id, name, openedWallMs } = (value ?? {}) as Partial<Record<keyof OpenRunMarker, unknown>>;
  return typeof id === 'string' && typeof name === 'string' && typeof openedWallMs === 'number';
}

/**
 * A browser that finds its database damaged may begin an empty one without a
 * word. The marker lies apart from it; nothing depends on it, and losing it
 * loses only the message.
 */
export const openRunMarker = {
  read(): OpenRunMarker | undefined {
    try {
      const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
      return isMarker(value) ? value : undefined;
    } catch {
      return undefined;
    }
  },
  write(marker: OpenRunMarker): void {
    try {
      localStorage.setItem(KEY, JSON.stringify(marker));
    } catch {
      // Without a marker there is only no message.
    }
  },
  clear(): void {
    try {
      localStorage.removeItem(KEY);
    } catch {
      // As above.
    }
  },
};
