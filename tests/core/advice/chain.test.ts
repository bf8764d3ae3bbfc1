import { describe, expect, it } from 'vitest';
import { criticalChain, shares, type Plan } from '../../../src/core/plan/index.ts';
import { hoursOf } from '../../../src/core/advice/margins/open-hours.ts';
import { DEMOS } from '../plan/support/plans.ts';
import { plannedDemo } from './situations.ts';

function chainOf(plan: Plan) {
  return criticalChain(plan.steps, plan.timetable.startS, hoursOf(plan).work);
}

describe.each(DEMOS)('the chain that decides the end of %s', (demo) => {
  const { plan } = plannedDemo(demo, '2027-04-18T09:00');
  const chain = chainOf(plan);
  const stepOf = (id: string) => plan.steps.find((one) => one.id === id);

  it('leads from the beginning to the end without a gap', () => {
    expect(chain[0]?.fromS).toBe(0);
    expect(chain.at(-1)?.toS).toBeCloseTo(plan.timetable.finishS, 2);
    chain.slice(1).forEach((link, at) => {
      expect(link.fromS - (chain[at]?.toS ?? 0)).toBeLessThan(0.02);
    });
  });

  it('joins only what needs or holds the same', () => {
    const steps = chain.flatMap((link) => (link.kind === 'step' ? [link.step] : []));
    steps.slice(1).forEach((id, at) => {
      const [earlier, later] = [stepOf(steps[at] ?? ''), stepOf(id)];
      if (!earlier || !later) throw new Error(`${id} is no step of the plan`);
      const needed = later.needs.some(({ step }) => step === earlier.id);
      expect(needed || shares(earlier, later), `${earlier.id} then ${id}`).toBe(true);
    });
  });

  it('holds a whole rest', () => {
    const rests = chain.filter(
      (link) => link.kind === 'step' && stepOf(link.step)?.kind === 'rest',
    );
    expect(rests.map(({ fromS, toS }) => toS - fromS)).toEqual([24 * 3600]);
  });
});
