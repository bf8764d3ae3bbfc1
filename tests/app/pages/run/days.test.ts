import { describe, expect, it } from 'vitest';
import {
  dayOf,
  freeHours,
  runsUntil,
  workAhead,
} from '../../../../src/app/pages/run/timers/days.ts';
import { followZone } from '../../../../src/app/context/zone.ts';
import { asWritten } from '../../../../src/core/messages/index.ts';
import type { TimerView } from '../../../../src/core/run/index.ts';
import { DAY_S, smallPlan } from '../../../core/run/support/fixtures.ts';
import { resting } from '../../../core/run/support/tablet.ts';
import { inEnglish } from '../../../support/english.ts';

const at = (text: string): number => new Date(text).getTime();

describe('the part of the days to come', () => {
  const now = at('2027-03-01T14:00');
  it.each([
    ['2027-03-01T17:30', 'Today'],
    ['2027-03-01T18:00', 'Tonight'],
    ['2027-03-02T01:00', 'Tonight'],
    ['2027-03-02T09:00', 'Tomorrow'],
    ['2027-03-03T09:00', 'Wednesday 3 March'],
  ])('%s is %s', (when, words) => {
    expect(inEnglish.say(dayOf(at(when), now))).toBe(words);
  });

  it('goes by the clock on the kitchen’s wall, wherever the tablet thinks it is', () => {
    const utc = (text: string): number => Date.parse(`${text}Z`);
    try {
      // 02:00 on Tuesday by UTC is Monday evening in New York, and Tuesday morning in Tokyo.
      followZone(() => 'America/New_York');
      expect(dayOf(utc('2027-03-02T02:00'), utc('2027-03-01T20:00')).key).toBe('run.days.tonight');
      followZone(() => 'Asia/Tokyo');
      expect(dayOf(utc('2027-03-02T02:00'), utc('2027-03-01T12:00')).key).toBe('run.days.tomorrow');
    } finally {
      followZone(() => undefined);
    }
  });
});

const named = (timer: TimerView, label: string, name: string, leftS: number) => ({
  ...timer,
  leftS,
  of: { label: asWritten(label), name: asWritten(name) },
});

describe('days when only timers run', () => {
  it('tell until when each rest runs', () => {
    const tablet = resting(smallPlan);
    const nowMs = tablet.readings().wallMs;
    const rests = tablet.view.timers.filter((timer) => timer.role === 'hold');
    expect(rests.length).toBeGreaterThan(0);
    const lastS = Math.max(...rests.map(({ leftS }) => leftS));
    expect(runsUntil(tablet.view, nowMs).at(-1)?.untilMs).toBe(nowMs + lastS * 1000);
  });

  it('tell from when to when hands are free, in one line', () => {
    const tablet = resting(smallPlan);
    const nowMs = tablet.readings().wallMs;
    const said = inEnglish.say(freeHours(tablet.view, nowMs));
    expect(said).toMatch(/^Hands are free (now,|from .*\d\d:\d\d) to .*\d\d:\d\d\.$/);
    const over = tablet.view.steps.map((one) => ({ ...one, status: 'settled' as const }));
    expect(inEnglish.say(freeHours({ ...tablet.view, steps: over }, nowMs))).toMatch(
      /^All is expected to be over .*\d\d:\d\d\.$/,
    );
  });

  it('tell what ends together in one line, what is alike under one word', () => {
    const { view } = resting(smallPlan);
    const hold = view.timers.find((timer) => timer.role === 'hold');
    if (!hold) throw new Error('no rest runs');
    const timers = [
      named(hold, 'Rest', 'Sink', 1000),
      named(hold, 'Rest', 'Oven', 1100),
      named(hold, 'Safe to touch', 'Hob', 1200),
      named(hold, 'Rest', 'Counter', 9000),
    ];
    const lines = runsUntil({ ...view, timers }, 0);
    expect(lines.map(({ waits }) => inEnglish.say(waits))).toEqual([
      'Rest: Sink, Oven; Safe to touch: Hob',
      'Rest: Counter',
    ]);
    expect(lines[0]?.leftS).toBe(1200);
  });
});

describe('what can be done when', () => {
  it('says now only of what the engine lets begin', () => {
    const tablet = resting(smallPlan);
    const { view } = tablet;
    const nowMs = tablet.readings().wallMs;
    const ready = view.steps.filter(
      ({ step, status }) => status === 'ready' && step.attention !== 'none',
    );
    const days = workAhead(view, nowMs);
    const now = days.find(({ when }) => when.key === 'run.days.now');
    expect(now !== undefined).toBe(ready.length > 0);
    for (const day of days) for (const { canBegin } of day.work) expect(canBegin).toBe(day === now);
  });

  it('offers nothing inside a rest day, when the engine would refuse it', () => {
    const tablet = resting(smallPlan);
    const nowMs = tablet.readings().wallMs;
    const day = {
      name: asWritten('Sabbath'),
      fromWallMs: nowMs,
      toWallMs: nowMs + 3 * DAY_S * 1000,
    };
    const steps = tablet.view.steps.map((step) =>
      step.status === 'ready' ? { ...step, status: 'waiting' as const } : step,
    );
    const plan = { ...tablet.view.plan, days: { startWallMs: nowMs, restDays: [day] } };
    const work = workAhead({ ...tablet.view, steps, plan }, nowMs).flatMap((one) => one.work);
    expect(work.length).toBeGreaterThan(0);
    for (const { fromMs } of work) expect(fromMs).toBeGreaterThanOrEqual(day.toWallMs);
  });
});
