import type { Message } from '../../messages/index.ts';
import type { FaultKind, Plan, Step } from '../../plan/index.ts';
import type { CoolingEnd } from './cooling.ts';
import type { Signed } from './signed.ts';
import type { Outcome, Readings } from './types.ts';

/**
 * What happened, once and for good. The state of a run is the fold of its
 * facts and nothing else. `seq` counts from 1 without gaps.
 */
export type Fact = {
  readonly seq: number;
  readonly id: string;
  readonly at: Readings;
  readonly body: FactBody;
};

export type FactBody = RunFact | StepFact | TimerFact | GateFact | FaultFact | ClockFact | HostFact;

/** Of the run as a whole. */
type RunFact =
  /** Always the first. `notBeforeWallMs`: no honest clock shows less (when this app was built). */
  | {
      readonly kind: 'drafted';
      readonly plan: Plan;
      readonly notBeforeWallMs: number;
      /** Version of the app that began the run, "0.2.0"; runs of before 0.2.0 do not tell it. */
      readonly app?: string;
    }
  /** `clockRight`: the person looked at day and time and said that they are right. */
  | { readonly kind: 'run-started'; readonly clockRight?: boolean }
  | { readonly kind: 'paused' }
  | { readonly kind: 'resumed' }
  | { readonly kind: 'closing-begun'; readonly as: ClosedAs; readonly reason: Message }
  | { readonly kind: 'run-closed'; readonly as: ClosedAs; readonly reason: Message }
  /** Steps that stand in place of those of the same id, or after all others. */
  | {
      readonly kind: 'plan-amended';
      readonly steps: readonly Step[];
      readonly startS: Readonly<Record<string, number>>;
      readonly reason: Message;
    }
  | { readonly kind: 'noted'; readonly text: string }
  | { readonly kind: 'recheck-reported'; readonly fixture: string; readonly text: string }
  /** The last such word was a mistake: nothing was used, and nothing else has happened since. */
  | { readonly kind: 'recheck-withdrawn'; readonly fixture: string };

export type ClosedAs = 'completed' | 'failed' | 'stopped';

/** Of one attempt at a step. */
type StepFact =
  | ({
      readonly kind: 'step-started';
      readonly step: string;
      readonly attempt: number;
      readonly by: 'person' | 'chain';
    } & Signed)
  | ({
      readonly kind: 'stage-ended';
      readonly step: string;
      readonly attempt: number;
      readonly stage: string;
      readonly by: 'person' | 'timer';
    } & Signed)
  /** Back to stage `stage` with clocks anew, after a break in something that must be unbroken. */
  | {
      readonly kind: 'stage-restarted';
      readonly step: string;
      readonly attempt: number;
      readonly stage: string;
      readonly reason: Message;
    }
  /** To be made safe before it settles with `outcome`. */
  | {
      readonly kind: 'step-unwinding';
      readonly step: string;
      readonly attempt: number;
      readonly outcome: Outcome;
      readonly reason: Message;
      /** Given: it and the boil it needs get a new attempt, and why. */
      readonly renew?: Message;
    }
  | { readonly kind: 'safe-confirmed'; readonly step: string; readonly attempt: number }
  | {
      readonly kind: 'step-settled';
      readonly step: string;
      readonly attempt: number;
      readonly outcome: Outcome;
      readonly reason: Message;
    }
  /** A new attempt, waiting. `attempt` is the new number. */
  | {
      readonly kind: 'step-repeated';
      readonly step: string;
      readonly attempt: number;
      readonly reason: Message;
    };

/** Of one timer. `cause` counts what it came due for: a reminder answered and due again is a second cause. */
type TimerFact =
  | {
      readonly kind: 'timer-due';
      readonly timer: string;
      readonly cause: number;
      readonly lateByS: number;
    }
  | { readonly kind: 'timer-acknowledged'; readonly timer: string; readonly cause: number }
  | { readonly kind: 'timer-extended'; readonly timer: string; readonly byS: number }
  | {
      readonly kind: 'time-corrected';
      readonly timer: string;
      readonly sinceWallMs: number;
      readonly reason: string;
      /** How long it has been by the right clock; absent in journals from before that was kept. */
      readonly elapsedS?: number;
      /** And the clock shown was said to be right with it, for the first time in this run. */
      readonly clockRight?: true;
    };

type GateFact =
  | {
      readonly kind: 'gate-answered';
      readonly gate: string;
      readonly scopeKey: string;
      readonly answer: 'yes' | 'no';
    }
  | {
      readonly kind: 'gate-overridden';
      readonly gate: string;
      readonly scopeKey: string;
      readonly reason: string;
    };

type FaultFact =
  | {
      readonly kind: 'fault-raised';
      readonly fault: string;
      readonly faultKind: FaultKind;
      readonly step: string | null;
      readonly text: string;
      /** Timer and cause that raised it, for a limit. */
      readonly timer: string | null;
      readonly cause: number;
    }
  | { readonly kind: 'fault-cleared'; readonly fault: string }
  /** A burn is no longer cooled; its fault is cleared with it. `cooledS`: proved. */
  | {
      readonly kind: 'cooling-ended';
      readonly fault: string;
      readonly as: CoolingEnd;
      readonly cooledS: number;
    };

/** Of the clocks, and of what a person said about a gap. */
export type ClockFact =
  | {
      readonly kind: 'clocks-disagree';
      readonly cause: 'slept' | 'back';
      readonly wallS: number;
      readonly monoS: number;
    }
  | {
      readonly kind: 'clock-answered';
      readonly right: boolean;
      readonly actualWallMs: number | null;
      /** The missing time really passed; absent in journals from before that was asked. */
      readonly passed?: boolean;
    }
  /** The last answer about the clock is taken back. */
  | { readonly kind: 'clock-answer-withdrawn' }
  | {
      readonly kind: 'review-answered';
      readonly question: string;
      readonly answer: 'went-on' | 'broke-off' | 'unknown';
    }
  /** What was said to have gone on broke off. */
  | { readonly kind: 'review-answer-withdrawn'; readonly question: string };

/** Of the host. A session opened is a gap: nothing is known since `lastHeartbeat`. */
export type HostFact =
  | {
      readonly kind: 'session-opened';
      readonly lastHeartbeat: Readings | null;
      readonly tornRecords: number;
      /** Records the last heartbeat knew of and the journal has not: its end is gone. */
      readonly missingRecords?: number;
    }
  | { readonly kind: 'session-closed' }
  | { readonly kind: 'storage-failed'; readonly text: string }
  | { readonly kind: 'storage-mended' }
  /** Once a cause each; they change nothing of the work. */
  | { readonly kind: 'alarm-handed'; readonly timer: string; readonly cause: number }
  | {
      readonly kind: 'alarm-failed';
      readonly timer: string;
      readonly cause: number;
      readonly text: string;
    };
