import { asWritten } from '../../../src/core/messages/index.ts';
import { inEnglish as english } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import { alertsDue } from '../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from './support/fixtures.ts';
import { glowing, resting, Tablet } from './support/tablet.ts';

describe('gates', () => {
  it('unknown and no are not yes', () => {
    // Verifies: I-05
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' });
    tablet.opens('air');
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBe('gate-shut');
    tablet.does({ kind: 'answer-gate', gate: 'burner-clear', scopeKey: 'glow#1', answer: 'no' });
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBe('gate-shut');
    expect(tablet.tries({ kind: 'answer-gate', gate: 'x', scopeKey: 'run', answer: 'yes' })).toBe(
      'unknown-gate',
    );
    expect(tablet.tries({ kind: 'answer-gate', gate: 'air', scopeKey: 'hob', answer: 'yes' })).toBe(
      'unknown-scope',
    );
  });

  it('that the plan forgot to describe stay shut', () => {
    // Verifies: I-05, I-11
    const steps = purgePlan.steps.map((one) =>
      one.id === 'boil-1' ? { ...one, gates: ['forgotten'] } : one,
    );
    const tablet = new Tablet({ ...purgePlan, steps });
    tablet.does({ kind: 'start-run' });
    const asked = { gate: 'forgotten', scopeKey: 'run' } as const;
    expect(tablet.tries({ kind: 'answer-gate', ...asked, answer: 'yes' })).toBe('unknown-gate');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('gate-shut');
  });

  it('of DANGER cannot be overridden, others with a reason', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' });
    const danger = {
      kind: 'override-gate',
      gate: 'burner-clear',
      scopeKey: 'glow#1',
      reason: 'I know.',
    } as const;
    expect(tablet.tries(danger)).toBe('danger-gate');
    const dress = {
      kind: 'override-gate',
      gate: 'scald-dress',
      scopeKey: 'run',
      reason: '',
    } as const;
    expect(tablet.tries(dress)).toBe('reason-missing');
    expect(tablet.tries({ ...dress, reason: 'Apron instead.' })).toBeNull();
    expect(tablet.step('pour-1').gates[0]?.value).toBe('yes');
    // Skipping a step answers nothing for others.
    tablet.does({ kind: 'skip-step', step: 'glow', reason: 'Not used.' });
    tablet.does({ kind: 'repeat-step', step: 'glow', reason: 'After all.' });
    tablet.opens('air');
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBe('gate-shut');
  });

  it('lapse after a pause longer than their time, by clock or by gap', () => {
    const answered = (): Tablet => {
      const tablet = new Tablet(purgePlan);
      tablet.does({ kind: 'start-run' });
      tablet.opens('scald-dress');
      return tablet;
    };
    const value = (tablet: Tablet): string | undefined => tablet.step('pour-1').gates[0]?.value;
    const short = answered();
    short.does({ kind: 'pause' });
    short.passes(1700);
    short.does({ kind: 'resume' });
    expect(value(short)).toBe('yes');
    const long = answered();
    long.does({ kind: 'pause' });
    long.passes(1900);
    long.does({ kind: 'resume' });
    expect(value(long)).toBe('unknown');
    const gap = answered();
    gap.restarts(1900);
    gap.does({ kind: 'resume' });
    expect(value(gap)).toBe('unknown');
    const sleep = answered();
    sleep.sleeps(1900);
    expect(value(sleep)).toBe('unknown');
  });

  it('tripped, suspend the run and make the hot safe; opened and settled, a person resumes', () => {
    // Verifies: I-06, I-10
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'report-fault', fault: 'co-alarm' });
    expect(tablet.view.status).toBe('suspended');
    expect(tablet.step('glow').status).toBe('unwinding');
    expect(tablet.view.hot).toMatchObject([{ step: 'glow', hazard: 'element', confirmed: false }]);
    expect(tablet.tries({ kind: 'resume' })).toBe('make-safe-first');
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.step('glow')).toMatchObject({ status: 'settled', outcome: 'stopped' });
    expect(tablet.tries({ kind: 'resume' })).toBe('fault-open');
    tablet.does({ kind: 'clear-fault', faultId: tablet.view.faults[0]?.id ?? '' });
    expect(tablet.tries({ kind: 'resume' })).toBe('gate-shut');
    tablet.opens('air');
    expect(tablet.tries({ kind: 'resume' })).toBe('gate-shut');
    expect(tablet.view.resumeBlockedBy.map(english.say)).toEqual([
      'Wait until it has settled: Hood on high and window open, nobody unwell?',
    ]);
    expect(tablet.view.wakeInS).toBeLessThanOrEqual(601);
    tablet.passes(601);
    expect(tablet.view.status).toBe('suspended');
    tablet.does({ kind: 'resume' });
    expect(tablet.view.status).toBe('running');
  });

  it('tripped, leave alone what is hot behind no such gate', () => {
    // Verifies: I-13
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.does({ kind: 'report-fault', fault: 'co-alarm' });
    expect(tablet.step('glow').status).toBe('unwinding');
    expect(tablet.step('boil-1').status).toBe('active');
  });

  it('a person may shut one without a fault', () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'answer-gate', gate: 'air', scopeKey: 'run', answer: 'no' });
    expect(tablet.view.status).toBe('suspended');
    expect(tablet.step('glow').status).toBe('unwinding');
  });
});

describe('faults', () => {
  it('are suspended on, noted, or stop the run, as the plan says; unknown ones suspend', () => {
    const noted = glowing(purgePlan);
    noted.does({ kind: 'report-fault', fault: 'cracked' });
    expect(noted.view.status).toBe('running');
    const unknown = glowing(purgePlan);
    unknown.does({ kind: 'report-fault', fault: 'undefined', text: 'It hums.' });
    expect(unknown.view.status).toBe('suspended');
    const fire = glowing(purgePlan);
    fire.does({ kind: 'report-fault', fault: 'fire' });
    expect(fire.view).toMatchObject({ status: 'closing', reason: asWritten('Fire') });
    fire.does({ kind: 'confirm-safe', step: 'glow' });
    expect(fire.view).toMatchObject({
      status: 'closed',
      closedAs: 'failed',
      reason: asWritten('Fire'),
    });
  });

  it('that break an unbroken glow freeze its clock, and send it back to its warm-up', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(300);
    tablet.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    expect(tablet.clock('/hold/hold').status).toBe('frozen');
    tablet.passes(600);
    expect(tablet.clock('/hold/hold')).toMatchObject({
      leftS: 0,
      status: 'frozen',
      alerting: false,
    });
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'hold' })).toBe('fault-open');
    tablet.does({ kind: 'clear-fault', faultId: tablet.view.faults[0]?.id ?? '' });
    expect(tablet.step('glow').stage).toBe(1);
    expect(tablet.hasClock('/hold/hold')).toBe(false);
  });
});

describe('stopping', () => {
  it('is not turned into something else by what is reported meanwhile', () => {
    // Verifies: I-13
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-run', reason: 'Enough.' });
    tablet.does({ kind: 'report-fault', fault: 'fire' });
    tablet.does({ kind: 'report-fault', fault: 'co-alarm' });
    expect(tablet.view).toMatchObject({ status: 'closing', reason: asWritten('Enough.') });
    expect(tablet.view.faults).toHaveLength(2);
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.view).toMatchObject({ status: 'closed', closedAs: 'stopped' });
  });

  it('is accepted in every status and leads through making safe to closed', () => {
    // Verifies: I-13
    const ways: ((tablet: Tablet) => void)[] = [
      () => undefined,
      (tablet) => tablet.does({ kind: 'pause' }),
      (tablet) => tablet.does({ kind: 'report-fault', fault: 'power-cut' }),
      (tablet) => tablet.restarts(100),
      (tablet) => tablet.does({ kind: 'storage-failed', text: 'Full.' }),
      (tablet) => tablet.sleeps(5000),
      (tablet) => tablet.setsClock(-100_000),
    ];
    for (const way of ways) {
      const tablet = glowing(purgePlan);
      way(tablet);
      tablet.does({ kind: 'stop-run', reason: 'Enough.' });
      tablet.does({ kind: 'stop-run', reason: 'Twice.' });
      expect(tablet.view.status).toBe('closing');
      expect(tablet.view.hot.length).toBeGreaterThan(0);
      for (const { step, confirmed } of tablet.view.hot) {
        if (!confirmed) tablet.does({ kind: 'confirm-safe', step });
      }
      expect(tablet.view).toMatchObject({
        status: 'closed',
        closedAs: 'stopped',
        reason: asWritten('Enough.'),
      });
      expect(tablet.step('boil-1').outcome).toBe('not-run');
    }
  });

  it('before anything began closes at once', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'stop-run', reason: '' });
    expect(tablet.view).toMatchObject({ status: 'closed', closedAs: 'stopped' });
  });
});

describe('storage that fails', () => {
  it('before the run or while it is stopped leaves it where it is', () => {
    // Verifies: I-13, I-03
    const early = new Tablet(purgePlan);
    early.does({ kind: 'storage-failed', text: 'Full.' });
    expect(early.view).toMatchObject({ status: 'drafting', storageDown: true });
    expect(early.tries({ kind: 'start-run' })).toBe('storage-down');
    const late = glowing(purgePlan);
    late.does({ kind: 'stop-run', reason: 'Enough.' }, { kind: 'storage-failed', text: 'Full.' });
    expect(late.view).toMatchObject({ status: 'closing', reason: asWritten('Enough.') });
    late.does({ kind: 'confirm-safe', step: 'glow' });
    expect(late.view).toMatchObject({ status: 'closed', closedAs: 'stopped' });
  });

  it('suspends progress, while limits still sound', () => {
    // Verifies: I-03
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'storage-failed', text: 'No room left.' });
    expect(tablet.view).toMatchObject({
      status: 'suspended',
      storageDown: true,
      reason: asWritten('No room left.'),
    });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('run-suspended');
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'hold' })).toBe('storage-down');
    expect(tablet.tries({ kind: 'resume' })).toBe('storage-down');
    tablet.passes(700);
    expect(tablet.clock('/look').alerting).toBe(true);
    expect(tablet.clock('/hold/hold').alerting).toBe(false);
    tablet.does({ kind: 'storage-mended' });
    expect(tablet.view.status).toBe('suspended');
    expect(tablet.clock('/hold/hold').alerting).toBe(true);
    tablet.does({ kind: 'resume' });
    expect(tablet.view.status).toBe('running');
  });

  it('neither wakes the page for a wait that is over nor sounds it, until it can be written', () => {
    // Verifies: I-03, I-10
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S - 30);
    tablet.does({ kind: 'storage-failed', text: 'No room left.' });
    tablet.passes(60);
    const { view } = tablet;
    expect(view.wakeInS).not.toBe(0);
    expect(alertsDue(view).filter(({ inS, sounding }) => inS === 0 && !sounding)).toEqual([]);
    expect(tablet.clock('rest-sink')).toMatchObject({ leftS: 0, alerting: false });
    tablet.does({ kind: 'storage-mended' });
    expect(alertsDue(tablet.view)).toMatchObject([{ family: 'done', inS: 0, sounding: true }]);
  });
});
