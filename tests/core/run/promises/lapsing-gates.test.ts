import { describe, expect, it } from 'vitest';
import { planOfDemo } from '../../plan/support/plans.ts';
import { DAY_S, purgePlan, smallPlan } from '../support/fixtures.ts';
import { resting, Tablet } from '../support/tablet.ts';

/** What the gate of the body says at a step now. */
function dressed(tablet: Tablet, step: string): string | undefined {
  return tablet.step(step).gates.find(({ gate }) => gate.id === 'scald-dress')?.value;
}

/** One kettle poured, with shoes and gloves on. */
function poured(): Tablet {
  const tablet = new Tablet(purgePlan);
  tablet.does({ kind: 'start-run' });
  tablet.opens('scald-dress');
  tablet.does({ kind: 'start-step', step: 'boil-1' });
  tablet.says('boil-1');
  tablet.does({ kind: 'start-step', step: 'pour-1' });
  tablet.says('pour-1');
  tablet.says('pour-1');
  return tablet;
}

describe('a gate of the body', () => {
  it('lapses with the time away, though nobody paused', () => {
    const tablet = poured();
    tablet.passes(1700);
    expect(dressed(tablet, 'pour-2')).toBe('yes');
    tablet.passes(200);
    expect(dressed(tablet, 'pour-2')).toBe('unknown');
    tablet.does({ kind: 'start-step', step: 'boil-2' });
    tablet.says('boil-2');
    expect(tablet.tries({ kind: 'start-step', step: 'pour-2' })).toBe('gate-shut');
    tablet.opens('scald-dress');
    expect(tablet.tries({ kind: 'start-step', step: 'pour-2' })).toBeNull();
  });

  it('lapses over a rest', () => {
    const tablet = resting(smallPlan);
    tablet.opens('scald-dress');
    tablet.passes(DAY_S + 20);
    expect(dressed(tablet, 'pour-1')).toBe('unknown');
  });

  it('stays while somebody works', () => {
    const tablet = poured();
    for (let i = 0; i < 5; i += 1) {
      tablet.passes(1200);
      tablet.does({ kind: 'start-step', step: 'boil-2' });
      tablet.says('boil-2');
      tablet.does({ kind: 'repeat-step', step: 'boil-2', reason: 'Again.' });
    }
    expect(dressed(tablet, 'pour-2')).toBe('yes');
  });

  it('adds up a gap and its review', () => {
    const tablet = poured();
    tablet.restarts(1000);
    tablet.passes(1000);
    tablet.tries({ kind: 'answer-clock', right: true, passed: true });
    tablet.tries({ kind: 'resume' });
    expect(tablet.state.status).toBe('running');
    expect(dressed(tablet, 'pour-2')).toBe('unknown');
  });

  it('answered while the work is paused is not asked again when it goes on', () => {
    const tablet = poured();
    tablet.does({ kind: 'pause' });
    tablet.passes(2400);
    expect(dressed(tablet, 'pour-2')).toBe('unknown');
    tablet.opens('scald-dress');
    tablet.passes(60);
    tablet.does({ kind: 'resume' });
    expect(dressed(tablet, 'pour-2')).toBe('yes');
    // And what was never answered anew stays forgotten, though somebody goes on.
    tablet.does({ kind: 'pause' });
    tablet.passes(2400);
    tablet.does({ kind: 'resume' });
    expect(dressed(tablet, 'pour-2')).toBe('unknown');
  });

  it('an alarm answered in passing is no hand on the work', () => {
    const tablet = poured();
    tablet.does({ kind: 'start-step', step: 'boil-2' });
    tablet.passes(1500);
    tablet.does({ kind: 'acknowledge-timer', timer: tablet.clock('/boil').id });
    tablet.passes(500);
    expect(dressed(tablet, 'pour-2')).toBe('unknown');
  });
});

describe('the gates of a plan', () => {
  const plan = planOfDemo('flat-coils');
  const HOURS_S = 3600;

  /** Everything answered that may be, and one thing begun. */
  function answered(): Tablet {
    const tablet = new Tablet(plan);
    tablet.does({ kind: 'start-run' });
    for (const { gates } of tablet.view.steps)
      for (const { gate, scopeKey } of gates) tablet.opens(gate.id, scopeKey);
    return tablet;
  }
  const open = (tablet: Tablet): ReadonlySet<string> =>
    new Set(
      tablet.view.steps
        .flatMap(({ gates }) => gates)
        .filter(({ value }) => value === 'yes')
        .map(({ gate }) => gate.id),
    );

  it('hold through a break and are all asked again when people come back after hours', () => {
    const tablet = answered();
    expect([...open(tablet)].toSorted()).toEqual(plan.gates.map(({ id }) => id).toSorted());
    tablet.passes(1.9 * HOURS_S);
    expect([...open(tablet)]).toEqual(expect.arrayContaining(['pour-power', 'cold-where']));
    tablet.passes(0.2 * HOURS_S);
    // Sockets stay what they are for longer than who stands in the kitchen.
    expect([...open(tablet)]).toEqual(['electric-load']);
    tablet.passes(2 * HOURS_S);
    expect([...open(tablet)]).toEqual([]);
  });

  it('are asked again after a night in which the tablet was off', () => {
    const tablet = answered();
    tablet.restarts(9 * HOURS_S);
    expect([...open(tablet)]).toEqual([]);
    const step = plan.steps.find(({ kind }) => kind === 'clean')?.id ?? '';
    tablet.tries({ kind: 'answer-clock', right: true, passed: true });
    tablet.tries({ kind: 'resume' });
    expect(tablet.step(step).gates.map(({ value }) => value)).toEqual(['unknown']);
  });
});
