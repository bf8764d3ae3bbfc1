import { message, type Message } from '../../messages/index.ts';
import type { FactBody } from '../model/facts.ts';
import type { Request, RunStatus } from '../model/types.ts';
import { workMessage } from '../rules/obstacles.ts';
import type { WorkObstacle } from '../rules/work-guard.ts';

/**
 * Names of refusals. `run-…`: the status of the run does not allow the
 * request; the rest say what is in the way.
 */
export type RefusalCode =
  | `run-${RunStatus}`
  | 'session-not-opened'
  | 'session-already-open'
  | 'storage-down'
  | 'unknown-step'
  | 'unknown-stage'
  | 'unknown-gate'
  | 'unknown-scope'
  | 'unknown-fault'
  | 'unknown-fixture'
  | 'recheck-stands'
  | 'unknown-question'
  | 'already-begun'
  | 'already-settled'
  | 'not-begun'
  | 'not-settled'
  | 'not-unwinding'
  | 'needs-unmet'
  | 'needs-late'
  | 'gate-shut'
  | 'resource-taken'
  | 'ends-by-itself'
  | 'hold-not-due'
  | 'fault-open'
  | 'make-safe-first'
  | 'cold-first'
  | 'cooling-first'
  | 'cannot-repeat'
  | 'danger-gate'
  | 'reason-missing'
  | 'already-cleared'
  | 'not-alerting'
  | 'timer-closed'
  | 'cannot-extend'
  | 'cannot-correct'
  | 'out-of-range'
  | 'review-open'
  | 'nothing-asked'
  | 'storage-up'
  | 'bad-amendment'
  | 'amendment-drops-gate'
  | 'amendment-drops-caution'
  | 'amendment-drops-need'
  | 'amendment-drops-stage'
  | 'amendment-weakens'
  | 'amendment-changes-work'
  | 'amendment-without-sibling'
  | 'amendment-cycle'
  | 'rest-day'
  | 'reaches-rest-day'
  | 'already-told'
  | 'past-deadline'
  | 'reaches-deadline'
  | 'clock-wrong'
  | 'passed-missing'
  | 'clock-in-doubt';

export type Refusal = { readonly code: RefusalCode; readonly message: Message };

/** Facts that follow from a request, or why it is refused. A refusal changes nothing (I-12). */
export type Decision = { readonly facts: readonly FactBody[] } | { readonly refusal: Refusal };

export function refuse(code: RefusalCode, why: Message): Decision {
  return { refusal: { code, message: why } };
}

/** A day or an hour that is kept, as a refusal by name. */
export function workRefusal(obstacle: WorkObstacle): Refusal {
  const { why, what } = obstacle;
  const code =
    what === 'deadline'
      ? why === 'inside'
        ? 'past-deadline'
        : 'reaches-deadline'
      : why === 'inside'
        ? 'rest-day'
        : 'reaches-rest-day';
  return { code, message: workMessage(obstacle) };
}

export function accept(...facts: readonly FactBody[]): Decision {
  return { facts };
}

/** Statuses in which each request can be accepted at all; everything else is `run-<status>`. */
export const ALLOWED: Readonly<Record<Request['kind'], readonly RunStatus[]>> = {
  'start-run': ['drafting'],
  'start-step': ['running'],
  confirm: ['running', 'held', 'suspended'],
  'answer-gate': ['running', 'held', 'suspended', 'reviewing'],
  'override-gate': ['running', 'held', 'suspended', 'reviewing'],
  pause: ['running'],
  resume: ['held', 'suspended', 'reviewing'],
  'report-fault': ['running', 'held', 'suspended', 'reviewing', 'closing'],
  'clear-fault': ['running', 'held', 'suspended', 'reviewing'],
  'end-cooling': ['running', 'held', 'suspended', 'reviewing', 'closing'],
  'skip-step': ['running', 'held', 'suspended'],
  'stop-step': ['running', 'held', 'suspended', 'reviewing'],
  'repeat-step': ['running', 'held', 'suspended'],
  'stop-run': ['drafting', 'running', 'held', 'suspended', 'reviewing', 'closing'],
  'confirm-safe': ['running', 'held', 'suspended', 'reviewing', 'closing'],
  'acknowledge-timer': ['running', 'held', 'suspended', 'reviewing', 'closing'],
  'extend-timer': ['running', 'held', 'suspended'],
  'answer-review': ['reviewing'],
  'answer-clock': ['running', 'held', 'suspended', 'reviewing'],
  'withdraw-clock-answer': ['running', 'held', 'suspended', 'reviewing'],
  'withdraw-review-answer': ['running', 'held', 'suspended', 'reviewing'],
  'report-recheck': ['running', 'held', 'suspended', 'reviewing'],
  'withdraw-recheck': ['running', 'held', 'suspended', 'reviewing'],
  'correct-time': ['running', 'held', 'suspended', 'reviewing'],
  'amend-plan': ['running', 'held', 'suspended'],
  note: ['drafting', 'running', 'held', 'suspended', 'reviewing', 'closing'],
};

/** Requests that are progress, and wait while nothing can be written down (I-03). */
export const PROGRESS: ReadonlySet<Request['kind']> = new Set<Request['kind']>([
  'start-run',
  'start-step',
  'confirm',
  'resume',
  'skip-step',
  'repeat-step',
  'withdraw-recheck',
  'amend-plan',
  'answer-review',
]);

export function refuseByStatus(status: RunStatus): Decision {
  return refuse(`run-${status}`, message(`engine.status.${status}`));
}
