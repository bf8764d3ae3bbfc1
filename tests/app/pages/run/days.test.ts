import { describe, expect, it } from 'vitest';
import {
  earliestMs,
  namesInWords,
  runsUntil,
  whenInWords,
  workAhead,
} from '../../../../src/app/pages/run/timers/days.ts';
import { DAY_S, smallPlan } from '../../../core/run/fixtures.ts';
import { resting } from '../../../core/run/tablet.ts';

const at = (text: string): number => new Date(text).getTime();

describe('when, in words', () => {
  const now = at('2027-03-01T14:00');
  it.each([
    ['2027-03-01T14:00', 'Now'],
    ['2027-03-01T17:30', 'Today'],
    ['2027-03-01T18:00', 'Tonight'],
    ['2027-03-02T01:00', 'Tonight'],
    ['2027-03-02T09:00', 'Tomorrow'],
    ['2027-03-03T09:00', 'Wednesday'],
  ])('%s is %s', (when, words) => {
    expect(whenInWords(at(when), now)).toBe(words);
  });
});

describe('days when only clocks run', () => {
  it('tell until when each rest runs', () => {
    const tablet = resting(smallPlan);
    const nowMs = tablet.readings().wallMs;
    const rests = tablet.view.timers.filter((clock) => clock.role === 'hold');
    expect(rests.length).toBeGreaterThan(0);
    const until = runsUntil(tablet.view, nowMs);
    expect(until.flatMap(({ names }) => names).toSorted()).toEqual(
      rests.map(({ label }) => label).toSorted(),
    );
    const lastS = Math.max(...rests.map(({ leftS }) => leftS));
    expect(until.at(-1)?.untilMs).toBe(nowMs + lastS * 1000);
  });

  it('offer no purge before its rest is over, and never before now', () => {
    const tablet = resting(smallPlan);
    const nowMs = tablet.readings().wallMs;
    const starts = earliestMs(tablet.view, nowMs);
    for (const step of tablet.view.steps) {
      expect(starts.get(step.step.id)).toBeGreaterThanOrEqual(nowMs);
      const rest = step.step.needs
        .map((need) => tablet.step(need.step))
        .find((needed) => needed.step.kind === 'rest' && needed.status !== 'settled');
      const leftS = rest?.timers.find(({ role }) => role === 'hold')?.leftS ?? 0;
      expect((starts.get(step.step.id) ?? 0) - nowMs).toBeGreaterThanOrEqual(leftS * 1000);
    }
    expect(workAhead(tablet.view, nowMs).length).toBeGreaterThan(0);
  });

  it('move what would begin inside a rest day to its end', () => {
    const tablet = resting(smallPlan);
    const nowMs = tablet.readings().wallMs;
    const day = { name: 'Sabbath', fromWallMs: nowMs, toWallMs: nowMs + 3 * DAY_S * 1000 };
    const view = {
      ...tablet.view,
      plan: { ...tablet.view.plan, days: { startWallMs: nowMs, restDays: [day] } },
    };
    const starts = earliestMs(view, nowMs);
    const hands = view.steps.filter(
      (step) => step.step.attention !== 'none' && step.status === 'waiting',
    );
    expect(hands.length).toBeGreaterThan(0);
    for (const step of hands) expect(starts.get(step.step.id)).toBeGreaterThanOrEqual(day.toWallMs);
  });
});

describe('names that end together', () => {
  it('share their first word', () => {
    expect(namesInWords(['Rest: Sink', 'Rest: Oven', 'Safe to touch: Hob'])).toBe(
      'Rest: Sink, Oven; Safe to touch: Hob',
    );
    expect(namesInWords(['Glow'])).toBe('Glow');
  });
});
