import type { Message } from '../../messages/index.ts';

export type FaultKind =
  | 'burned'
  | 'no-glow'
  | 'flame-out'
  | 'power-cut'
  | 'smoke'
  | 'fire'
  | 'co-alarm'
  | 'gas-smell'
  | 'unwell'
  | 'kettle-failed'
  | 'oven-lock'
  | 'breaker-tripped'
  | 'cracked'
  | 'undefined';

export type FaultPolicy = {
  readonly kind: FaultKind;
  readonly name: Message;
  /** stop-run: make safe and close. suspend: fix, then a person resumes. note: write it down and go on. */
  readonly policy: 'stop-run' | 'suspend' | 'note';
  readonly doThis: readonly Message[];
};
