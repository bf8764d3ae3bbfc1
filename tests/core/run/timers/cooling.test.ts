import { describe, expect, it } from 'vitest';
import { encodeEntries, openJournal } from '../../../../src/core/journal/index.ts';
import { asWritten, message } from '../../../../src/core/messages/index.ts';
import { alertsDue, fold, type Fact } from '../../../../src/core/run/index.ts';
import { planOf, purgePlan, smallPlan, steps } from '../support/fixtures.ts';
import { glowing, NEW_YEAR_MS, resting, Tablet } from '../support/tablet.ts';

const MINUTE_S = 60;
/** What clocks that agree may differ by, s. */
const TOLERANCE_S = 6;

function burned(tablet: Tablet): Tablet {
  tablet.does({ kind: 'report-fault', fault: 'burned' });
  return tablet;
}

function cooling(tablet: Tablet) {
  const [one] = tablet.view.coolings;
  if (!one) throw new Error('Nothing is cooled.');
  return one;
}

function ends(tablet: Tablet, as: 'cooled' | 'taken-over' | 'mistake'): string | null {
  return tablet.tries({ kind: 'end-cooling', faultId: cooling(tablet).fault, as });
}

function dues(facts: readonly Fact[]): readonly string[] {
  return facts.flatMap(({ body }) =>
    body.kind === 'timer-due' && body.timer.startsWith('cooling/')
      ? [`${body.timer}!${body.cause}`]
      : [],
  );
}

describe('the clock of a burn', () => {
  it('survives a reload, a kill, another tablet and its file; only what was seen counts', () => {
    // Verifies: I-30
    const tablet = burned(resting(smallPlan));
    tablet.passes(5 * MINUTE_S);
    tablet.restarts(2);
    expect(cooling(tablet).leftS).toBeGreaterThanOrEqual(15 * MINUTE_S);
    expect(cooling(tablet).leftS).toBeLessThan(15 * MINUTE_S + TOLERANCE_S);
    // Killed for seven minutes: nobody knows whether the water ran.
    tablet.restarts(7 * MINUTE_S);
    expect(cooling(tablet).leftS).toBeGreaterThanOrEqual(15 * MINUTE_S);
    const opened = openJournal(encodeEntries(tablet.facts));
    expect(opened.state?.coolings).toEqual(fold(tablet.facts).coolings);
    tablet.passes(15 * MINUTE_S + TOLERANCE_S);
    expect(cooling(tablet).over).toBe(true);
    tablet.restarts(3);
    expect(cooling(tablet)).toMatchObject({ over: true, alerting: true });
    expect(dues(tablet.facts)).toHaveLength(1);
  });

  it('never shows less than it may still need, whatever the clocks do', () => {
    // Verifies: I-30
    const ways: readonly ((tablet: Tablet) => void)[] = [
      (tablet) => tablet.sleeps(400),
      (tablet) => tablet.setsClock(3600),
      (tablet) => tablet.setsClock(-3600),
      (tablet) => {
        tablet.setsClock(7200, false);
        tablet.restarts(30);
      },
    ];
    for (const way of ways) {
      const tablet = burned(resting(smallPlan));
      const fromS = tablet.trueS;
      tablet.passes(4 * MINUTE_S);
      way(tablet);
      tablet.passes(2 * MINUTE_S);
      const trueLeftS = 1200 - (tablet.trueS - fromS);
      expect(cooling(tablet).leftS).toBeGreaterThanOrEqual(trueLeftS - 0.001);
      expect(cooling(tablet).over).toBe(false);
    }
  });

  it('counts slept time by a word about the clock, and no longer when the word is taken back', () => {
    // Verifies: I-26, I-30
    const tablet = burned(resting(smallPlan));
    tablet.passes(10 * MINUTE_S);
    tablet.sleeps(11 * MINUTE_S);
    expect(cooling(tablet)).toMatchObject({ over: false, mayBeOver: true });
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(cooling(tablet)).toMatchObject({ over: true, cause: 1 });
    tablet.does({ kind: 'withdraw-clock-answer' });
    expect(cooling(tablet)).toMatchObject({ over: false, alerting: false, cause: 2 });
    tablet.passes(10 * MINUTE_S + TOLERANCE_S);
    expect(cooling(tablet).over).toBe(true);
    expect(dues(tablet.facts)).toHaveLength(2);
  });

  it('wakes the page, sounds as what must be answered, and falls silent by a word', () => {
    // Verifies: I-10, I-30
    const tablet = burned(resting(smallPlan));
    expect(tablet.view.wakeInS).toBeLessThanOrEqual(1200.2);
    tablet.passes(19 * MINUTE_S);
    const { id } = cooling(tablet);
    expect(alertsDue(tablet.view)).toMatchObject([{ timer: id, family: 'due', sounding: false }]);
    tablet.passes(2 * MINUTE_S);
    expect(alertsDue(tablet.view)).toMatchObject([{ timer: id, family: 'due', sounding: true }]);
    expect(tablet.tries({ kind: 'alarm-failed', timer: id, cause: 1, text: 'Mute.' })).toBeNull();
    tablet.does({ kind: 'acknowledge-timer', timer: id });
    expect(alertsDue(tablet.view)).toEqual([]);
    expect(tablet.tries({ kind: 'acknowledge-timer', timer: id })).toBe('not-alerting');
    expect(cooling(tablet)).toMatchObject({ over: true, alerting: false });
  });

  it('is shown as an alarm that could not be sounded, until somebody answers', () => {
    // Verifies: I-30
    const ways: readonly [string | null, () => Tablet][] = [
      [null, () => burned(resting(smallPlan))],
      [
        'glow',
        () => {
          const tablet = glowing(purgePlan);
          tablet.does({ kind: 'report-fault', fault: 'burned', step: 'glow' });
          return tablet;
        },
      ],
    ];
    for (const [step, make] of ways) {
      const tablet = make();
      tablet.passes(1201);
      const { id: timer, cause } = cooling(tablet);
      tablet.does({ kind: 'alarm-failed', timer, cause, text: 'Mute.' });
      expect(tablet.view.alarmsFailed).toEqual([
        { timer, cause, step, label: message('cautions.fault.burned.name'), text: 'Mute.' },
      ]);
      tablet.does({ kind: 'acknowledge-timer', timer });
      expect(tablet.view.alarmsFailed).toEqual([]);
    }
  });

  it('ends by a word alone, which is kept, and only then does the run go on', () => {
    // Verifies: I-06, I-30
    for (const as of ['taken-over', 'mistake'] as const) {
      const tablet = burned(resting(smallPlan));
      tablet.passes(3 * MINUTE_S);
      const { fault } = cooling(tablet);
      expect(tablet.tries({ kind: 'clear-fault', faultId: fault })).toBe('cooling-first');
      expect(tablet.tries({ kind: 'resume' })).toBe('fault-open');
      expect(ends(tablet, 'cooled')).toBe('hold-not-due');
      expect(ends(tablet, as)).toBeNull();
      expect(tablet.facts.at(-1)?.body).toEqual({
        kind: 'cooling-ended',
        fault,
        as,
        cooledS: 179,
      });
      expect(tablet.view.coolings).toEqual([]);
      expect(tablet.view.status).toBe('suspended');
      expect(tablet.tries({ kind: 'end-cooling', faultId: fault, as })).toBe('unknown-fault');
      tablet.does({ kind: 'resume' });
      expect(tablet.view.status).toBe('running');
    }
  });

  it('can be said to have had its 20 minutes once it may have had them', () => {
    // Verifies: I-30
    const tablet = burned(resting(smallPlan));
    tablet.passes(10 * MINUTE_S);
    tablet.restarts(9 * MINUTE_S);
    expect(ends(tablet, 'cooled')).toBe('hold-not-due');
    tablet.passes(MINUTE_S + TOLERANCE_S);
    expect(cooling(tablet).leftS).toBeGreaterThan(8 * MINUTE_S);
    expect(ends(tablet, 'cooled')).toBeNull();
  });

  it('keeps a run that is stopped from closing until then', () => {
    // Verifies: I-13, I-30
    const tablet = burned(glowing(purgePlan));
    tablet.does({ kind: 'stop-run', reason: 'Enough.' }, { kind: 'confirm-safe', step: 'glow' });
    expect(tablet.view.status).toBe('closing');
    tablet.passes(21 * MINUTE_S);
    expect(tablet.view.status).toBe('closing');
    expect(ends(tablet, 'cooled')).toBeNull();
    expect(tablet.view.status).toBe('closed');
  });

  it('is one for each who is burned, the longest first', () => {
    const tablet = burned(resting(smallPlan));
    tablet.passes(5 * MINUTE_S);
    burned(tablet);
    const [first, second] = tablet.view.coolings;
    expect(first?.leftS).toBe(1200);
    expect(second?.leftS).toBeLessThan(901);
    tablet.does({ kind: 'end-cooling', faultId: first?.fault ?? '', as: 'mistake' });
    expect(tablet.view.coolings.map(({ fault }) => fault)).toEqual([second?.fault]);
    expect(tablet.tries({ kind: 'resume' })).toBe('fault-open');
  });

  it('counts through a rest day, in silence', () => {
    // Verifies: I-19
    const day = { fromWallMs: NEW_YEAR_MS + 900_000, toWallMs: NEW_YEAR_MS + 9_000_000 };
    const name = asWritten('Rest');
    const tablet = new Tablet(
      planOf(steps, { days: { startWallMs: NEW_YEAR_MS, restDays: [{ name, ...day }] } }),
    );
    tablet.does({ kind: 'start-run' });
    burned(tablet);
    tablet.passes(1300);
    expect(cooling(tablet)).toMatchObject({ over: true });
    expect(alertsDue(tablet.view)).toEqual([]);
    tablet.passes(9000);
    expect(alertsDue(tablet.view)).toHaveLength(1);
  });
});
