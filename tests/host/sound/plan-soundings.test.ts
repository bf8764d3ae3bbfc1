import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planSoundings, type TimedAlert } from '../../../src/host/sound/plan-soundings.ts';
import { soundLengthS, URGENCY } from '../../../src/host/sound/families.ts';

const alert = (id: string, family: TimedAlert['family'], startInS: number): TimedAlert => ({
  id,
  family,
  startInS,
  round: 1,
});
const times = (alerts: readonly TimedAlert[], horizonS = 60): (readonly [string, number])[] =>
  planSoundings(alerts, horizonS).map(({ key, atS }) => [key, Math.round(atS * 100) / 100]);

describe('one alert', () => {
  it('repeats, grows and then hurries until it is answered', () => {
    const plan = planSoundings([alert('a', 'due', 0)], 60);
    expect(plan.slice(0, 7).map(({ atS }) => atS)).toEqual([0, 7, 14, 21, 28, 32, 36]);
    expect(plan.slice(0, 7).map(({ gain }) => gain)).toEqual([0.45, 0.6, 0.75, 0.9, 1, 1, 1]);
    expect(plan.at(-1)?.atS).toBe(60);
  });

  it('still sounds after an hour', () => {
    const plan = planSoundings([alert('a', 'due', -3600)], 60);
    expect(plan.length).toBeGreaterThan(10);
    expect(plan.every(({ gain }) => gain === 1)).toBe(true);
  });

  it('is planned ahead, and not beyond the horizon', () => {
    expect(times([alert('a', 'due', 55)])).toEqual([['a~1#0', 55]]);
    expect(times([alert('a', 'due', 61)])).toEqual([]);
  });

  it('tells three times and no more when nobody has to answer', () => {
    expect(times([alert('a', 'done', 0)])).toEqual([
      ['a~1#0', 0],
      ['a~1#1', 20],
      ['a~1#2', 40],
    ]);
    expect(times([alert('a', 'soon', -45)])).toEqual([]);
  });
});

describe('several alerts', () => {
  it('sound once when they come due together', () => {
    const plan = planSoundings([alert('b', 'due', 5.4), alert('a', 'due', 5)], 20);
    expect(plan.map(({ key }) => key)).toEqual(['a~1#0', 'a~1#1', 'a~1#2']);
    expect(plan[0]?.alerts.map(({ id }) => id)).toEqual(['a', 'b']);
  });

  it('let a hazard go first; a first sounding waits for its turn', () => {
    const plan = times([alert('a', 'done', 0), alert('h', 'hazard', 0)], 3.5);
    expect(plan[0]).toEqual(['h~1#0', 0]);
    const [key, atS] = plan[1] ?? ['', 0];
    expect(key).toBe('a~1#0');
    expect(atS).toBeGreaterThan(soundLengthS('hazard'));
  });

  it('leave out a repeat that would run into something more urgent', () => {
    const keys = times([alert('a', 'due', 0), alert('h', 'hazard', 7.5)], 12).map(([key]) => key);
    expect(keys).toContain('a~1#0');
    expect(keys).not.toContain('a~1#1');
    expect(keys).toContain('h~1#0');
  });
});

/** Times are multiples of 1/64 s, so that shifting them is exact and ties stay ties. */
const anyAlerts = fc.uniqueArray(
  fc.record({
    id: fc.stringMatching(/^[a-f]$/),
    family: fc.constantFrom(...URGENCY),
    startInS: fc.integer({ min: -300 * 64, max: 90 * 64 }).map((n) => n / 64),
    round: fc.constant(1),
  }),
  { selector: ({ id }) => id, maxLength: 6 },
);

describe('any set of alerts', () => {
  it('never makes two sounds overlap, and stays within the horizon', () => {
    fc.assert(
      fc.property(anyAlerts, (alerts) => {
        const plan = planSoundings(alerts, 60);
        for (const [i, one] of plan.entries()) {
          expect(one.atS).toBeGreaterThanOrEqual(-0.25);
          expect(one.atS).toBeLessThanOrEqual(60);
          const next = plan[i + 1];
          if (next) expect(next.atS).toBeGreaterThan(one.atS + soundLengthS(one.family));
        }
        expect(new Set(plan.map(({ key }) => key)).size).toBe(plan.length);
      }),
    );
  });

  it('is silent no longer than one period and one sound that gave way, while something must be answered', () => {
    const LONGEST_S = 7 + 1.6 + 0.15;
    fc.assert(
      fc.property(anyAlerts, (alerts) => {
        const must = alerts.filter(({ family }) => family === 'due' || family === 'hazard');
        const fromS = Math.min(...must.map(({ startInS }) => Math.max(0, startInS)));
        if (fromS > 40) return;
        const at = planSoundings(alerts, 60).map(({ atS }) => atS);
        const marks = [fromS, ...at.filter((atS) => atS >= fromS)];
        for (const [i, mark] of marks.entries()) {
          expect((marks[i + 1] ?? 60) - mark).toBeLessThanOrEqual(LONGEST_S + 1e-6);
        }
      }),
    );
  });

  it('plans the same moments when asked later, so that re-planning moves nothing', () => {
    fc.assert(
      fc.property(anyAlerts, fc.integer({ min: 0, max: 15 * 64 }), (alerts, later64) => {
        const laterS = later64 / 64;
        const first = planSoundings(alerts, 60);
        const moved = alerts.map((one) => ({ ...one, startInS: one.startInS - laterS }));
        const again = new Map(planSoundings(moved, 60).map(({ key, atS }) => [key, atS + laterS]));
        for (const { key, atS } of first) {
          if (atS < laterS + 0.5) continue;
          expect(again.get(key), key).toBeCloseTo(atS, 5);
        }
      }),
    );
  });
});
