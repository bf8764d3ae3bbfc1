import { describe, expect, it } from 'vitest';
import { ScheduleRefusal, solve, type Problem } from '../../../../src/core/schedule/index.ts';
import { activity } from '../activity.ts';

function refusal(problem: Problem): ScheduleRefusal {
  try {
    solve(problem);
  } catch (fault) {
    if (fault instanceof ScheduleRefusal) return fault;
    throw fault;
  }
  throw new Error('no refusal');
}

describe('solve: refusals', () => {
  const hands = { id: 'hands', capacity: 1 };
  const cases: readonly (readonly [string, Problem, string, string])[] = [
    [
      'an id used twice',
      { activities: [activity('a', 1), activity('a', 2)], resources: [] },
      'duplicate-id',
      'activities[1].id',
    ],
    [
      'an unknown predecessor',
      { activities: [activity('a', 1, { after: [{ id: 'x' }] })], resources: [] },
      'unknown-id',
      'activities[0].after[0].id',
    ],
    [
      'an unknown resource',
      { activities: [activity('a', 1, { demand: { x: 1 } })], resources: [hands] },
      'unknown-id',
      'activities[0].demand.x',
    ],
    [
      'an unknown calendar',
      { activities: [activity('a', 1, { calendar: 'x' })], resources: [] },
      'unknown-id',
      'activities[0].calendar',
    ],
    [
      'a negative duration',
      { activities: [activity('a', -1)], resources: [] },
      'bad-number',
      'activities[0].durationS',
    ],
    [
      'a duration that is no number',
      { activities: [activity('a', NaN)], resources: [] },
      'bad-number',
      'activities[0].durationS',
    ],
    [
      'a negative demand',
      { activities: [activity('a', 1, { demand: { hands: -1 } })], resources: [hands] },
      'bad-number',
      'activities[0].demand.hands',
    ],
    [
      'more than there is',
      { activities: [activity('a', 1, { demand: { hands: 2 } })], resources: [hands] },
      'over-capacity',
      'activities[0].demand.hands',
    ],
    [
      'a maximum below the minimum',
      {
        activities: [
          activity('a', 1),
          activity('b', 1, { after: [{ id: 'a', minLagS: 5, maxLagS: 4 }] }),
        ],
        resources: [],
      },
      'bad-number',
      'activities[1].after[0].maxLagS',
    ],
    [
      'a closed span that ends before it begins',
      { activities: [], resources: [], calendars: [{ id: 'c', closed: [{ fromS: 5, toS: 4 }] }] },
      'bad-number',
      'calendars[0].closed[0].toS',
    ],
    [
      'a cycle',
      {
        activities: [
          activity('a', 1, { after: [{ id: 'c' }] }),
          activity('b', 1, { after: [{ id: 'a' }] }),
          activity('c', 1, { after: [{ id: 'b' }] }),
        ],
        resources: [],
      },
      'cycle',
      'activities.after',
    ],
    [
      'work after itself',
      { activities: [activity('a', 1, { after: [{ id: 'a' }] })], resources: [] },
      'cycle',
      'activities.after',
    ],
    [
      'two that must run together and cannot',
      {
        activities: [
          activity('a', 5, { demand: { hands: 1 } }),
          activity('b', 5, {
            demand: { hands: 1 },
            after: [{ id: 'a', minLagS: -3, maxLagS: -1 }],
          }),
        ],
        resources: [hands],
      },
      'infeasible',
      'activities',
    ],
    [
      'a latest start that lags overrun',
      {
        activities: [activity('a', 5), activity('b', 1, { after: [{ id: 'a' }], notAfterS: 4 })],
        resources: [],
      },
      'infeasible',
      'activities',
    ],
  ];

  it.each(cases)('%s', (_name, problem, code, input) => {
    const { message, ...found } = refusal(problem);
    expect(found).toMatchObject({ code, input });
    expect(message).toMatch(/; allowed: .+\. .+\.$/);
  });

  it('refuses more activities than it could hold, before anything is laid out for them', () => {
    const activities = Array.from({ length: 100_000 }, (_, at) => activity(`a${at}`, 1));
    expect(refusal({ activities, resources: [] })).toMatchObject({
      code: 'too-many',
      input: 'activities',
      found: 'a list of 100000',
    });
  });

  it('refuses a hundred thousand unknown resources at the first of them', () => {
    const demand = Object.fromEntries(Array.from({ length: 100_000 }, (_, at) => [`x${at}`, 1]));
    expect(
      refusal({ activities: [activity('a', 1, { demand })], resources: [hands] }),
    ).toMatchObject({ code: 'unknown-id', input: 'activities[0].demand.x0' });
  });

  it('names the members of a cycle', () => {
    const [, problem] = cases.find(([name]) => name === 'a cycle')!;
    expect(String(refusal(problem).found).split(' → ').toSorted()).toEqual(
      expect.arrayContaining(['a', 'b', 'c']),
    );
  });
});
