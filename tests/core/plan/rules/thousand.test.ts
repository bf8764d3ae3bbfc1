import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CustomId, Kitchen, Place, Purpose } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan } from '../../../../src/core/plan/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';

/** Kitchens in the everyday test; the slow lane asks for 1000. */
const KITCHENS = Number(process.env['GLOWPOUR_KITCHENS'] ?? 60);
const LIMIT_MS = 3_600_000;
const H_MS = 3_600_000;
/** Two years of starts, at any hour of waking, among them eves of Passover on a Sabbath (2025). */
const FROM_MS = Date.UTC(2025, 0, 1);
const HOURS = 2 * 365 * 24;

const CUSTOMS: readonly CustomId[] = ['ashkenazic', 'sephardic'];
const PURPOSES: readonly Purpose[] = ['new-kitchen', 'passover', 'mix-up'];
const PLACES: readonly Place[] = [
  { latDeg: 40.7, lonDeg: -74, zone: 'America/New_York', land: 'diaspora' },
  { latDeg: 31.8, lonDeg: 35.2, zone: 'Asia/Jerusalem', land: 'israel' },
  { latDeg: 51.5, lonDeg: -0.1, zone: 'Europe/London', land: 'diaspora' },
  { latDeg: -33.9, lonDeg: 151.2, zone: 'Australia/Sydney', land: 'diaspora' },
];
/** Around Passover most can go wrong: every third start lies there. 2025's eve is a Sabbath. */
const EVES_MS = [Date.UTC(2025, 3, 12), Date.UTC(2026, 3, 1)];

type Job = { readonly kitchen: Kitchen; readonly startWallMs: number; readonly people: number };

function jobs(): fc.Arbitrary<Job> {
  const near = fc
    .tuple(fc.constantFrom(...EVES_MS), fc.integer({ min: -24 * 5, max: 24 * 9 }))
    .map(([eve, hours]) => eve + hours * H_MS);
  const any = fc.integer({ min: 0, max: HOURS }).map((hours) => FROM_MS + hours * H_MS);
  return fc
    .record({
      kitchen: kitchens(),
      custom: fc.constantFrom(...CUSTOMS),
      purpose: fc.constantFrom(...PURPOSES),
      people: fc.integer({ min: 1, max: 3 }),
      place: fc.constantFrom(...PLACES),
      startWallMs: fc.oneof({ weight: 2, arbitrary: any }, { weight: 1, arbitrary: near }),
    })
    .map(({ kitchen, custom, purpose, people, place, startWallMs }) => ({
      kitchen: {
        ...kitchen,
        place,
        household: { ...kitchen.household, custom, purpose, people, keepsRestDays: true },
      },
      startWallMs,
      people,
    }));
}

describe('random kitchens, both customs, three purposes, starts through two years', () => {
  it(
    'get plans in which no rule is broken',
    () => {
      const counts: Record<string, number> = {};
      const count = (what: string): void => {
        counts[what] = (counts[what] ?? 0) + 1;
      };
      fc.assert(
        fc.property(jobs(), ({ kitchen, startWallMs }) => {
          const plan = buildPlan(kitchen, { startWallMs });
          expect(checkPlan(plan)).toEqual([]);
          count('kitchens');
          count(plan.custom);
          count(plan.purpose);
          if (plan.days?.deadline) count('with a deadline');
          if (plan.notices.some(({ key }) => key === 'plan.notice.eve-is-sabbath'))
            count('before an eve on a Sabbath');
          if (plan.notices.some(({ key }) => key === 'plan.notice.inside-passover'))
            count('inside Passover');
          const kinds = new Set(plan.steps.map(({ kind }) => kind));
          if (kinds.has('pour')) count('that pour');
          if (kinds.has('glow')) count('that glow');
          if (kinds.has('self-clean')) count('with a self-clean');
        }),
        { numRuns: KITCHENS },
      );
      console.log(`plans in which no rule is broken: ${JSON.stringify(counts)}`);
      // No idle kitchens: most have water and fire in them.
      expect(counts['that pour']).toBeGreaterThan(KITCHENS / 10);
      expect(counts['that glow']).toBeGreaterThan(KITCHENS / 10);
    },
    LIMIT_MS,
  );
});
