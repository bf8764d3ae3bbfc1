import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../../src/core/plan/index.ts';
import { kitchenOf, only } from '../../plan/support/plans.ts';
import { alertsDue } from '../../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from '../support/fixtures.ts';
import { glowing, resting, Tablet } from '../support/tablet.ts';

describe('cleaning again with hot water', () => {
  it('restarts the rest from its end, and keeps water off meanwhile', () => {
    // Verifies: I-24
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S + 20);
    expect(tablet.step('rest-sink').outcome).toBe('done');
    tablet.does({ kind: 'repeat-step', step: 'clean-sink', reason: 'Grease was left.' });
    expect(tablet.step('rest-sink').status).toBe('waiting');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
    tablet.does({ kind: 'start-step', step: 'clean-sink' });
    tablet.passes(600);
    tablet.says('clean-sink');
    expect(tablet.step('rest-sink').status).toBe('active');
    expect(tablet.clock('rest-sink#3').atLeastS).toBe(0);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
    tablet.passes(DAY_S + 20);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBeNull();
  });

  it('a rest that goes on does not go on counting', () => {
    // Verifies: I-24
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S / 2);
    tablet.does({ kind: 'repeat-step', step: 'clean-sink', reason: 'Grease was left.' });
    tablet.passes(DAY_S);
    expect(tablet.step('rest-sink').status).toBe('waiting');
  });

  it('silences the alarm of the rest before, which nobody had answered', () => {
    // Verifies: I-24
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S + 20);
    expect(tablet.clock('rest-sink').alerting).toBe(true);
    tablet.does({ kind: 'repeat-step', step: 'clean-sink', reason: 'Grease was left.' });
    expect(tablet.view.timers.filter(({ alerting }) => alerting)).toEqual([]);
    expect(alertsDue(tablet.view)).toEqual([]);
  });

  it('so does a doubt about it', () => {
    // Verifies: I-24
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S + 20);
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: '' });
    expect(tablet.view.timers.filter(({ alerting }) => alerting)).toEqual([]);
    expect(tablet.clock('rest-sink#2').atLeastS).toBe(0);
  });

  it('before any rest began changes nothing else', () => {
    const tablet = new Tablet(smallPlan);
    tablet.does({ kind: 'start-run' }, { kind: 'skip-step', step: 'clean-sink', reason: 'New.' });
    tablet.does({ kind: 'repeat-step', step: 'clean-sink', reason: 'Not so new.' });
    expect(tablet.kinds()).not.toContain('recheck-reported');
  });
});

describe('a doubt', () => {
  const plan = buildPlan(only(kitchenOf('flat-coils'), 'sink'));
  const kettle = plan.kitchen.vessels.find(({ id }) =>
    plan.steps.some(
      ({ kind, picture }) =>
        kind === 'boil-over' && picture?.kind === 'kettle' && picture.vessel === id,
    ),
  );

  it('about a kettle is known: its rest begins again and no water is boiled in it meanwhile', () => {
    // Verifies: I-24
    const vessel = kettle?.id ?? '';
    const over = plan.steps.find(({ kind }) => kind === 'boil-over')?.id ?? '';
    const rest = plan.steps.find(({ id }) => id === `rest-${vessel}`)?.id ?? '';
    expect([over, rest]).not.toContain('');
    const tablet = new Tablet(plan);
    tablet.does({ kind: 'start-run' });
    const finishes = (id: string): void => {
      for (const { gate, scopeKey } of tablet.step(id).gates) tablet.opens(gate.id, scopeKey);
      tablet.does({ kind: 'start-step', step: id });
      for (const { id: stage } of tablet.step(id).step.stages) {
        tablet.passes(30);
        tablet.does({ kind: 'confirm', step: id, stage });
      }
    };
    for (const step of plan.steps)
      if (step.kind === 'prepare' || step.kind === 'clean') finishes(step.id);
    tablet.passes(DAY_S + 60);
    finishes(over);
    const boil = plan.steps.find(({ kind }) => kind === 'boil');
    expect(tablet.step(boil?.id ?? '').status).toBe('ready');
    for (const { gate, scopeKey } of tablet.step(boil?.id ?? '').gates)
      tablet.opens(gate.id, scopeKey);
    tablet.does({ kind: 'start-step', step: boil?.id ?? '' });
    tablet.says(boil?.id ?? '');
    tablet.does({ kind: 'report-recheck', fixture: vessel, text: 'Somebody made soup in it.' });
    expect(tablet.step(rest)).toMatchObject({ status: 'active', attempt: 2 });
    expect(tablet.step(over)).toMatchObject({ status: 'waiting', attempt: 2 });
    expect(tablet.step(boil?.id ?? '').status).toBe('unwinding');
    tablet.does({ kind: 'confirm-safe', step: boil?.id ?? '' });
    expect(tablet.step(boil?.id ?? '')).toMatchObject({ status: 'waiting', attempt: 2 });
    expect(tablet.tries({ kind: 'start-step', step: boil?.id ?? '' })).toBe('needs-unmet');
  });

  it('about a kettle that the plan does not purge is known: what it holds is made safe, and nothing goes on before a person has looked', () => {
    // Verifies: I-24
    for (const text of ['Somebody made soup in it.', '']) {
      const tablet = new Tablet(purgePlan);
      tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
      tablet.does({ kind: 'report-recheck', fixture: 'kettle', text });
      expect(tablet.step('boil-1').status).toBe('unwinding');
      expect(tablet.view.status).toBe('suspended');
      expect(tablet.tries({ kind: 'resume' })).toBe('make-safe-first');
      tablet.does({ kind: 'confirm-safe', step: 'boil-1' });
      expect(tablet.step('boil-1')).toMatchObject({ attempt: 2, status: 'ready' });
      expect(tablet.tries({ kind: 'resume' })).toBe('fault-open');
      expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('run-suspended');
      const [fault] = tablet.view.faults;
      tablet.does({ kind: 'clear-fault', faultId: fault?.id ?? '' }, { kind: 'resume' });
      expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBeNull();
    }
  });

  it('about such a kettle leaves a glow that goes on beside it alone', () => {
    // Verifies: I-24, I-25
    const tablet = glowing(purgePlan);
    tablet.passes(60);
    tablet.does({ kind: 'report-recheck', fixture: 'kettle', text: 'Soup.' });
    const [fault] = tablet.view.faults;
    tablet.does({ kind: 'clear-fault', faultId: fault?.id ?? '' }, { kind: 'resume' });
    expect(tablet.kinds()).not.toContain('stage-restarted');
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(60, 0);
  });

  it('about such a kettle with boiled water in it: the water is not poured', () => {
    // Verifies: I-24
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.says('boil-1');
    tablet.does({ kind: 'report-recheck', fixture: 'kettle', text: 'Soup.' });
    expect(tablet.step('boil-1')).toMatchObject({ attempt: 2 });
    expect(tablet.hasClock('/need/boil-1')).toBe(false);
  });

  it('about what the plan does not use is refused by name', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' });
    expect(tablet.tries({ kind: 'report-recheck', fixture: 'moon', text: '' })).toBe(
      'unknown-fixture',
    );
  });

  it('without words counts all the same: what is hot is stopped and done again', () => {
    // Verifies: I-24, I-17
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'report-recheck', fixture: 'hob', text: '' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.step('glow')).toMatchObject({ status: 'ready', attempt: 2 });
  });
});

describe('what is not there', () => {
  it('is refused by name, whatever it is called', () => {
    // Verifies: I-12
    for (const name of ['nowhere', 'constructor', '__proto__', 'toString']) {
      const tablet = glowing(purgePlan);
      expect(tablet.tries({ kind: 'report-fault', fault: 'smoke', step: name })).toBe(
        'unknown-step',
      );
      expect(tablet.tries({ kind: 'confirm-safe', step: name })).toBe('unknown-step');
      expect(tablet.tries({ kind: 'acknowledge-timer', timer: name })).toBe('timer-closed');
      expect(tablet.tries({ kind: 'extend-timer', timer: name, byS: 60 })).toBe('timer-closed');
      expect(tablet.tries({ kind: 'alarm-handed', timer: name, cause: 1 })).toBe('timer-closed');
    }
  });
});
