import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/core/plan/index.ts';
import { calendarOf, restEvents } from '../../../src/core/report/index.ts';
import { expectedTimes, simulateRun, view } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DAY_S } from '../run/support/fixtures.ts';
import { NEW_YEAR_MS } from '../run/support/tablet.ts';
import { pours, rested, toldPlan } from './runs.ts';

const atMs = (s: number): number => NEW_YEAR_MS + s * 1000;
const inS = (ms: number): number => (ms - NEW_YEAR_MS) / 1000;

/** Both cleaned on the first evening; the purge a night later than it could be. */
const timetable: Plan['timetable'] = {
  startS: {
    'clean-sink': 0,
    'clean-hob': 600,
    'rest-sink': 600,
    'rest-hob': 1200,
    'boil-1': 100_000,
    'pour-1': 100_240,
    'boil-2': 100_360,
    'pour-2': 100_600,
    glow: 110_000,
    cool: 110_900,
    'cover-sink': 101_000,
  },
  finishS: 112_700,
  lowerBoundS: 90_000,
};

const plan: Plan = { ...toldPlan, timetable };

describe('the calendar of a plan', () => {
  const events = restEvents(plan, NEW_YEAR_MS, inEnglish);

  it('has the end of every rest, and the purge in blocks with their pauses', () => {
    expect(
      events.map(({ title, startMs, endMs }) => [
        title,
        inS(startMs),
        endMs === undefined ? null : inS(endMs),
      ]),
    ).toEqual([
      ['Rest over: Sink', 600 + DAY_S, null],
      ['Rest over: Hob', 1200 + DAY_S, null],
      ['Purge: Sink', 100_000, 100_720],
      ['Purge: Hob', 110_000, 110_900],
    ]);
    expect(events[2]?.text).toMatch(/^Sink: Pour boiling water\n/);
  });

  it('names every event once, and the same again', () => {
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    expect(restEvents(plan, NEW_YEAR_MS, inEnglish)).toEqual(events);
    expect(calendarOf(events, NEW_YEAR_MS).match(/BEGIN:VEVENT/g)).toHaveLength(4);
  });
});

describe('the calendars of two kitchens that begin together', () => {
  it('have no event in common, so that neither takes the place of the other', () => {
    const other = { ...plan, kitchen: { ...plan.kitchen, name: 'Another one' } };
    const [own, others] = [plan, other].map((one) =>
      restEvents(one, NEW_YEAR_MS, inEnglish).map(({ uid }) => uid),
    );
    expect(own).toHaveLength(4);
    expect(others?.filter((uid) => own?.includes(uid))).toEqual([]);
  });
});

describe('the calendar of a run', () => {
  it('asks the clocks of the run, and leaves out what is over', () => {
    const tablet = rested(plan);
    const events = restEvents(plan, NEW_YEAR_MS, inEnglish, tablet.state);
    // The sink has rested; the hob was never cleaned: its rest follows its cleaning, now.
    const [hob, ...blocks] = events;
    expect(hob?.title).toBe('Rest over: Hob');
    const nowS = inS(tablet.state.clock.lastAt.wallMs);
    expect(inS(hob?.startMs ?? 0)).toBeCloseTo(nowS + 600 + DAY_S, 3);
    expect(blocks.map(({ title, startMs }) => [title, inS(startMs)])).toEqual([
      ['Purge: Sink', 100_000],
      ['Purge: Hob', expect.closeTo(nowS + 600 + DAY_S, 3)],
    ]);
  });

  it('moves a rest that a doubt began anew', () => {
    const tablet = rested(plan);
    pours(tablet, 1);
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Soup' });
    const nowMs = tablet.state.clock.lastAt.wallMs;
    const events = restEvents(plan, NEW_YEAR_MS, inEnglish, tablet.state);
    expect(events.find(({ title }) => title === 'Rest over: Sink')?.startMs).toBe(
      nowMs + DAY_S * 1000,
    );
    const purge = events.find(({ title }) => title.includes('Purge: Sink'));
    expect(purge?.startMs).toBe(nowMs + DAY_S * 1000);
  });

  it('has nothing more of a run that is closed', () => {
    const run = simulateRun(plan, { startWallMs: NEW_YEAR_MS });
    expect(run.state.status).toBe('closed');
    expect(restEvents(plan, NEW_YEAR_MS, inEnglish, run.state)).toEqual([]);
  });

  it('never asks for more hands or kettles than there are, however late the run is', () => {
    const late: Plan = { ...plan, timetable: { ...timetable, startS: {} } };
    const { state } = rested(late);
    const { lastAt } = state.clock;
    const times = expectedTimes(view(state, lastAt), lastAt.wallMs, { timetableMs: NEW_YEAR_MS });
    for (const resource of late.resources) {
      for (const { startMs } of times.values()) {
        const taken = late.steps.reduce((sum, step) => {
          const span = times.get(step.id);
          const runs = span && span.startMs <= startMs && startMs < span.endMs;
          return runs ? sum + (step.demands[resource.id] ?? 0) : sum;
        }, 0);
        expect(taken).toBeLessThanOrEqual(resource.capacity);
      }
    }
    for (const step of late.steps) {
      for (const need of step.needs) {
        const from = times.get(step.id)?.startMs ?? Infinity;
        expect(times.get(need.step)?.endMs ?? -Infinity).toBeLessThanOrEqual(from);
      }
    }
    expect(times.get('pour-2')?.startMs).toBeGreaterThan(atMs(0));
  });
});
