import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { align } from './align.ts';
import { comparedOf, differencesOf, jsonDifferences } from './differences.ts';
import type { Dump } from './dump/dump.ts';
import { buildAfter } from './dump/dump-after.ts';
import type { PlanOne, StepOne } from './dump/layout.ts';
import { planDump, sentences } from './dump/plan-dump.ts';
import { KNOWN } from './known-differences.ts';
import { judged, reportLines } from './report.ts';
import { factDumps } from './dump/run-dump.ts';
import { scenesOf } from './dump/scenes.ts';

const FILE = 'flat-coils.kitchen.json';
const kitchenText = readFileSync(join('demo-kitchens', FILE), 'utf8');
const [scene] = scenesOf(FILE, kitchenText);
if (!scene) throw new Error('no scene');
const planned = buildAfter.plan(kitchenText, scene);
const { plan } = planned;
const played = planned.run(true);

const small: Dump = {
  plans: { a: { steps: { 'boil sink 1': { startS: 60 } }, finishS: 100 } },
  facts: {
    a: [
      { atS: 0, kind: 'run-started' },
      { atS: 5, kind: 'step-started', step: 'boil sink 1' },
      { atS: 9, kind: 'step-settled', step: 'boil sink 1', outcome: 'done' },
    ],
  },
  planTexts: { a: ['Plan', 'Boil.', 'Pour.'] },
  sentences: { a: ['boil: Boil.'] },
  records: { a: ['Record', 'Done.'] },
};

/** The first step that is such a one, changed. */
function changed(is: (step: StepOne) => boolean, change: (step: StepOne) => object): PlanOne {
  const at = plan.steps.findIndex(is);
  expect(at, 'a step to change').toBeGreaterThanOrEqual(0);
  return {
    ...plan,
    steps: plan.steps.map((step, n) => (n === at ? { ...step, ...change(step) } : step)),
  };
}

const timed = ({ stages }: StepOne): boolean => stages.some(({ timers }) => timers.length > 0);
const inTimers = (step: StepOne, change: object): object => ({
  stages: step.stages.map((stage) => ({
    ...stage,
    timers: stage.timers.map((timer) => ({ ...timer, ...change })),
  })),
});
const is =
  (kind: string) =>
  (step: StepOne): boolean =>
    step.kind === kind;

/** Things that two versions must not do otherwise, each altered by itself. */
const ALTERED: Readonly<Record<string, () => PlanOne>> = {
  'a duration': () =>
    changed(is('pour'), ({ durationS }) => ({
      durationS: { ...durationS, high: durationS.high + 1 },
    })),
  'an order': () => ({ ...plan, steps: plan.steps.toReversed() }),
  'a step that is gone': () => ({ ...plan, steps: plan.steps.slice(1) }),
  'a gate': () => changed(is('pour'), ({ gates }) => ({ gates: gates.slice(1) })),
  'a standing caution': () => changed(is('pour'), () => ({ standing: [] })),
  'a caution after it': () => changed(is('pour'), () => ({ after: [] })),
  'a need': () => changed(is('pour'), ({ needs }) => ({ needs: needs.slice(1) })),
  'how soon after its need': () =>
    changed(is('pour'), ({ needs }) => ({
      needs: needs.map((need) => (need.withinS === undefined ? need : { ...need, withinS: 999 })),
    })),
  'a demand': () => changed(is('pour'), ({ demands }) => ({ demands: { ...demands, hands: 2 } })),
  attention: () => changed(is('boil'), () => ({ attention: 'none' })),
  'the length of a timer': () => changed(timed, (step) => inTimers(step, { lengthS: 1 })),
  'the role of a timer': () => changed(timed, (step) => inTimers(step, { role: 'look' })),
  'the purpose of a timer': () => changed(timed, (step) => inTimers(step, { purpose: 'often' })),
  'a stage': () => changed(is('pour'), ({ stages }) => ({ stages: stages.slice(1) })),
  'a hazard': () =>
    changed(is('pour'), ({ stages }) => ({ stages: stages.map((s) => ({ ...s, hazards: [] })) })),
  'what an interruption does': () =>
    changed(is('pour'), ({ stages }) => ({
      stages: stages.map((s) => ({ ...s, resumption: 'continue' })),
    })),
  'litres of a kettle': () =>
    changed(is('pour'), ({ picture }) => ({
      picture: {
        ...picture,
        stretches: picture?.stretches?.map((one) => ({ ...one, litres: one.litres * 1.01 })),
      },
    })),
  'the start of a step': () => ({
    ...plan,
    timetable: {
      ...plan.timetable,
      startS: { ...plan.timetable.startS, [plan.steps.at(-1)?.id ?? '']: 1 },
    },
  }),
  'the finish': () => ({ ...plan, timetable: { ...plan.timetable, finishS: 1 } }),
  'a question': () => ({ ...plan, questions: plan.questions.slice(1) }),
  'a method': () => ({
    ...plan,
    methods: plan.methods.map((one, n) => (n === 0 ? { ...one, minutes: 1 } : one)),
  }),
  'the source of a method': () => ({
    ...plan,
    methods: plan.methods.map((one, n) => (n === 0 ? { ...one, source: 'a book' } : one)),
  }),
  'what is bought': () => ({ ...plan, shopping: plan.shopping.slice(1) }),
  'a notice': () => ({ ...plan, notices: plan.notices.slice(1) }),
  'a total': () => ({ ...plan, totals: { ...plan.totals, handsOnS: 1 } }),
};

describe('two versions of a plan', () => {
  it('are the same when nothing is altered', () => {
    expect(jsonDifferences(planDump(plan), planDump(structuredClone(plan)))).toEqual([]);
  });

  it.each(Object.keys(ALTERED))('differ in %s', (what) => {
    const other = ALTERED[what]?.() ?? plan;
    // As it is read back from its file: what is undefined is not there.
    const read = (one: PlanOne) => JSON.parse(JSON.stringify(planDump(one))) as never;
    expect(jsonDifferences(read(plan), read(other)).length).toBeGreaterThan(0);
  });

  it('are the same when only ids of steps, stages and timers are others', () => {
    const id = (one: string): string => `new-${one}`;
    const other: PlanOne = {
      ...plan,
      steps: plan.steps.map((step) => ({
        ...step,
        id: id(step.id),
        needs: step.needs.map((need) => ({ ...need, step: id(need.step) })),
        stages: step.stages.map((stage) => ({
          ...stage,
          id: id(stage.id),
          timers: stage.timers.map((timer) => ({ ...timer, id: id(timer.id) })),
        })),
      })),
      timetable: {
        ...plan.timetable,
        startS: Object.fromEntries(
          Object.entries(plan.timetable.startS).map(([one, s]) => [id(one), s]),
        ),
      },
    };
    expect(jsonDifferences(planDump(plan), planDump(other))).toEqual([]);
  });

  it('differ in every sentence that is another', () => {
    const other = changed(is('rest'), () => ({ title: 'Wait.' }));
    const lines = sentences(other).filter((line) => !sentences(plan).includes(line));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/^rest .*: Wait\.$/);
  });
});

describe('two versions of a run', () => {
  const facts = factDumps(played);

  it('are told without ids: every timer and stage is found', () => {
    expect(facts.length).toBeGreaterThan(100);
    expect(JSON.stringify(facts)).not.toMatch(/no (timer|stage) /);
    const kinds = new Set(facts.map((fact) => (fact as { kind: string }).kind));
    for (const kind of ['paused', 'plan-amended', 'fault-raised', 'fault-cleared', 'run-closed'])
      expect(kinds).toContain(kind);
  });

  it('differ in a fact that is gone, and only in it', () => {
    const less = { ...small, facts: { a: small.facts['a']?.toSpliced(1, 1) ?? [] } };
    expect(differencesOf(small, less)).toEqual([
      {
        area: 'run',
        scene: 'a',
        place: 'step-started boil sink 1',
        before: JSON.stringify(small.facts['a']?.[1]),
        after: '(not there)',
      },
    ]);
  });

  it('differ in when it happened', () => {
    const later = {
      ...small,
      facts: { a: small.facts['a']?.with(0, { atS: 1, kind: 'run-started' }) ?? [] },
    };
    expect(differencesOf(small, later)).toMatchObject([
      { place: 'run-started.atS', before: '0', after: '1' },
    ]);
  });
});

describe('what is told of it', () => {
  it('sets changed lines beside what they were', () => {
    const pairs = align(['a', 'b', 'c', 'd'], ['a', 'x', 'c', 'd', 'e'], (one) => one, true);
    expect(pairs.filter((pair) => pair.before !== pair.after)).toEqual([
      { before: 'b', after: 'x' },
      { after: 'e' },
    ]);
  });

  it('counts, tells the same difference once, and leaves the meant ones out', () => {
    const sheets = (line: string) => ({ a: ['Plan', line], b: ['Plan', line] });
    const before: Dump = { ...small, planTexts: sheets('Boil.') };
    const after: Dump = {
      ...small,
      planTexts: sheets('Cook.'),
      plans: { a: { steps: { 'boil sink 1': { startS: 61 } }, finishS: 101 } },
    };
    const known = [{ areas: ['plan'], place: /^a: finishS$/, reason: 'Counted twice.' }] as const;
    const all = judged(differencesOf(before, after), known);
    const lines = reportLines(all, comparedOf(before), known);
    expect(lines).toEqual([
      '1 plans: 1 steps, 1 difference and 1 known',
      '  steps.boil sink 1.startS  [a]',
      '    - 60',
      '    + 61',
      '1 simulated runs: 3 facts, 0 differences',
      '2 printed plans: 4 lines, 2 differences',
      '  [2 times, first: a]',
      '    - Boil.',
      '    + Cook.',
      '1 plans: 1 sentences, 0 differences',
      '1 records: 2 lines, 0 differences',
      'Known, 1 times: Counted twice.',
    ]);
  });

  it('tells a scene that one version does not have', () => {
    expect(differencesOf(small, { ...small, records: {} })).toMatchObject([
      { area: 'record', place: 'scene', before: 'played', after: '(not there)' },
    ]);
  });
});

describe('a difference that is only in the way of writing', () => {
  const known = (before: string, after: string): boolean => {
    const difference = { area: 'plan text', scene: 'a', place: '', before, after } as const;
    return judged([difference], KNOWN)[0]?.known !== undefined;
  };

  it.each([
    [
      'Run it.  [4 h 38 min (4 h 22 min to 5 h 09 min)]',
      'Run it.  [4 h 38 min (4 h 22 min to 5 h 9 min)]',
    ],
    ['Gather.  [30 min (20 min to 60 min)]', 'Gather.  [30 min (20 min to 1 h)]'],
    ['Cover.  [10 min (5 min 55 s to 18 min)]', 'Cover.  [9 min 50 s (5 min 55 s to 18 min)]'],
    ['Table: clean and cover', 'Table: Cover'],
    ['Sink: pour boiling water (irui)', 'Sink: Pour boiling water (irui)'],
  ])('%s', (before, after) => {
    expect(known(before, after)).toBe(true);
  });

  it.each([
    ['Gather.  [30 min (20 min to 60 min)]', 'Gather.  [30 min (20 min to 1 h 1 min)]'],
    ['Pour 2 L in 3 min.', 'Pour 3 L in 3 min.'],
    ['Table: clean and cover', 'Table: Clean thoroughly'],
    ['Sink: pour boiling water (irui)', 'Sink: Heat to glow (irui)'],
    ['Wait.', 'wait.'],
  ])('is not %s', (before, after) => {
    expect(known(before, after)).toBe(false);
  });
});
