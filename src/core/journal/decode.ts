import { fold, isFactKind, type Fact, type RunState } from '../run/index.ts';
import { JOURNAL_VERSION, sumOf, type JournalEntry } from './entry.ts';

/**
 * Why a journal opens read-only. It is never reset or mended in place:
 * - `empty`: no whole record;
 * - `corrupt`: a record that is not the last cannot be read;
 * - `altered`: a record is whole, but its content does not match its sum;
 * - `broken-chain`: a record is missing, doubled, or does not follow the one before;
 * - `newer-version`, `unknown-fact`: a newer app wrote it;
 * - `does-not-fold`: every record is good, but together they cannot have happened.
 */
export type JournalProblem = {
  readonly name:
    | 'empty'
    | 'corrupt'
    | 'altered'
    | 'broken-chain'
    | 'newer-version'
    | 'unknown-fact'
    | 'does-not-fold';
  /** Number of the record, from 1. */
  readonly seq: number;
  readonly message: string;
};

export type DecodedJournal = {
  /** The facts before the first problem. */
  readonly facts: readonly Fact[];
  /** Sum of the last good record, for the next to follow. */
  readonly lastSum?: string;
  /** Torn last records left out: 0 or 1. */
  readonly torn: number;
  /** Present: open read-only. */
  readonly problem?: JournalProblem;
};

type Checked = JournalEntry | JournalProblem | 'torn';

/** Checks every record as it is read. A torn last record is left out and counted. */
export function decodeJournal(records: readonly unknown[]): DecodedJournal {
  const facts: Fact[] = [];
  let lastSum: string | undefined;
  let torn = 0;
  for (const [index, raw] of records.entries()) {
    const checked = check(raw, index + 1, lastSum);
    if (checked === 'torn') {
      if (index === records.length - 1) {
        torn = 1;
        break;
      }
      return result(facts, lastSum, torn, corrupt(index + 1));
    }
    if ('name' in checked) return result(facts, lastSum, torn, checked);
    facts.push(checked.fact);
    lastSum = checked.sum;
  }
  const empty: JournalProblem = {
    name: 'empty',
    seq: 1,
    message: 'The journal has no whole record.',
  };
  return result(facts, lastSum, torn, facts.length === 0 ? empty : undefined);
}

/** Decodes and folds. With a problem, the state is that of the facts before it, if there is one. */
export function openJournal(
  records: readonly unknown[],
): DecodedJournal & { readonly state?: RunState } {
  const decoded = decodeJournal(records);
  if (decoded.facts.length === 0) return decoded;
  try {
    return { ...decoded, state: fold(decoded.facts) };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return { ...decoded, problem: { name: 'does-not-fold', seq: decoded.facts.length, message } };
  }
}

function result(
  facts: readonly Fact[],
  lastSum: string | undefined,
  torn: number,
  problem: JournalProblem | undefined,
): DecodedJournal {
  return {
    facts,
    torn,
    ...(lastSum === undefined ? {} : { lastSum }),
    ...(problem === undefined ? {} : { problem }),
  };
}

function corrupt(seq: number): JournalProblem {
  return {
    name: 'corrupt',
    seq,
    message: `Record ${seq} cannot be read, and others follow it. Export the journal; it opens to be read only.`,
  };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A record as an object, whether the store kept an object or a text. */
function parsed(raw: unknown): unknown {
  if (typeof raw !== 'string') return raw;
  try {
    return JSON.parse(raw) as unknown;
  } catch {
    return undefined;
  }
}

/** Does it have the form of a record of this version? If not, it was cut while being written. */
function isWhole(value: Record<string, unknown>): boolean {
  const { seq, sum, fact, prev } = value;
  return (
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
function sumMatches(record: JournalEntry): boolean {
  try {
    return sumOf(record) === record.sum;
  } catch {
    return false;
  }
}

function check(raw: unknown, seq: number, lastSum: string | undefined): Checked {
  const value = parsed(raw);
  if (!isObject(value)) return 'torn';
  if (typeof value['v'] === 'number' && value['v'] > JOURNAL_VERSION) {
    return {
      name: 'newer-version',
      seq,
      message: `Record ${seq} has version ${value['v']}; this app reads up to ${JOURNAL_VERSION}. Open it with the newer app.`,
    };
  }
  if (value['v'] !== JOURNAL_VERSION || !isWhole(value)) return 'torn';
  const record = value as unknown as JournalEntry;
  if (!sumMatches(record)) {
    return {
      name: 'altered',
      seq,
      message: `Record ${seq} was changed after it was written: its sum does not match. It opens to be read only.`,
    };
  }
  if (record.seq !== seq || record.fact.seq !== seq || record.prev !== lastSum) {
    return {
      name: 'broken-chain',
      seq,
      message: `Record ${record.seq} stands where ${seq} should follow the one before. One is missing or doubled.`,
    };
  }
  if (!isFactKind(record.fact.body.kind)) {
    return {
      name: 'unknown-fact',
      seq,
      message: `Record ${seq} tells “${record.fact.body.kind}”, which this app does not know. Open it with the newer app.`,
    };
  }
  return record;
}
