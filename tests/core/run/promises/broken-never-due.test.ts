import { describe, expect, it } from 'vitest';
import type { FaultKind } from '../../../../src/core/plan/index.ts';
import { purgePlan } from '../support/fixtures.ts';
import { glowing, type Tablet } from '../support/tablet.ts';

function overs(tablet: Tablet): readonly string[] {
  return tablet.facts.flatMap(({ body }) =>
    body.kind === 'timer-due' && body.timer.includes('/hold/hold') ? [body.timer] : [],
  );
}

describe('a hold that a fault broke', () => {
  for (const fault of ['flame-out', 'power-cut', 'undefined'] as const satisfies FaultKind[]) {
    it(`(${fault}) is begun again without having been told as over`, () => {
      // Verifies: I-25
      const tablet = glowing(purgePlan);
      tablet.passes(500);
      tablet.does({ kind: 'report-fault', fault });
      tablet.passes(600);
      for (const { id } of tablet.view.faults) tablet.does({ kind: 'clear-fault', faultId: id });
      expect(tablet.kinds()).toContain('stage-restarted');
      expect(overs(tablet)).toEqual([]);
    });
  }

  it('nor one that a person says broke off in a gap', () => {
    // Verifies: I-25
    const tablet = glowing(purgePlan);
    tablet.passes(595);
    tablet.restarts(20);
    tablet.passes(100);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'broke-off' });
    expect(tablet.kinds()).toContain('stage-restarted');
    expect(overs(tablet)).toEqual([]);
  });

  it('nor by one of two faults alone: it waits for both', () => {
    // Verifies: I-25
    const tablet = glowing(purgePlan);
    tablet.passes(500);
    tablet.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    tablet.does({ kind: 'report-fault', fault: 'power-cut' });
    tablet.passes(600);
    const [first, second] = tablet.view.faults;
    tablet.does({ kind: 'clear-fault', faultId: first?.id ?? '' });
    tablet.passes(100);
    expect(overs(tablet)).toEqual([]);
    expect(tablet.kinds()).not.toContain('stage-restarted');
    tablet.does({ kind: 'clear-fault', faultId: second?.id ?? '' });
    expect(tablet.kinds()).toContain('stage-restarted');
    expect(overs(tablet)).toEqual([]);
  });
});
