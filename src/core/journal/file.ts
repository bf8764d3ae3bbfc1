import type { JournalEntry } from './entry.ts';

/** A journal as a file: to keep it elsewhere, or to carry it to another device. */
export type JournalFile = {
  readonly format: 'glowpour-journal';
  readonly version: 1;
  readonly records: readonly unknown[];
};

/** Largest file read, characters. A three-day run is well below a tenth of it. */
const MAX_CHARACTERS = 20_000_000;

export function exportJournal(records: readonly (JournalEntry | unknown)[]): string {
  const file: JournalFile = { format: 'glowpour-journal', version: 1, records };
  return `${JSON.stringify(file)}\n`;
}

/** Records of a journal file, unchecked (give them to `decodeJournal`), or what is wrong with the file. */
export function importJournal(
  text: string,
): { readonly records: readonly unknown[] } | { readonly problem: string } {
  if (text.length > MAX_CHARACTERS) {
    return {
      problem: `The file has ${text.length} characters; allowed: up to ${MAX_CHARACTERS}. Choose a journal file.`,
    };
  }
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { problem: `The file is not JSON (${why}). Choose a journal file.` };
  }
  const { format, version, records } = (file ?? {}) as Partial<Record<keyof JournalFile, unknown>>;
  if (format !== 'glowpour-journal') {
    return {
      problem: `format is ${JSON.stringify(format)}; allowed: "glowpour-journal". Choose a journal file.`,
    };
  }
  if (version !== 1) {
    return {
      problem: `version is ${JSON.stringify(version)}; allowed: 1. Open it with the app that wrote it.`,
    };
  }
  if (!Array.isArray(records)) {
    return { problem: 'records is not a list; allowed: a list of records. Choose a journal file.' };
  }
  return { records };
}
