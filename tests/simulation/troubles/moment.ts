import type { RunView, StepView } from '../../../src/core/run/index.ts';
import type { Dice } from '../dice.ts';
import type { Findings } from '../oracle/findings.ts';
import type { World } from '../world.ts';

/** An hour, s. */
export const HOUR_S = 3600;

/** What goes on just now, so that troubles come where they hurt. */
export type Moment = {
  readonly cleaning: boolean;
  readonly resting: boolean;
  readonly holding: StepView | undefined;
  readonly pouring: StepView | undefined;
  readonly hot: boolean;
};

export function momentOf(view: RunView): Moment {
  const begun = view.steps.filter(({ status }) => status === 'active' || status === 'checking');
  return {
    cleaning: begun.some(({ step }) => step.kind === 'clean'),
    resting: begun.some(({ step }) => step.kind === 'rest'),
    holding: begun.find(({ step, stage }) => step.stages[stage]?.resumption === 'restart'),
    pouring: begun.find(({ step, stage }) => step.kind === 'pour' && stage === 0),
    hot: view.hot.length > 0,
  };
}

/** Something that goes wrong; what the promises say of it at once is told to `found`. */
export type Trouble = (world: World, dice: Dice, found: Findings, moment: Moment) => void;
