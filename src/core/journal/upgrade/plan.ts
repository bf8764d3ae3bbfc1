import type { Plan } from '../../plan/index.ts';
import type { Gate1, Method1, Plan1, Resource1 } from './plan-1.ts';
import { resourceKindOf } from './resource-kind.ts';
import { upgradeStep } from './step.ts';
import { allWritten, written } from './written.ts';

function upgradeMethod(method: Method1): Plan['methods'][number] {
  const { reason, term, source, overriddenBy, wouldChange, ...same } = method;
  return {
    ...same,
    reason: written(reason),
    ...(term !== undefined && { term: written(term) }),
    source: written(source),
    ...(overriddenBy !== undefined && { overriddenBy: written(overriddenBy) }),
    wouldChange: written(wouldChange),
  };
}

function upgradeResource({ name, unit, ...same }: Resource1): Plan['resources'][number] {
  return { ...same, kind: resourceKindOf(same.id), name: written(name), unit: written(unit) };
}

function upgradeGate({ ask, say, makeSafe, ...same }: Gate1): Plan['gates'][number] {
  return { ...same, ask: written(ask), say: written(say), makeSafe: written(makeSafe) };
}

function upgradeDays({
  startWallMs,
  restDays,
  deadline,
}: NonNullable<Plan1['days']>): NonNullable<Plan['days']> {
  const named = <T extends { readonly name: string }>({ name, ...same }: T) => ({
    ...same,
    name: written(name),
  });
  return {
    startWallMs,
    restDays: restDays.map(named),
    ...(deadline !== undefined && { deadline: named(deadline) }),
  };
}

/** A plan of version 1 as version 2 holds it. Its sentences stay in the English they were written in. */
export function upgradePlan(plan: Plan1): Plan {
  const { days, learned, ...rest } = plan;
  return {
    ...rest,
    version: 2,
    methods: plan.methods.map(upgradeMethod),
    steps: plan.steps.map((step) => upgradeStep(plan, step)),
    resources: plan.resources.map(upgradeResource),
    gates: plan.gates.map(upgradeGate),
    cautions: plan.cautions.map(({ hazard, say, source, ...same }) => ({
      ...same,
      hazard: written(hazard),
      say: written(say),
      source: written(source),
    })),
    faults: plan.faults.map(({ name, doThis, ...same }) => ({
      ...same,
      name: written(name),
      doThis: allWritten(doThis),
    })),
    questions: plan.questions.map(({ ask, why, untilThen, ...same }) => ({
      ...same,
      ask: written(ask),
      why: written(why),
      untilThen: written(untilThen),
    })),
    shopping: plan.shopping.map(({ name, amount, why, ...same }) => ({
      ...same,
      name: written(name),
      amount: written(amount),
      why: written(why),
    })),
    notices: allWritten(plan.notices),
    ...(days !== undefined && { days: upgradeDays(days) }),
    ...(learned !== undefined && { calibration: learned }),
  };
}
