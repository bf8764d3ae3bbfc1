/**
 * How long a burn is cooled under running water, s: 20 min. Sources: "at least
 * 20 minutes", ANZCOR Guideline 9.1.3 (read); European Resuscitation Council
 * Guidelines 2021: First aid (its topic read, its 20 minutes from memory).
 */
export const COOLING_S = 20 * 60;

/** Why the clock of a cooling ended, by a person's word. */
export type CoolingEnd = 'cooled' | 'taken-over' | 'mistake';

/** How a screen sees a burn that is being cooled. Seconds. */
export type CoolingView = {
  readonly id: string;
  readonly fault: string;
  readonly startedWallMs: number;
  readonly lengthS: number;
  /** The longest it may still need: only proved time counts. */
  readonly leftS: number;
  readonly atLeastS: number;
  /** Infinity when nothing bounds it. */
  readonly atMostS: number;
  /** The 20 minutes are proved, and were told. */
  readonly over: boolean;
  /** They may be over, by a clock that nobody vouches for: a person may say so. */
  readonly mayBeOver: boolean;
  /** Sounds until somebody answers. */
  readonly alerting: boolean;
  readonly cause: number;
};
