import { asWritten } from '../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import { purgePlan } from '../run/support/fixtures.ts';
import { glowing, Tablet } from '../run/support/tablet.ts';
import { fixtureOf, pours, recorded, rested, stepOf } from './runs.ts';

const HOUR_S = 3600;

/** A run of the purge alone with the burner lit, not yet glowing. */
function lit(): Tablet {
  const tablet = new Tablet(purgePlan);
  tablet.does({ kind: 'start-run' });
  tablet.opens('burner-clear', 'glow#1');
  tablet.opens('air');
  tablet.does({ kind: 'start-step', step: 'glow' });
  tablet.says('glow');
  return tablet;
}

describe('a glow', () => {
  it('that nobody saw go on begins again; the broken part does not count', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(290);
    tablet.restarts(840);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'unknown' });
    const record = recorded(tablet);
    expect(record.reviews).toHaveLength(1);
    expect(record.reviews[0]).toMatchObject({
      step: 'glow',
      fixture: 'hob',
      ask: asWritten('Did the burner keep glowing?'),
      gapS: 840,
      answer: 'unknown',
    });
    const { stages } = stepOf(record, 'glow').attempts[0] ?? { stages: [] };
    expect(stages.map(({ id, brokeOff }) => [id, brokeOff !== null])).toEqual([
      ['light', false],
      ['warm-up', false],
      ['hold', true],
      ['warm-up', false],
    ]);
    expect(stages[2]?.holds[0]?.provedS).toBeLessThan(310);
    expect(fixtureOf(record, 'hob').holds).toEqual([]);
  });

  it('that never came leaves a fault with its time of clearing, told for its step', () => {
    const tablet = lit();
    tablet.passes(721);
    const raisedMs = tablet.readings().wallMs;
    tablet.passes(60);
    tablet.does({ kind: 'clear-fault', faultId: tablet.view.faults[0]?.id ?? '' });
    const [fault] = recorded(tablet).faults;
    expect(fault).toMatchObject({
      kind: 'no-glow',
      name: asWritten('It does not glow'),
      step: 'glow',
      fixture: 'hob',
      text: asWritten('It should have glowed'),
      clearedWallMs: tablet.readings().wallMs,
    });
    // The limit is 720 s; an alarm may come early by the tolerance of the clocks (5 s and the rate error).
    expect(raisedMs - (fault?.wallMs ?? 0)).toBeGreaterThan(0);
    expect(raisedMs - (fault?.wallMs ?? 0)).toBeLessThan(1000 + 5000 + 100);
  });

  it('whose alarm nobody could hear is told late', () => {
    const tablet = lit();
    tablet.restarts(2 * HOUR_S);
    const [late] = recorded(tablet).lateTimers;
    expect(late).toMatchObject({
      step: 'glow',
      fixture: 'hob',
      label: asWritten('It should have glowed'),
    });
    expect(late?.lateByS).toBeGreaterThan(2 * HOUR_S - 721);
  });
});

describe('what people said and left', () => {
  it('keeps overridden confirmations, notes and pauses with their reasons and times', () => {
    const tablet = rested();
    tablet.does(
      { kind: 'override-gate', gate: 'scald-dress', scopeKey: 'run', reason: 'Gloves are wet' },
      { kind: 'note', text: 'Kettle two leaks' },
      { kind: 'pause' },
    );
    const pausedMs = tablet.readings().wallMs;
    tablet.passes(300);
    tablet.does({ kind: 'resume' });
    const record = recorded(tablet);
    expect(record.overriddenGates).toEqual([
      {
        gate: 'scald-dress',
        signal: 'WARNING',
        ask: asWritten('Closed shoes and gloves on?'),
        fixture: null,
        reason: 'Gloves are wet',
        wallMs: pausedMs,
      },
    ]);
    expect(record.notes).toEqual([{ text: 'Kettle two leaks', wallMs: pausedMs }]);
    expect(record.pauses).toEqual([{ fromWallMs: pausedMs, toWallMs: tablet.readings().wallMs }]);
  });

  it('names the fixture of an overridden confirmation by the steps that ask for it', () => {
    const glow = purgePlan.steps.find(({ id }) => id === 'glow');
    const steps = purgePlan.steps.map((one) => ({
      ...one,
      id: one.id === 'glow' ? 'glow#1' : one.id,
      needs: one.needs.map((need) => (need.step === 'glow' ? { step: 'glow#1' } : need)),
    }));
    const scopes = [
      ['step', 'glow#1#1', 'hob'],
      ['fixture', 'hob', 'hob'],
      ['run', 'run', null],
    ] as const;
    for (const [scope, scopeKey, fixture] of scopes) {
      const gates = purgePlan.gates.map((gate) =>
        gate.id === 'burner-clear' ? { ...gate, scope, signal: 'WARNING' as const } : gate,
      );
      const tablet = new Tablet({ ...purgePlan, gates, steps });
      tablet.does(
        { kind: 'start-run' },
        { kind: 'override-gate', gate: 'burner-clear', scopeKey, reason: 'Seen.' },
      );
      expect(recorded(tablet).overriddenGates[0]?.fixture).toBe(fixture);
    }
    expect(glow?.gates).toContain('burner-clear');
  });

  it('keeps what was stopped and never begun, and a cool-down of nothing is not missing', () => {
    const tablet = rested();
    pours(tablet, 1);
    tablet.does({ kind: 'skip-step', step: 'glow', reason: 'No current' });
    tablet.does({ kind: 'stop-run', reason: 'Too late tonight' });
    const record = recorded(tablet);
    expect(record).toMatchObject({ outcome: 'stopped', reason: asWritten('Too late tonight') });
    const outcomes = new Map(record.notDone.map(({ step, outcome }) => [step, outcome]));
    expect(outcomes.get('glow')).toBe('skipped');
    expect(outcomes.get('pour-2')).toBe('not-run');
    expect(outcomes.has('cool')).toBe(false);
    expect(outcomes.has('pour-1')).toBe(false);
  });

  it('counts a kettle without its cold water as poured but not cooled', () => {
    const tablet = rested();
    pours(tablet, 1, false);
    expect(fixtureOf(recorded(tablet), 'sink').kettles).toEqual({
      planned: 2,
      poured: 1,
      cold: 0,
      voided: 0,
    });
  });
});
