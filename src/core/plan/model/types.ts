import type { CustomId, Kitchen, Point, Polygon, Purpose } from '../../kitchen/index.ts';
import type { ChosenMethod } from '../../custom/index.ts';
import type { Message } from '../../messages/index.ts';
import type { Band } from '../../units/index.ts';

/**
 * A plan is inert data: it is printed, checked, simulated and run by plain
 * functions over it, and it travels inside the journal of its run. Nothing in
 * it is a callback, a date or a clock. All durations in seconds.
 */
export type Plan = {
  readonly format: 'glowpour-plan';
  readonly version: 1;
  readonly kitchen: Kitchen;
  readonly purpose: Purpose;
  readonly custom: CustomId;
  readonly boilingC: number;
  readonly methods: readonly FixtureMethod[];
  readonly steps: readonly Step[];
  readonly resources: readonly Resource[];
  readonly gates: readonly Gate[];
  readonly cautions: readonly CautionText[];
  readonly faults: readonly FaultPolicy[];
  readonly questions: readonly Question[];
  readonly shopping: readonly ShoppingItem[];
  readonly totals: Totals;
  readonly timetable: Timetable;
  /** Things the household should know before starting (planning cautions, circuits, spare day). */
  readonly notices: readonly Message[];
  /** The calendar the plan was made for; absent when no start or no place was told. */
  readonly days?: PlanDays;
  /** What earlier runs taught, as this plan used it; absent when it used nothing. */
  readonly learned?: Calibration;
};

/** One number that runs taught: its mean, its relative spread, and from how many reports. */
export type CalibrationFactor = {
  readonly mean: number;
  readonly spread: number;
  readonly n: number;
};

/**
 * What the runs of one kitchen taught about its hardware and the person's hand.
 * Plain data: kept by the host, read by the next plan, carried inside it.
 * Factors are measured over reckoned; what is not there was not learned.
 */
export type Calibration = {
  /** Seconds to the boil, by vessel id. */
  readonly boil?: Readonly<Record<string, CalibrationFactor>>;
  /** Seconds from lighting to a visible glow, by burner id. */
  readonly glow?: Readonly<Record<string, CalibrationFactor>>;
  /** Seconds until an oven is at its highest, by oven id. */
  readonly heatUp?: Readonly<Record<string, CalibrationFactor>>;
  /** Seconds until it may be touched, by burner or oven id; only ever longer than reckoned. */
  readonly cool?: Readonly<Record<string, CalibrationFactor>>;
  /** Stream of the person's pour, L/min. */
  readonly flowLMin?: CalibrationFactor;
  /** How far one kettle reached over how far it was reckoned to. */
  readonly reach?: CalibrationFactor;
};

/**
 * The part of the calendar a plan lies in. The only absolute times of a plan:
 * ms since 1970-01-01 UTC, plain data like everything else.
 */
export type PlanDays = {
  /** When step times count from. */
  readonly startWallMs: number;
  /** Sabbaths and festivals the household keeps, touching ones joined, in order; empty when it keeps none. */
  readonly restDays: readonly RestDay[];
  /** By when all purging must be done (the eve of Passover), where there is such an hour. */
  readonly deadline?: { readonly name: Message; readonly atWallMs: number };
};

/** From candle lighting to nightfall. */
export type RestDay = {
  readonly name: Message;
  readonly fromWallMs: number;
  readonly toWallMs: number;
};

export type Phase = 'prepare' | 'clean' | 'rest' | 'purge' | 'cool' | 'cover' | 'mark';

/** Which method a fixture gets, why, and what would change it. */
export type FixtureMethod = ChosenMethod;

export type Question = {
  readonly id: string;
  readonly fixture: string;
  readonly ask: Message;
  readonly why: Message;
  readonly untilThen: Message;
};

export type StepKind =
  | 'prepare'
  | 'clean'
  | 'rest'
  | 'boil'
  | 'pour'
  | 'glow'
  | 'cool'
  | 'self-clean'
  | 'high-heat'
  | 'steam'
  | 'boil-over'
  | 'cover'
  | 'mark';

/** Who must be where: hands busy, near and watching, or free. */
export type Attention = 'hands' | 'watch' | 'none';

/** What an interruption does: nothing / a person judges / begin again / cannot be repeated. */
export type Resumption = 'continue' | 'ask' | 'restart' | 'void';

export type TimerPurpose = 'at-least' | 'at-most' | 'unbroken';

/**
 * hold: the stage ends when it is due (or may be confirmed from then on).
 * estimate: "should be so by now", a look, never a fault.
 * limit: due means the fault named in `fault`.
 * reminder: look at it; repeats until the stage ends.
 * carry: boiled water waiting; due means boil again.
 */
export type TimerRole = 'hold' | 'estimate' | 'limit' | 'reminder' | 'carry';

export type TimerSpec = {
  readonly id: string;
  readonly role: TimerRole;
  readonly purpose: TimerPurpose;
  readonly lengthS: number;
  readonly label: Message;
  readonly repeats?: boolean;
  readonly fault?: FaultKind;
};

/** What can hurt while a stage is active, and what Stop must make safe. */
export type Hazard = 'boiling-water' | 'flame' | 'element' | 'oven' | 'hot-surface';

/** A step is a row of stages; each ends by a person's word (`say`), by its hold timer, or by both. */
export type Stage = {
  readonly id: string;
  /** One imperative sentence, starting with a verb. */
  readonly title: Message;
  readonly detail: readonly Message[];
  /** Label of the action that ends the stage; absent: the hold timer alone ends it. */
  readonly say?: Message;
  readonly timers: readonly TimerSpec[];
  readonly resumption: Resumption;
  /** Asked after an interruption: "Did the burner keep glowing?" */
  readonly reviewAsk?: Message;
  readonly hazards: readonly Hazard[];
};

/** This step needs that one done; `withinS`: and started no later than that after it. */
export type Need = { readonly step: string; readonly withinS?: number };

export type Step = {
  readonly id: string;
  readonly kind: StepKind;
  readonly phase: Phase;
  readonly fixture?: string;
  readonly title: Message;
  readonly reason: Message;
  readonly sources: readonly string[];
  readonly stages: readonly Stage[];
  readonly durationS: Band;
  readonly attention: Attention;
  readonly needs: readonly Need[];
  /** `chain`: starts by itself when its needs settle after having been begun (a rest after cleaning, a cool-down). */
  readonly startsBy: 'person' | 'chain';
  readonly demands: Readonly<Record<string, number>>;
  readonly gates: readonly string[];
  readonly standing: readonly string[];
  readonly after: readonly string[];
  readonly makeSafe?: Message;
  readonly picture?: Picture;
};

/** What the stage shows; data only, drawn by the app. */
export type Picture =
  | {
      readonly kind: 'lanes';
      readonly outline: Polygon;
      readonly holes: readonly Polygon[];
      readonly stretches: readonly Stretch[];
      /** Which of the stretches this step pours. */
      readonly kettle: number;
    }
  | {
      readonly kind: 'sink';
      readonly parts: readonly { readonly name: Message; readonly kettle: number }[];
      readonly kettle: number;
    }
  | { readonly kind: 'burner'; readonly cooktop: string; readonly burner: string }
  | {
      readonly kind: 'oven';
      readonly stages: readonly {
        readonly name: Message;
        readonly lengthS: number;
        readonly tempC: number;
      }[];
    }
  | {
      readonly kind: 'kettle';
      readonly vessel: string;
      readonly litres: number;
      readonly maxFillL: number;
    };

/** Where one kettle goes. */
export type Stretch = {
  readonly kettle: number;
  readonly points: readonly Point[];
  readonly litres: number;
  readonly lengthM: number;
};

/** What can be in use: pairs of hands, burners lit at once, the burners of one range, one vessel, amperes of a circuit. */
export type ResourceKind = 'hands' | 'burners-lit' | 'range' | 'vessel' | 'circuit';

export type Resource = {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly name: Message;
  readonly capacity: number;
  readonly unit: Message;
};

export type SignalWord = 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE';

export type CautionText = {
  readonly id: string;
  readonly signal: SignalWord;
  readonly hazard: Message;
  /** Short imperative sentence with its reason. */
  readonly say: Message;
  readonly source: string;
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

export type FaultKind =
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

export type ShoppingItem = {
  readonly id: string;
  readonly name: Message;
  readonly amount: Message;
  readonly why: Message;
};

export type Totals = {
  readonly hotL: Band;
  readonly coldL: Band;
  readonly kettles: Band;
  readonly electricityKWh: number;
  readonly gasKWh: number;
  readonly handsOnS: number;
};

/** Seconds after the start of the job. */
export type Timetable = {
  readonly startS: Readonly<Record<string, number>>;
  readonly finishS: number;
  readonly lowerBoundS: number;
};
