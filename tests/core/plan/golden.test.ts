import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { buildPlan, describePlan, type Plan, type Step } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMOS, kitchenOf, planOfDemo } from './support/plans.ts';

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
    case 'utensils':
      return {
        utensils: work.items.map(({ utensil, count }) => `${count} ${utensil}`).join(', '),
        method: work.method,
        vessel: work.vessel?.unit,
        batch: work.batch && `${work.batch.number} of ${work.batch.of}, ${work.batch.group}`,
      };
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

/** The start of a working week, as a household would tell it. */
const START_WALL_MS = Date.UTC(2026, 2, 22, 13);

/** The whole of each, line by line as it is printed: what a change of a sentence or an hour does is seen here. */
describe('the printed plan', () => {
  it.each(DEMOS)('of %s, begun on a Sunday', async (demo) => {
    const text = describePlan(
      buildPlan(kitchenOf(demo), { startWallMs: START_WALL_MS }),
      inEnglish,
    );
    await expect(text).toMatchFileSnapshot(join(GOLDEN, `${demo}.txt`));
  });
});
