import { asWritten, message } from '../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import { alertsDue, type Observation, type Request } from '../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from './support/fixtures.ts';
import { withSabbath } from './support/sabbath.ts';
import { glowing, NEW_YEAR_MS, resting, Tablet } from './support/tablet.ts';

const HOUR_S = 3600;
const SABBATH = asWritten('the Sabbath');

/** A burner glows since second 200, longer than its plan reckoned, and a rest day begins at `fromS` for 25 hours. */
function glowingInto(fromS: number): Tablet {
  const holdS = Math.min(600, fromS - 150);
  const lengths: Record<string, object> = { hold: { lengthS: holdS }, expect: { lengthS: 10 } };
  const steps = purgePlan.steps.map((one) => ({
    ...one,
    durationS: { low: 60, typical: 60, high: 60 },
    // A glow that ends just after the day begins is still let in, and then nobody ends it.
    stages: one.stages.map((stage) => ({
      ...stage,
      timers: stage.timers.map((timer) => ({ ...timer, ...lengths[timer.id] })),
    })),
  }));
  return glowing(withSabbath({ ...purgePlan, steps }, fromS, fromS + 25 * HOUR_S));
}

describe('inside a rest day', () => {
  it('nothing that begins work is accepted; all that makes safe or tells is', () => {
    // Verifies: I-19
    const make = (): Tablet => {
      const tablet = glowingInto(1500);
      tablet.does({ kind: 'skip-step', step: 'boil-2', reason: 'Small bowl.' });
      tablet.passes(1400);
      expect(tablet.view.restDay?.name).toEqual(SABBATH);
      return tablet;
    };
    const look = make().view.timers.find(({ alerting }) => alerting)?.id ?? '';
    const cases: [Request | Observation, string | null][] = [
      [{ kind: 'start-step', step: 'boil-1' }, 'rest-day'],
      [{ kind: 'repeat-step', step: 'boil-2', reason: 'After all.' }, 'rest-day'],
      [{ kind: 'confirm', step: 'glow', stage: 'hold' }, null],
      [{ kind: 'stop-step', step: 'glow', reason: 'Off.' }, null],
      [{ kind: 'skip-step', step: 'boil-1', reason: 'Not now.' }, null],
      [{ kind: 'stop-run', reason: 'Enough.' }, null],
      [{ kind: 'report-fault', fault: 'co-alarm' }, null],
      [{ kind: 'report-recheck', fixture: 'sink', text: 'Used.' }, null],
      [{ kind: 'acknowledge-timer', timer: look }, null],
      [{ kind: 'pause' }, null],
      [{ kind: 'note', text: 'A guest came.' }, null],
      [{ kind: 'tick' }, null],
    ];
    for (const [asked, code] of cases) expect(make().tries(asked), asked.kind).toBe(code);
    const hot = make();
    hot.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    hot.does({ kind: 'confirm-safe', step: 'glow' });
    expect(hot.step('glow').outcome).toBe('stopped');
    expect(hot.step('cool').status).toBe('active');
  });

  it('a run is not started, and says when it can be', () => {
    // Verifies: I-19
    const tablet = new Tablet(withSabbath(smallPlan, -10, HOUR_S));
    expect(tablet.tries({ kind: 'start-run' })).toBe('rest-day');
    expect(tablet.view.restDay).toEqual({
      name: SABBATH,
      toWallMs: NEW_YEAR_MS + HOUR_S * 1000,
      leftS: HOUR_S,
    });
    expect(tablet.view.wakeInS).toBe(HOUR_S);
    tablet.passes(HOUR_S);
    expect(tablet.view.restDay).toBeUndefined();
    expect(tablet.tries({ kind: 'start-run' })).toBeNull();
  });

  it('a rest begins by itself, counts and ends; what follows waits, and says why', () => {
    // Verifies: I-19, I-17
    const tablet = resting(withSabbath(smallPlan, 1200, 2 * DAY_S));
    tablet.passes(DAY_S + 20);
    expect(tablet.step('rest-sink').outcome).toBe('done');
    expect(tablet.step('boil-1')).toMatchObject({
      status: 'waiting',
      blockedBy: [message('engine.rest-day.inside', { day: SABBATH })],
    });
    expect(tablet.view.currentSteps.filter(({ status }) => status === 'ready')).toEqual([]);
    tablet.passes(DAY_S);
    expect(tablet.step('boil-1')).toMatchObject({ status: 'ready', blockedBy: [] });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBeNull();
    // Cleaned before it and told inside it: the rest is a chain and starts.
    const late = new Tablet(withSabbath(smallPlan, 700, DAY_S));
    late.does({ kind: 'start-run' }, { kind: 'skip-step', step: 'clean-hob', reason: 'New.' });
    expect(late.tries({ kind: 'start-step', step: 'rest-hob' })).toBeNull();
    late.does({ kind: 'stop-step', step: 'rest-hob', reason: 'No.' });
    late.does({ kind: 'start-step', step: 'clean-sink' });
    late.does({ kind: 'repeat-step', step: 'rest-hob', reason: 'After all.' });
    late.passes(800);
    late.says('clean-sink');
    expect(late.step('rest-sink').status).toBe('active');
    // A person begins not even a rest.
    expect(late.tries({ kind: 'start-step', step: 'rest-hob' })).toBe('rest-day');
  });

  it('a chained step that needs eyes does not start by itself before the end of it', () => {
    // Verifies: I-19
    const steps = smallPlan.steps.map((one) =>
      one.id === 'rest-sink' ? { ...one, attention: 'watch' as const } : one,
    );
    const tablet = new Tablet(withSabbath({ ...smallPlan, steps }, 700, HOUR_S));
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(800);
    tablet.says('clean-sink');
    tablet.passes(HOUR_S - 801);
    expect(tablet.step('rest-sink').status).toBe('waiting');
    tablet.passes(2);
    expect(tablet.step('rest-sink').status).toBe('active');
  });
});

describe('before a rest day', () => {
  it('work that would reach into it does not begin; a rest may run through', () => {
    // Verifies: I-19
    const tablet = new Tablet(withSabbath(purgePlan, 1000, DAY_S));
    tablet.does({ kind: 'start-run' });
    tablet.opens('burner-clear', 'glow#1');
    tablet.opens('air');
    expect(tablet.view.nextRestDay).toEqual({
      name: SABBATH,
      fromWallMs: NEW_YEAR_MS + 1_000_000,
      toWallMs: NEW_YEAR_MS + DAY_S * 1000,
      inS: 1000,
      overInS: DAY_S,
    });
    expect(tablet.step('glow').status).toBe('ready');
    // Typically 900 s of glow; a minute over is no matter.
    tablet.passes(161);
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBe('reaches-rest-day');
    expect(tablet.step('glow')).toMatchObject({
      status: 'waiting',
      blockedBy: [message('engine.rest-day.reaches', { day: SABBATH })],
    });
    // Boiled water is poured at once: 240 s and 120 s belong together.
    tablet.passes(530);
    expect(tablet.step('boil-1').status).toBe('ready');
    tablet.passes(12);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('reaches-rest-day');
    const rest = resting(withSabbath(smallPlan, 1000, DAY_S));
    expect(rest.step('rest-sink').status).toBe('active');
    // So may a cool-down, though what cools is hot.
    const hot = glowingInto(600);
    hot.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    hot.does({ kind: 'confirm-safe', step: 'glow' });
    expect(hot.step('cool').status).toBe('active');
  });

  it('a wait with heat reaches into it all the same, one without may run through', () => {
    // Verifies: I-19
    const alone = (hazards: readonly 'oven'[]): Tablet => {
      const steps = purgePlan.steps.map((one) =>
        one.id === 'cover-sink'
          ? {
              ...one,
              attention: 'none' as const,
              needs: [],
              stages: one.stages.map((stage) => ({ ...stage, hazards })),
            }
          : one,
      );
      const tablet = new Tablet(withSabbath({ ...purgePlan, steps }, 300, DAY_S));
      tablet.does({ kind: 'start-run' });
      return tablet;
    };
    const cover: Request = { kind: 'start-step', step: 'cover-sink' };
    expect(alone(['oven']).tries(cover)).toBe('reaches-rest-day');
    expect(alone([]).tries(cover)).toBeNull();
  });

  it('is counted by the right time when a person has told it', () => {
    // Verifies: I-19
    const tablet = resting(withSabbath(smallPlan, 2 * HOUR_S, 20 * HOUR_S));
    tablet.setsClock(30 * HOUR_S);
    expect(tablet.view.restDay).toBeUndefined();
    const actualWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs });
    tablet.passes(2 * HOUR_S);
    expect(tablet.view.restDay?.name).toEqual(SABBATH);
    expect(tablet.tries({ kind: 'start-step', step: 'clean-hob' })).toBe('rest-day');
  });
});

describe('sounds', () => {
  it('due inside a rest day stay silent, and are told after it as late', () => {
    // Verifies: I-19
    const tablet = glowingInto(400);
    tablet.passes(1000);
    const look = tablet.clock('/look');
    expect(look).toMatchObject({ alerting: true, status: 'due', cameDueIn: SABBATH, cause: 1 });
    expect(alertsDue(tablet.view)).toEqual([]);
    // Everything stays silent to the very end of it, and is told then.
    tablet.passes(400 + 25 * HOUR_S - tablet.trueS - 1);
    expect(alertsDue(tablet.view)).toEqual([]);
    tablet.passes(1);
    expect(alertsDue(tablet.view)).toMatchObject([
      { timer: expect.stringContaining('/hold/'), sounding: true },
      { timer: expect.stringContaining('/hold/'), sounding: true },
    ]);
    expect(tablet.clock('/look')).toMatchObject({ status: 'late', cameDueIn: SABBATH });
    expect(tablet.clock('/look').lateByS).toBeGreaterThan(24 * HOUR_S);
  });

  it('of a clock that ended by itself meanwhile tell since when they called in vain', () => {
    // Verifies: I-19
    const tablet = glowingInto(HOUR_S);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    tablet.passes(2000);
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.passes(HOUR_S);
    expect(tablet.step('cool').outcome).toBe('done');
    expect(alertsDue(tablet.view)).toEqual([]);
    tablet.passes(26 * HOUR_S - tablet.trueS);
    expect(alertsDue(tablet.view)).toMatchObject([{ family: 'done', sounding: true }]);
    expect(tablet.clock('/cool')).toMatchObject({ status: 'late', cameDueIn: SABBATH });
    expect(tablet.clock('/cool').lateByS).toBeCloseTo(26 * HOUR_S - 4000, -1);
  });

  it('that begin before a rest day say when they must fall silent', () => {
    // Verifies: I-19
    const tablet = glowingInto(600);
    tablet.passes(310);
    const [alert] = alertsDue(tablet.view);
    expect(alert).toMatchObject({ sounding: true });
    expect(alert?.silentInS).toBeCloseTo(600 - tablet.trueS, 3);
    // What would only begin inside it, the look and the end of the glow, is not handed on at all.
    const soon = glowingInto(520);
    soon.passes(260);
    expect(soon.clock('/look').leftS).toBeLessThan(90);
    expect(alertsDue(soon.view, [])).toHaveLength(2);
    const inside = glowingInto(490);
    inside.passes(260);
    expect(alertsDue(inside.view)).toEqual([]);
  });

  it('before and after it sound as ever', () => {
    const tablet = glowingInto(5 * HOUR_S);
    tablet.passes(320);
    expect(alertsDue(tablet.view)).toMatchObject([{ sounding: true }]);
    expect(tablet.clock('/look').cameDueIn).toBeUndefined();
  });
});

describe('the wake-up', () => {
  it('is also for the beginning and the end of a rest day', () => {
    // Verifies: I-10, I-19
    const tablet = resting(withSabbath(smallPlan, 2 * HOUR_S, 20 * HOUR_S));
    expect(tablet.view.wakeInS).toBeCloseTo(2 * HOUR_S - 600, 3);
    tablet.passes(2 * HOUR_S - 600 + 1);
    expect(tablet.view.wakeInS).toBeCloseTo(18 * HOUR_S - 1, 0);
  });
});
