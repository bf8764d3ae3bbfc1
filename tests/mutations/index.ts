import { amendmentMutations } from './amendments.ts';
import { burnMutations } from './burns.ts';
import { clockMutations } from './clocks.ts';
import { gateMutations } from './gates.ts';
import { journalMutations } from './journal.ts';
import { promiseMutations } from './promises.ts';
import { restDayMutations } from './rest-days.ts';
import type { Mutation } from './types.ts';
import { stepMutations } from './steps.ts';

export { INVARIANTS, type Mutation } from './types.ts';

/**
 * Ways to break a promise of the engine that a test is known to notice. Many a
 * condition turned or left out is not here: `npm run mutate` makes it by rule.
 */
export const MUTATIONS: readonly Mutation[] = [
  ...journalMutations,
  ...clockMutations,
  ...stepMutations,
  ...amendmentMutations,
  ...gateMutations,
  ...restDayMutations,
  ...promiseMutations,
  ...burnMutations,
];
