import { describe, expect, it, vi } from 'vitest';
import { adviceFor, changesToTry, type Advice } from '../../../src/core/advice/index.ts';
import { momentOf } from '../../../src/core/calendar/index.ts';
import type { Kitchen, Override, Vessel } from '../../../src/core/kitchen/index.ts';
import { buildPlan, type Plan } from '../../../src/core/plan/index.ts';
import { DEMOS, kitchenOf } from '../plan/support/plans.ts';
import { NAMES, plannedDemo } from './situations.ts';
import { everyday } from '../../support/runs.ts';

// The same kitchen is planned once: advice and brute force below ask for the same plans.
vi.mock(import('../../../src/core/plan/index.ts'), async (original) => {
  const actual = await original();
  const made = new Map<string, Plan>();
  return {
    ...actual,
    buildPlan: (...asked: Parameters<typeof actual.buildPlan>): Plan => {
      const key = JSON.stringify(asked);
      const plan = made.get(key) ?? actual.buildPlan(...asked);
      made.set(key, plan);
      return plan;
    },
  };
});

const START = '2027-04-18T09:00';
const H_MS = 3_600_000;
const BEFORE = { saidBy: '?', saidOn: '2000-01-01' } as const;
const PURGES = ['glow', 'light-heat', 'self-clean', 'pour', 'immerse', 'steam', 'boil-over'];

type Try = { readonly kitchen: Kitchen; readonly startWallMs: number };

/** The end on the clock, kettles and energy of a kitchen from a start. */
function ends({ kitchen, startWallMs }: Try) {
  const { timetable, totals } = buildPlan(kitchen, { startWallMs });
  return {
    endMs: startWallMs + timetable.finishS * 1000,
    kettles: totals.kettles.typical,
    kWh: totals.electricityKWh + totals.gasKWh,
  };
}

function household(kitchen: Kitchen, change: Partial<Kitchen['household']>): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, ...change } };
}

function said(kitchen: Kitchen, override: Override): Kitchen {
  return household(kitchen, { overrides: [...kitchen.household.overrides, override] });
}

/** Every hour that is tried around the start, written without the code under test. */
function starts(kitchen: Kitchen, startWallMs: number): readonly number[] {
  const zone = kitchen.place?.zone ?? 'UTC';
  return [17, 18, 19]
    .flatMap((day) =>
      [8, 10, 13, 16, 19, 21.5].map((hour) =>
        momentOf(
          { year: 2027, month: 4, day, hour: Math.floor(hour), minute: (hour % 1) * 60 },
          zone,
        ),
      ),
    )
    .filter((ms) => ms !== startWallMs && Math.abs(ms - startWallMs) <= 24 * H_MS);
}

/** What is known by brute force of the changes that need no invention: people, starts, answers, covers. */
function bruteForce(kitchen: Kitchen, startWallMs: number): ReadonlyMap<string, Try> {
  const { people } = kitchen.household;
  const plan = buildPlan(kitchen, { startWallMs });
  const zone = kitchen.place?.zone ?? 'UTC';
  const inSabbath = (ms: number) =>
    plan.days?.restDays.some(({ fromWallMs, toWallMs }) => ms >= fromWallMs && ms < toWallMs);
  const dayBefore = new Intl.DateTimeFormat('sv', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
  }).format(startWallMs - 24 * H_MS);
  return new Map<string, Try>([
    ['people', { kitchen: household(kitchen, { people: people + 1 }), startWallMs }],
    [
      'last-hot',
      { kitchen: household(kitchen, { lastHotAt: dayBefore.replace(' ', 'T') }), startWallMs },
    ],
    ...starts(kitchen, startWallMs)
      .filter((ms) => !inSabbath(ms))
      .map((ms): [string, Try] => [`start ${ms}`, { kitchen, startWallMs: ms }]),
    ...plan.methods
      .filter(({ method }) => PURGES.includes(method))
      .map(({ fixture }): [string, Try] => {
        const kind = kitchen.fixtures.find(({ id }) => id === fixture)?.kind ?? '';
        const method = ['oven', 'dishwasher'].includes(kind) ? 'not-purged' : 'cover';
        const override = { fixture, method, cover: true, ...BEFORE } as const;
        return [`cover ${fixture}`, { kitchen: said(kitchen, override), startWallMs }];
      }),
  ]);
}

function keyOf({ change }: Advice): string {
  if (change.kind === 'start') return `start ${change.startWallMs}`;
  if (change.kind === 'cover') return `cover ${change.override.fixture}`;
  return change.kind;
}

describe.each(everyday(DEMOS, 2))('what would help %s', (demo) => {
  const before = plannedDemo(demo, START);
  const { kitchen, options } = before.situation;
  const { startWallMs = 0 } = options;
  const asked = { names: NAMES, earliestWallMs: startWallMs - 24 * H_MS };

  it('is what planning each choice again says, best first, and never nothing', () => {
    const { advice } = adviceFor(before, asked);
    const now = ends({ kitchen, startWallMs });
    const all = [...bruteForce(kitchen, startWallMs)].map(([key, one]) => {
      const then = ends(one);
      return [
        key,
        {
          endS: (now.endMs - then.endMs) / 1000,
          kettles: now.kettles - then.kettles,
          kWh: now.kWh - then.kWh,
        },
      ] as const;
    });
    const told = new Map(advice.map((one) => [keyOf(one), one.saving]));
    for (const [key, saved] of all) {
      const own = told.get(key);
      if (own) {
        expect(own.endS, key).toBeCloseTo(saved.endS, 1);
        expect(own.kettles, key).toBe(saved.kettles);
        expect(own.kWh, key).toBeCloseTo(saved.kWh, 6);
        expect(own.endS >= 300 || own.kettles > 0 || own.kWh > 0 || own.spanS >= 3600, key).toBe(
          true,
        );
        expect(own.endS, key).toBeGreaterThan(-61);
        continue;
      }
      // What is not told saves no time; a beginning also where a later one ends as early.
      const outdone =
        key.startsWith('start') &&
        all.some(
          ([other, its]) => other.startsWith('start') && other > key && its.endS > saved.endS - 60,
        );
      expect(outdone || saved.endS < 300, `${key} ${saved.endS}`).toBe(true);
    }
    const sooner = advice.map(({ saving }) => Math.round(saving.endS / 60));
    expect(sooner).toEqual(sooner.toSorted((a, b) => b - a));
  }, 240_000);

  it('tells of water what planning with that vessel says', () => {
    const { advice } = adviceFor(before, asked);
    const tries = changesToTry(before, asked).flatMap((change) =>
      'vessel' in change ? [change] : [],
    );
    expect(tries.length).toBeGreaterThan(0);
    const now = ends({ kitchen, startWallMs });
    const saved = (vessel: Vessel): number => {
      const more = { ...kitchen, vessels: [...kitchen.vessels, vessel] };
      return (now.endMs - ends({ kitchen: more, startWallMs }).endMs) / 1000;
    };
    for (const kind of ['kettle', 'stove-kettle', 'urn'] as const) {
      const most = Math.max(
        0,
        ...tries.flatMap((one) => (one.kind === kind ? saved(one.vessel) : [])),
      );
      const told = advice.filter(({ change }) => change.kind === kind);
      expect(told.length, kind).toBe(most >= 300 ? 1 : 0);
      for (const { saving } of told) expect(saving.endS, kind).toBeCloseTo(most, 1);
    }
  }, 240_000);

  it('is the same twice', () => {
    expect(adviceFor(before, asked)).toEqual(adviceFor(before, asked));
  });
});

describe('one more hour', () => {
  it('of the evening before ends the whole job half a day sooner', () => {
    const before = plannedDemo('flat-coils', START);
    const { startWallMs = 0 } = before.situation.options;
    const asked = { names: NAMES, earliestWallMs: startWallMs - 24 * H_MS };
    const evening = adviceFor(before, asked).advice.find(
      ({ change }) => change.kind === 'start' && change.startWallMs === startWallMs - 11.5 * H_MS,
    );
    expect(evening?.saving.endS).toBeGreaterThan(10 * 3600);
  });

  it('is not told where nobody can begin it any more, or where no place is known', () => {
    const before = plannedDemo('flat-coils', START);
    const { startWallMs = 0 } = before.situation.options;
    const now = adviceFor(before, { names: NAMES }).advice;
    for (const { change } of now)
      if (change.kind === 'start') expect(change.startWallMs).toBeGreaterThan(startWallMs);
    const { place: _none, ...kitchen } = kitchenOf('flat-coils');
    const unplaced = { situation: { kitchen, options: {} }, plan: buildPlan(kitchen) };
    const kinds = changesToTry(unplaced, { names: NAMES }).map(({ kind }) => kind);
    expect(kinds).not.toContain('start');
    expect(kinds).not.toContain('last-hot');
    expect(kinds).toContain('people');
  });
});
