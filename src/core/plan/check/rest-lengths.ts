import { customTable } from '../../custom/index.ts';
import type { Plan } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

const S_H = 3600;

/** I-17 by length: a rest is as long as the custom has it, and its stage cannot end sooner. */
export function* restLengthProblems(plan: Plan): Generator<PlanProblem> {
  const neededS = customTable(plan.kitchen.household.custom).restHours * S_H;
  for (const step of plan.steps) {
    if (step.kind !== 'rest') continue;
    const restedS = step.stages
      .flatMap(({ timers }) => timers)
      .filter(({ role, purpose }) => role === 'hold' && purpose === 'at-least')
      .reduce((longest, { lengthS }) => Math.max(longest, lengthS), 0);
    if (restedS < neededS)
      yield problem(
        'rest',
        [step.id],
        `${step.id} rests ${restedS} s; the custom asks for ${neededS} s`,
      );
  }
}
