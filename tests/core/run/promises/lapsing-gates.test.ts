import { describe, expect, it } from 'vitest';
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
