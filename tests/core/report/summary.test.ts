import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/core/plan/index.ts';
import {
  answersOf,
  lacksOf,
  placesOf,
  reportOf,
  reportText,
  rowsOf,
  verdictOf,
  vesselsOf,
  type Report,
} from '../../../src/core/report/index.ts';
import { openJournal } from '../../../src/core/journal/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { frozenEntries } from '../journal/frozen/read.ts';
import { kitchenOf } from '../plan/support/plans.ts';
import { NEW_YEAR_MS, resting } from '../run/support/tablet.ts';
import { pours, recorded, rested, toldPlan } from './runs.ts';

const said = (messages: readonly Parameters<typeof inEnglish.say>[0][]): readonly string[] =>
  messages.map((one) => inEnglish.say(one));
const stateOf = (report: Report, id: string) =>
  placesOf(report).find(({ fixture }) => fixture === id)?.state;
const lacks = (report: Report) => said(lacksOf(report, 'UTC'));
const played = (plan: Plan): Report =>
  reportOf(simulateRun(plan, { startWallMs: NEW_YEAR_MS }).facts);

describe('what every place is now', () => {
  it('is told by what was really done there, numbered as in the kitchen file', () => {
    const report = played(buildPlan(kitchenOf('flat-coils')));
    expect(
      Object.fromEntries(placesOf(report).map(({ fixture, state }) => [fixture, state])),
    ).toEqual({
      'counter-left': 'poured',
      'counter-right': 'poured',
      sink: 'poured',
      'range-top': 'heated',
      oven: 'heated',
      hood: 'cleaned',
      fridge: 'cleaned',
      microwave: 'steamed',
      'wall-cupboard': 'cleaned',
      'sink-cupboard': 'covered',
      'cutlery-drawer': 'covered',
      table: 'covered',
    });
    expect(placesOf(report).map(({ number }) => number)).toEqual(
      report.fixtures.map((_, index) => index + 1),
    );
    expect(inEnglish.say(verdictOf(report))).toBe(
      '6 of 6 places purged. Besides: 3 covered or lined, 3 cleaned.',
    );
  });

  it('is closed up where a kitchen inside Passover keeps it out of use', () => {
    const kitchen = kitchenOf('flat-coils');
    const household = { ...kitchen.household, purpose: 'passover' as const };
    const inside = Date.UTC(2027, 3, 25, 12);
    const plan = buildPlan({ ...kitchen, household }, { startWallMs: inside });
    const report = reportOf(simulateRun(plan, { startWallMs: inside }).facts);
    const closed = plan.methods.filter(({ method }) => method === 'not-purged');
    expect(closed.length).toBeGreaterThan(0);
    for (const { fixture } of closed) expect(stateOf(report, fixture)).toBe('closed-up');
  });

  it('is not purged when one of its purges was left out, whatever the others are', () => {
    const tablet = rested();
    pours(tablet, 1);
    tablet.does({ kind: 'skip-step', step: 'pour-2', reason: 'The bowl is small' });
    const open = recorded(tablet);
    expect(stateOf(open, 'sink')).toBe('not-purged');
    expect(placesOf(open).find(({ fixture }) => fixture === 'sink')?.purges).toEqual({
      planned: 2,
      done: 1,
    });
    // What is only still to come lacks nothing yet.
    expect(stateOf(open, 'hob')).toBe('not-yet');
    expect(inEnglish.say(verdictOf(open))).toMatch(
      /^0 of 2 places purged so far; not purged: Sink\./,
    );
  });

  it('falls back to not purged when a doubt comes after the purge, and the run is stopped', () => {
    const tablet = rested();
    pours(tablet, 1);
    pours(tablet, 2);
    expect(stateOf(recorded(tablet), 'sink')).toBe('poured');
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Hot soup fell into it' });
    expect(stateOf(recorded(tablet), 'sink')).toBe('not-yet');
    tablet.does({ kind: 'stop-run', reason: 'Too late tonight' });
    expect(stateOf(recorded(tablet), 'sink')).toBe('not-purged');
  });
});

describe('what a record lacks', () => {
  it('is nothing for a run without trouble and without open questions', () => {
    expect(lacks(played({ ...toldPlan, questions: [] }))).toEqual([]);
    expect(reportText(played({ ...toldPlan, questions: [] }), inEnglish, 'UTC')).toContain(
      'Nothing planned was left out, stopped or left in doubt.',
    );
  });

  it('begins with what was not purged, steps alike in one sentence, with the reason', () => {
    const tablet = rested();
    pours(tablet, 1);
    tablet.does({ kind: 'note', text: 'Nothing to do with it' });
    tablet.does({ kind: 'stop-run', reason: 'Too late tonight' });
    const [first, second] = lacks(recorded(tablet));
    expect(first).toBe('Sink: not purged (1 of 2). “pour-2” not begun. Too late tonight.');
    expect(second).toMatch(/^Hob: not purged \(1 of 1\)\. “glow” /);
  });

  it('names a counter of which a part was out of reach, though every pour was done', () => {
    const report = played(buildPlan(kitchenOf('mountain-gas')));
    const corner = report.fixtures.find(({ unreachedM2 }) => unreachedM2 !== undefined);
    expect(stateOf(report, corner?.id ?? '')).toBe('poured');
    expect(lacks(report)).toContainEqual(
      expect.stringMatching(
        /: 662\u00a0cm² are out of reach of an arm and were not poured over\.$/,
      ),
    );
  });

  it('tells a rest that was cut short with what was proved of it', () => {
    const tablet = resting(toldPlan);
    tablet.passes(20 * 3600 + 60);
    tablet.does({ kind: 'skip-step', step: 'rest-sink', reason: 'Our rabbi allowed it' });
    expect(lacks(recorded(tablet))).toContain(
      'Sink: rest left out, 20 h of 24 h proved. Our rabbi allowed it.',
    );
  });

  it('tells faults and how they ended, missing cold water, gaps of the tablet and open questions', () => {
    const tablet = rested();
    pours(tablet, 1, false);
    tablet.does({ kind: 'report-fault', fault: 'power-cut', step: 'pour-1' });
    tablet.restarts(3600, undefined, 1);
    const told = lacks(recorded(tablet));
    expect(told).toContain('Sink: cold water confirmed after 0 of 1 kettles.');
    expect(told.some((line) => /^Sink: .*Not reported as put right\.$/u.test(line))).toBe(true);
    expect(told).toContain('The tablet was off, asleep or its clock was set once, together 1 h.');
    expect(told).toContain(
      '1 question was open when the plan was made; the stricter way was taken.',
    );
  });
});

describe('the same twice', () => {
  it('is one sentence, and cooling on a person’s word is none', () => {
    const facts = openJournal(frozenEntries('open-purge-v2')).facts;
    const told = lacks(reportOf(facts));
    expect(told.filter((line) => line.includes('does not glow'))).toHaveLength(1);
    const stopped = lacks(reportOf(openJournal(frozenEntries('disturbed-v2')).facts));
    expect(stopped).toContain('Hob: Glow, 1 min 30 s on a person’s word.');
    expect(stopped.some((line) => line.includes('Safe to touch'))).toBe(false);
  });

  it('does not tell of the boil of a pour that was left out', () => {
    const told = lacks(reportOf(openJournal(frozenEntries('alarms-v1')).facts));
    expect(told[0]).toBe('Sink: not purged (1 of 2). “pour-2” left out. The bowl is small.');
    expect(told.some((line) => line.includes('boil-2'))).toBe(false);
  });
});

describe('a row of the table', () => {
  it('says how, when, how long it rested, by which source and whose word', () => {
    const rows = rowsOf(played(toldPlan), 'UTC');
    const [sink, hob] = rows;
    expect(said(sink?.how ?? [])).toEqual(['Pour boiling water (irui), then covered', '2 kettles']);
    expect(said(sink?.rested ?? [])).toEqual(['Thu 1 Jan, 00:10 to Fri 2 Jan, 00:10 (24 h)']);
    expect(said(sink?.source ?? [])).toEqual([
      'A row of the custom (cited from memory, not yet checked)',
    ]);
    expect(said(hob?.how ?? [])).toContain('Glow 10 min');
    expect(said(hob?.source ?? [])).toContain(
      'Answer of Rabbi of the test, 2026-01-01: Heat to glow, 10 min. Ten minutes are enough.',
    );
  });

  it('says of a place that was not purged what was planned, and how far that came', () => {
    const tablet = rested();
    pours(tablet, 1);
    tablet.does({ kind: 'stop-run', reason: 'Too late tonight' });
    const [sink, hob] = rowsOf(recorded(tablet), 'UTC');
    expect(said(sink?.how ?? [])).toEqual(['Planned: Pour boiling water (irui)', '1 of 2 kettles']);
    expect(said(hob?.how ?? [])).toEqual(['Planned: Heat to glow (libun gamur)']);
    expect(hob?.when).toEqual([]);
  });
});

describe('the kettles themselves', () => {
  it('are told with their rest and their purge', () => {
    const report = played(buildPlan(kitchenOf('flat-coils')));
    const told = said(vesselsOf(report, 'UTC'));
    expect(told).toHaveLength(2);
    expect(told[0]).toMatch(/^Steel kettle: nothing hot in it.*: done, /u);
    expect(told[1]).toMatch(/^Purge the steel kettle itself: done, /u);
  });
});

describe('questions and answers', () => {
  it('tell who said what about which place, own rows too, and what nobody answered', () => {
    const own: Plan = {
      ...toldPlan,
      methods: toldPlan.methods.map((method) =>
        method.fixture === 'sink' ? { ...method, ownRow: 'sink-steel' } : method,
      ),
      kitchen: {
        ...toldPlan.kitchen,
        household: {
          ...toldPlan.kitchen.household,
          ownCustom: {
            name: 'Ours',
            basedOn: toldPlan.kitchen.household.custom,
            changedRows: [
              {
                row: 'sink-steel',
                method: 'pour',
                why: 'As at home',
                saidBy: 'Grandmother',
                saidOn: '2025-12-01',
              },
            ],
          },
        },
      },
    };
    const told = said(answersOf(played(own), 'UTC'));
    expect(told).toEqual([
      'Hob: Answer of Rabbi of the test, 2026-01-01: Heat to glow, 10 min. Ten minutes are enough.',
      'Sink: said by Grandmother on 2025-12-01: Pour boiling water. As at home.',
      'Hob: How long must the burner glow? Not answered. Planned: The longer time is planned.',
    ]);
  });
});

describe('the first page as text', () => {
  it('has the verdict, what it lacks, and the digest, before everything else', () => {
    const tablet = rested();
    tablet.does({ kind: 'stop-run', reason: 'Too late tonight' });
    const text = reportText(recorded(tablet), inEnglish, 'UTC', '0123 4567 89ab cdef');
    const lines = text.slice(0, text.indexOf('\nRecord: ')).split('\n');
    expect(lines[0]).toBe('Corner flat: what was done');
    expect(lines).toContain('  Begun: Thursday, 1 January 2026, 00:00');
    expect(lines).toContain('  0 of 2 places purged; not purged: Sink and Hob.');
    expect(lines).toContain('  Digest of the run: 0123 4567 89ab cdef');
    expect(lines).toContain('Left out, stopped or in doubt');
  });
});
