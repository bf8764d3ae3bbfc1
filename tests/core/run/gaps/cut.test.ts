import { describe, expect, it } from 'vitest';
import { encodeEntries, openJournal } from '../../../../src/core/journal/index.ts';
import { fold, simulateRun } from '../../../../src/core/run/index.ts';
import { finishes, outcomes, standing } from '../support/finishing.ts';
import { planOf, purgePlan, smallPlan, steps } from '../support/fixtures.ts';
import { glowing, Tablet } from '../support/tablet.ts';

describe('a journal cut after any record', () => {
  it('opens again, can go on, and with no gap ends as the uncut run did', () => {
    // Verifies: I-14, I-01
    const whole = new Tablet(smallPlan);
    whole.does({ kind: 'start-run' });
    finishes(whole);
    expect(outcomes(whole)).toMatchObject({ closedAs: 'completed' });
    for (let keep = 1; keep < whole.facts.length; keep += 1) {
      const tablet = standing(whole.facts.slice(0, keep));
      tablet.restarts(0);
      expect(fold(tablet.facts)).toEqual(tablet.state);
      finishes(tablet);
      expect(outcomes(tablet), `cut after record ${keep}`).toEqual(outcomes(whole));
    }
  });

  it('with a torn record after it, drops and counts the torn one', () => {
    // Verifies: I-14, I-02
    const whole = glowing(purgePlan);
    whole.passes(400);
    whole.restarts(900);
    whole.does({ kind: 'stop-run', reason: 'Enough.' });
    const records = encodeEntries(whole.facts);
    for (let keep = 1; keep < records.length; keep += 1) {
      const text = JSON.stringify(records[keep]);
      const torn = text.slice(0, Math.ceil(text.length / 2));
      const opened = openJournal([...records.slice(0, keep), torn]);
      expect(opened).toMatchObject({ torn: 1 });
      expect(opened.problem).toBeUndefined();
      expect(opened.state).toEqual(fold(whole.facts.slice(0, keep)));
    }
  });

  it('of a disturbed run, can always be stopped to the end', () => {
    // Verifies: I-13, I-14
    const whole = glowing(purgePlan);
    whole.passes(400);
    whole.restarts(900, undefined, 1);
    whole.does({ kind: 'report-fault', fault: 'co-alarm' });
    whole.does({ kind: 'confirm-safe', step: 'glow' });
    for (let keep = 1; keep <= whole.facts.length; keep += 1) {
      const tablet = standing(whole.facts.slice(0, keep), purgePlan);
      tablet.restarts(3600);
      tablet.does({ kind: 'stop-run', reason: 'Enough.' });
      for (const { step, confirmed } of tablet.view.hot)
        if (!confirmed) tablet.does({ kind: 'confirm-safe', step });
      expect(tablet.state.status).toBe('closed');
    }
  });
});

describe('a simulated run', () => {
  it('of three days completes, and folds to its state', () => {
    const copies = Array.from({ length: 12 }, (_, number) =>
      steps.map((one) => ({
        ...one,
        id: `${one.id}@${number}`,
        needs: one.needs.map((need) => ({ ...need, step: `${need.step}@${number}` })),
      })),
    ).flat();
    // Each fixture after the other, half a day apart, so that the job takes days.
    const startS = Object.fromEntries(
      copies
        .filter(({ phase }) => phase === 'clean')
        .map(({ id }, index) => [id, index * 4 * 3600]),
    );
    const plan = planOf(copies, { timetable: { startS, finishS: 0, lowerBoundS: 0 } });
    const done = simulateRun(plan);
    expect(done.view).toMatchObject({ status: 'closed', closedAs: 'completed' });
    expect(done.finishS).toBeGreaterThan(3 * 24 * 3600);
    expect(fold(done.facts)).toEqual(done.state);
  });

  it('follows a script: a doubt costs another day', () => {
    let doubted = false;
    const plain = simulateRun(smallPlan);
    const done = simulateRun(smallPlan, {
      script: (_, atS) => {
        if (doubted || atS < 20 * 3600) return [];
        doubted = true;
        return [{ kind: 'report-recheck', fixture: 'sink', text: 'A cup was washed.' }];
      },
    });
    expect(done.view.closedAs).toBe('completed');
    expect(doubted).toBe(true);
    expect(done.finishS).toBeGreaterThan(plain.finishS + 12 * 3600);
  });
});
