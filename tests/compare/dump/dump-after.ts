/** The working tree, brought into the layout that is pinned in `layout.ts`. */
import { parseMoment } from '../../../src/core/calendar/index.ts';
import { parseKitchen } from '../../../src/core/kitchen/index.ts';
import { buildPlan, describePlan, ranOut, type Plan } from '../../../src/core/plan/index.ts';
import { reportOf, reportText } from '../../../src/core/report/index.ts';
import { apply, simulateRun, type Fact, type Request } from '../../../src/core/run/index.ts';
import type { Build, Played } from './build.ts';
import { disturbance } from './disturbance.ts';
import type { FactOne, PlanOne, RequestOne, RunTimerOne } from './layout.ts';
import { formatTime, type Scene } from './scenes.ts';

/** A plan in the common layout: sentences in English, names as they are (`renames.ts` knows those that changed). */
function planOne(plan: Plan): PlanOne {
  return plan;
}

/** A fact in the common layout. */
function factOne(fact: Fact): FactOne {
  return fact;
}

/** What the disturbing person asks, in the words of the engine. */
function requestOf(asked: RequestOne): Request {
  return asked as unknown as Request;
}

/** Every timer of a run: those that are over are not in its last state. */
function timersOf(facts: readonly Fact[]): readonly RunTimerOne[] {
  const timers = new Map<string, RunTimerOne>();
  let state: ReturnType<typeof apply> | null = null;
  for (const fact of facts) {
    state = apply(state, fact);
    for (const { id, step, stage, spec } of Object.values(state.timers))
      timers.set(id, { id, step, stage, role: spec.role, purpose: spec.purpose });
  }
  return [...timers.values()];
}

function played(plan: Plan, disturbed: boolean): Played {
  const disturb = disturbance((step, hasBegun) => ranOut(plan, step, 0.5, hasBegun));
  const { facts, state } = simulateRun(
    plan,
    disturbed ? { script: (seen) => disturb(seen).map(requestOf) } : {},
  );
  return {
    facts: facts.map(factOne),
    plan: planOne(state.plan),
    timers: timersOf(facts),
    record: reportText(reportOf(facts), formatTime),
  };
}

function planOf(kitchenText: string, { name, custom, start }: Scene): Plan {
  const parsed = parseKitchen(kitchenText);
  if ('problems' in parsed) throw new Error(`${name}: ${JSON.stringify(parsed.problems)}`);
  const kitchen = { ...parsed.kitchen, household: { ...parsed.kitchen.household, custom } };
  if (start === undefined) return buildPlan(kitchen);
  return buildPlan(kitchen, { startWallMs: parseMoment('start', start, kitchen.place?.zone) });
}

export const buildAfter: Build = {
  plan(kitchenText, scene) {
    const plan = planOf(kitchenText, scene);
    return {
      plan: planOne(plan),
      text: describePlan(plan),
      run: (disturbed) => played(plan, disturbed),
    };
  },
};
