import { describe, expect, it } from 'vitest';
import { asWritten, message } from '../../../src/core/messages/index.ts';
import { reportOf } from '../../../src/core/report/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DAY_S } from '../run/support/fixtures.ts';
import { NEW_YEAR_MS, Tablet } from '../run/support/tablet.ts';
import { fixtureOf, pours, recorded, rested, stepOf, toldPlan } from './runs.ts';

const HOUR_S = 3600;
const atMs = (s: number): number => NEW_YEAR_MS + s * 1000;

describe('the record of a run without trouble', () => {
  const run = simulateRun(toldPlan, { startWallMs: NEW_YEAR_MS });
  const record = reportOf(run.facts);

  it('tells kitchen, purpose, custom, and from when to when', () => {
    expect(record).toMatchObject({
      kitchen: 'Corner flat',
      purpose: 'new-kitchen',
      custom: 'ashkenazic',
      startedWallMs: NEW_YEAR_MS,
      outcome: 'completed',
      notDone: [],
      faults: [],
      rechecks: [],
      gaps: [],
      lateTimers: [],
    });
    expect(record.closedWallMs).toBeCloseTo(atMs(run.finishS), 0);
  });

  it('tells the rest, the glow and the kettles by the clocks', () => {
    const sink = fixtureOf(record, 'sink');
    expect(sink).toMatchObject({
      done: 'all',
      designation: 'meat',
      kettles: { planned: 2, poured: 2, cold: 2, voided: 0 },
      method: {
        method: 'pour',
        cover: true,
        term: asWritten('irui'),
        checked: false,
        overriddenBy: null,
      },
    });
    const [rest] = sink.rests;
    expect(rest?.provedS).toBeGreaterThanOrEqual(DAY_S);
    expect(rest?.onWordS).toBe(0);
    // The clean takes its typical 600 s; the wall shows 24 h and the rate error of 1e-4 a day after it.
    expect(rest?.fromWallMs).toBeCloseTo(atMs(600), -1);
    expect(((rest?.toWallMs ?? 0) - (rest?.fromWallMs ?? 0)) / 1000 - DAY_S).toBeLessThan(9);
    const hob = fixtureOf(record, 'hob');
    expect(hob.holds.map(({ label }) => inEnglish.say(label))).toEqual(['Glow', 'Safe to touch']);
    expect(hob.holds[0]).toMatchObject({ purpose: 'unbroken', neededS: 600, addedS: 0 });
    expect(hob.method?.question?.ask).toEqual(asWritten('How long must the burner glow?'));
  });

  it('tells whose word replaced a row, what was open, and what was taken as usual', () => {
    expect(record.overrides).toEqual([
      {
        fixture: 'hob',
        name: 'Hob',
        method: 'glow',
        minutes: 10,
        cover: null,
        saidBy: 'Rabbi of the test',
        saidOn: '2026-01-01',
        text: 'Ten minutes are enough',
      },
    ]);
    expect(record.questions.map(({ id }) => id)).toEqual(['ask-hob']);
    expect(record.assumed.map(({ what }) => what)).toEqual([message('report.assumed.place')]);
    const filled = [{ path: 'tapColdC', value: 15, why: asWritten('usual') }];
    expect(reportOf(run.facts, { filled }).assumed[0]).toEqual({
      what: asWritten('tapColdC'),
      taken: message('report.assumed.filled', { value: '15', why: asWritten('usual') }),
    });
  });

  it('can be made of every beginning of the run, and only then is open', () => {
    for (let length = 1; length < run.facts.length; length += 1) {
      const part = reportOf(run.facts.slice(0, length));
      expect(part.outcome).toBe('open');
      expect(part.closedWallMs).toBeNull();
      const done = part.fixtures.flatMap(({ steps }) => steps).length - part.notDone.length;
      expect(done).toBe(
        run.facts.slice(0, length).filter((fact) => fact.body.kind === 'step-settled').length,
      );
    }
  });

  it('refuses facts that are none, or have a hole', () => {
    expect(() => reportOf([])).toThrow(/^facts is empty; allowed/);
    expect(() => reportOf(run.facts.filter(({ seq }) => seq !== 4))).toThrow(
      /^seq is 5; allowed: 4/,
    );
  });
});

describe('a rest', () => {
  it('that a doubt began anew shows both, and only the new one counts', () => {
    const tablet = rested();
    pours(tablet, 1);
    const doubtMs = tablet.readings().wallMs;
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Hot soup fell into it' });
    tablet.passes(HOUR_S);
    tablet.does({ kind: 'note', text: 'An hour later' });
    const record = recorded(tablet);
    const sink = fixtureOf(record, 'sink');
    expect(record.rechecks).toEqual([
      { fixture: 'sink', name: 'Sink', text: 'Hot soup fell into it', wallMs: doubtMs },
    ]);
    expect(sink.kettles).toEqual({ planned: 2, poured: 0, cold: 0, voided: 1 });
    expect(sink.rests).toHaveLength(1);
    expect(sink.rests[0]).toMatchObject({ fromWallMs: doubtMs, toWallMs: null });
    expect(sink.rests[0]?.provedS).toBeGreaterThan(HOUR_S - 1);
    const [first, second] = stepOf(record, 'rest-sink').attempts;
    expect(first).toMatchObject({
      outcome: 'done',
      replacedBecause: asWritten('Hot soup fell into it'),
    });
    expect(second).toMatchObject({ outcome: 'open', startedWallMs: doubtMs });
    expect(sink.done).toBe('part');
  });

  it('that was broken off by a doubt counts as void', () => {
    const tablet = rested({ ...toldPlan });
    tablet.does({ kind: 'start-step', step: 'clean-hob' });
    tablet.passes(60);
    tablet.says('clean-hob');
    tablet.passes(HOUR_S);
    tablet.does({ kind: 'report-recheck', fixture: 'hob', text: 'Used hot' });
    const [first, second] = stepOf(recorded(tablet), 'rest-hob').attempts;
    expect(first).toMatchObject({ outcome: 'void', replacedBecause: asWritten('Used hot') });
    expect(first?.stages[0]?.brokeOff).toEqual(asWritten('Used hot'));
    expect(first?.stages[0]?.holds[0]?.provedS).toBeLessThan(HOUR_S + 1);
    expect(second?.outcome).toBe('open');
  });

  it('over which the tablet was off says how much rests on a person’s word', () => {
    const tablet = new Tablet(toldPlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(600);
    tablet.says('clean-sink');
    tablet.passes(2 * HOUR_S);
    const offMs = tablet.readings().wallMs;
    tablet.restarts(9 * HOUR_S, undefined, 1);
    const onMs = tablet.readings().wallMs;
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    tablet.passes(14 * HOUR_S);
    const record = recorded(tablet);
    expect(record.gaps).toEqual([
      {
        kind: 'not-running',
        fromWallMs: offMs,
        toWallMs: onMs,
        unprovedS: 9 * HOUR_S,
        tornRecords: 1,
      },
    ]);
    expect(record.clockQuestions).toEqual([
      { askedWallMs: onMs, answeredWallMs: onMs, answer: 'right', actualWallMs: null },
    ]);
    const [rest] = fixtureOf(record, 'sink').rests;
    expect(rest?.toWallMs).not.toBeNull();
    expect(rest?.onWordS).toBeCloseTo(9 * HOUR_S, 0);
    expect(rest?.provedS).toBeGreaterThanOrEqual(DAY_S);
  });

  it('dated back by hand says so, with the reason', () => {
    const tablet = new Tablet(toldPlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(600);
    tablet.says('clean-sink');
    tablet.does({
      kind: 'correct-time',
      timer: tablet.clock('rest-sink').id,
      sinceWallMs: tablet.readings().wallMs - 10 * HOUR_S * 1000,
      reason: 'Last used last night',
      clockRight: true,
    });
    const beganMs = tablet.readings().wallMs;
    tablet.passes(14 * HOUR_S + 60);
    const [rest] = fixtureOf(recorded(tablet), 'sink').rests;
    expect(rest).toMatchObject({
      fromWallMs: beganMs - 10 * HOUR_S * 1000,
      onWordS: 10 * HOUR_S,
      corrections: ['Last used last night'],
    });
  });

  it('that was left out is not done, with the reason', () => {
    const tablet = new Tablet(toldPlan);
    tablet.does({ kind: 'start-run' });
    tablet.does({ kind: 'skip-step', step: 'rest-sink', reason: 'Never used before' });
    const record = recorded(tablet);
    expect(record.notDone.find(({ step }) => step === 'rest-sink')).toEqual({
      step: 'rest-sink',
      title: asWritten('rest-sink'),
      fixture: 'sink',
      outcome: 'skipped',
      reason: asWritten('Never used before'),
    });
    expect(fixtureOf(record, 'sink').rests).toEqual([]);
  });
});
