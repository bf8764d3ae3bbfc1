import { withAnswer } from '../../custom/index.ts';
import type { FixtureKind, Kitchen } from '../../kitchen/index.ts';
import { buildPlan, type Plan } from '../../plan/index.ts';
import type { Planned } from './advise.ts';
import { closedUpAs, purgedFixtures } from '../changes/said.ts';
import type { Situation } from '../changes/change.ts';
import { lateS } from '../due/in-time.ts';

/** What can still be done in time, in the order of its worth, and what is closed up for it. */
export type Triage = {
  readonly kept: readonly string[];
  readonly closed: readonly string[];
  /** Pots and cutlery that the household told wait until after: with them it would be late. */
  readonly utensilsWait: boolean;
  /** Even closed up, the rest of the work ends after the deadline. */
  readonly stillLate: boolean;
};

/** What a household can least do without comes first: a judgement, no published source. */
const WORTH: readonly FixtureKind[] = ['sink', 'cooktop', 'counter', 'oven', 'table'];

function worth(kitchen: Kitchen, fixture: string): number {
  const at = WORTH.indexOf(kitchen.fixtures.find(({ id }) => id === fixture)?.kind ?? 'hood');
  return at < 0 ? WORTH.length : at;
}

/** The kitchen with its utensils put away. */
function withoutUtensils({ utensils: _away, ...kitchen }: Kitchen): Kitchen {
  return kitchen;
}

function closedExcept({ kitchen, options }: Situation, all: readonly string[], kept: string[]) {
  const closed = all.filter((id) => !kept.includes(id));
  const reduced = closed.reduce((now, id) => {
    const override = closedUpAs(kitchen, id);
    return override ? withAnswer(now, override) : now;
  }, kitchen);
  return { kitchen: reduced, options };
}

/** The question of a late plan, piece by piece: each `next` makes one plan, so that a page may draw between. */
export function* triageSteps({ situation, plan }: Planned): Generator<Plan, Triage | undefined> {
  if (lateS(plan, situation.options) <= 0) return undefined;
  const { options } = situation;
  const kitchen = withoutUtensils(situation.kitchen);
  const purged = purgedFixtures(plan);
  const byWorth = purged.toSorted((a, b) => worth(kitchen, a) - worth(kitchen, b));
  const kept: string[] = [];
  for (const fixture of byWorth) {
    const tried = closedExcept({ ...situation, kitchen }, purged, [...kept, fixture]);
    const now = buildPlan(tried.kitchen, options);
    yield now;
    if (lateS(now, options) <= 0) kept.push(fixture);
  }
  const closed = byWorth.filter((id) => !kept.includes(id));
  const left = closedExcept({ ...situation, kitchen }, purged, kept);
  const stillLate = kept.length === 0 && lateS(buildPlan(left.kitchen, options), options) > 0;
  const all = closedExcept(situation, purged, kept);
  const utensilsWait =
    (situation.kitchen.utensils?.length ?? 0) > 0 &&
    lateS(buildPlan(all.kitchen, options), options) > 0;
  return { kept, closed, utensilsWait, stillLate };
}

/**
 * What of a plan that misses its deadline can still be done in time, by planning again: each
 * fixture in the order of its worth is kept where all that is kept is purged in time; utensils come
 * after them all.
 * @returns nothing where the plan is in time
 */
export function triageOf(planned: Planned): Triage | undefined {
  const steps = triageSteps(planned);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
