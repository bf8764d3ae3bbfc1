import type { Fact } from '../run/index.ts';
import { canonical } from './canonical.ts';
import { crc32 } from './crc32.ts';
import type { Fact1 } from './upgrade/index.ts';

type EntryOf<Version extends number, F> = {
  readonly v: Version;
  readonly seq: number;
  readonly prev?: string;
  readonly fact: F;
  readonly sum: string;
};

/**
 * One line of a journal, plain JSON. `seq` counts from 1 without gaps; `prev`
 * is the sum of the entry before it (absent at seq 1), so that an entry taken
 * out or put in is seen; `sum` is the CRC-32 of the rest in canonical form.
 */
export type JournalEntry = EntryOf<typeof JOURNAL_VERSION, Fact>;

/** An entry as it lies in a store: of this version, or of version 1. Its sum is over what is stored. */
export type StoredEntry = JournalEntry | EntryOf<1, Fact1>;

/** Version of the entry format that this code writes, and the newest it reads. */
export const JOURNAL_VERSION = 2;

/** Sum over everything of an entry but the sum. */
export function sumOf(entry: Omit<EntryOf<number, unknown>, 'sum'>): string {
  const { v, seq, prev, fact } = entry;
  return crc32(canonical({ v, seq, prev, fact }));
}

/**
 * An entry of a fact that follows the entry with sum `prev` (none for seq 1).
 * Checked as it is written: read back from its own text it gives the same sum.
 * @throws TypeError when the fact holds what JSON cannot carry
 */
export function encodeEntry(fact: Fact, prev?: string): JournalEntry {
  if ((fact.seq === 1) !== (prev === undefined)) {
    throw new TypeError(
      `prev is ${String(prev)} at seq ${fact.seq}; allowed: none at 1, the last sum after it.`,
    );
  }
  if (prev !== undefined && !SUM.test(prev)) {
    throw new TypeError(`prev is ${prev}; allowed: the sum of the record before, 8 hex digits.`);
  }
  const body = {
    v: JOURNAL_VERSION,
    seq: fact.seq,
    ...(prev === undefined ? {} : { prev }),
    fact,
  } as const;
  const entry: JournalEntry = { ...body, sum: sumOf(body) };
  const again = JSON.parse(JSON.stringify(entry)) as JournalEntry;
  if (sumOf(again) !== entry.sum) {
    throw new TypeError(`fact ${fact.seq} does not survive being written down. Report this.`);
  }
  return entry;
}

const SUM = /^[0-9a-f]{8}$/;

/** Why an entry may not be written after `last` (none: at the beginning), or undefined when it follows. */
export function followProblem(last: unknown, entry: StoredEntry): string | undefined {
  const before = (last ?? {}) as Partial<JournalEntry>;
  const seq = (last === undefined ? 0 : (before.seq ?? NaN)) + 1;
  if (entry.seq !== seq || entry.fact.seq !== seq)
    // not shown: for developers; the store's code is told.
    return `seq is ${entry.seq}; allowed: ${seq}, the one after the last. Read the journal again.`;
  if (entry.prev !== before.sum)
    // not shown: for developers; the store's code is told.
    return `prev is ${String(entry.prev)} at seq ${seq}; allowed: ${String(before.sum)}, the sum of the entry before. Read the journal again.`;
  return undefined;
}

/** Entries of contiguous facts, each tied to the one before. */
export function encodeEntries(facts: readonly Fact[], prev?: string): readonly JournalEntry[] {
  const entries: JournalEntry[] = [];
  let last = prev;
  for (const fact of facts) {
    const entry = encodeEntry(fact, last);
    entries.push(entry);
    last = entry.sum;
  }
  return entries;
}
