import type { Message } from '../../messages/index.ts';
import type { FaultKind, Plan, TimerSpec } from '../../plan/index.ts';
import type { ClosedAs } from './facts.ts';
import type { ElapsedInterval } from './elapsed-interval.ts';
import type { Outcome, Readings, RunStatus } from './types.ts';

/**
 * The whole state of a run: the fold of its facts. What each
 * status permits stands at the statuses themselves.
 */
export type RunState = {
  /** Sequence number of the last fact folded. */
  readonly seq: number;
  readonly plan: Plan;
  readonly notBeforeWallMs: number;
  readonly status: RunStatus;
  /** Why it is held, suspended, closing or closed; empty otherwise. */
  readonly reason: Message;
  readonly closedAs: ClosedAs | null;
  readonly closingAs: ClosedAs | null;
  /** Where `reviewing` leads back to. */
  readonly reviewFrom: 'running' | 'held' | 'suspended';
  readonly steps: Readonly<Record<string, StepState>>;
  readonly timers: Readonly<Record<string, Timer>>;
  readonly gates: Readonly<Record<string, GateState>>;
  readonly faults: readonly FaultState[];
  /** Burns that are being cooled; a run does not close before a person said how each ended. */
  readonly coolings: readonly Cooling[];
  readonly questions: readonly OpenQuestion[];
  /** Answers about gaps after which work went on, and which may prove wrong. */
  readonly reviewed: readonly ReviewedGap[];
  readonly clock: ClockState;
  readonly storageDown: boolean;
  /** Waits that ended by a clock, by timer id. */
  readonly concluded: Readonly<Record<string, Concluded>>;
  /** How long ago a fixture was last heated, wetted with boiling water or doubted in this run, by fixture. */
  readonly heated: Readonly<Record<string, ElapsedInterval>>;
  /** Since when nobody had a hand on the work, for gates that lapse. */
  readonly away: ElapsedInterval | null;
  /** What became of the sound of each cause of each timer, by `alarmKey`. */
  readonly alarms: Readonly<Record<string, AlarmState>>;
  /** The last fact that changed anything told of a use, and it can be taken back. */
  readonly doubt: Doubt | null;
};

/** A fixture that was told to be used, and the state before that word. */
export type Doubt = { readonly fixture: string; readonly before: RunState };

/** What the device told of one cause of one timer. */
export type AlarmState = {
  readonly timer: string;
  readonly cause: number;
  readonly handed: boolean;
  /** Why it could not be sounded; null: nothing of the kind was told. */
  readonly failed: string | null;
  /** Which of the two was told last. */
  readonly last: 'handed' | 'failed';
};

export type ClockState = {
  /** From here the two clocks are compared. */
  readonly anchor: Readings;
  /** The latest readings of any fact: proof of life. */
  readonly lastAt: Readings;
  /** The clocks came apart and nobody has said yet whether the wall time is right. */
  readonly doubt: boolean;
  /** By how much they came apart since that was last known, s. */
  readonly claimS: number;
  /** Right time less time shown, by a person's last word, s. At the beginning the clock is taken to be right. */
  readonly errorS: number;
  /** False after a person said that nobody knows the time. */
  readonly errorKnown: boolean;
  /** A person has looked at day and time since the page was opened and said what is right. */
  readonly confirmed: boolean;
  /** A person has said at all in this run what is right; until then the clock is only taken to be right. */
  readonly told: boolean;
  /** The latest wall time any fact of this run was written at, ms. */
  readonly shownMs: number;
  /** Answers that can be taken back, the last one first to go. */
  readonly answers: readonly ClockAnswer[];
};

/** One answer about the clock, and what was known before it. */
type ClockAnswer = {
  /** Number of its fact. */
  readonly answer: number;
  readonly claimS: number;
  readonly errorS: number;
  readonly errorKnown: boolean;
  readonly confirmed: boolean;
  readonly told: boolean;
};

/** A wait that ended by its clock; kept so that it can be judged again when an answer is taken back. */
export type Concluded = {
  readonly step: string;
  readonly attempt: number;
  readonly stage: string;
  readonly lengthS: number;
  /** What was proved when it ended, s. */
  readonly provedS: number;
  /** Goes on counting. */
  readonly span: ElapsedInterval;
};

/** What a step is in; `ready`, `checking` and `stalled` are derived, never stored. */
export type StepState = {
  /** From 1. */
  readonly attempt: number;
  readonly status: 'waiting' | 'active' | 'unwinding' | 'settled';
  /** Number of the stage in progress; the number of stages when all have ended. */
  readonly stage: number;
  /** From 1; grows when a stage is restarted, so that its timers are new ones. */
  readonly round: number;
  /** This attempt was once active. */
  readonly begun: boolean;
  /** Wall time at which its first stage was begun, ms, as it was shown; null before. To reckon with, never to prove. */
  readonly begunWallMs: number | null;
  /** When settled; or with which it will settle, while unwinding. */
  readonly outcome: Outcome | null;
  readonly reason: Message;
  /** Its make-safe was confirmed. */
  readonly safe: boolean;
  /** To be restarted in this turn, and why; empty: no. */
  readonly restart: Message;
  /** To get a new attempt once it has settled, and why; empty: no. */
  readonly renew: Message;
};

export type Timer = {
  readonly id: string;
  readonly step: string;
  readonly attempt: number;
  /** Stage id; empty for a carry between two steps. */
  readonly stage: string;
  readonly spec: TimerSpec;
  readonly lengthS: number;
  readonly span: ElapsedInterval;
  readonly startedWallMs: number;
  /** Added to the beginning by a person's word, s. */
  readonly correctedS: number;
  /** Closed ones are kept only while they still ring. */
  readonly mode: 'running' | 'closed';
  /** A gap is unanswered: was the process on? While so, it cannot complete. */
  readonly gapOpen: boolean;
  /** The wall time in `span.claimS` was confirmed by a person. */
  readonly clockProved: boolean;
  /** A gap stays unexplained; only proved time counts. */
  readonly unproved: boolean;
  /** From 1. */
  readonly cause: number;
  readonly announced: boolean;
  readonly acknowledged: boolean;
  readonly lateByS: number;
  /** Right wall time at which the present cause came due, ms; null before. */
  readonly dueWallMs: number | null;
};

/** A burn that is being cooled: from the fault that told of it until a person says how it ended. */
export type Cooling = {
  /** What alarms and answers name; no timer of a step has such an id. */
  readonly id: string;
  readonly fault: string;
  readonly startedWallMs: number;
  readonly span: ElapsedInterval;
  /** From 1; grows when it comes due anew, after an answer about the clock was taken back. */
  readonly cause: number;
  readonly announced: boolean;
  readonly acknowledged: boolean;
};

export type GateState = {
  readonly gate: string;
  readonly scopeKey: string;
  readonly value: 'yes' | 'no' | 'unknown';
  /** Was tripped: the yes holds only after the settle time. */
  readonly tripped: boolean;
  readonly settling: ElapsedInterval | null;
  readonly overriddenBy: string;
  /** Its yes stood too long without a hand on the work: it is asked again. */
  readonly lapsed: boolean;
};

export type FaultState = {
  readonly id: string;
  readonly kind: FaultKind;
  readonly policy: 'stop-run' | 'suspend' | 'note';
  /** Step whose work it is about, or null for all. */
  readonly step: string | null;
  readonly text: string;
  readonly timer: string | null;
  readonly cause: number;
  readonly cleared: boolean;
};

/** A gap through which a stage is held to have gone on, by a person's word or for want of one. */
export type ReviewedGap = {
  /** Id of the question that was asked. */
  readonly id: string;
  readonly step: string;
  readonly attempt: number;
  readonly round: number;
  /** Number of the stage. */
  readonly stage: number;
  readonly ask: Message;
};

export type OpenQuestion = {
  readonly id: string;
  readonly step: string;
  readonly attempt: number;
  readonly stage: string;
  readonly ask: Message;
  readonly gapS: number;
};
