import { describe, expect, it } from 'vitest';
import { asWritten } from '../../../../src/core/messages/index.ts';
import { inEnglish } from '../../../support/english.ts';
import type { Step } from '../../../../src/core/plan/index.ts';
import { reportOf, reportText } from '../../../../src/core/report/index.ts';
import { purgePlan } from '../support/fixtures.ts';
import { finishes } from '../support/finishing.ts';
import { glowing, type Tablet } from '../support/tablet.ts';

/** The hob is covered once it is cool, as the plans have it. */
const cover: Step = {
  ...(purgePlan.steps.find(({ kind }) => kind === 'cover') as Step),
  id: 'cover-hob',
  title: asWritten('cover-hob'),
  fixture: 'hob',
  needs: [{ step: 'cool' }],
};
const plan = { ...purgePlan, steps: [...purgePlan.steps, cover] };

function phase(tablet: Tablet, fixture: string): string | undefined {
  return tablet.view.fixtures.find(({ id }) => id === fixture)?.phase;
}

/** One report of bad air stops the glow; it is made safe, cools, and the run goes on. */
function broken(): Tablet {
  const tablet = glowing(plan);
  tablet.passes(60);
  tablet.does({ kind: 'report-fault', fault: 'co-alarm' });
  tablet.does({ kind: 'confirm-safe', step: 'glow' });
  for (const { id } of tablet.view.faults) tablet.does({ kind: 'clear-fault', faultId: id });
  tablet.opens('air');
  tablet.passes(700);
  tablet.does({ kind: 'resume' });
  tablet.passes(2000);
  return tablet;
}

/** Everything of the sink, with a perfect person. */
function poursTheRest(tablet: Tablet): void {
  for (const step of ['boil-1', 'pour-1', 'boil-2', 'pour-2', 'cover-sink']) {
    tablet.opens('scald-dress');
    tablet.does({ kind: 'start-step', step });
    tablet.passes(10);
    tablet.says(step);
    if (step.startsWith('pour')) tablet.says(step);
  }
}

describe('a purge that a fault stopped', () => {
  it('keeps cover and mark waiting, though its cool-down is over', () => {
    // Verifies: I-22
    const tablet = broken();
    expect(tablet.step('glow').outcome).toBe('stopped');
    expect(tablet.step('cool').outcome).toBe('done');
    expect(tablet.tries({ kind: 'start-step', step: 'cover-hob' })).toBe('needs-unmet');
    expect(phase(tablet, 'hob')).toBe('not-purged');
  });

  it('never lets the run close as completed by itself', () => {
    // Verifies: I-22
    const tablet = broken();
    poursTheRest(tablet);
    tablet.does({ kind: 'skip-step', step: 'cover-hob', reason: 'No liner here.' });
    tablet.passes(3600);
    expect(tablet.state.status).toBe('running');
    expect(phase(tablet, 'hob')).toBe('not-purged');
  });

  it('comes back to the stage, and can be done again', () => {
    // Verifies: I-22
    const tablet = broken();
    const seen = tablet.view.currentSteps.find(({ step }) => step.id === 'glow');
    expect(seen).toMatchObject({ status: 'settled', again: true });
    tablet.does({ kind: 'repeat-step', step: 'glow', reason: 'Smoke.' });
    expect(tablet.step('glow')).toMatchObject({ status: 'ready', again: false });
    finishes(tablet);
    expect(tablet.view.closedAs).toBe('completed');
    expect(phase(tablet, 'hob')).toBe('covered');
  });

  it('or left out by a person, with a reason that record and picture show', () => {
    // Verifies: I-22
    const tablet = broken();
    expect(tablet.tries({ kind: 'skip-step', step: 'glow', reason: ' ' })).toBe('reason-missing');
    tablet.does({ kind: 'skip-step', step: 'glow', reason: 'The coil is broken.' });
    poursTheRest(tablet);
    tablet.does({ kind: 'skip-step', step: 'cover-hob', reason: 'No liner here.' });
    expect(tablet.view.closedAs).toBe('completed');
    expect(phase(tablet, 'hob')).toBe('left-out');
    const record = reportOf(tablet.facts);
    expect(record.notDone).toContainEqual(
      expect.objectContaining({
        step: 'glow',
        outcome: 'skipped',
        reason: asWritten('The coil is broken.'),
      }),
    );
    expect(record.notPurged).toEqual([]);
    expect(record.leftOut.map(({ step }) => step)).toEqual(['glow']);
    expect(reportText(record, inEnglish, 'UTC')).toContain('The coil is broken.');
  });

  it('is told as not purged when the run is stopped instead', () => {
    // Verifies: I-22
    const tablet = broken();
    tablet.does({ kind: 'stop-run', reason: 'Enough.' });
    expect(tablet.view.closedAs).toBe('stopped');
    expect(phase(tablet, 'hob')).toBe('not-purged');
    expect(phase(tablet, 'sink')).toBe('not-purged');
    const record = reportOf(tablet.facts);
    expect(record.notPurged.map(({ step }) => step)).toContain('glow');
    expect(reportText(record, inEnglish, 'UTC')).toMatch(/not purged/i);
  });

  it('every kind of step can be asked for again', () => {
    // Verifies: I-22
    for (const { id } of plan.steps) {
      const tablet = broken();
      tablet.tries({ kind: 'skip-step', step: id, reason: 'Not now.' });
      expect(tablet.tries({ kind: 'repeat-step', step: id, reason: 'After all.' }), id).toBeNull();
    }
  });
});
