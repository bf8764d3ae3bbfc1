import type { FactOne, PlanOne, RunTimerOne } from './layout.ts';
import type { Scene } from './scenes.ts';

/** A plan of one version: in the common layout, and as that version prints it. */
type Planned = {
  readonly plan: PlanOne;
  /** What `describePlan` says in English. */
  readonly text: string;
  /** Plays it to its end; `disturbed`: with what `disturbance.ts` does to it. */
  readonly run: (disturbed: boolean) => Played;
};

/** A simulated run of one version. */
export type Played = {
  readonly facts: readonly FactOne[];
  /** The plan as the run left it: steps that were added stand after all others. */
  readonly plan: PlanOne;
  /** Every timer there ever was in it. */
  readonly timers: readonly RunTimerOne[];
  /** The record as text. */
  readonly record: string;
};

/** One version of the software, as the comparison uses it. */
export type Build = {
  /** @param kitchenText of a demo kitchen of that version */
  readonly plan: (kitchenText: string, scene: Scene) => Planned;
};
