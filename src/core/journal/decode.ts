import { message } from '../messages/index.ts';
import { fold, type Fact, type RunState } from '../run/index.ts';
import { checkEntry } from './check-entry.ts';
import type { StoredEntry } from './entry.ts';
import type { JournalProblem } from './problem.ts';
import { FactUpgrader } from './upgrade/index.ts';

export type DecodedJournal = {
  /** The facts before the first problem, in the words of this version. */
  readonly facts: readonly Fact[];
  /** The entries of these facts, as they are stored: of version 1, of version 2, or first the one and then the other. */
  readonly entries: readonly StoredEntry[];
  /** Sum of the last good entry, for the next to follow. */
  readonly lastSum?: string;
  /** Torn last entries left out: 0 or 1. */
  readonly torn: number;
  /** Present: open read-only. */
  readonly problem?: JournalProblem;
};

/** Checks every entry as it is read. A torn last entry is left out and counted. */
export function decodeJournal(stored: readonly unknown[]): DecodedJournal {
  const upgrader = new FactUpgrader();
  const facts: Fact[] = [];
  const entries: StoredEntry[] = [];
  const result = (torn: number, problem?: JournalProblem): DecodedJournal => {
    const lastSum = entries.at(-1)?.sum;
    return {
      facts,
      entries,
      torn,
      ...(lastSum !== undefined && { lastSum }),
      ...(problem !== undefined && { problem }),
    };
  };
  let torn = 0;
  for (const [index, raw] of stored.entries()) {
    const seq = index + 1;
    const checked = checkEntry(raw, seq, entries.at(-1)?.sum, upgrader);
    if (checked === 'torn') {
      if (seq < stored.length)
        return result(torn, {
          name: 'corrupt',
          seq,
          message: message('engine.journal.corrupt', { seq }),
        });
      torn = 1;
      break;
    }
    if ('name' in checked) return result(torn, checked);
    facts.push(checked.fact);
    entries.push(checked.entry);
  }
  if (facts.length > 0) return result(torn);
  return result(torn, { name: 'empty', seq: 1, message: message('engine.journal.empty') });
}

/** Decodes and folds. With a problem, the state is that of the facts before it, if there is one. */
export function openJournal(
  stored: readonly unknown[],
): DecodedJournal & { readonly state?: RunState } {
  const decoded = decodeJournal(stored);
  if (decoded.facts.length === 0) return decoded;
  try {
    return { ...decoded, state: fold(decoded.facts) };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return {
      ...decoded,
      problem: {
        name: 'does-not-fold',
        seq: decoded.facts.length,
        message: message('engine.journal.does-not-fold', { why }),
      },
    };
  }
}
