import { describe, expect, it } from 'vitest';
import { checkSchedule, solve, type Problem } from '../../../../src/core/schedule/index.ts';
import { activity } from '../activity.ts';

const HOUR_S = 3600;
const hands = { id: 'hands', capacity: 1 };

/** A kettle that boils on the one burner and is poured in between, beside two long glows on it. */
function kettleAndGlows(kettles: number): Problem {
  const pours = Array.from({ length: kettles }, (_, at) => [
    activity(`boil${at}`, 600, {
      demand: { burner: 1 },
      ...(at > 0 && { after: [{ id: `pour${at - 1}` }] }),
    }),
    activity(`pour${at}`, 150, {
      demand: { hands: 1 },
      after: [{ id: `boil${at}`, maxLagS: 80 }],
    }),
  ]);
  return {
    activities: [
      ...pours.flat(),
      activity('glow-left', 2160, { demand: { burner: 1 } }),
      activity('glow-right', 2160, { demand: { burner: 1 } }),
    ],
    resources: [{ id: 'burner', capacity: 1 }, hands],
  };
}

/** Pieces of work of which some fill the two hours before a night best. */
function eveningWork(minutes: readonly number[]): Problem {
  return {
    activities: minutes.map((length, at) =>
      activity(`a${at}`, 60 * length, { demand: { hands: 1 }, calendar: 'awake' }),
    ),
    resources: [hands],
    calendars: [{ id: 'awake', closed: [{ fromS: 2 * HOUR_S, toS: 12 * HOUR_S }] }],
  };
}

describe('the exact search', () => {
  it('knows that nothing fits while a kettle is poured', () => {
    const problem = kettleAndGlows(8);
    const answer = solve(problem, { rounds: 0 });
    expect(checkSchedule(problem, answer)).toEqual([]);
    const boilsS = 8 * 600 + 2 * 2160;
    // Each boil is followed by a pour of 150 s; each glow hides one of the eight.
    expect(answer).toMatchObject({ finishS: boilsS + 6 * 150, optimal: true });
  });

  it('fills the evening as well as it can be filled', () => {
    // 51 + 43 + 26 min fill two hours; the rest waits for the morning.
    const problem = eveningWork([51, 47, 43, 38, 35, 29, 26]);
    const answer = solve(problem, { rounds: 0 });
    expect(checkSchedule(problem, answer)).toEqual([]);
    expect(answer.finishS).toBe(12 * HOUR_S + 60 * (47 + 38 + 35 + 29));
    expect(answer.optimal).toBe(true);
  });

  it('shares work between two people as evenly as it can be shared', () => {
    const minutes = [28, 44, 10, 13, 8, 8, 21, 17];
    const problem: Problem = {
      activities: minutes.map((length, at) => activity(`a${at}`, length, { demand: { hands: 1 } })),
      resources: [{ id: 'hands', capacity: 2 }],
    };
    // 149 in all; 44 + 13 + 10 + 8 is 75.
    expect(solve(problem, { rounds: 0 })).toMatchObject({ finishS: 75, optimal: true });
  });

  it('answers with what it has when its steps are used up, and claims nothing', () => {
    const problem = kettleAndGlows(8);
    for (const steps of [0, 1, 100, 1000, 10_000]) {
      const answer = solve(problem, { rounds: 0, steps });
      expect(checkSchedule(problem, answer)).toEqual([]);
      expect(answer.optimal).toBe(answer.finishS === answer.lowerBoundS);
      expect(answer.lowerBoundS).toBeLessThanOrEqual(8 * 600 + 2 * 2160 + 6 * 150);
    }
  });

  it('gives the same answer every time', () => {
    const problem = kettleAndGlows(5);
    expect(solve(problem)).toEqual(solve(problem));
  });

  it.each([-1, NaN, Infinity])('refuses %s steps', (steps) => {
    expect(() => solve({ activities: [], resources: [] }, { steps })).toThrow(/^steps is /);
  });
});
