import { asWritten } from '../../src/core/messages/index.ts';
import { buildPlan, type Plan, type PlanDays } from '../../src/core/plan/index.ts';
import { DEMOS, kitchenOf, only, planOfDemo } from '../core/plan/support/plans.ts';
import { planOf, steps } from '../core/run/support/fixtures.ts';
import type { Dice } from './dice.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** Moments at which a run begins: an ordinary morning, the days of the autumn hour, the end of a year. */
const BEGINNINGS_MS = [
  Date.UTC(2026, 2, 10, 8),
  Date.UTC(2026, 9, 23, 9),
  Date.UTC(2026, 9, 24, 15),
  Date.UTC(2026, 11, 30, 7),
  Date.UTC(2026, 11, 31, 18),
];

const kept = new Map<string, Plan>();

function once(key: string, make: () => Plan): Plan {
  const known = kept.get(key);
  if (known) return known;
  const plan = make();
  kept.set(key, plan);
  return plan;
}

/** A demo kitchen with two or three of its fixtures, as the planner plans it. */
function partOfDemo(dice: Dice): Plan {
  const demo = dice.pick(['flat-coils', 'mountain-gas', 'flat-glass-230'] as const) ?? 'flat-coils';
  const kitchen = kitchenOf(demo);
  const ids = kitchen.fixtures.map(({ id }) => id);
  const wanted = ids.filter((id) => /sink$|range-top|hob|counter|oven/.test(id));
  const chosen = [...new Set([dice.pick(wanted), dice.pick(wanted)])].filter(
    (id): id is string => id !== undefined,
  );
  const key = `${demo} with ${chosen.toSorted().join(' and ')}`;
  return once(key, () => buildPlan(only(kitchen, ...chosen)));
}

function handMade(): Plan {
  return once('hand-made', () => planOf(steps));
}

/** Rest days and perhaps an hour of leaven, placed so that work and waits run into them. */
function daysFor(dice: Dice, startWallMs: number): PlanDays {
  const first = startWallMs + dice.between(0.5, 40) * HOUR_MS;
  const second = first + dice.between(2, 4) * DAY_MS;
  const restDays = [
    { name: asWritten('the Sabbath'), fromWallMs: first, toWallMs: first + 25 * HOUR_MS },
    { name: asWritten('the festival'), fromWallMs: second, toWallMs: second + 49 * HOUR_MS },
  ];
  const deadline = dice.chance(0.4)
    ? {
        name: asWritten('the hour of leaven'),
        atWallMs: startWallMs + dice.between(20, 60) * HOUR_MS,
      }
    : undefined;
  return { startWallMs, restDays, ...(deadline && { deadline }) };
}

export type Setting = { readonly plan: Plan; readonly startMs: number; readonly name: string };

/** The plan and the hour of one run. Real plans of whole demo kitchens are the rarer, for their size. */
export function settingFor(dice: Dice): Setting {
  const startMs = dice.pick(BEGINNINGS_MS) ?? 0;
  const kind = dice.weighed([
    ['hand-made', 5],
    ['part', 11],
    ['demo', 1],
  ] as const);
  let name: string = kind ?? 'part';
  let plan: Plan;
  if (kind === 'hand-made') plan = handMade();
  else if (kind === 'demo') {
    const demo = dice.weighed(DEMOS.map((one) => [one, one === 'hall' ? 0.3 : 1] as const));
    name = demo ?? 'flat-coils';
    plan = once(name, () => planOfDemo(demo ?? 'flat-coils'));
  } else {
    plan = partOfDemo(dice);
    name = [...new Set(plan.steps.map(({ fixture }) => fixture))].join(' ');
  }
  if (dice.chance(0.45)) plan = { ...plan, days: daysFor(dice, startMs) };
  return { plan, startMs, name };
}
