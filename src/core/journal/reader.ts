import { apply, type Fact, type RunState } from '../run/index.ts';
import { checkEntry } from './check-entry.ts';
import type { StoredEntry } from './entry.ts';
import { FactUpgrader } from './upgrade/index.ts';

/**
 * Follows a journal that another page writes, a piece at a time: what was read
 * is neither read, checked nor folded again. It stops before the first entry
 * that is torn, damaged or does not fold, and tries that one again next time.
 */
export class JournalReader {
  readonly #upgrader = new FactUpgrader();
  #last: StoredEntry | undefined;
  #state: RunState | undefined;
  #lastFact: Fact | undefined;

  /** The run as far as it was read; undefined: not one whole entry yet. */
  get state(): RunState | undefined {
    return this.#state;
  }

  get lastFact(): Fact | undefined {
    return this.#lastFact;
  }

  /** From this entry on `read` wants the journal: the last one read, by which it knows it again, or the first. */
  get fromSeq(): number {
    return this.#last?.seq ?? 1;
  }

  /**
   * Takes in what follows.
   * @param stored all entries from `fromSeq` on, as they are stored
   * @returns false when this is not the journal that was read before: begin anew with another reader
   */
  read(stored: readonly unknown[]): boolean {
    if (this.#last && sumIn(stored[0]) !== this.#last.sum) return false;
    for (const raw of this.#last ? stored.slice(1) : stored) {
      const seq = (this.#last?.seq ?? 0) + 1;
      const checked = checkEntry(raw, seq, this.#last?.sum, this.#upgrader);
      if (checked === 'torn' || 'name' in checked) break;
      try {
        this.#state = apply(this.#state ?? null, checked.fact);
      } catch {
        break;
      }
      this.#last = checked.entry;
      this.#lastFact = checked.fact;
    }
    return true;
  }
}

function sumIn(raw: unknown): unknown {
  return typeof raw === 'object' && raw !== null && 'sum' in raw ? raw.sum : undefined;
}
