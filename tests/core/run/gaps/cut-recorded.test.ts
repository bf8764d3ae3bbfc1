import { asWritten } from '../../../../src/core/messages/index.ts';
import { inEnglish as english } from '../../../support/english.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { encodeEntries, importJournal, openJournal } from '../../../../src/core/journal/index.ts';
import {
  apply,
  fold,
  perform,
  simulateRun,
  view,
  type Fact,
  type Readings,
  type RunState,
  type RunView,
} from '../../../../src/core/run/index.ts';
import type { Plan } from '../../../../src/core/plan/index.ts';
import { planOfDemo } from '../../plan/support/plans.ts';
import { finishes, outcomes, standing } from '../support/finishing.ts';
import { NEW_YEAR_MS, Tablet } from '../support/tablet.ts';

const HOUR_S = 3600;

function frozen(name: string): readonly Fact[] {
  const path = join(import.meta.dirname, '../../journal/frozen', name);
  const file = importJournal(readFileSync(path, 'utf8'));
  if ('problem' in file) throw new Error(english.say(file.problem));
  return openJournal(file.entries).facts;
}

/** A demo kitchen with a rest day in its first rest, as the household that keeps it would have it. */
function demoPlan(): Plan {
  return {
    ...planOfDemo('flat-glass-230'),
    days: {
      startWallMs: NEW_YEAR_MS,
      restDays: [
        {
          name: asWritten('the Sabbath'),
          fromWallMs: NEW_YEAR_MS + 10 * HOUR_S * 1000,
          toWallMs: NEW_YEAR_MS + 35 * HOUR_S * 1000,
        },
      ],
    },
  };
}

/** Its run over three days: a note, a pause, a fault, and a doubt that costs another day of rest. */
function threeDays(): readonly Fact[] {
  const said = new Set<string>();
  const once = (name: string, due: boolean): boolean => {
    if (!due || said.has(name)) return false;
    said.add(name);
    return true;
  };
  const script = (seen: RunView, atS: number) => {
    const fixture = seen.plan.steps.find(({ kind }) => kind === 'pour')?.fixture ?? '';
    if (once('note', atS > HOUR_S)) return [{ kind: 'note', text: 'Tea.' } as const];
    if (once('doubt', atS > 40 * HOUR_S))
      return [{ kind: 'report-recheck', fixture, text: 'A cup was washed.' } as const];
    if (once('fault', atS > 41 * HOUR_S))
      return [{ kind: 'report-fault', fault: 'undefined' } as const];
    return [];
  };
  const done = simulateRun(demoPlan(), { script });
  expect(said.size).toBe(3);
  expect(done.view).toMatchObject({ status: 'closed', closedAs: 'completed' });
  expect(done.finishS).toBeGreaterThan(60 * HOUR_S);
  return done.facts;
}

const JOURNALS: Readonly<Record<string, () => readonly Fact[]>> = {
  'the frozen good one': () => frozen('good-v1.json'),
  'the frozen one with alarms': () => frozen('alarms-v1.json'),
  'a demo kitchen over three days': threeDays,
};

/** The page dies after these facts and is opened again on another page, at once. */
function reopened(state: RunState): { state: RunState; now: Readings } {
  const now = { wallMs: state.clock.lastAt.wallMs, monoMs: 0, session: 'reopened' };
  const done = perform(state, { kind: 'session-opened', tornRecords: 1 }, now);
  if ('refusal' in done) throw new Error(english.say(done.refusal.message));
  return { state: done.state, now };
}

/** Stopped and made safe, a run reaches closed whatever stood in it. */
function stops(from: RunState, now: Readings): RunState {
  const ask = (state: RunState, asked: Parameters<typeof perform>[1]): RunState => {
    const done = perform(state, asked, now);
    if ('refusal' in done) throw new Error(`${asked.kind}: ${done.refusal.message}`);
    return done.state;
  };
  let state = ask(from, { kind: 'stop-run', reason: 'Enough.' });
  for (const { step, confirmed } of view(state, now).hot)
    if (!confirmed) state = ask(state, { kind: 'confirm-safe', step });
  return state;
}

describe.each(Object.entries(JOURNALS))('%s, cut after any record', (_name, recorded) => {
  const facts = recorded();

  it('and a torn one after it, opens to the state of what was whole', () => {
    // Verifies: I-02, I-14
    const records = encodeEntries(facts);
    let state: RunState | null = null;
    for (let keep = 1; keep < records.length; keep += 1) {
      state = apply(state, facts[keep - 1] as Fact);
      const text = JSON.stringify(records[keep]);
      const torn = text.slice(0, 1 + ((keep * 37) % (text.length - 1)));
      const opened = openJournal([...records.slice(0, keep), torn]);
      expect(opened.torn).toBe(1);
      expect(opened.problem).toBeUndefined();
      expect(opened.state).toEqual(state);
    }
  }, 120_000);

  it('is reviewed when opened again, starts nothing by itself, and can be stopped to the end', () => {
    // Verifies: I-06, I-13, I-14
    let state: RunState | null = null;
    for (const fact of facts.slice(0, -1)) {
      state = apply(state, fact);
      const open = reopened(state);
      const before = state.status;
      const after = { drafting: ['drafting'], closing: ['closing', 'closed'] };
      expect(before in after ? after[before as keyof typeof after] : ['reviewing']).toContain(
        open.state.status,
      );
      expect(open.state.storageDown).toBe(state.storageDown);
      for (const [id, { status }] of Object.entries(open.state.steps))
        if (status === 'active') expect(state.steps[id]?.status).toBe('active');
      if (open.state.status !== 'closed') expect(stops(open.state, open.now).status).toBe('closed');
    }
  }, 60_000);
});

describe('the demo run cut and taken up with no gap', () => {
  it('ends as an uncut one does', () => {
    // Verifies: I-14
    const plan = demoPlan();
    const whole = new Tablet(plan);
    finishes(whole);
    const { facts } = whole;
    expect(facts.length).toBeGreaterThan(280);
    const cuts = [1, 2, 30, 120, 200, 260, 280, facts.length - 2];
    for (const keep of cuts) {
      const tablet = standing(facts.slice(0, keep), plan);
      tablet.restarts(0);
      expect(fold(tablet.facts)).toEqual(tablet.state);
      finishes(tablet);
      expect(outcomes(tablet), `cut after record ${keep}`).toEqual(outcomes(whole));
    }
  }, 60_000);
});
