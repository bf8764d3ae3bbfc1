import type { Fact } from '../run/index.ts';
import { canonical } from './canonical.ts';
import { crc32 } from './crc32.ts';

/**
 * One line of a journal, plain JSON. `seq` counts from 1 without gaps; `prev`
 * is the sum of the record before it (absent at seq 1), so that a record taken
 * out or put in is seen; `sum` is the CRC-32 of the rest in canonical form.
 */
export type JournalEntry = {
  readonly v: 1;
  readonly seq: number;
  readonly prev?: string;
  readonly fact: Fact;
  readonly sum: string;
};

/** Version of the record format that this code writes, and the newest it reads. */
export const JOURNAL_VERSION = 1;

/** Sum over everything of a record but the sum. */
export function sumOf(record: Omit<JournalEntry, 'sum'>): string {
  const { v, seq, prev, fact } = record;
  return crc32(canonical({ v, seq, prev, fact }));
}

/**
 * A record of a fact that follows the record with sum `prev` (none for seq 1).
 * Checked as it is written: read back from its own text it gives the same sum.
 * @throws TypeError when the fact holds what JSON cannot carry
 */
export function encodeEntry(fact: Fact, prev?: string): JournalEntry {
  if ((fact.seq === 1) !== (prev === undefined)) {
    throw new TypeError(
      `prev is ${String(prev)} at seq ${fact.seq}; allowed: none at 1, the last sum after it.`,
    );
  }
  const body = {
    v: JOURNAL_VERSION,
    seq: fact.seq,
    ...(prev === undefined ? {} : { prev }),
    fact,
  } as const;
  const record: JournalEntry = { ...body, sum: sumOf(body) };
  const again = JSON.parse(JSON.stringify(record)) as JournalEntry;
  if (sumOf(again) !== record.sum) {
    throw new TypeError(`fact ${fact.seq} does not survive being written down. Report this.`);
  }
  return record;
}

/** Records of contiguous facts, each tied to the one before. */
export function encodeEntries(facts: readonly Fact[], prev?: string): readonly JournalEntry[] {
  const records: JournalEntry[] = [];
  let last = prev;
  for (const fact of facts) {
    const record = encodeEntry(fact, last);
    records.push(record);
    last = record.sum;
  }
  return records;
}
