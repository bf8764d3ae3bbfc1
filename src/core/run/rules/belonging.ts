import { UTENSILS, type Plan, type Step } from '../../plan/index.ts';

/** Is this vessel in the step's hand or on its fire? */
export function usesVessel({ picture, work }: Step, vessel: string): boolean {
  if (picture?.kind === 'kettle' && picture.vessel === vessel) return true;
  const used = 'vessel' in work ? work.vessel : undefined;
  return used !== undefined && (used.id === vessel || used.unit === vessel);
}

/** What was dipped in a vessel before stays purged, and its rest is its own. */
function isOfUtensils({ work }: Step): boolean {
  return work.on === 'utensils';
}

/**
 * Steps that are about one fixture; or, for a vessel, its own cleaning, rest
 * and purge, which belong to no fixture; or all of the utensils. Empty: the plan works on no such thing.
 */
export function stepsAbout(plan: Plan, id: string): readonly Step[] {
  // What soaks in cold water has no rest of its own.
  if (id === UTENSILS)
    return plan.steps.filter(({ work }) => work.on === 'utensils' && work.method !== 'soak');
  const ofFixture = plan.steps.filter(({ fixture }) => fixture === id);
  if (ofFixture.length > 0) return ofFixture;
  const found = new Set(
    plan.steps
      .filter((step) => step.fixture === undefined && step.phase === 'purge' && !isOfUtensils(step))
      .filter((step) => usesVessel(step, id))
      .map((step) => step.id),
  );
  const own = (step: Step): boolean =>
    (step.kind === 'rest' || step.kind === 'clean') && !isOfUtensils(step);
  for (const kind of ['purge', 'rest'] as const)
    for (const step of plan.steps)
      if (found.has(step.id) && step.phase === kind)
        for (const need of step.needs) {
          const needed = plan.steps.find((one) => one.id === need.step);
          if (needed && needed.fixture === undefined && own(needed)) found.add(needed.id);
        }
  return plan.steps.filter((step) => found.has(step.id));
}
