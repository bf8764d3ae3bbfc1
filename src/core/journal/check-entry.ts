import { message } from '../messages/index.ts';
import { isFactKind, type Fact } from '../run/index.ts';
import { JOURNAL_VERSION, sumOf, type StoredEntry } from './entry.ts';
import type { JournalProblem } from './problem.ts';
import { FactUpgrader, isFactKind1 } from './upgrade/index.ts';

/** An entry as it is stored, and its fact in the words of this version. */
export type CheckedEntry = { readonly entry: StoredEntry; readonly fact: Fact };

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** An entry as an object, whether the store kept an object or a text. */
function parsed(raw: unknown): unknown {
  if (typeof raw !== 'string') return raw;
  try {
    return JSON.parse(raw) as unknown;
  } catch {
    return undefined;
  }
}

/** Does it have the form of an entry of a known version? If not, it was cut while being written. */
function isWhole(value: Record<string, unknown>): boolean {
  const { v, seq, sum, fact, prev } = value;
  return (
    (v === 1 || v === JOURNAL_VERSION) &&
    Number.isInteger(seq) &&
    typeof sum === 'string' &&
    (prev === undefined || typeof prev === 'string') &&
    isObject(fact) &&
    isObject(fact['at']) &&
    isObject(fact['body']) &&
    typeof fact['body']['kind'] === 'string'
  );
}

/** A number damaged into one beyond all bounds (1e999) has no sum at all: it was not written so. */
function sumMatches(entry: StoredEntry): boolean {
  try {
    return sumOf(entry) === entry.sum;
  } catch {
    return false;
  }
}

/** What is stored is checked first; only what is as it was written is turned into this version. */
function factOf(entry: StoredEntry, seq: number, upgrader: FactUpgrader): Fact | JournalProblem {
  const { kind } = entry.fact.body;
  if (!(entry.v === 1 ? isFactKind1(kind) : isFactKind(kind)))
    return {
      name: 'unknown-fact',
      seq,
      message: message('engine.journal.unknown-fact', { seq, kind }),
    };
  if (entry.v !== 1) return entry.fact;
  try {
    return upgrader.upgrade(entry.fact);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return {
      name: 'does-not-fold',
      seq,
      message: message('engine.journal.does-not-fold', { why }),
    };
  }
}

/**
 * One entry as it was read, checked against its own sum and the one before.
 * @param lastSum sum of the entry before; none at seq 1
 * @param upgrader of this journal: it has seen all entries before
 * @returns `torn` when it is no whole entry: cut while it was written
 */
export function checkEntry(
  raw: unknown,
  seq: number,
  lastSum: string | undefined,
  upgrader: FactUpgrader,
): CheckedEntry | JournalProblem | 'torn' {
  const value = parsed(raw);
  if (!isObject(value)) return 'torn';
  const version = value['v'];
  if (typeof version === 'number' && version > JOURNAL_VERSION)
    return {
      name: 'newer-version',
      seq,
      message: message('engine.journal.newer-version', { seq, version, newest: JOURNAL_VERSION }),
    };
  if (!isWhole(value)) return 'torn';
  const entry = value as unknown as StoredEntry;
  if (!sumMatches(entry))
    return { name: 'altered', seq, message: message('engine.journal.altered', { seq }) };
  if (entry.seq !== seq || entry.fact.seq !== seq || entry.prev !== lastSum)
    return {
      name: 'broken-chain',
      seq,
      message: message('engine.journal.broken-chain', { found: entry.seq, seq }),
    };
  const fact = factOf(entry, seq, upgrader);
  return 'name' in fact ? fact : { entry, fact };
}
