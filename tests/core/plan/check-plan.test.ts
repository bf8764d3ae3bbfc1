import { describe, expect, it } from 'vitest';
import { checkPlan, type Plan, type PlanProblem, type Step } from '../../../src/core/plan/index.ts';
import { planOfDemo } from './support/plans.ts';

const good = planOfDemo('flat-coils');

function without<T extends object>(whole: T, field: keyof T): T {
  const copy = { ...whole };
  delete copy[field];
  return copy;
}

/** The same without its way to make it safe. */
function unsafe(id: string): Plan {
  const steps = good.steps.map((one) => (one.id === id ? without(one, 'makeSafe') : one));
  return { ...good, steps };
}

function withStep(id: string, change: (step: Step) => Partial<Step>): Plan {
  return {
    ...good,
    steps: good.steps.map((one) => (one.id === id ? { ...one, ...change(one) } : one)),
  };
}

/** One way a plan can be wrong. */
const WRONG: readonly (readonly [
  what: string,
  plan: Plan,
  rule: PlanProblem['rule'],
  about: string,
])[] = [
  [
    'a step twice',
    { ...good, steps: [...good.steps, good.steps[0] as Step] },
    'ids',
    'prepare-ask',
  ],
  [
    'a step about nothing',
    withStep('clean-sink', () => ({ fixture: 'bath' })),
    'ids',
    'clean-sink',
  ],
  [
    'a need of no step',
    withStep('pour-sink-1', (s) => ({ needs: [...s.needs, { step: 'sing' }] })),
    'needs',
    'sing',
  ],
  [
    'no time between boil and pour',
    withStep('pour-sink-1', () => ({ needs: [{ step: 'boil-sink-1', withinS: 0 }] })),
    'needs',
    'pour-sink-1',
  ],
  ['a chain after nothing', withStep('rest-sink', () => ({ needs: [] })), 'needs', 'rest-sink'],
  [
    'a ring of needs',
    withStep('clean-sink', () => ({ needs: [{ step: 'pour-sink-1' }] })),
    'cycle',
    'clean-sink',
  ],
  [
    'a purge without its rest',
    withStep('heat-oven', () => ({ needs: [{ step: 'clean-oven' }] })),
    'rest',
    'heat-oven',
  ],
  [
    'a rest without cleaning',
    withStep('rest-oven', () => ({ needs: [{ step: 'prepare-clear' }] })),
    'rest',
    'heat-oven',
  ],
  [
    'a step without a time',
    { ...good, timetable: { ...good.timetable, startS: {} } },
    'timetable',
    'pour-sink-1',
  ],
  [
    'a step before what it needs',
    {
      ...good,
      timetable: {
        ...good.timetable,
        startS: { ...good.timetable.startS, 'glow-coil-back-left': 0 },
      },
    },
    'timetable',
    'glow-coil-back-left',
  ],
  [
    'a finish before its bound',
    { ...good, timetable: { ...good.timetable, finishS: 1 } },
    'timetable',
    '',
  ],
  ['a step without stages', withStep('clean-sink', () => ({ stages: [] })), 'stages', 'clean-sink'],
  [
    'a stage that never ends',
    withStep('clean-sink', (s) => ({ stages: s.stages.map((one) => without(one, 'say')) })),
    'stages',
    'clean-sink',
  ],
  [
    'a stage that asks nothing after an interruption',
    withStep('heat-oven', (s) => ({ stages: s.stages.map((one) => without(one, 'reviewAsk')) })),
    'stages',
    'heat-oven',
  ],
  [
    'a timer of no length',
    withStep('rest-sink', (s) => ({
      stages: s.stages.map((one) => ({
        ...one,
        timers: one.timers.map((t) => ({ ...t, lengthS: 0 })),
      })),
    })),
    'timers',
    'rest-sink',
  ],
  [
    'a glow nobody looks at',
    withStep('glow-coil-back-left', (s) => ({
      stages: s.stages.map((one) => ({
        ...one,
        timers: one.timers.filter(({ role }) => role !== 'reminder'),
      })),
    })),
    'timers',
    'glow-coil-back-left',
  ],
  [
    'a glow that may be broken',
    withStep('glow-coil-back-left', (s) => ({
      stages: s.stages.map((one) => ({
        ...one,
        timers: one.timers.map(
          (t) => ({ ...t, purpose: t.role === 'hold' ? 'at-least' : t.purpose }) as typeof t,
        ),
      })),
    })),
    'timers',
    'glow-coil-back-left',
  ],
  [
    'a pour without cold water',
    withStep('pour-sink-1', (s) => ({ stages: s.stages.slice(0, 1) })),
    'cold',
    'pour-sink-1',
  ],
  [
    'a pour that may be late',
    withStep('pour-sink-1', () => ({ needs: [{ step: 'boil-sink-1' }] })),
    'cold',
    'pour-sink-1',
  ],
  ['heat without a way to make it safe', unsafe('heat-oven'), 'make-safe', 'heat-oven'],
  [
    'a resource nobody has',
    withStep('clean-sink', () => ({ demands: { ladder: 1 } })),
    'resources',
    'clean-sink',
  ],
  [
    'more hands than there are',
    withStep('clean-sink', () => ({ demands: { hands: 2 } })),
    'resources',
    'clean-sink',
  ],
  [
    'two at once with one pair of hands',
    {
      ...good,
      timetable: {
        ...good.timetable,
        startS: {
          ...good.timetable.startS,
          'clean-hood': good.timetable.startS['clean-fridge'] ?? 0,
        },
      },
    },
    'resources',
    'clean-hood',
  ],
  ['a gate that is not described', { ...good, gates: [] }, 'gates', 'scald-dress'],
  ['a caution without words', { ...good, cautions: [] }, 'cautions', 'scald-carry'],
  ['a gate taken away', withStep('heat-oven', () => ({ gates: [] })), 'cautions', 'oven-pre'],
  [
    'a standing caution taken away',
    withStep('pour-sink-1', () => ({ standing: [] })),
    'cautions',
    'splash',
  ],
  [
    'an after caution taken away',
    withStep('pour-sink-1', () => ({ after: [] })),
    'cautions',
    'wet-floor',
  ],
  ['a fault without a policy', { ...good, faults: [] }, 'faults', 'heat-air'],
  [
    'a fixture without a method',
    { ...good, methods: good.methods.slice(1) },
    'methods',
    'counter-left',
  ],
  [
    'a purge that no step does',
    { ...good, steps: good.steps.filter(({ id }) => id !== 'purge-microwave') },
    'methods',
    'microwave',
  ],
  [
    'a cover that no step lays',
    { ...good, steps: good.steps.filter(({ id }) => id !== 'cover-table') },
    'methods',
    'table',
  ],
  ['a question that is not asked', { ...good, questions: [] }, 'questions', 'microwave'],
];

describe('checkPlan', () => {
  it('finds nothing in a plan that holds', () => {
    expect(checkPlan(good)).toEqual([]);
  });

  it('holds no older plan to cautions of a later edition, and no plan that has any of them lacks the rest', () => {
    const later = [
      'splash',
      'hot-refill',
      'steam-leap',
      'tap-chrome',
      'wash-unplugged',
      'sand-dust',
    ];
    const without = (ids: readonly string[]): Plan => ({
      ...good,
      cautions: good.cautions.filter(({ id }) => !ids.includes(id)),
      steps: good.steps.map((one) => ({
        ...one,
        standing: one.standing.filter((id) => !ids.includes(id)),
      })),
    });
    expect(checkPlan(without(later))).toEqual([]);
    const lacks = checkPlan(without(['wash-unplugged'])).flatMap(({ about }) => about);
    expect(lacks).toEqual(expect.arrayContaining(['clean-fridge', 'wash-unplugged']));
    // What there was from the first edition on is asked of every plan.
    const torn = checkPlan(without([...later, 'scald-carry'])).flatMap(({ about }) => about);
    expect(torn).toContain('scald-carry');
  });

  it.each(WRONG)('finds %s', (_, plan, rule, about) => {
    const found = checkPlan(plan).filter((one) => one.rule === rule);
    expect(found.length).toBeGreaterThan(0);
    if (about !== '') expect(found.flatMap((one) => one.about)).toContain(about);
    for (const { say } of found) expect(say).not.toBe('');
  });
});
