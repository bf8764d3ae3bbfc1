import { message, type Message } from '../messages/index.ts';
import type { StoredEntry } from './entry.ts';

const FORMAT = 'glowpour-journal';

/** A journal as a file: to keep it elsewhere, or to carry it to another device. */
type JournalFile = {
  readonly format: typeof FORMAT;
  readonly version: 2;
  readonly entries: readonly unknown[];
};

/** Largest file read, characters. A three-day run is well below a tenth of it. */
const MAX_CHARACTERS = 20_000_000;

/** @param entries of a journal, or what a store holds in their place, as it is */
export function exportJournal(entries: readonly (StoredEntry | unknown)[]): string {
  const file: JournalFile = { format: FORMAT, version: 2, entries };
  return `${JSON.stringify(file)}\n`;
}

/** Where a version keeps its entries. */
const FIELD_OF_VERSION: Readonly<Record<number, 'records' | 'entries'>> = {
  1: 'records',
  2: 'entries',
};

/** As it stands in the file, in few letters. */
function shown(value: unknown): string {
  return (JSON.stringify(value) ?? 'undefined').slice(0, 80);
}

/** Entries of a journal file, unchecked (give them to `decodeJournal`), or what is wrong with the file. */
export function importJournal(
  text: string,
): { readonly entries: readonly unknown[] } | { readonly problem: Message } {
  const found = text.length;
  if (found > MAX_CHARACTERS)
    return { problem: message('engine.journal.file.long', { found, most: MAX_CHARACTERS }) };
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { problem: message('engine.journal.file.not-json', { why }) };
  }
  const fields = (file ?? {}) as Readonly<Record<string, unknown>>;
  const { format, version } = fields;
  if (format !== FORMAT)
    return {
      problem: message('engine.journal.file.format', { found: shown(format), allowed: FORMAT }),
    };
  const field = typeof version === 'number' ? FIELD_OF_VERSION[version] : undefined;
  if (field === undefined)
    return { problem: message('engine.journal.file.version', { found: shown(version) }) };
  const entries = fields[field];
  if (!Array.isArray(entries))
    return { problem: message('engine.journal.file.entries', { field }) };
  return { entries };
}
