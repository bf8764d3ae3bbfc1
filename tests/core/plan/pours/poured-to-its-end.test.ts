import { describe, expect, it } from 'vitest';
import { buildPlan, type Plan } from '../../../../src/core/plan/index.ts';
import { DEMOS, kitchenOf } from '../support/plans.ts';

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
/** Mornings to evenings, a Friday among them. */
const STARTS_MS = [0, 11, 22, 33, 66, 77].map(
  (day, at) => Date.UTC(2026, 0, 5) + day * DAY_MS + [6, 11, 16, 20][at % 4]! * HOUR_MS,
);
/** Beside the boil of the next kettle, s. A judgement: common practice, no published source. */
const MOST_BETWEEN_S = 15 * 60;

/** What comes between two kettles of one place, less the boil of the second, s. */
function pausesS({ steps, timetable }: Plan): readonly number[] {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const endS = (id: string) => timetable.startS[id]! + byId.get(id)!.durationS.typical;
  return steps
    .filter(({ kind }) => kind === 'pour')
    .flatMap(({ id, needs }) => {
      const before = needs.map(({ step }) => byId.get(step)!);
      const last = before.find(({ kind }) => kind === 'pour');
      const boil = before.find(({ kind }) => kind === 'boil');
      if (!last || !boil) return [];
      return [timetable.startS[id]! - endS(last.id) - boil.durationS.typical];
    });
}

describe('a place that was begun', () => {
  it.each(DEMOS)('is poured to its end, on every day that %s may begin', (demo) => {
    for (const startWallMs of STARTS_MS) {
      const pauses = pausesS(buildPlan(kitchenOf(demo), { startWallMs }));
      expect(pauses.length).toBeGreaterThan(1);
      expect(Math.max(...pauses), new Date(startWallMs).toISOString()).toBeLessThanOrEqual(
        MOST_BETWEEN_S,
      );
    }
  });
});
