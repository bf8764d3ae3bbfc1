import type { ChosenMethod, RowAnswer } from '../../custom/index.ts';
import type { CustomId, Kitchen, PartId, Purpose } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';
import type { Band } from '../../units/index.ts';
import type { Calibration } from './calibration.ts';
import type { CautionText, Gate } from './caution.ts';
import type { FaultPolicy } from './fault.ts';
import type { PlannedPour } from './pour.ts';
import type { Step } from './step.ts';

/**
 * A plan is inert data: it is printed, checked, simulated and run by plain
 * functions over it, and it travels inside the journal of its run. Nothing in
 * it is a callback, a date or a clock. All durations in seconds.
 */
export type Plan = {
  readonly format: 'glowpour-plan';
  readonly version: 2;
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
  /** What is poured by kettles, in the order of pouring; absent: made by an earlier version. */
  readonly pours?: readonly PlannedPour[];
  readonly timetable: Timetable;
  /** Things the household should know before starting (planning cautions, circuits, spare day). */
  readonly notices: readonly Message[];
  /** The calendar the plan was made for; absent when no start or no place was told. */
  readonly days?: PlanDays;
  /** What earlier runs taught, as this plan used it; absent when it used nothing. */
  readonly calibration?: Calibration;
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
  /** By when all purging is planned to be done (the eve of Passover), where there is such an hour. */
  readonly deadline?: Deadline;
};

export type Deadline = {
  readonly name: Message;
  readonly atWallMs: number;
  /**
   * After this nothing is purged any more; from `atWallMs` until then it is with more care, and
   * `asks` says what is asked first. Absent: nothing is purged after `atWallMs`.
   */
  readonly hard?: { readonly name: Message; readonly atWallMs: number; readonly asks: Message };
};

/** From candle lighting to nightfall. */
export type RestDay = {
  readonly name: Message;
  readonly fromWallMs: number;
  readonly toWallMs: number;
};

/** Which method a fixture gets, why, and what would change it. */
export type FixtureMethod = ChosenMethod;

export type Question = {
  readonly id: string;
  readonly fixture: string;
  readonly ask: Message;
  readonly why: Message;
  readonly untilThen: Message;
  /** Row or rule of the custom it comes from. */
  readonly row?: string;
  /** The part it is about. */
  readonly part?: PartId;
  readonly about?: 'ruling' | 'material' | 'condition' | 'use';
  /** The answers that are known to be given. */
  readonly answers?: readonly RowAnswer[];
};

/**
 * What can be in use: pairs of hands, burners lit at once, the burners of one range, one vessel,
 * amperes of a circuit, the place of a fixture that is poured, eyes for what glows.
 */
export type ResourceKind =
  'hands' | 'burners-lit' | 'range' | 'vessel' | 'circuit' | 'place' | 'watch';

export type Resource = {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly name: Message;
  readonly capacity: number;
  readonly unit: Message;
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
  /** It is proven that no order of work ends earlier. Absent in plans from before this was told. */
  readonly proven?: boolean;
};
