import type { Fixture, Kitchen, MethodId } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, type Plan, type Step } from '../../../../src/core/plan/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { demoKitchen } from '../../kitchen/demos.ts';

export const DEMOS = ['flat-coils', 'mountain-gas', 'flat-glass-230', 'hall'] as const;

export function kitchenOf(demo: (typeof DEMOS)[number]): Kitchen {
  return demoKitchen(`${demo}.kitchen.json`);
}

/** The same kitchen with one fixture changed. */
export function withFixture(kitchen: Kitchen, id: string, change: Partial<Fixture>): Kitchen {
  return {
    ...kitchen,
    fixtures: kitchen.fixtures.map((one) =>
      one.id === id ? ({ ...one, ...change } as Fixture) : one,
    ),
  };
}

/** The same kitchen with one fixture's method set by the household's answer. */
export function withMethod(kitchen: Kitchen, fixture: string, method: MethodId): Kitchen {
  return {
    ...kitchen,
    household: {
      ...kitchen.household,
      overrides: [{ fixture, method, saidBy: 'our rabbi', saidOn: '2026-03-01' }],
    },
  };
}

/** Only these fixtures. */
export function only(kitchen: Kitchen, ...ids: readonly string[]): Kitchen {
  return { ...kitchen, fixtures: kitchen.fixtures.filter(({ id }) => ids.includes(id)) };
}

export function planOfDemo(demo: (typeof DEMOS)[number]): Plan {
  return buildPlan(kitchenOf(demo));
}

export function step(plan: Plan, id: string): Step {
  const found = plan.steps.find((one) => one.id === id);
  if (!found)
    throw new Error(`no step ${id}; there are ${plan.steps.map((one) => one.id).join(', ')}`);
  return found;
}

export function stepsOf(plan: Plan, kind: Step['kind'], fixture?: string): readonly Step[] {
  return plan.steps.filter(
    (one) => one.kind === kind && (fixture === undefined || one.fixture === fixture),
  );
}

export function startS(plan: Plan, id: string): number {
  return plan.timetable.startS[id] ?? Number.NaN;
}

export function endS(plan: Plan, id: string): number {
  return startS(plan, id) + step(plan, id).durationS.typical;
}

/** Keys of everything that the plan tells the household beforehand. */
export function noticeKeys({ notices }: Plan): readonly string[] {
  return notices.map(({ key }) => key);
}

/** The same as it reads in English. */
export function noticesText({ notices }: Plan): string {
  return notices.map((notice) => inEnglish.say(notice)).join(' ');
}
