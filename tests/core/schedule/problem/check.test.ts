import { describe, expect, it } from 'vitest';
import { checkSchedule, solve, type Problem } from '../../../../src/core/schedule/index.ts';
import { activity } from '../activity.ts';

describe('checkSchedule', () => {
  const problem: Problem = {
    activities: [
      activity('a', 10, { demand: { hands: 1 }, notBeforeS: 5, notAfterS: 20 }),
      activity('b', 10, {
        demand: { hands: 1 },
        calendar: 'open',
        after: [{ id: 'a', minLagS: 5, maxLagS: 30 }],
      }),
    ],
    resources: [{ id: 'hands', capacity: 1 }],
    calendars: [{ id: 'open', closed: [{ fromS: 50, toS: 60 }] }],
  };
  const good = solve(problem);

  it.each([
    ['missing', { a: 5 }],
    ['before zero', { a: -1, b: 20 }],
    ['not before', { a: 4, b: 20 }],
    ['not after', { a: 21, b: 36 }],
    ['minimum lag', { a: 5, b: 19 }],
    ['maximum lag', { a: 5, b: 46 }],
    ['calendar', { a: 16, b: 45 }],
    ['capacity', { a: 5, b: 14 }],
  ] as const)('catches: %s', (rule, startS) => {
    expect(checkSchedule(problem, good)).toEqual([]);
    const found = checkSchedule(problem, { ...good, startS });
    expect(found.map((one) => one.rule)).toContain(rule);
  });

  it('catches a finish or a bound that the starts do not bear out', () => {
    const rules = checkSchedule(problem, { ...good, finishS: good.finishS - 1 }).map(
      ({ rule }) => rule,
    );
    expect(rules).toEqual(['finish', 'lower bound']);
  });
});
