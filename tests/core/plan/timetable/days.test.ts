import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { momentOf } from '../../../../src/core/calendar/index.ts';
import type { Kitchen, Override, Place } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, describePlan, type Plan } from '../../../../src/core/plan/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';
import { inEnglish } from '../../../support/english.ts';
import { endS, kitchenOf, noticeKeys, noticesText, startS } from '../support/plans.ts';
import { runs } from '../../../support/runs.ts';

const H_MS = 3_600_000;
const NEW_YORK: Place = {
  latDeg: 40.7,
  lonDeg: -74,
  zone: 'America/New_York',
  land: 'diaspora',
};

function at(text: string, zone: string): number {
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = text.split(/[-T:]/).map(Number);
  return momentOf({ year, month, day, hour, minute }, zone);
}

function passover(kitchen: Kitchen): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, purpose: 'passover' } };
}

function wall(plan: Plan, id: string): { readonly fromMs: number; readonly toMs: number } {
  const from = plan.days?.startWallMs ?? Number.NaN;
  return { fromMs: from + startS(plan, id) * 1000, toMs: from + endS(plan, id) * 1000 };
}

describe('a plan with a start and a place', () => {
  const flat = { ...kitchenOf('flat-coils'), place: NEW_YORK };
  const friday = at('2026-03-27T09:00', NEW_YORK.zone);

  it('lights candles as early as the household does', () => {
    const from = (kitchen: Kitchen) =>
      buildPlan(kitchen, { startWallMs: friday }).days?.restDays[0]?.fromWallMs ?? Number.NaN;
    const early = { ...flat, household: { ...flat.household, lightingMin: 40 } };
    expect(from(flat) - from(early)).toBe((40 - 18) * 60_000);
  });

  it('leaves out the Sabbath and lets rests run through it. Verifies: I-19', () => {
    const plan = buildPlan(flat, { startWallMs: friday });
    expect(checkPlan(plan)).toEqual([]);
    const [sabbath] = plan.days?.restDays ?? [];
    expect(sabbath?.name.key).toBe('calendar.day.sabbath');
    const { fromWallMs = 0, toWallMs = 0 } = sabbath ?? {};
    const into = plan.steps.filter(({ id }) => {
      const { fromMs, toMs } = wall(plan, id);
      return fromMs < toWallMs && toMs > fromWallMs;
    });
    expect(into.some(({ kind }) => kind === 'rest')).toBe(true);
    expect(into.filter(({ kind }) => kind !== 'rest' && kind !== 'cool')).toEqual([]);
  });

  it('works from eight to half past ten on the wall, also over a change of the clock', () => {
    // Clocks went on in New York on 8 March 2026.
    const plan = buildPlan(flat, { startWallMs: at('2026-03-07T20:00', NEW_YORK.zone) });
    const mondays = at('2026-03-09T08:00', NEW_YORK.zone);
    const nightFrom = at('2026-03-08T22:30', NEW_YORK.zone);
    for (const { id, attention } of plan.steps) {
      if (attention === 'none') continue;
      const { fromMs, toMs } = wall(plan, id);
      expect(toMs <= nightFrom + 10 || fromMs >= mondays - 10, id).toBe(true);
    }
  });

  it('never runs what no day is long enough for into a rest day', () => {
    const held: Override = {
      fixture: 'range-top',
      method: 'glow',
      minutes: 1000,
      saidBy: 'our rabbi',
      saidOn: '2026-03-01',
    };
    const kitchen = { ...flat, household: { ...flat.household, overrides: [held] } };
    const plan = buildPlan(kitchen, { startWallMs: friday });
    expect(checkPlan(plan)).toEqual([]);
    expect(noticeKeys(plan)).toContain('plan.notice.overnight');
  });

  it('keeps no rest days for a household that keeps none, but nights', () => {
    const kitchen = { ...flat, household: { ...flat.household, keepsRestDays: false } };
    const plan = buildPlan(kitchen, { startWallMs: friday });
    expect(plan.days?.restDays).toEqual([]);
    expect(plan.timetable.finishS).toBeLessThan(
      buildPlan(flat, { startWallMs: friday }).timetable.finishS,
    );
  });

  it('is found wanting when a step is moved into the Sabbath', () => {
    const plan = buildPlan(flat, { startWallMs: friday });
    const inside = ((plan.days?.restDays[0]?.fromWallMs ?? 0) - friday) / 1000 + 3600;
    const mark = plan.steps.find(({ kind }) => kind === 'mark')?.id ?? '';
    const broken = {
      ...plan,
      timetable: { ...plan.timetable, startS: { ...plan.timetable.startS, [mark]: inside } },
    };
    expect(checkPlan(broken).map(({ rule }) => rule)).toContain('rest-days');
  });

  it('tells days and hours on the wall when it is printed', () => {
    const text = describePlan(buildPlan(flat, { startWallMs: friday }), inEnglish);
    expect(text).toContain('Friday 27 March\n  09:00  ');
    expect(text).toMatch(/Sabbath: Friday 27 March 18:5\d to Saturday 28 March 19:5\d/);
    expect(text).not.toContain('T+');
  });
});

describe('the deadline of a kitchen for Passover', () => {
  const kitchen = passover({ ...kitchenOf('flat-coils'), place: NEW_YORK });

  it('is an hour before the end of the fourth hour of the eve, from dawn to nightfall', () => {
    const plan = buildPlan(kitchen, { startWallMs: at('2026-03-25T09:00', NEW_YORK.zone) });
    const { atWallMs = 0, hard } = plan.days?.deadline ?? {};
    // Sunrise 6:39, sunset 19:21 that day: 72 min before to 72 min after, four twelfths end at 10:29.
    expect(Math.abs(atWallMs - at('2026-04-01T09:29', NEW_YORK.zone))).toBeLessThan(3 * 60_000);
    const lights = at('2026-04-01T19:03', NEW_YORK.zone);
    expect(Math.abs((hard?.atWallMs ?? 0) - lights)).toBeLessThan(3 * 60_000);
    for (const { id, phase } of plan.steps)
      if (phase === 'purge') expect(wall(plan, id).toMs, id).toBeLessThanOrEqual(atWallMs);
    expect(noticeKeys(plan)).toContain('plan.notice.leaven-hour');
    expect(noticeKeys(plan)).not.toContain('plan.notice.after-fourth-hour');
  });

  it('is later by the other reckoning, from sunrise to sunset', () => {
    const household = { ...kitchen.household, leavenDay: 'sunrise-sunset' as const };
    const plan = buildPlan(
      { ...kitchen, household },
      { startWallMs: at('2026-03-25T09:00', NEW_YORK.zone) },
    );
    const { atWallMs = 0 } = plan.days?.deadline ?? {};
    expect(Math.abs(atWallMs - at('2026-04-01T09:53', NEW_YORK.zone))).toBeLessThan(3 * 60_000);
  });

  it('says by how much it is missed: before candle lighting it is asked, after it nothing is purged', () => {
    const late = buildPlan(kitchen, { startWallMs: at('2026-03-31T18:00', NEW_YORK.zone) });
    expect(late.notices[0]).toMatchObject({
      key: 'plan.notice.after-candles',
      params: { certain: true },
    });
    const hour = { ...kitchen, fixtures: kitchen.fixtures.filter(({ kind }) => kind === 'sink') };
    const little = buildPlan(hour, { startWallMs: at('2026-03-31T10:00', NEW_YORK.zone) });
    expect(little.notices[0]).toMatchObject({ key: 'plan.notice.after-fourth-hour' });
    expect(checkPlan(little)).toEqual([]);
  });

  it('is on the Friday when the eve is a Sabbath, and says so', () => {
    const plan = buildPlan(kitchen, { startWallMs: at('2025-04-07T09:00', NEW_YORK.zone) });
    const { atWallMs = 0 } = plan.days?.deadline ?? {};
    expect(atWallMs).toBeLessThan(at('2025-04-11T12:00', NEW_YORK.zone));
    expect(atWallMs).toBeGreaterThan(at('2025-04-11T09:00', NEW_YORK.zone));
    expect(noticeKeys(plan)).toContain('plan.notice.eve-is-sabbath');
  });

  it('is past on the eve in the afternoon: with more care until candle lighting', () => {
    const plan = buildPlan(kitchen, { startWallMs: at('2026-04-01T15:00', NEW_YORK.zone) });
    expect(noticeKeys(plan)).toContain('plan.notice.past-fourth-hour');
  });

  it('warns of a self-clean on the last day', () => {
    const plan = buildPlan(kitchen, { startWallMs: at('2026-03-30T08:00', NEW_YORK.zone) });
    expect(noticeKeys(plan)).toContain('plan.notice.last-day');
  });

  it('is not there in autumn, nor for another purpose', () => {
    const autumn = at('2026-11-01T09:00', NEW_YORK.zone);
    expect(buildPlan(kitchen, { startWallMs: autumn }).days).not.toHaveProperty('deadline');
    const other = { ...kitchen, household: { ...kitchen.household, purpose: 'mix-up' as const } };
    const plan = buildPlan(other, { startWallMs: at('2026-03-25T09:00', NEW_YORK.zone) });
    expect(plan.days).not.toHaveProperty('deadline');
  });
});

describe('inside Passover', () => {
  const flat = { ...kitchenOf('flat-coils'), place: NEW_YORK };
  const WATER = ['pour', 'boil', 'boil-over', 'steam'];
  const water = (kitchen: Kitchen, text: string) =>
    buildPlan(kitchen, { startWallMs: at(text, NEW_YORK.zone) }).steps.filter(({ kind }) =>
      WATER.includes(kind),
    );

  it.each(['2026-04-01T19:30', '2026-04-05T21:00', '2026-04-09T15:00'])(
    'nothing is purged by water on %s, by either custom and for any purpose: it is closed up, and asked',
    (text) => {
      for (const custom of ['ashkenazic', 'sephardic'] as const)
        for (const purpose of ['passover', 'new-kitchen'] as const) {
          const kitchen = { ...flat, household: { ...flat.household, custom, purpose } };
          const plan = buildPlan(kitchen, { startWallMs: at(text, NEW_YORK.zone) });
          expect(plan.steps.filter(({ kind }) => WATER.includes(kind))).toEqual([]);
          expect(checkPlan(plan)).toEqual([]);
          expect(noticeKeys(plan)[0]).toBe('plan.notice.inside-passover');
          const sink = plan.methods.find(({ fixture }) => fixture === 'sink');
          expect(sink).toMatchObject({ method: 'cover', cover: true, checked: true });
          expect(
            plan.steps.some(({ kind, fixture }) => kind === 'cover' && fixture === 'sink'),
          ).toBe(true);
          expect(plan.questions.map(({ id }) => id)).toContain('ask-sink-inside-passover');
        }
    },
  );

  it('begins when the household lights', () => {
    const household = { ...flat.household, lightingMin: 40 };
    expect(water({ ...flat, household }, '2026-04-01T18:50')).toEqual([]);
    expect(water(flat, '2026-04-01T18:50')).not.toEqual([]);
  });

  it('before candle lighting and after nightfall it is', () => {
    expect(water(flat, '2026-04-01T12:00')).not.toEqual([]);
    expect(water(flat, '2026-04-09T21:00')).not.toEqual([]);
  });

  it('what was answered for a fixture stands', () => {
    const overrides = [
      { fixture: 'sink', method: 'pour' as const, saidBy: 'Our rabbi', saidOn: '2026-04-02' },
    ];
    const kitchen = { ...flat, household: { ...flat.household, overrides } };
    const poured = water(kitchen, '2026-04-05T21:00').filter(({ kind }) => kind === 'pour');
    expect(new Set(poured.map(({ fixture }) => fixture))).toEqual(new Set(['sink']));
  });
});

describe('after a rest day', () => {
  it('people have three quarters of an hour before the first step', () => {
    const flat = { ...kitchenOf('flat-coils'), place: NEW_YORK };
    const plan = buildPlan(flat, { startWallMs: at('2026-03-28T18:00', NEW_YORK.zone) });
    const [sabbath] = plan.days?.restDays ?? [];
    const first = Math.min(...plan.steps.map(({ id }) => wall(plan, id).fromMs));
    expect(first - (sabbath?.toWallMs ?? 0)).toBeGreaterThanOrEqual(45 * 60_000);
  });
});

describe('what a plan says it does not know', () => {
  const flat = kitchenOf('flat-coils');
  const { place: _, ...nowhere } = flat;

  it('names the start, or the place, that is missing', () => {
    expect(noticesText(buildPlan(flat))).toMatch(
      /Sabbaths and festivals are not.* tell when you begin,/,
    );
    const unknown = (start: boolean, place: boolean) => ({
      key: 'plan.notice.days-unknown',
      params: { start, place },
    });
    expect(buildPlan(flat).notices[0]).toEqual(unknown(false, true));
    const told = buildPlan(nowhere, { startWallMs: at('2026-03-25T09:00', 'UTC') });
    expect(told.notices[0]).toEqual(unknown(true, false));
    expect(told).not.toHaveProperty('days');
  });

  it('says so where the sun does not set, and plans on the careful side', () => {
    const north: Place = { latDeg: 78, lonDeg: 16, zone: 'Arctic/Longyearbyen', land: 'diaspora' };
    const plan = buildPlan(
      { ...flat, place: north },
      { startWallMs: at('2026-06-18T09:00', north.zone) },
    );
    expect(checkPlan(plan)).toEqual([]);
    expect(noticesText(plan)).toContain('the sun does not tell when Sabbath begins or ends');
    const [sabbath] = plan.days?.restDays ?? [];
    expect(sabbath?.fromWallMs).toBe(at('2026-06-19T12:00', north.zone));
    expect(sabbath?.toWallMs).toBe(at('2026-06-21T08:00', north.zone));
  });
});

describe('any kitchen, any day, many places', () => {
  const places = fc.record({
    latDeg: fc.double({ min: -66, max: 66, noNaN: true }),
    lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
    zone: fc.constantFrom('UTC', 'Asia/Jerusalem', 'America/New_York', 'Pacific/Auckland'),
    land: fc.constantFrom('israel' as const, 'diaspora' as const),
  });
  const starts = fc.integer({
    min: at('2024-01-01T00:00', 'UTC') / H_MS,
    max: at('2034-12-31T00:00', 'UTC') / H_MS,
  });

  it('has no work in a rest day. Verifies: I-19', () => {
    fc.assert(
      fc.property(kitchens(), places, starts, (kitchen, place, hour) => {
        const household = { ...kitchen.household, keepsRestDays: true };
        const plan = buildPlan({ ...kitchen, household, place }, { startWallMs: hour * H_MS });
        expect(checkPlan(plan)).toEqual([]);
        expect(plan.days?.restDays.length).toBeGreaterThan(6);
        expect(describePlan(plan, inEnglish)).not.toMatch(/undefined|NaN|Infinity|\[object/);
      }),
      { numRuns: runs(40) },
    );
  });
});
