import { bench, describe } from 'vitest';
import { solve, type Activity, type Problem } from '../../src/core/schedule/index.ts';
import { knownProblems } from '../core/schedule/known-problems.ts';

const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;

/**
 * What everything else is measured against: a million steps of a fixed
 * arithmetic, so that a slow machine slows both alike.
 */
function referenceLoop(): number {
  let state = 1;
  for (let step = 0; step < 1e6; step++) state = (Math.imul(state, 1664525) + 1013904223) | 0;
  return state;
}

/** The shape of a large home: cleaning, a rest each, kettles boiled and poured in chains, burners two at a time. */
function household(fixtures: number, openHours = 14): Problem {
  const activities: Activity[] = [];
  for (let f = 0; f < fixtures; f++) {
    activities.push(
      { id: `clean${f}`, durationS: 1200, demand: { hands: 1 }, calendar: 'awake' },
      { id: `rest${f}`, durationS: DAY_S, demand: {}, after: [{ id: `clean${f}`, maxLagS: 0 }] },
    );
    const kettle = f % 2 === 0 ? 'kettle' : 'pot';
    for (let k = 0; k < 4; k++) {
      const from = k === 0 ? `rest${f}` : `cold${f}-${k - 1}`;
      activities.push(
        {
          id: `boil${f}-${k}`,
          durationS: 420,
          demand: { [kettle]: 1, amperes: 8 },
          after: [{ id: from }],
          calendar: 'awake',
        },
        {
          id: `pour${f}-${k}`,
          durationS: 75,
          demand: { [kettle]: 1, hands: 1 },
          after: [{ id: `boil${f}-${k}`, maxLagS: 45 }],
          calendar: 'awake',
        },
        {
          id: `cold${f}-${k}`,
          durationS: 30,
          demand: { hands: 1 },
          after: [{ id: `pour${f}-${k}`, maxLagS: 0 }],
          calendar: 'awake',
        },
      );
    }
    activities.push({
      id: `glow${f}`,
      durationS: 2400,
      demand: { burners: 1 },
      after: [{ id: `rest${f}` }],
      calendar: 'awake',
    });
  }
  const closed = [0, 1, 2, 3, 4].map((day) => ({
    fromS: day * DAY_S + openHours * HOUR_S,
    toS: (day + 1) * DAY_S,
  }));
  return {
    activities,
    resources: [
      { id: 'hands', capacity: 1 },
      { id: 'kettle', capacity: 1 },
      { id: 'pot', capacity: 1 },
      { id: 'amperes', capacity: 16 },
      { id: 'burners', capacity: 2 },
    ],
    calendars: [{ id: 'awake', closed }],
  };
}

describe('schedule, as a ratio of the reference loop', () => {
  const small = household(4);
  const large = household(12);
  const evenings = household(12, 2.3);
  const published = knownProblems('rcpsp-j60')[0]!.problem;
  bench('reference loop', () => void referenceLoop());
  bench(`household of ${small.activities.length} activities`, () => void solve(small));
  bench(`household of ${large.activities.length} activities`, () => void solve(large));
  bench(
    'the same in evenings of 2.3 h (bound not reached: all rounds)',
    () => void solve(evenings),
  );
  bench('published problem of 62 activities', () => void solve(published));
});
