import type { FactBody } from './facts.ts';

/** Every kind of fact; the compiler keeps this list whole. */
const KINDS: Readonly<Record<FactBody['kind'], true>> = {
  drafted: true,
  'run-started': true,
  paused: true,
  resumed: true,
  'closing-begun': true,
  'run-closed': true,
  'plan-amended': true,
  noted: true,
  'recheck-reported': true,
  'recheck-withdrawn': true,
  'step-started': true,
  'stage-ended': true,
  'stage-restarted': true,
  'step-unwinding': true,
  'safe-confirmed': true,
  'step-settled': true,
  'step-repeated': true,
  'timer-due': true,
  'timer-acknowledged': true,
  'timer-extended': true,
  'time-corrected': true,
  'gate-answered': true,
  'gate-overridden': true,
  'fault-raised': true,
  'fault-cleared': true,
  'cooling-ended': true,
  'clocks-disagree': true,
  'clock-answered': true,
  'clock-answer-withdrawn': true,
  'review-answered': true,
  'review-answer-withdrawn': true,
  'session-opened': true,
  'session-closed': true,
  'storage-failed': true,
  'storage-mended': true,
  'alarm-handed': true,
  'alarm-failed': true,
};

/** Does this version of the engine know the kind? */
export function isFactKind(kind: string): kind is FactBody['kind'] {
  return Object.hasOwn(KINDS, kind);
}
