import { describe, expect, it } from 'vitest';
import { reportOf } from '../../../../src/core/report/index.ts';
import { DAY_S, smallPlan } from '../support/fixtures.ts';
import { resting, Tablet } from '../support/tablet.ts';

const used = { kind: 'report-recheck', fixture: 'sink', text: '' } as const;
const takenBack = { kind: 'withdraw-recheck', fixture: 'sink' } as const;

/** What is left of the rest of the sink, s. */
function restLeftS(tablet: Tablet): number | undefined {
  return tablet.view.timers.find(({ step, role }) => step === 'rest-sink' && role === 'hold')
    ?.leftS;
}

describe('a word that something was used, taken back', () => {
  it('gives the rest back as it was, with the time that passed meanwhile', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    const before = restLeftS(tablet) ?? 0;
    tablet.does(used);
    expect(restLeftS(tablet)).toBeGreaterThan(before);
    expect(tablet.view.usedToTakeBack).toBe('sink');
    tablet.passes(20);
    tablet.does(takenBack);
    expect(restLeftS(tablet)).toBeCloseTo(before - 20, 0);
    expect(tablet.step('rest-sink').attempt).toBe(1);
    expect(tablet.view.usedToTakeBack).toBeUndefined();
  });

  it('gives back work that was done after the rest', () => {
    // Verifies: I-17
    const tablet = new Tablet(smallPlan);
    tablet.does({ kind: 'start-run' });
    for (const step of ['clean-sink', 'rest-sink'])
      tablet.does({ kind: 'skip-step', step, reason: 'Never used.' });
    tablet.does(used, takenBack);
    expect(tablet.step('rest-sink')).toMatchObject({ attempt: 1, outcome: 'skipped' });
    expect(tablet.step('boil-1').status).toBe('ready');
  });

  it('is refused once anything else happened, and for what was not told', () => {
    // Verifies: I-12, I-17
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    expect(tablet.tries(takenBack)).toBe('recheck-stands');
    tablet.does(used);
    expect(tablet.tries({ ...takenBack, fixture: 'hob' })).toBe('recheck-stands');
    tablet.does({ kind: 'note', text: 'It was the other one.' });
    expect(tablet.view.usedToTakeBack).toBe('sink');
    tablet.does({ kind: 'pause' });
    expect(tablet.view.usedToTakeBack).toBeUndefined();
    expect(tablet.tries(takenBack)).toBe('recheck-stands');
    expect(restLeftS(tablet)).toBeCloseTo(DAY_S, 0);
  });

  it('is refused where the word stopped work, or a page was opened since', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S + 20);
    tablet.does({ kind: 'start-step', step: 'boil-1' }, used);
    expect(tablet.view.usedToTakeBack).toBeUndefined();
    expect(tablet.tries(takenBack)).toBe('recheck-stands');
    const other = resting(smallPlan);
    other.does(used);
    other.restarts(10);
    expect(other.tries(takenBack)).toBe('recheck-stands');
  });

  it('ends a rest that came due meanwhile, and the record keeps both words', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S - 5);
    tablet.does(used);
    tablet.passes(60);
    tablet.does(takenBack);
    expect(tablet.step('rest-sink')).toMatchObject({ attempt: 1, outcome: 'done' });
    const report = reportOf(tablet.facts);
    expect(report.rechecks).toHaveLength(1);
    expect(report.rechecks[0]?.withdrawnWallMs).toBeGreaterThan(report.rechecks[0]?.wallMs ?? 0);
    const rest = report.fixtures.flatMap(({ steps }) => steps).find(({ id }) => id === 'rest-sink');
    expect(rest?.attempts.map(({ number, outcome }) => [number, outcome])).toEqual([[1, 'done']]);
  });
});
