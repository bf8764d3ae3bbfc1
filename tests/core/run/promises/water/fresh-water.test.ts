import { describe, expect, it } from 'vitest';
import { purgePlan } from '../../support/fixtures.ts';
import { Tablet } from '../../support/tablet.ts';

/** Two kettles' worth of work with one kettle: the second boil does not wait for the first pour. */
const plan = {
  ...purgePlan,
  steps: purgePlan.steps.map((one) => (one.id === 'boil-2' ? { ...one, needs: [] } : one)),
};

function boiled(): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
  tablet.passes(240);
  tablet.says('boil-1');
  tablet.opens('scald-dress');
  return tablet;
}

function pouring(): Tablet {
  const tablet = boiled();
  tablet.does({ kind: 'start-step', step: 'pour-1' });
  tablet.passes(30);
  return tablet;
}

/** Neither poured as done nor still pouring: made safe, and both come again. */
function boilsAgain(tablet: Tablet): void {
  expect(tablet.tries({ kind: 'confirm', step: 'pour-1', stage: 'pour' })).not.toBeNull();
  expect(tablet.step('pour-1').status).toBe('unwinding');
  tablet.does({ kind: 'confirm-safe', step: 'pour-1' });
  expect(tablet.step('pour-1')).toMatchObject({ attempt: 2, status: 'waiting' });
  expect(tablet.step('boil-1').attempt).toBe(2);
}

describe('boiled water', () => {
  it('is fresh until the last drop, and the clock of it runs while it is poured', () => {
    // Verifies: I-23
    const tablet = pouring();
    expect(tablet.clock('/need/boil-1').leftS).toBeCloseTo(265, 0);
    tablet.passes(300);
    boilsAgain(tablet);
  });

  it('poured in time is poured, and nobody asks how old it was', () => {
    const tablet = pouring();
    tablet.passes(200);
    tablet.says('pour-1');
    tablet.passes(600);
    expect(tablet.hasClock('/need/boil-1')).toBe(false);
    tablet.says('pour-1');
    expect(tablet.step('pour-1').outcome).toBe('done');
  });

  it('a pause inside the pour does not keep it fresh', () => {
    // Verifies: I-23, I-07
    const tablet = pouring();
    tablet.does({ kind: 'pause' });
    tablet.passes(3 * 3600);
    boilsAgain(tablet);
  });

  it('nor does a crash', () => {
    // Verifies: I-23
    const tablet = pouring();
    tablet.restarts(2 * 3600);
    for (const { id } of tablet.view.review)
      tablet.tries({ kind: 'answer-review', question: id, answer: 'went-on' });
    boilsAgain(tablet);
  });

  it('is judged at the press, before any look', () => {
    // Verifies: I-23
    const tablet = pouring();
    tablet.unseen(400);
    expect(tablet.tries({ kind: 'confirm', step: 'pour-1', stage: 'pour' })).toBe('needs-late');
  });

  it('that was never boiled is not poured', () => {
    // Verifies: I-23
    const tablet = new Tablet(plan);
    tablet.does({ kind: 'start-run' });
    tablet.opens('scald-dress');
    tablet.does({ kind: 'skip-step', step: 'boil-1', reason: 'Surely hot enough.' });
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBe('needs-unmet');
    expect(tablet.step('pour-1').status).toBe('waiting');
    tablet.does({ kind: 'repeat-step', step: 'boil-1', reason: 'After all.' });
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.says('boil-1');
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBeNull();
  });

  it('in a kettle that is doubted serves nobody, and the kettle can be filled anew', () => {
    // Verifies: I-23, I-24
    const tablet = boiled();
    tablet.does({ kind: 'report-recheck', fixture: 'kettle', text: 'Soup was heated in it.' });
    for (const { id } of tablet.view.faults) tablet.does({ kind: 'clear-fault', faultId: id });
    tablet.does({ kind: 'resume' });
    expect(tablet.step('boil-1')).toMatchObject({ status: 'ready', attempt: 2 });
    expect(tablet.tries({ kind: 'start-step', step: 'pour-1' })).toBe('needs-unmet');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-2' })).toBeNull();
  });

  it('that was boiled ahead of its turn and stood too long leaves its kettle to the one whose turn it is', () => {
    // Verifies: I-23
    const steps = plan.steps.map((one) =>
      one.id === 'pour-2' ? { ...one, needs: [...one.needs, { step: 'pour-1' }] } : one,
    );
    const tablet = new Tablet({ ...plan, steps });
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-2' });
    tablet.passes(240);
    tablet.says('boil-2');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('resource-taken');
    tablet.passes(400);
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.says('boil-1');
    tablet.opens('scald-dress');
    tablet.does({ kind: 'start-step', step: 'pour-1' });
    tablet.passes(60);
    tablet.says('pour-1');
    tablet.says('pour-1');
    // What stood is not poured: it is boiled again.
    expect(tablet.tries({ kind: 'start-step', step: 'pour-2' })).toBe('needs-late');
    expect(tablet.step('pour-2').status).toBe('stalled');
    tablet.does({ kind: 'repeat-step', step: 'boil-2', reason: 'It stood too long' });
    tablet.does({ kind: 'start-step', step: 'boil-2' });
  });

  it('keeps its kettle in use until it is poured', () => {
    // Verifies: I-23
    const tablet = boiled();
    expect(tablet.tries({ kind: 'start-step', step: 'boil-2' })).toBe('resource-taken');
    tablet.does({ kind: 'start-step', step: 'pour-1' });
    tablet.says('pour-1');
    tablet.says('pour-1');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-2' })).toBeNull();
  });
});
