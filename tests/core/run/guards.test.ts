import { asWritten } from '../../../src/core/messages/index.ts';
import { inEnglish as english } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import { apply, perform } from '../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from './support/fixtures.ts';
import { glowing, resting, Tablet } from './support/tablet.ts';

describe('an unanswered gap', () => {
  it('does not let a glow look finished, whatever its clock shows', () => {
    // Verifies: I-05
    const tablet = glowing(purgePlan);
    tablet.passes(595);
    tablet.restarts(1);
    tablet.passes(20);
    expect(tablet.view.status).toBe('reviewing');
    expect(tablet.clock('/hold/hold')).toMatchObject({ leftS: 0, status: 'unproved' });
    expect(tablet.step('glow')).toMatchObject({ status: 'active', canConfirm: false });
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'went-on' });
    expect(tablet.step('glow')).toMatchObject({ status: 'checking', canConfirm: true });
  });
});

describe('proof of life', () => {
  it('is the last fact where the heartbeat is of an earlier page', () => {
    // Verifies: I-05, I-08, I-14
    const tablet = resting(smallPlan);
    tablet.passes(7200);
    const old = tablet.readings();
    tablet.restarts(5);
    tablet.does({ kind: 'resume' });
    tablet.passes(900);
    tablet.does({ kind: 'note', text: 'Still here.' });
    const done = perform(
      tablet.state,
      { kind: 'session-opened', lastHeartbeat: old, tornRecords: 0 },
      { ...tablet.readings(), session: 'page-3', monoMs: 0 },
    );
    const timer = 'state' in done ? Object.values(done.state.timers)[0] : undefined;
    expect(timer?.span.atLeastS).toBeGreaterThan(8090);
    expect(timer?.span.atLeastS).toBeLessThan(8106);
  });

  it('is the last fact where the heartbeat is older, and the heartbeat where it is newer', () => {
    // Verifies: I-08, I-14
    const tablet = resting(smallPlan);
    const early = tablet.readings();
    tablet.passes(3600);
    tablet.does({ kind: 'note', text: 'Still here.' });
    tablet.passes(600);
    const late = tablet.readings();
    const provedS = (lastHeartbeat: typeof early): number => {
      const now = { ...tablet.readings(), session: 'page-2', monoMs: 0 };
      const seen = { kind: 'session-opened', lastHeartbeat, tornRecords: 0 } as const;
      const done = perform(tablet.state, seen, now);
      return 'state' in done ? (Object.values(done.state.timers)[0]?.span.atLeastS ?? 0) : 0;
    };
    expect(provedS(early)).toBeCloseTo(3600, 0);
    expect(provedS(late)).toBeCloseTo(4200, 0);
  });

  it('is the last fact even where a journal tells of an older heartbeat', () => {
    // Verifies: I-14
    const tablet = resting(smallPlan);
    const lastHeartbeat = tablet.readings();
    tablet.passes(3600);
    tablet.does({ kind: 'note', text: 'Still here.' });
    const opened = apply(tablet.state, {
      seq: tablet.state.seq + 1,
      id: 'opened',
      at: { ...tablet.readings(), session: 'page-2', monoMs: 0 },
      body: { kind: 'session-opened', lastHeartbeat, tornRecords: 0 },
    });
    expect(Object.values(opened.timers)[0]?.span.atLeastS).toBeCloseTo(3600, 0);
  });
});

describe('a fault', () => {
  it('trips only gates that are conditions, even where a caution names it', () => {
    // Verifies: I-13
    const gates = purgePlan.gates.map((gate) =>
      gate.id === 'scald-dress' ? { ...gate, trippedBy: ['cracked' as const] } : gate,
    );
    const tablet = glowing({ ...purgePlan, gates });
    tablet.opens('scald-dress');
    tablet.does({ kind: 'report-fault', fault: 'cracked' });
    expect(tablet.view.status).toBe('running');
    expect(tablet.step('pour-1').gates[0]?.value).toBe('yes');
  });
});

describe('boiled water', () => {
  it('waits for nobody who is not waiting for it', () => {
    // Verifies: I-09
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' });
    tablet.does({ kind: 'skip-step', step: 'pour-1', reason: 'The bowl is small.' });
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.says('boil-1');
    expect(tablet.hasClock('pour-1#1/need/')).toBe(false);
    tablet.passes(600);
    expect(tablet.view.timers.filter(({ alerting }) => alerting)).toEqual([]);
  });

  it('goes on waiting for its pour whatever else is repeated', () => {
    // Verifies: I-07
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'skip-step', step: 'glow', reason: 'Not used.' });
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.says('boil-1');
    tablet.does({ kind: 'repeat-step', step: 'glow', reason: 'After all.' });
    expect(tablet.clock('pour-1#1/need/').leftS).toBeGreaterThan(290);
  });

  it('does not serve a pour when the boil was stopped', () => {
    // Verifies: I-11, I-17
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.opens('scald-dress');
    tablet.does({ kind: 'stop-step', step: 'boil-1', reason: 'Leak.' });
    tablet.does({ kind: 'confirm-safe', step: 'boil-1' });
    expect(tablet.step('boil-1')).toMatchObject({ outcome: 'stopped', reason: asWritten('Leak.') });
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBe('needs-unmet');
    expect(tablet.step('pour-1').blockedBy.map(english.say)).toEqual([
      '“boil-1” was not finished. Repeat it, or skip it with a reason.',
    ]);
  });

  it('of a rest that was stopped serves no purge', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    tablet.does({ kind: 'stop-step', step: 'rest-sink', reason: 'Guests.' });
    tablet.passes(DAY_S * 2);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
  });
});

describe('a resource that is taken', () => {
  it('is said to be with those who have it, and nobody else', () => {
    // Verifies: I-11
    const other = purgePlan.steps
      .filter(({ id }) => id === 'boil-1')
      .map((one) => ({ ...one, id: 'boil-b' }));
    const tablet = glowing({ ...purgePlan, steps: [...purgePlan.steps, ...other] });
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    expect(tablet.step('boil-b').blockedBy.map(english.say)).toEqual([
      'The kettle is in use by “boil-1”.',
    ]);
  });
});

describe('what starts by itself', () => {
  it('waits for its gates, its resources and the storage as anything else', () => {
    // Verifies: I-11, I-03
    const chained = (change: object): Tablet => {
      const steps = smallPlan.steps.map((one) =>
        one.id === 'rest-sink' ? { ...one, ...change } : one,
      );
      return new Tablet({ ...smallPlan, steps });
    };
    const clean = (tablet: Tablet, step: string): void => {
      tablet.does({ kind: 'start-step', step });
      tablet.says(step);
    };
    const gated = chained({ gates: ['scald-dress'] });
    gated.does({ kind: 'start-run' });
    clean(gated, 'clean-sink');
    expect(gated.step('rest-sink').status).toBe('ready');
    gated.opens('scald-dress');
    expect(gated.step('rest-sink').status).toBe('active');
    const other = chained({ demands: { crane: 1 } });
    other.does({ kind: 'start-run' });
    clean(other, 'clean-sink');
    expect(other.step('rest-sink').status).toBe('waiting');
    const full = glowing(purgePlan);
    full.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    full.does({ kind: 'storage-failed', text: 'Full.' }, { kind: 'confirm-safe', step: 'glow' });
    expect(full.step('cool').status).toBe('ready');
    full.does({ kind: 'storage-mended' });
    expect(full.step('cool').status).toBe('active');
  });

  it('does not start for a person who is away, if it needs one', () => {
    const steps = smallPlan.steps.map((one) =>
      one.id === 'rest-sink' ? { ...one, attention: 'watch' as const } : one,
    );
    const tablet = new Tablet({ ...smallPlan, steps });
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.does({ kind: 'pause' });
    tablet.says('clean-sink');
    expect(tablet.step('rest-sink').status).toBe('ready');
    tablet.does({ kind: 'resume' });
    expect(tablet.step('rest-sink').status).toBe('active');
  });
});

describe('a clock that came due', () => {
  it('and was made longer comes due again, for a new cause', () => {
    // Verifies: I-09
    const tablet = glowing(purgePlan);
    tablet.passes(610);
    const hold = tablet.clock('/hold/hold');
    expect(hold).toMatchObject({ alerting: true, cause: 1 });
    tablet.does({ kind: 'extend-timer', timer: hold.id, byS: 60 });
    expect(tablet.clock('/hold/hold')).toMatchObject({ alerting: false, cause: 2 });
    tablet.passes(61);
    const dues = tablet.facts.filter(
      ({ body }) => body.kind === 'timer-due' && body.timer === hold.id,
    );
    expect(dues.map(({ body }) => 'cause' in body && body.cause)).toEqual([1, 2]);
  });

  it('falls silent when it is answered, and stays due', () => {
    // Verifies: I-09
    const tablet = glowing(purgePlan);
    tablet.passes(610);
    const { id } = tablet.clock('/hold/hold');
    expect(tablet.clock('/hold/hold').alerting).toBe(true);
    tablet.does({ kind: 'acknowledge-timer', timer: id });
    expect(tablet.clock('/hold/hold')).toMatchObject({ alerting: false, status: 'due' });
    expect(tablet.tries({ kind: 'acknowledge-timer', timer: id })).toBe('not-alerting');
    tablet.passes(60);
    expect(tablet.clock('/hold/hold').alerting).toBe(false);
    expect(tablet.step('glow').canConfirm).toBe(true);
  });

  it('falls silent with the step that is left out', () => {
    // Verifies: I-04
    const steps = smallPlan.steps.map((one) =>
      one.id === 'rest-sink'
        ? { ...one, stages: one.stages.map((stage) => ({ ...stage, say: asWritten('Rested') })) }
        : one,
    );
    const tablet = resting({ ...smallPlan, steps });
    tablet.passes(DAY_S + 20);
    expect(tablet.clock('rest-sink').alerting).toBe(true);
    tablet.does({ kind: 'skip-step', step: 'rest-sink', reason: 'Enough.' });
    expect(tablet.hasClock('rest-sink')).toBe(false);
  });

  it('later is no reason to sleep past the sooner', () => {
    // Verifies: I-10
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    tablet.does({ kind: 'start-step', step: 'clean-hob' });
    tablet.says('clean-hob');
    tablet.passes(1);
    const left = (id: string): number => tablet.clock(id).leftS;
    expect(left('rest-hob')).toBeGreaterThan(left('rest-sink') + 3500);
    // The clock of the device may run slow by its rate error, 8.6 s a day.
    expect(tablet.view.wakeInS).toBeGreaterThanOrEqual(left('rest-sink'));
    expect(tablet.view.wakeInS).toBeLessThan(left('rest-sink') + 10);
  });

  it('is no reason to wake again', () => {
    // Verifies: I-10
    const tablet = glowing(purgePlan);
    tablet.passes(310);
    expect(tablet.clock('/look').alerting).toBe(true);
    expect(tablet.view.wakeInS).toBeCloseTo(290, 0);
  });

  it('belongs to its own attempt: an old one settles nothing', () => {
    // Verifies: I-04
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'skip-step', step: 'boil-1', reason: 'No.' });
    tablet.does({ kind: 'repeat-step', step: 'boil-1', reason: 'Yes.' });
    const body = {
      kind: 'step-settled',
      step: 'boil-1',
      outcome: 'done',
      reason: asWritten(''),
    } as const;
    const forged = { seq: tablet.state.seq + 1, id: 'forged', at: tablet.readings() };
    expect(() => apply(tablet.state, { ...forged, body: { ...body, attempt: 1 } })).toThrow(
      /settled twice/,
    );
  });
});
