import type { Message } from '../../messages/index.ts';
import type { FaultKind } from './fault.ts';

/** ANSI Z535.6 and ISO 3864-2: death or grave injury, either of them possible, lesser injury, damage. */
export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

export type CautionText = {
  readonly id: string;
  readonly signal: SignalWord;
  readonly hazard: Message;
  /** Short imperative sentence with its reason. */
  readonly say: Message;
  readonly source: Message;
};

/**
 * Must be answered yes before a step that names it may start. `run`: once a
 * run; `fixture`: once a fixture; `step`: every time. Lapses after a pause
 * longer than `lapsesS`. A condition gate is tripped by faults and cleared by
 * a person's separate word, then `settleS` later.
 */
export type Gate = {
  readonly id: string;
  readonly kind: 'caution' | 'condition';
  readonly signal: SignalWord;
  readonly ask: Message;
  readonly say: Message;
  readonly scope: 'run' | 'fixture' | 'step';
  readonly lapsesS?: number;
  readonly trippedBy: readonly FaultKind[];
  readonly settleS: number;
  readonly makeSafe: Message;
};
