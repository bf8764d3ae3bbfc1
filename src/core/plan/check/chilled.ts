import type { Plan, Step } from '../model/index.ts';
import { problem, type PlanProblem } from './problem.ts';

/** Steps that `from` cannot begin without, however far back. */
function before(byId: ReadonlyMap<string, Step>, from: Step): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [from];
  for (let at = open.pop(); at; at = open.pop())
    for (const need of at.needs) {
      const needed = byId.get(need.step);
      if (!needed || found.has(needed.id)) continue;
      found.add(needed.id);
      open.push(needed);
    }
  return found;
}

/**
 * A fridge or freezer that a plan cleans is unplugged first, a freezer has its ice gone, and it is
 * switched on again after all that is done to it.
 */
export function* chilledProblems(plan: Plan): Generator<PlanProblem> {
  const byId = new Map(plan.steps.map((step) => [step.id, step]));
  for (const { id, kind } of plan.kitchen.fixtures) {
    if (kind !== 'fridge' && kind !== 'freezer') continue;
    const own = plan.steps.filter(({ fixture }) => fixture === id);
    const clean = own.find((step) => step.kind === 'clean');
    if (!clean) continue;
    const first = before(byId, clean);
    const asked = kind === 'freezer' ? (['unplug', 'thaw'] as const) : (['unplug'] as const);
    for (const wanted of asked)
      if (!own.some((step) => step.kind === wanted && first.has(step.id)))
        yield problem('chilled', [clean.id], `${clean.id} has no ${wanted} before it`);
    const on = own.find((step) => step.kind === 'switch-on');
    if (!on) {
      yield problem('chilled', [id], `${id} is cleaned and not switched on again`);
      continue;
    }
    const done = before(byId, on);
    for (const step of own)
      if (step !== on && !done.has(step.id))
        yield problem(
          'chilled',
          [on.id, step.id],
          `${id} is switched on before ${step.id} is done`,
        );
  }
}
