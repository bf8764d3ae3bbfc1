import { describe, expect, it } from 'vitest';
import { surenessMessages, surenessOf } from '../../../src/core/advice/index.ts';
import { inEnglish } from '../../support/english.ts';
import { gameOf, ofBand, play, sequence } from '../../../src/core/advice/margins/play.ts';
import { hoursOf } from '../../../src/core/advice/margins/open-hours.ts';
import { runsThroughRestDays } from '../../../src/core/plan/index.ts';
import { DEMOS } from '../plan/support/plans.ts';
import { plannedDemo } from './situations.ts';

const START = '2027-04-18T09:00';
/** Four standard errors of a share of 400 plays. */
const FOUR_ERRORS = (share: number): number => 4 * Math.sqrt((share * (1 - share)) / 400) + 0.005;

describe.each(DEMOS)('a play of %s', (demo) => {
  const { plan } = plannedDemo(demo, START);
  const game = gameOf(plan);

  it('keeps needs, hours and what there is to hold', () => {
    const random = sequence(7);
    const { work } = hoursOf(plan);
    const capacity = new Map(plan.resources.map(({ id, capacity: most }) => [id, most]));
    for (let n = 0; n < 20; n++) {
      const { fromS, toS } = play(game, random);
      const endOf = new Map(game.parts.map(({ step }, at) => [step.id, toS[at] ?? 0]));
      game.parts.forEach(({ step }, at) => {
        const startS = fromS[at] ?? 0;
        for (const need of step.needs)
          expect(startS, step.id).toBeGreaterThanOrEqual((endOf.get(need.step) ?? 0) - 0.01);
        if (!runsThroughRestDays(step) && step.attention !== 'none')
          for (const closed of work)
            expect(
              startS >= closed.toS - 0.01 || (toS[at] ?? 0) <= closed.fromS + 0.01,
              `${step.id} in the night`,
            ).toBe(true);
        for (const [id, held] of Object.entries(step.demands)) {
          if (held <= 0) continue;
          const all = game.parts.reduce(
            (sum, one, other) =>
              (fromS[other] ?? 0) <= startS + 0.01 && (toS[other] ?? 0) > startS + 0.01
                ? sum + (one.step.demands[id] ?? 0)
                : sum,
            0,
          );
          expect(all, `${id} at ${step.id}`).toBeLessThanOrEqual((capacity.get(id) ?? 0) + 1e-6);
        }
      });
    }
  });

  it('with lengths as planned is over when the plan is, or sooner', () => {
    const exact = {
      ...plan,
      steps: plan.steps.map((step) => {
        const { typical } = step.durationS;
        return { ...step, durationS: { low: typical, typical, high: typical } };
      }),
    };
    const { toS } = play(gameOf(exact), sequence(1));
    const endS = Math.max(...toS);
    expect(endS).toBeLessThanOrEqual(plan.timetable.finishS + 1);
    expect(endS).toBeGreaterThan(plan.timetable.finishS - 1800);
  });

  it('says as often as ten thousand plays that an end is kept', () => {
    const few = surenessOf(plan);
    const many = (byS: number) => surenessOf(plan, { deadlineS: byS }, 10_000).due?.chance ?? NaN;
    for (const byS of [few.medianS, few.nineInTenS, few.nineInTenS + 3600]) {
      const told = surenessOf(plan, { deadlineS: byS }).due?.chance ?? NaN;
      const known = many(byS);
      expect(Math.abs(told - known)).toBeLessThan(FOUR_ERRORS(known));
    }
    expect(many(few.nineInTenS)).toBeGreaterThan(0.9 - FOUR_ERRORS(0.9));
  }, 120_000);

  it('says the same twice', () => {
    expect(surenessOf(plan)).toEqual(surenessOf(plan));
  });
});

describe('lengths drawn from a band', () => {
  it('lie in it, half of them to each side of their median, their mean a third of the three ends', () => {
    const band = { low: 10, typical: 20, high: 60 };
    const drawn = Array.from({ length: 10_000 }, (_, n) => ofBand(band, (n + 0.5) / 10_000));
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(10);
    expect(Math.max(...drawn)).toBeLessThanOrEqual(60);
    expect(drawn.reduce((sum, one) => sum + one, 0) / drawn.length).toBeCloseTo(30, 2);
    expect(drawn).toEqual(drawn.toSorted((a, b) => a - b));
    expect(ofBand({ low: 5, typical: 5, high: 5 }, 0.3)).toBe(5);
  });
});

describe('the chance that work is over before a rest day', () => {
  it('is small where it is planned close to it, and then it is said', () => {
    const { plan } = plannedDemo('mountain-gas', '2027-04-20T09:00');
    const sureness = surenessOf(plan);
    const chance = sureness.restDays[0]?.chance ?? NaN;
    expect(chance).toBeLessThan(0.9);
    const many = surenessOf(plan, {}, 10_000).restDays[0]?.chance ?? NaN;
    expect(Math.abs(chance - many)).toBeLessThan(FOUR_ERRORS(many));
    const said = surenessMessages(sureness, plan).map(({ key }) => key);
    expect(said).toContain('advice.sure.rest-day');
  });

  it('names what is last before it, and until when that may begin', () => {
    const { plan } = plannedDemo('mountain-gas', '2027-04-20T09:00');
    const [day] = surenessOf(plan).restDays;
    if (!day || !plan.days) throw new Error('No rest day lies ahead.');
    const last = plan.steps.find(({ title }) => title === day.last);
    if (!last) throw new Error('What is last is no step of the plan.');
    const beginS = (day.beginByWallMs - plan.days.startWallMs) / 1000;
    expect(beginS + last.durationS.high).toBeCloseTo(
      (day.fromWallMs - plan.days.startWallMs) / 1000,
      3,
    );
    expect(plan.timetable.startS[last.id]).toBeLessThan(
      (day.fromWallMs - plan.days.startWallMs) / 1000,
    );
    const told = surenessMessages(surenessOf(plan), plan).map((one) => inEnglish.say(one));
    expect(told.join(' ')).toMatch(/Begin “.+” by .*\d\d:\d\d, or leave it for after/);
  });

  it('is great with a day to spare, and then nothing is said of it', () => {
    const { plan } = plannedDemo('mountain-gas', '2027-04-16T07:00');
    const sureness = surenessOf(plan);
    expect(sureness.restDays.length).toBeGreaterThan(0);
    for (const { chance } of sureness.restDays) expect(chance).toBeGreaterThan(0.9);
    const said = surenessMessages(sureness, plan).map(({ key }) => key);
    expect(said).not.toContain('advice.sure.rest-day');
  });
});
