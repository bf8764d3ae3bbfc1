import { describe, expect, it } from 'vitest';
import type { Override } from '../../../../src/core/kitchen/index.ts';
import { asWritten } from '../../../../src/core/messages/index.ts';
import { buildPlan, checkPlan, type Plan } from '../../../../src/core/plan/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { endS, kitchenOf, noticeKeys, startS } from '../support/plans.ts';

const H_S = 3600;
const flat = kitchenOf('flat-coils');

describe('the timetable', () => {
  it('plans nothing that needs a person into closed hours, and lets rests run through them', () => {
    const closed = [
      { fromS: 6 * H_S, toS: 40 * H_S },
      { fromS: 50 * H_S, toS: 60 * H_S },
    ];
    const plan = buildPlan(flat, { closed });
    expect(checkPlan(plan)).toEqual([]);
    for (const { id, attention } of plan.steps) {
      if (attention === 'none') continue;
      for (const { fromS, toS } of closed) {
        const apart = endS(plan, id) <= fromS + 0.01 || startS(plan, id) >= toS - 0.01;
        expect(apart, id).toBe(true);
      }
    }
    const through = plan.steps.filter(
      ({ id, kind }) => kind === 'rest' && startS(plan, id) < 6 * H_S,
    );
    expect(through.length).toBeGreaterThan(0);
  });

  it('says by how much a deadline is missed, and what decides the end', () => {
    const plan = buildPlan(flat, { deadlineS: 20 * H_S });
    const [first = asWritten('none')] = plan.notices;
    const lateH = plan.timetable.finishS / H_S - 20;
    expect(lateH).toBeGreaterThan(10);
    expect(first).toMatchObject({ key: 'plan.notice.plan-late', params: { certain: true } });
    expect(Number(first.params['lateH'])).toBeCloseTo(lateH, 1);
    expect(inEnglish.say(first)).toMatch(
      /1\d\.\d h after the deadline, and no other order of work would keep it\. Longest on the way to that end: [^;]+\(24 h, which no helper shortens\); /,
    );
  });

  it('says at what hour a late plan ends, and after which festival, so that a jump by a day explains itself', () => {
    const hall = kitchenOf('hall');
    const late = (people: number, startWallMs: number): string =>
      buildPlan({ ...hall, household: { ...hall.household, people } }, { startWallMs })
        .notices.map(inEnglish.say)
        .find((text) => text.startsWith('By this plan purging ends')) ?? 'kept';
    const before = late(2, Date.parse('2027-04-20T05:00:00Z'));
    expect(before).toMatch(
      /^By this plan purging ends Wednesday 21 April \d\d:\d\d, \d+\.\d h too late/,
    );
    expect(before).not.toContain('after Passover');
    expect(late(2, Date.parse('2027-04-20T12:00:00Z'))).toMatch(
      /^By this plan purging ends Friday 23 April \d\d:\d\d, after Passover, \d+\.\d h too late/,
    );
  });

  it('says nothing of a deadline that is kept', () => {
    const keys = noticeKeys(buildPlan(flat, { deadlineS: 72 * H_S }));
    expect(keys).not.toContain('plan.notice.plan-late');
    expect(keys.length).toBeGreaterThan(0);
  });

  it('lets a hold that no day is long enough for run into the night, and says so', () => {
    const held: Override = {
      fixture: 'range-top',
      method: 'glow',
      minutes: 1000,
      saidBy: 'our rabbi',
      saidOn: '2026-03-01',
    };
    const plan = buildPlan({ ...flat, household: { ...flat.household, overrides: [held] } });
    expect(checkPlan(plan)).toEqual([]);
    expect(noticeKeys(plan)).toContain('plan.notice.overnight');
  });

  it('never ends before its bound', () => {
    const { finishS, lowerBoundS } = buildPlan(kitchenOf('hall')).timetable;
    expect(finishS).toBeGreaterThanOrEqual(lowerBoundS - 0.01);
  });

  it('keeps the order of an earlier plan where it can', () => {
    const first = buildPlan(flat);
    const again = buildPlan(flat, { previousS: first.timetable.startS });
    const order = ({ timetable: { startS: at } }: Plan): readonly string[] =>
      first.steps.map(({ id }) => id).toSorted((a, b) => (at[a] ?? 0) - (at[b] ?? 0));
    expect(order(again)).toEqual(order(first));
    expect(again.timetable.finishS).toBeLessThanOrEqual(first.timetable.finishS + 1);
  });
});
