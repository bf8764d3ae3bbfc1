import type { ChosenQuestion } from '../../../../core/custom/index.ts';
import type { Kitchen } from '../../../../core/kitchen/index.ts';
import type { AnswerChange, Plan } from '../../../../core/plan/index.ts';
import type { Ticks } from '../../../controllers/kitchen/ticks.ts';

/** What the handouts are made of. */
export type HandoutProps = {
  readonly plan: Plan;
  /** As it lies on the desk. */
  readonly kitchen: Kitchen;
  /** Absent: the plan is only read. */
  readonly onKitchen: ((kitchen: Kitchen) => void) | undefined;
  readonly changes: (question: ChosenQuestion) => Promise<readonly AnswerChange[]>;
  /** What is ticked off the shopping list; absent: nothing is kept. */
  readonly ticks?: Ticks | undefined;
};
