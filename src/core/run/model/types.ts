import type { Message } from '../../messages/index.ts';
import type {
  Deadline,
  FaultKind,
  Gate,
  Hazard,
  Plan,
  Step,
  TimerPurpose,
  TimerRole,
  TimerSpec,
} from '../../plan/index.ts';
import type { CoolingEnd, CoolingView } from './cooling.ts';
import type { ClockQuestion, LastHotClaim } from './questions.ts';
import type { Signed } from './signed.ts';
import type { RunStatus, StepStatus, TimerStatus } from './statuses.ts';

/** The two clocks of the device, read by the host at the moment of a request. Milliseconds. */
export type Readings = {
  readonly wallMs: number;
  readonly monoMs: number;
  /** One per page load. */
  readonly session: string;
};

/** Proof of life, kept apart from the journal; `seq`: the last record that was on disk then. */
export type Heartbeat = Readings & { readonly seq?: number };

/** What a person (or the host) asks of the engine. Every pair of state and request is a transition or a named refusal. */
export type Request =
  /** `clockRight`: "It is Tuesday 24 November, 21:40", and a person says so. */
  | { readonly kind: 'start-run'; readonly clockRight?: boolean }
  | ({ readonly kind: 'start-step'; readonly step: string } & Signed)
  /** Ends the active stage of a step: "It glows", "Poured", "Cold water done". */
  | ({ readonly kind: 'confirm'; readonly step: string; readonly stage: string } & Signed)
  | {
      readonly kind: 'answer-gate';
      readonly gate: string;
      readonly scopeKey: string;
      readonly answer: 'yes' | 'no';
    }
  | {
      readonly kind: 'override-gate';
      readonly gate: string;
      readonly scopeKey: string;
      readonly reason: string;
    }
  | { readonly kind: 'pause' }
  | { readonly kind: 'resume' }
  | {
      readonly kind: 'report-fault';
      readonly fault: FaultKind;
      readonly step?: string;
      readonly text?: string;
    }
  | { readonly kind: 'clear-fault'; readonly faultId: string }
  /** `cooled`: for the 20 minutes. `taken-over`: by a doctor or an ambulance. `mistake`: nobody is burned. */
  | { readonly kind: 'end-cooling'; readonly faultId: string; readonly as: CoolingEnd }
  | { readonly kind: 'skip-step'; readonly step: string; readonly reason: string }
  | { readonly kind: 'stop-step'; readonly step: string; readonly reason: string }
  | { readonly kind: 'repeat-step'; readonly step: string; readonly reason: string }
  | { readonly kind: 'stop-run'; readonly reason: string }
  /** One make-safe action done ("Burner front left is off"). */
  | { readonly kind: 'confirm-safe'; readonly step: string }
  | { readonly kind: 'acknowledge-timer'; readonly timer: string }
  | { readonly kind: 'extend-timer'; readonly timer: string; readonly byS: number }
  /** `went-on`: the process ran through the gap. `broke-off`: it did not. `unknown`: nobody saw. */
  | {
      readonly kind: 'answer-review';
      readonly question: string;
      readonly answer: 'went-on' | 'broke-off' | 'unknown';
    }
  /**
   * "Is Tuesday 24 November, 21:40 right now?" yes, or the right wall time; and
   * `passed`: did the time that is missing really pass (true), or was the clock set (false)?
   */
  | {
      readonly kind: 'answer-clock';
      readonly right: boolean;
      readonly actualWallMs?: number;
      readonly passed?: boolean;
    }
  /** Takes the last answer about the clock back; it is asked again. */
  | { readonly kind: 'withdraw-clock-answer' }
  /** Of a gap it was said that the work went on, or that nobody knows; now it is known that it broke off. */
  | { readonly kind: 'withdraw-review-answer'; readonly question: string }
  | { readonly kind: 'report-recheck'; readonly fixture: string; readonly text: string }
  /** The last word of that kind was a mistake; only while nothing else has happened. */
  | { readonly kind: 'withdraw-recheck'; readonly fixture: string }
  /**
   * "It was last hot at …": a rest begun earlier than its step. `clockRight`: and
   * the day and time shown are right now; needed until a person has said so in this run.
   */
  | {
      readonly kind: 'correct-time';
      readonly timer: string;
      readonly sinceWallMs: number;
      readonly reason: string;
      readonly clockRight?: boolean;
    }
  /** The rest of the work was worked out anew (a kettle ran out early): steps not begun are replaced, new ones added. */
  | {
      readonly kind: 'amend-plan';
      readonly steps: readonly Step[];
      readonly startS: Readonly<Record<string, number>>;
      readonly reason: Message;
    }
  | { readonly kind: 'note'; readonly text: string };

/** What the host tells of the world; goes through the same gate as requests. */
export type Observation =
  | {
      readonly kind: 'session-opened';
      readonly lastHeartbeat?: Heartbeat;
      readonly tornRecords: number;
    }
  | { readonly kind: 'session-closed' }
  | { readonly kind: 'storage-failed'; readonly text: string }
  | { readonly kind: 'storage-mended' }
  /** The sound of this cause of this timer lies with the device, to sound without the page. */
  | { readonly kind: 'alarm-handed'; readonly timer: string; readonly cause: number }
  /** The sound of this cause could not be made, or nobody can tell that it was; `text`: why. */
  | {
      readonly kind: 'alarm-failed';
      readonly timer: string;
      readonly cause: number;
      readonly text: string;
    }
  /** Time passed: re-anchor, let timers come due, start what is chained. */
  | { readonly kind: 'tick' };

export type { ClockQuestion, RunStatus, StepStatus, TimerStatus };
export type Outcome = 'done' | 'skipped' | 'failed' | 'stopped' | 'not-run';

/** How a screen sees a timer. Seconds. `leftS` is on the safe side for its purpose. */
export type TimerView = {
  readonly id: string;
  readonly step: string;
  /** Stage it belongs to; empty for a freshness limit, which runs between two steps. */
  readonly stage: string;
  readonly fixture?: string;
  readonly label: Message;
  /** Where the label names a thing: the label without it, and the thing. */
  readonly of?: NonNullable<TimerSpec['of']>;
  readonly purpose: TimerPurpose;
  readonly role: TimerRole;
  readonly status: TimerStatus;
  readonly lengthS: number;
  readonly atLeastS: number;
  /** Infinity when nothing bounds it (a clock set back, or a time nobody knows). */
  readonly atMostS: number;
  readonly leftS: number;
  /** Needs a person's acknowledgement now. */
  readonly alerting: boolean;
  readonly lateByS: number;
  /** From 1; grows each time it comes due anew. What `alarm-handed` and `alarm-failed` name. */
  readonly cause: number;
  /** It came due inside this rest day, in silence; told after it. */
  readonly cameDueIn?: Message;
  /** The plan counts this rest from a last hot use that nobody has confirmed in this run yet. */
  readonly lastHot?: LastHotClaim;
};

/** A clock whose alarm the device could not sound, and which nobody has answered. */
export type AlarmFailure = {
  readonly timer: string;
  readonly cause: number;
  /** Null: a burn that was told of no step. */
  readonly step: string | null;
  readonly label: Message;
  readonly text: string;
};

/** The rest day that is now. */
export type RestDayNow = {
  readonly name: Message;
  readonly toWallMs: number;
  /** Seconds until it is over. */
  readonly leftS: number;
};

/** The rest day that comes next. */
type RestDayAhead = {
  readonly name: Message;
  readonly fromWallMs: number;
  readonly toWallMs: number;
  /** Seconds until it begins and until it is over. */
  readonly inS: number;
  readonly overInS: number;
};

export type GateView = {
  readonly gate: Gate;
  readonly scopeKey: string;
  readonly value: 'yes' | 'no' | 'unknown';
  /** Condition gates: seconds until the settle time is over. */
  readonly settlesInS: number;
};

export type StepView = {
  readonly step: Step;
  readonly attempt: number;
  readonly status: StepStatus;
  readonly outcome?: Outcome;
  readonly reason?: Message;
  /** Number of the stage in progress (0-based). */
  readonly stage: number;
  /** Since when it goes on, wall ms as it was shown; absent before it is begun. */
  readonly begunWallMs?: number;
  readonly timers: readonly TimerView[];
  readonly gates: readonly GateView[];
  /** Why it cannot start now, in words; empty when it can. */
  readonly blockedBy: readonly Message[];
  /** Stopped or failed: to be done again (`repeat-step`) or left out with a reason (`skip-step`). */
  readonly again: boolean;
  /** The main action can be pressed now. */
  readonly canConfirm: boolean;
};

export type ReviewQuestion = {
  readonly id: string;
  readonly step: string;
  readonly ask: Message;
  readonly gapS: number;
};

/** An answer about a gap that can be taken back (`withdraw-review-answer`): the work broke off after all. */
type ReviewAnswer = Omit<ReviewQuestion, 'gapS'>;

export type FaultView = {
  readonly id: string;
  readonly kind: FaultKind;
  readonly name: Message;
  readonly step?: string;
  readonly doThis: readonly Message[];
  readonly cleared: boolean;
};

/** `not-purged`: a purge of it was stopped or failed; `left-out`: a person left one out, with a reason. */
export type FixturePhase =
  | 'to-clean'
  | 'resting'
  | 'ready'
  | 'purging'
  | 'hot'
  | 'not-purged'
  | 'left-out'
  | 'done'
  | 'covered'
  | 'untouched';

export type HotView = {
  readonly step: string;
  readonly hazard: Hazard;
  readonly makeSafe: Message;
  readonly confirmed: boolean;
};

/** Everything a screen needs, derived at one moment from the state and the readings; nothing stored. */
export type RunView = {
  readonly status: RunStatus;
  readonly reason?: Message;
  readonly closedAs?: 'completed' | 'failed' | 'stopped';
  readonly plan: Plan;
  readonly steps: readonly StepView[];
  /** Steps for the stage, most urgent first: alerting, then checking, then active hands-on, then ready in timetable order. */
  readonly currentSteps: readonly StepView[];
  /** Every running, due or unproved clock, nearest first. */
  readonly timers: readonly TimerView[];
  readonly hot: readonly HotView[];
  readonly faults: readonly FaultView[];
  /** Burns under running water, the one that needs longest first. */
  readonly coolings: readonly CoolingView[];
  readonly review: readonly ReviewQuestion[];
  readonly reviewAnswers: readonly ReviewAnswer[];
  /** The clocks disagree, and a person is to say whether the wall time is right. */
  readonly askClock: boolean;
  /** What to ask then; absent: nothing. */
  readonly clockQuestion?: ClockQuestion;
  /** The last answer about the clock can be taken back (`withdraw-clock-answer`). */
  readonly canWithdrawClock: boolean;
  /** Fixture or vessel whose use was told last, and may be taken back (`withdraw-recheck`). */
  readonly usedToTakeBack?: string;
  readonly fixtures: readonly { readonly id: string; readonly phase: FixturePhase }[];
  /** Seconds until something can come due, or a rest day begins or ends; or null. */
  readonly wakeInS: number | null;
  readonly doneSteps: number;
  readonly allSteps: number;
  /** Held, suspended, reviewing: why `resume` would be refused now; empty when it would be accepted. */
  readonly resumeBlockedBy: readonly Message[];
  /** Nothing can be written down; progress waits, alarms do not. */
  readonly storageDown: boolean;
  /** A rest day is now: no work begins, nothing sounds. */
  readonly restDay?: RestDayNow;
  readonly nextRestDay?: RestDayAhead;
  /** By when all purging is to be done, and after when nothing is purged; 0 left once it is past. */
  readonly deadline?: Deadline & { readonly leftS: number; readonly hardLeftS: number };
  /** Alarms that nobody may have heard. */
  readonly alarmsFailed: readonly AlarmFailure[];
};
