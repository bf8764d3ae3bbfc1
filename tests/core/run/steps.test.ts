import { asWritten, message } from '../../../src/core/messages/index.ts';
import { inEnglish as english } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import { apply, fold } from '../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from './support/fixtures.ts';
import { glowing, resting, Tablet } from './support/tablet.ts';

/** A run of the purge alone with the first kettle boiled and poured. */
function poured(): Tablet {
  const tablet = new Tablet(purgePlan);
  tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
  tablet.passes(240);
  tablet.says('boil-1');
  tablet.opens('scald-dress');
  tablet.does({ kind: 'start-step', step: 'pour-1' });
  tablet.says('pour-1');
  return tablet;
}

describe('a rest', () => {
  it('starts by itself when its cleaning is done, and lasts its 24 hours', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    expect(tablet.step('rest-sink').status).toBe('active');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
    tablet.passes(DAY_S - 60);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
    tablet.passes(60 + 10);
    expect(tablet.step('rest-sink').outcome).toBe('done');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBeNull();
  });

  it('holds a purge step of its fixture even when the plan forgot to say so', () => {
    // Verifies: I-17
    const forgetful = {
      ...smallPlan,
      steps: smallPlan.steps.map((one) => (one.id === 'boil-1' ? { ...one, needs: [] } : one)),
    };
    const tablet = resting(forgetful);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
    expect(tablet.step('boil-1').blockedBy.map(english.say)).toEqual(['First: “rest-sink”.']);
  });

  it('may be cut short only by a reason', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    expect(tablet.tries({ kind: 'skip-step', step: 'rest-sink', reason: '  ' })).toBe(
      'reason-missing',
    );
    tablet.does({ kind: 'skip-step', step: 'rest-sink', reason: 'Never used before.' });
    expect(tablet.step('rest-sink')).toMatchObject({
      outcome: 'skipped',
      reason: asWritten('Never used before.'),
    });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBeNull();
  });

  it('can be dated back to the last hot use, within limits', () => {
    const tablet = resting(smallPlan);
    const timer = tablet.clock('rest-sink').id;
    const wall = tablet.readings().wallMs;
    const asked = { kind: 'correct-time', timer, reason: 'Last used last night.' } as const;
    expect(tablet.tries({ ...asked, sinceWallMs: wall + 60_000 })).toBe('out-of-range');
    expect(tablet.tries({ ...asked, sinceWallMs: wall - 15 * DAY_S * 1000 })).toBe('out-of-range');
    tablet.does({ ...asked, sinceWallMs: wall - 10 * 3600_000 });
    expect(tablet.clock('rest-sink').leftS).toBeCloseTo(14 * 3600, 0);
    tablet.does({ ...asked, sinceWallMs: wall - 9 * 3600_000 });
    expect(tablet.clock('rest-sink').leftS).toBeCloseTo(15 * 3600, 0);
  });
});

describe('a pour', () => {
  it('is not settled before its cold water is confirmed', () => {
    // Verifies: I-18
    const tablet = poured();
    expect(tablet.step('pour-1').status).toBe('active');
    expect(tablet.tries({ kind: 'skip-step', step: 'pour-1', reason: 'Enough.' })).toBe(
      'cold-first',
    );
    tablet.does({ kind: 'stop-step', step: 'pour-1', reason: 'Hand hurts.' });
    expect(tablet.step('pour-1').status).toBe('unwinding');
    expect(tablet.view.hot).toEqual([
      {
        step: 'pour-1',
        hazard: 'boiling-water',
        makeSafe: message('engine.step.make-safe-cold', {
          makeSafe: asWritten('Put the kettle down.'),
          cold: asWritten('Pour cold water over it.'),
        }),
        confirmed: false,
      },
    ]);
    tablet.does({ kind: 'confirm-safe', step: 'pour-1' });
    expect(tablet.step('pour-1')).toMatchObject({ status: 'settled', outcome: 'stopped' });
  });

  it('settles with the cold water, and no fact can say otherwise', () => {
    // Verifies: I-18
    const tablet = poured();
    const forged = {
      seq: tablet.state.seq + 1,
      id: 'forged',
      at: tablet.readings(),
      body: {
        kind: 'step-settled',
        step: 'pour-1',
        attempt: 1,
        outcome: 'done',
        reason: asWritten(''),
      },
    } as const;
    expect(() => apply(tablet.state, forged)).toThrow(/cold water/);
    tablet.says('pour-1');
    expect(tablet.step('pour-1').outcome).toBe('done');
  });

  it('cannot be called done before the water was poured, nor stopped without its cold water', () => {
    // Verifies: I-18
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.says('boil-1');
    tablet.opens('scald-dress');
    tablet.does({ kind: 'start-step', step: 'pour-1' });
    const settles = (of: Tablet, outcome: 'done' | 'stopped') => () =>
      apply(of.state, {
        seq: of.state.seq + 1,
        id: 'forged',
        at: of.readings(),
        body: { kind: 'step-settled', step: 'pour-1', attempt: 1, outcome, reason: asWritten('') },
      });
    expect(settles(tablet, 'done')).toThrow(/cold water/);
    // Nothing was poured yet: the kettle was put down.
    expect(settles(tablet, 'stopped')).not.toThrow();
    expect(settles(poured(), 'stopped')).toThrow(/cold water/);
  });

  it('must begin soon after the boil: later it stalls and sounds, and another boil cures it', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.says('boil-1');
    tablet.opens('scald-dress');
    expect(tablet.step('pour-1').status).toBe('ready');
    expect(tablet.clock('pour-1#1/need/').leftS).toBeCloseTo(295, 0);
    tablet.passes(296);
    expect(tablet.step('pour-1').status).toBe('stalled');
    expect(tablet.clock('pour-1#1/need/').alerting).toBe(true);
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBe('needs-late');
    tablet.does({ kind: 'repeat-step', step: 'boil-1', reason: 'It cooled.' });
    expect(tablet.hasClock('pour-1#1/need/')).toBe(false);
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.says('boil-1');
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBeNull();
    // The water is fresh until the last drop, so its clock goes on.
    expect(tablet.hasClock('pour-1#1/need/')).toBe(true);
    tablet.says('pour-1');
    expect(tablet.hasClock('pour-1#1/need/')).toBe(false);
  });
});

describe('starting', () => {
  it('needs hands, kettle and gates', () => {
    // Verifies: I-11
    const tablet = new Tablet(smallPlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    expect(tablet.tries({ kind: 'start-step', step: 'clean-hob' })).toBe('resource-taken');
    expect(tablet.step('clean-hob').blockedBy.map(english.say)).toEqual([
      'All hands are busy with “clean-sink”.',
    ]);
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBe('needs-unmet');
    const purge = new Tablet(purgePlan);
    purge.does({ kind: 'start-run' });
    expect(purge.tries({ kind: 'start-step', step: 'glow' })).toBe('gate-shut');
    purge.opens('burner-clear', 'glow#1');
    expect(purge.step('glow').blockedBy.map(english.say)).toEqual([
      'Confirm first: Hood on high and window open, nobody unwell?',
    ]);
    purge.opens('air');
    expect(purge.tries({ kind: 'start-step', step: 'glow' })).toBeNull();
  });

  it('counts burners: a second one waits for the first', () => {
    // Verifies: I-11
    const second = purgePlan.steps
      .filter(({ id }) => id === 'glow')
      .map((one) => ({ ...one, id: 'glow-2', gates: ['air'] }));
    const tablet = glowing({ ...purgePlan, steps: [...purgePlan.steps, ...second] });
    expect(tablet.tries({ kind: 'start-step', step: 'glow-2' })).toBe('resource-taken');
    expect(tablet.step('glow-2').blockedBy.map(english.say)).toEqual([
      'Burner limit reached: 1 is lit.',
    ]);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Enough.' });
    // Unwinding is still hot: it keeps its place until it is safe.
    expect(tablet.tries({ kind: 'start-step', step: 'glow-2' })).toBe('resource-taken');
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.tries({ kind: 'start-step', step: 'glow-2' })).toBeNull();
  });
});

describe('settled and closed', () => {
  it('are for good; a repeat is a new attempt', () => {
    // Verifies: I-04
    const tablet = poured();
    tablet.says('pour-1');
    expect(tablet.tries({ kind: 'confirm', step: 'pour-1', stage: 'cold' })).toBe(
      'already-settled',
    );
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBe('already-settled');
    expect(tablet.tries({ kind: 'skip-step', step: 'pour-1', reason: 'No.' })).toBe(
      'already-settled',
    );
    expect(tablet.tries({ kind: 'stop-step', step: 'pour-1', reason: 'No.' })).toBe(
      'already-settled',
    );
    const twice = {
      seq: tablet.state.seq + 1,
      id: 'twice',
      at: tablet.readings(),
      body: {
        kind: 'step-settled',
        step: 'pour-1',
        attempt: 1,
        outcome: 'failed',
        reason: asWritten(''),
      },
    } as const;
    expect(() => apply(tablet.state, twice)).toThrow(/settled twice/);
    tablet.does({ kind: 'repeat-step', step: 'pour-1', reason: 'Missed a corner.' });
    expect(tablet.step('pour-1')).toMatchObject({ attempt: 2, status: 'stalled' });
    tablet.does({ kind: 'stop-run', reason: 'Enough.' });
    expect(tablet.view).toMatchObject({ status: 'closed', closedAs: 'stopped' });
    expect(tablet.tries({ kind: 'note', text: 'Late.' })).toBe('run-closed');
    const late = { ...twice, seq: tablet.state.seq + 1, body: { kind: 'resumed' } } as const;
    expect(() => apply(tablet.state, late)).toThrow(/closed/);
  });
});

describe('a cool-down', () => {
  it('begins with the end of the heating, whatever became of it', () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Smell.' }, { kind: 'pause' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.step('cool').status).toBe('active');
    expect(tablet.view.fixtures.find(({ id }) => id === 'hob')?.phase).toBe('hot');
  });

  it('is skipped when nothing was heated, and begins again when it is heated again', () => {
    const never = new Tablet(purgePlan);
    never.does({ kind: 'start-run' }, { kind: 'skip-step', step: 'glow', reason: 'Not used.' });
    expect(never.step('cool')).toMatchObject({
      outcome: 'skipped',
      reason: message('engine.because.nothing-heated'),
    });
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Smell.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.passes(300);
    tablet.does({ kind: 'repeat-step', step: 'glow', reason: 'Again.' });
    tablet.opens('burner-clear', 'glow#2');
    tablet.does({ kind: 'start-step', step: 'glow' });
    expect(tablet.step('cool')).toMatchObject({ attempt: 2, status: 'waiting' });
  });

  it('rings when it ends by itself, until somebody answers', () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Smell.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.passes(1810);
    expect(tablet.step('cool').outcome).toBe('done');
    expect(tablet.clock('cool#1').alerting).toBe(true);
    tablet.does({ kind: 'acknowledge-timer', timer: tablet.clock('cool#1').id });
    expect(tablet.hasClock('cool#1')).toBe(false);
  });
});

describe('the fold', () => {
  it('gives the state of the run, every time', () => {
    // Verifies: I-01
    const tablet = poured();
    tablet.sleeps(100);
    tablet.restarts(30);
    expect(fold(tablet.facts)).toEqual(tablet.state);
    expect(fold(tablet.facts)).toEqual(fold(JSON.parse(JSON.stringify(tablet.facts))));
  });

  it('refuses numbers that do not follow, and never changes a fact', () => {
    // Verifies: I-02
    const tablet = poured();
    expect(tablet.facts.map(({ seq }) => seq)).toEqual(tablet.facts.map((_, index) => index + 1));
    expect(() => fold([...tablet.facts.slice(0, 3), ...tablet.facts.slice(4)])).toThrow(/seq is 5/);
    expect(() => fold(tablet.facts.slice(1))).toThrow(/first fact/);
    expect(tablet.facts.every((fact) => Object.isFrozen(fact) && Object.isFrozen(fact.body))).toBe(
      true,
    );
  });
});
