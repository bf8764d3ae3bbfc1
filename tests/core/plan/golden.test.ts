import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { buildPlan, describePlan, type Plan, type Step } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMOS, kitchenOf, only, planOfDemo } from './support/plans.ts';

const GOLDEN = join(import.meta.dirname, 'golden');

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** What a step is done on, without its sentences. */
function workOf({ fixture, work }: Step): object {
  switch (work.on) {
    case 'kettle':
      return {
        fixture,
        kettle: `${work.kettle} of ${work.of}`,
        vessel: work.vessel.unit,
        litres: rounded(work.litres, 3),
      };
    case 'vessel':
      return { vessel: work.vessel.unit, litres: work.litres };
    case 'burner':
      return { fixture, burner: work.burner, minutes: work.minutes };
    case 'fixture':
      return { fixture, method: work.method, minutes: work.minutes };
    case 'kitchen':
      return {};
  }
}

/** One line a step, in the order in which the work begins: what and on what, when and how long, what guards it. */
function structureOf({ steps, timetable, totals, notices }: Plan): string {
  const startS = ({ id }: Step): number => timetable.startS[id] ?? Number.NaN;
  const rows = steps
    .toSorted((a, b) => startS(a) - startS(b))
    .map((step) => ({
      startMin: rounded(startS(step) / 60, 1),
      lastsMin: rounded(step.durationS.typical / 60, 1),
      kind: step.kind,
      ...workOf(step),
      stages: step.stages.map(({ role }) => role).join(' '),
      gates: step.gates.join(' '),
      cautions: [...step.standing, ...step.after].join(' '),
    }));
  const whole = {
    finishMin: rounded(timetable.finishS / 60, 1),
    hotL: rounded(totals.hotL.typical, 2),
    kettles: totals.kettles.typical,
    notices: notices.map(({ key }) => key).join(' '),
  };
  return [whole, ...rows].map((row) => `${JSON.stringify(row)}\n`).join('');
}

describe.each(DEMOS)('the plan of %s', (demo) => {
  it('does the same work at the same time, guarded as it was', async () => {
    await expect(structureOf(planOfDemo(demo))).toMatchFileSnapshot(join(GOLDEN, `${demo}.jsonl`));
  });
});

/** One fixture of each demo, so that every way of purging is read once as it is printed. */
const PRINTED = {
  'flat-coils': 'oven',
  'mountain-gas': 'range-top',
  'flat-glass-230': 'sink',
  hall: 'counter-cook-left',
} as const satisfies Record<(typeof DEMOS)[number], string>;

describe('the printed plan', () => {
  it.each(Object.entries(PRINTED))('of %s, for its %s alone', async (demo, fixture) => {
    const kitchen = only(kitchenOf(demo as (typeof DEMOS)[number]), fixture);
    expect(kitchen.fixtures).toHaveLength(1);
    const text = describePlan(buildPlan(kitchen), inEnglish);
    await expect(text).toMatchFileSnapshot(join(GOLDEN, `${demo}.txt`));
  });
});
