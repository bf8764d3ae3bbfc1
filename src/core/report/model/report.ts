import type { SourceState } from '../../custom/index.ts';
import type { Message } from '../../messages/index.ts';
import type { CustomId, Designation, FixtureKind, MethodId, Purpose } from '../../kitchen/index.ts';
import type {
  FaultKind,
  Phase,
  Question,
  SignalWord,
  StepKind,
  TimerPurpose,
  UtensilItem,
} from '../../plan/index.ts';
import type { ClosedAs, CoolingEnd, Outcome } from '../../run/index.ts';

/**
 * What was done in a run, told for people who were not there. Derived from the
 * facts alone. All times are wall times of the device in ms; no time zone and
 * no language of numbers in here: whoever shows it brings the formatter.
 */
export type Report = {
  readonly kitchen: string;
  readonly purpose: Purpose;
  readonly custom: CustomId;
  /** As the household calls it: its own, or one of the built-in ones. */
  readonly customName: Message;
  /** Version of the app that began the run; runs of before 0.2.0 do not tell it. */
  readonly app?: string;
  /** When the plan of this run was laid down. */
  readonly draftedWallMs: number;
  /** Null while nothing has begun. */
  readonly startedWallMs: number | null;
  readonly closedWallMs: number | null;
  /** `open`: the run goes on; what follows is how it stands at `lastWallMs`. */
  readonly outcome: ClosedAs | 'open';
  readonly reason: Message;
  /** Wall time of the last fact. */
  readonly lastWallMs: number;
  /** In the order of the kitchen file. */
  readonly fixtures: readonly FixtureReport[];
  /** Steps of no fixture: gathering, boiling over. */
  readonly general: readonly StepReport[];
  readonly overrides: readonly OverrideReport[];
  /** Rows of the custom that the household follows in its own way, where a fixture of this run is treated by them. */
  readonly ownRows: readonly OwnRowReport[];
  readonly overriddenGates: readonly GateOverride[];
  readonly faults: readonly FaultReport[];
  readonly rechecks: readonly RecheckReport[];
  readonly gaps: readonly GapReport[];
  readonly clockQuestions: readonly ClockQuestion[];
  readonly reviews: readonly ReviewReport[];
  readonly lateTimers: readonly LateTimer[];
  readonly pauses: readonly PauseReport[];
  readonly storage: readonly StorageTrouble[];
  readonly silentAlarms: readonly SilentAlarm[];
  readonly notes: readonly NoteReport[];
  /** Open when the plan was laid down; the stricter method was planned until answered. */
  readonly questions: readonly Question[];
  /** What nobody told and the plan took as usual. */
  readonly assumed: readonly Assumption[];
  readonly notDone: readonly NotDone[];
  /** Purges that a fault or a stop ended, or that never began in a run that is over. */
  readonly notPurged: readonly NotDone[];
  /** Purges that a person left out, with the reason. */
  readonly leftOut: readonly NotDone[];
  readonly standing: readonly Message[];
};

export type FixtureReport = {
  readonly id: string;
  readonly name: string;
  readonly kind: FixtureKind;
  readonly designation: Designation;
  /** Null: this run's plan gave the fixture no method. */
  readonly method: MethodReport | null;
  readonly steps: readonly StepReport[];
  /** Rests that count. */
  readonly rests: readonly HoldReport[];
  /** Other minimum times that count: glow, cycle, cool-down. */
  readonly holds: readonly HoldReport[];
  readonly kettles: KettleCount;
  /** Out of every arm's reach, so that no kettle was planned there, m²; absent: nothing. */
  readonly unreachedM2?: number;
  /** `all`: every step planned for it is done; `nothing`: nothing was planned. */
  readonly done: 'all' | 'part' | 'none' | 'nothing';
};

export type MethodReport = {
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes: number | null;
  readonly reason: Message;
  readonly term: Message | null;
  readonly source: Message;
  readonly checked: boolean;
  /** How far its source can be relied on. */
  readonly sourceState: SourceState;
  /** Whose word replaced the row of the custom. */
  readonly overriddenBy: Message | null;
  readonly question: Question | null;
};

/** `poured`: emptied along their lane and not voided since. `planned` counts the steps. */
export type KettleCount = {
  readonly planned: number;
  readonly poured: number;
  /** Of those poured: the cold water after them was confirmed. */
  readonly cold: number;
  /** Poured before a doubt or a repetition made them count for nothing. */
  readonly voided: number;
};

export type StepReport = {
  readonly id: string;
  readonly kind: StepKind;
  readonly phase: Phase;
  readonly title: Message;
  readonly fixture: string | null;
  /** In order; only the last one stands. */
  readonly attempts: readonly AttemptReport[];
  /** Which utensils it is about; absent: none. */
  readonly items?: readonly UtensilItem[];
};

export type AttemptReport = {
  readonly number: number;
  readonly startedWallMs: number | null;
  readonly endedWallMs: number | null;
  /** `open`: begun and not over. `waiting`: not begun. `void`: broken off by what replaced it. */
  readonly outcome: Outcome | 'open' | 'waiting' | 'void';
  readonly reason: Message;
  /** A person confirmed that it was made safe. */
  readonly madeSafe: boolean;
  /** At whose cards it was begun and ended, each once, first come first; empty: one person works, or it was not kept. */
  readonly by: readonly Message[];
  readonly stages: readonly StageReport[];
  /** Why a later attempt took its place; null: it stands. */
  readonly replacedBecause: Message | null;
};

export type StageReport = {
  readonly id: string;
  readonly title: Message;
  readonly fromWallMs: number;
  readonly toWallMs: number | null;
  /** What the person said who ended it ("No hiss, no heat felt"); null: nobody did. */
  readonly said: Message | null;
  /** Who ended it; null: it did not come to its end. */
  readonly endedBy: 'person' | 'timer' | null;
  /** Why it did not come to its end; null: it did, or goes on. */
  readonly brokeOff: Message | null;
  readonly holds: readonly HoldReport[];
};

/** One minimum time, as the clocks of the device proved it. */
export type HoldReport = {
  readonly timer: string;
  readonly step: string;
  readonly label: Message;
  readonly purpose: TimerPurpose;
  readonly fromWallMs: number;
  readonly toWallMs: number | null;
  /** What the plan asked for, with what a person added, s. */
  readonly neededS: number;
  readonly addedS: number;
  /** Proved at the least, s. Includes `onWordS`. */
  readonly provedS: number;
  /** How much of `provedS` rests on a person's word and not on a clock, s. */
  readonly onWordS: number;
  /** Why a person dated its beginning back or forth. */
  readonly corrections: readonly string[];
  /** A gap in it stayed unexplained. */
  readonly unproved: boolean;
};

/** "Our rabbi said": a row of the custom that was replaced. */
export type OverrideReport = {
  readonly fixture: string;
  readonly name: string;
  readonly method: MethodId;
  readonly minutes: number | null;
  readonly cover: boolean | null;
  readonly saidBy: string;
  readonly saidOn: string;
  readonly text: string;
};

/** A row of the household's own custom, with the names of what it was followed at. */
export type OwnRowReport = {
  readonly names: readonly string[];
  readonly method: MethodId;
  readonly minutes: number | null;
  readonly saidBy: string;
  readonly saidOn: string;
  readonly why: string;
};

export type GateOverride = {
  readonly gate: string;
  readonly signal: SignalWord | null;
  readonly ask: Message;
  /** Fixture it was overridden for; null: for the whole run. */
  readonly fixture: string | null;
  readonly reason: string;
  readonly wallMs: number;
};

export type FaultReport = {
  readonly id: string;
  readonly kind: FaultKind;
  readonly name: Message;
  readonly step: string | null;
  readonly stepTitle: Message | null;
  readonly fixture: string | null;
  /** What was told, or which timer ran out; `NO_REASON` where neither. */
  readonly text: Message;
  readonly wallMs: number;
  readonly clearedWallMs: number | null;
  /** Of a burn: how its cooling ended, and how much of it was proved, s; null: it goes on, or it is no burn. */
  readonly cooled: { readonly as: CoolingEnd; readonly cooledS: number } | null;
};

export type RecheckReport = {
  readonly fixture: string;
  readonly name: string;
  readonly text: string;
  readonly wallMs: number;
  /** It was taken back as a mistake. */
  readonly withdrawnWallMs?: number;
};

/** The app was not running, or its clocks came apart. */
export type GapReport = {
  readonly kind: 'not-running' | 'slept-or-set' | 'set-back';
  /** Last moment known before it. */
  readonly fromWallMs: number;
  readonly toWallMs: number;
  /** How much of it no clock proves (or, set back, by how much), s. */
  readonly unprovedS: number;
  /** Records half written when it began; they are not part of the run. */
  readonly tornRecords: number;
};

/** "Is that the right time now?" */
export type ClockQuestion = {
  readonly askedWallMs: number;
  readonly answeredWallMs: number | null;
  readonly answer: 'right' | 'wrong' | 'corrected' | null;
  /** The right time, when a person told it. */
  readonly actualWallMs: number | null;
};

export type ReviewReport = {
  readonly step: string;
  readonly stepTitle: Message;
  readonly fixture: string | null;
  readonly ask: Message;
  readonly gapS: number;
  readonly askedWallMs: number;
  readonly answeredWallMs: number | null;
  readonly answer: 'went-on' | 'broke-off' | 'unknown' | null;
};

export type LateTimer = {
  readonly step: string;
  readonly stepTitle: Message;
  readonly fixture: string | null;
  readonly label: Message;
  readonly lateByS: number;
  readonly toldWallMs: number;
};

export type PauseReport = { readonly fromWallMs: number; readonly toWallMs: number | null };

export type StorageTrouble = {
  readonly text: string;
  readonly fromWallMs: number;
  readonly mendedWallMs: number | null;
};

/** An alarm that the tablet could not be made to sound. */
export type SilentAlarm = {
  readonly stepTitle: Message;
  readonly label: Message;
  readonly text: string;
  readonly wallMs: number;
};

export type NoteReport = { readonly text: string; readonly wallMs: number };

export type Assumption = { readonly what: Message; readonly taken: Message };

export type NotDone = {
  readonly step: string;
  readonly title: Message;
  readonly fixture: string | null;
  readonly outcome: Exclude<Outcome, 'done'> | 'open' | 'waiting' | 'void';
  readonly reason: Message;
};
