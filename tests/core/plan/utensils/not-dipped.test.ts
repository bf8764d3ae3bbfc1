import { describe, expect, it } from 'vitest';
import type { Kitchen, Utensil } from '../../../../src/core/kitchen/index.ts';
import {
  buildPlan,
  planForRecheck,
  type Plan,
  type Step,
} from '../../../../src/core/plan/index.ts';
import { endS, kitchenOf, noticeKeys, only, startS } from '../support/plans.ts';

const HOUR_S = 3600;
const mountain = kitchenOf('mountain-gas');
const small = only(mountain, 'range-top', 'sink-steel');

type OfUtensils = Step & { readonly work: Extract<Step['work'], { readonly on: 'utensils' }> };

function onUtensils({ steps }: Plan): readonly OfUtensils[] {
  return steps.filter((step): step is OfUtensils => step.work.on === 'utensils');
}

function withUtensils(some: readonly Utensil[]): Kitchen {
  return { ...small, utensils: some };
}

describe('what is not dipped', () => {
  const fork: Utensil = {
    id: 'forks',
    kind: 'cutlery',
    count: 12,
    material: 'stainless-steel',
    use: 'fire-liquid',
    condition: 'smooth',
    designation: 'meat',
  };
  const glasses: Utensil = {
    ...fork,
    id: 'glasses',
    kind: 'glass',
    material: 'glass',
    use: 'cold',
    designation: 'pareve',
  };

  it('soaks three times a day by the clock, with hands for the changes only', () => {
    const plan = buildPlan(withUtensils([glasses]));
    const soaks = onUtensils(plan).filter(
      ({ work, phase }) => work.method === 'soak' && phase === 'purge',
    );
    expect(soaks.map(({ attention }) => attention)).toEqual([
      'none',
      'hands',
      'none',
      'hands',
      'none',
      'hands',
    ]);
    for (const { attention, durationS, demands, startsBy } of soaks) {
      if (attention === 'none')
        expect([durationS.typical, startsBy]).toEqual([24 * HOUR_S, 'chain']);
      expect(demands).toEqual(attention === 'none' ? {} : { hands: 1 });
    }
    expect(plan.steps.some(({ id }) => id === 'rest-all.utensils')).toBe(false);
    expect(endS(plan, soaks.at(-1)!.id) - startS(plan, soaks[0]!.id)).toBeGreaterThanOrEqual(
      72 * HOUR_S,
    );
    // The longest clock of the plan begins with this cleaning: it comes first.
    const cleanings = plan.steps
      .filter(({ kind }) => kind === 'clean')
      .map(({ id }) => startS(plan, id));
    expect(startS(plan, 'clean-all.utensils')).toBe(Math.min(...cleanings));
  });

  it('glows, or scorches straw, over a burner that has glowed itself', () => {
    const tray: Utensil = { ...fork, id: 'tray', kind: 'tray', material: 'steel', use: 'fire-dry' };
    const said = { saidBy: 'our rabbi', saidOn: '2026-03-01' } as const;
    const light: Utensil = { ...tray, id: 'light', answer: { method: 'light-heat', ...said } };
    const plan = buildPlan(withUtensils([tray, light]));
    const fires = onUtensils(plan).filter(({ kind }) => kind === 'high-heat');
    expect(fires.map(({ work }) => work.method)).toEqual(['heat', 'light-heat']);
    for (const fire of fires) {
      expect(fire.demands['burners-lit']).toBe(1);
      expect(fire.needs.some(({ step }) => step.startsWith('cool-'))).toBe(true);
    }
    expect(JSON.stringify(fires[1]?.stages)).toContain('utensils.rule.light-heat-test');
  });

  it('is told where no pot takes it, and where nothing is purged now', () => {
    const { vessels, ...rest } = withUtensils([fork]);
    const plan = buildPlan({ ...rest, vessels: vessels.filter(({ kind }) => kind !== 'pot') });
    expect(onUtensils(plan)).toEqual([]);
    expect(noticeKeys(plan)).toContain('plan.notice.utensils-no-pot');
    const inside = buildPlan(small, { startWallMs: Date.UTC(2026, 3, 6, 9) });
    expect(onUtensils(inside)).toEqual([]);
    expect(noticeKeys(inside)).toContain('plan.notice.utensils-now');
  });

  it('is left alone when a fixture is doubted', () => {
    const plan = planForRecheck(mountain, ['sink-steel'], 'soup was poured out');
    expect(onUtensils(plan)).toEqual([]);
    expect(noticeKeys(plan)).not.toContain('plan.notice.utensils-now');
  });
});
