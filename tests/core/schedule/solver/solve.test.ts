import { describe, expect, it } from 'vitest';
import { solve, type Problem } from '../../../../src/core/schedule/index.ts';
import { activity } from '../activity.ts';

const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;

describe('solve: lags', () => {
  it('waits out a minimum lag and keeps a chain together', () => {
    const { startS, finishS, optimal } = solve({
      activities: [
        activity('rest', DAY_S),
        activity('boil', 300, { after: [{ id: 'rest' }] }),
        activity('pour', 60.4321, { after: [{ id: 'boil', minLagS: 5 }] }),
        activity('cold', 30, { after: [{ id: 'pour', maxLagS: 0 }] }),
      ],
      resources: [],
    });
    expect(startS['pour']).toBe(DAY_S + 305);
    expect(startS['cold']).toBeCloseTo(DAY_S + 305 + 60.4321, 2);
    expect(finishS).toBeCloseTo(DAY_S + 305 + 60.4321 + 30, 2);
    expect(optimal).toBe(true);
  });

  it('delays the boil until the hands for its pour are free', () => {
    const { startS } = solve({
      activities: [
        activity('other', 600, { demand: { hands: 1 }, notAfterS: 0 }),
        activity('boil', 100),
        activity('pour', 60, { demand: { hands: 1 }, after: [{ id: 'boil', maxLagS: 90 }] }),
      ],
      resources: [{ id: 'hands', capacity: 1 }],
    });
    expect(startS).toEqual({ other: 0, boil: 410, pour: 600 });
  });

  it('keeps a fixed start', () => {
    const { startS } = solve({
      activities: [activity('a', 10, { notBeforeS: 50, notAfterS: 50 }), activity('b', 1)],
      resources: [],
    });
    expect(startS).toEqual({ a: 50, b: 0 });
  });

  it('times nothing', () => {
    expect(solve({ activities: [], resources: [] })).toMatchObject({ finishS: 0, optimal: true });
  });
});

describe('solve: resources and bounds', () => {
  it('shares amperes and names the resource the bound rests on', () => {
    const kettles = ['a', 'b', 'c', 'd'].map((id) =>
      activity(id, 100, { demand: { amperes: 8.7 } }),
    );
    const answer = solve({ activities: kettles, resources: [{ id: 'amperes', capacity: 20 }] });
    expect(answer.finishS).toBe(200);
    expect(answer).toMatchObject({ lowerBoundS: 200, optimal: true });
  });

  it('tells a resource bound from a critical path', () => {
    const steps = ['a', 'b', 'c'].map((id) => activity(id, 10, { demand: { hands: 1 } }));
    const answer = solve({ activities: steps, resources: [{ id: 'hands', capacity: 1 }] });
    expect(answer.bound).toEqual({ kind: 'resource', resource: 'hands' });
    const free = solve({
      activities: [activity('rest', DAY_S), ...steps],
      resources: [{ id: 'hands', capacity: 1 }],
    });
    expect(free.bound).toEqual({ kind: 'critical path' });
  });

  it('takes demands that only rounding carries over the capacity', () => {
    const thirds = ['a', 'b', 'c'].map((id) => activity(id, 10, { demand: { r: 0.1 } }));
    const { finishS } = solve({ activities: thirds, resources: [{ id: 'r', capacity: 0.3 }] });
    expect(finishS).toBe(10);
  });

  it('gives the lower priority number the first turn among equals', () => {
    const { startS } = solve({
      activities: [
        activity('low', 10, { demand: { hands: 1 }, priority: 2 }),
        activity('high', 10, { demand: { hands: 1 }, priority: 1 }),
      ],
      resources: [{ id: 'hands', capacity: 1 }],
    });
    expect(startS).toEqual({ low: 10, high: 0 });
  });
});

describe('solve: calendars and deadlines', () => {
  const sleep = {
    id: 'awake',
    closed: [
      { fromS: 14 * HOUR_S, toS: DAY_S },
      { fromS: DAY_S + 14 * HOUR_S, toS: 2 * DAY_S },
      { fromS: 2 * DAY_S + 14 * HOUR_S, toS: 3 * DAY_S },
    ],
  };
  const job: Problem = {
    activities: [
      activity('clean', 6 * HOUR_S, { demand: { hands: 1 }, calendar: 'awake' }),
      activity('rest', DAY_S, { after: [{ id: 'clean', maxLagS: 0 }] }),
      activity('purge', 9 * HOUR_S, {
        demand: { hands: 1 },
        calendar: 'awake',
        after: [{ id: 'rest' }],
      }),
    ],
    resources: [{ id: 'hands', capacity: 1 }],
    calendars: [sleep],
  };

  it('works in open hours only, and rests through the night', () => {
    const answer = solve(job);
    // Purging could begin 30 h in, but its 9 h would run past bedtime: it waits for the morning.
    expect(answer.startS).toEqual({ clean: 0, rest: 6 * HOUR_S, purge: 2 * DAY_S });
    expect(answer).toMatchObject({ optimal: true, bound: { kind: 'critical path' } });
  });

  it('counts only open hours in the bound of a resource', () => {
    const days = ['a', 'b', 'c'].map((id) =>
      activity(id, 7 * HOUR_S, { demand: { hands: 1 }, calendar: 'awake' }),
    );
    const answer = solve({ ...job, activities: days });
    expect(answer.finishS).toBe(DAY_S + 7 * HOUR_S);
    expect(answer).toMatchObject({
      lowerBoundS: DAY_S + 7 * HOUR_S,
      bound: { kind: 'resource', resource: 'hands' },
    });
  });

  it('tells by how much a deadline is missed, and whether any order could keep it', () => {
    expect(solve({ ...job, deadlineS: 2 * DAY_S }).late).toEqual({
      byS: 9 * HOUR_S,
      certain: true,
    });
    expect(solve({ ...job, deadlineS: 3 * DAY_S }).late).toBeUndefined();
  });

  it('keeps the order of an earlier schedule where it costs nothing', () => {
    const steps = ['a', 'b', 'c', 'd'].map((id) => activity(id, 10, { demand: { hands: 1 } }));
    const problem = { activities: steps, resources: [{ id: 'hands', capacity: 1 }] };
    const previousS = { d: 0, b: 10, a: 20, c: 30 };
    expect(solve(problem, { previousS }).startS).toEqual(previousS);
  });
});
