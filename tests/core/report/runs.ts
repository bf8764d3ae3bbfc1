import { asWritten } from '../../../src/core/messages/index.ts';
import type { FixtureMethod, Plan, Question } from '../../../src/core/plan/index.ts';
import {
  reportOf,
  type FixtureReport,
  type Report,
  type StepReport,
} from '../../../src/core/report/index.ts';
import { DAY_S, smallPlan } from '../run/support/fixtures.ts';
import { resting, type Tablet } from '../run/support/tablet.ts';

const question: Question = {
  id: 'ask-hob',
  fixture: 'hob',
  ask: asWritten('How long must the burner glow?'),
  why: asWritten('Opinions differ.'),
  untilThen: asWritten('The longer time is planned'),
};

const methods: readonly FixtureMethod[] = [
  {
    fixture: 'sink',
    method: 'pour',
    cover: true,
    reason: asWritten('Hot liquid was poured into it'),
    term: asWritten('irui'),
    source: asWritten('A row of the custom'),
    checked: false,
    wouldChange: asWritten('Another material.'),
  },
  {
    fixture: 'hob',
    method: 'glow',
    cover: false,
    minutes: 10,
    reason: asWritten('It stood on the fire.'),
    term: asWritten('libun gamur'),
    source: asWritten('A row of the custom'),
    checked: true,
    overriddenBy: asWritten('Rabbi of the test'),
    wouldChange: asWritten('Nothing.'),
    question: 'ask-hob',
  },
];

/** The small plan with methods, an open question and an answer that replaced a row. */
export const toldPlan: Plan = {
  ...smallPlan,
  methods,
  questions: [question],
  kitchen: {
    ...smallPlan.kitchen,
    household: {
      ...smallPlan.kitchen.household,
      overrides: [
        {
          fixture: 'hob',
          method: 'glow',
          minutes: 10,
          saidBy: 'Rabbi of the test',
          saidOn: '2026-01-01',
          text: 'Ten minutes are enough',
        },
      ],
    },
  },
};

/** A run in which the sink has rested: its kettles may be boiled. */
export function rested(plan: Plan = toldPlan): Tablet {
  const tablet = resting(plan);
  tablet.passes(DAY_S + 10);
  return tablet;
}

/** Boils and pours one kettle, and gives it its cold water unless told not to. */
export function pours(tablet: Tablet, number: number, cold = true): void {
  tablet.does({ kind: 'start-step', step: `boil-${number}` });
  tablet.passes(240);
  tablet.says(`boil-${number}`);
  tablet.opens('scald-dress');
  tablet.does({ kind: 'start-step', step: `pour-${number}` });
  tablet.passes(60);
  tablet.says(`pour-${number}`);
  if (cold) tablet.says(`pour-${number}`);
}

export function fixtureOf(record: Report, id: string): FixtureReport {
  const found = record.fixtures.find((fixture) => fixture.id === id);
  if (!found) throw new Error(`no fixture ${id}`);
  return found;
}

export function stepOf(record: Report, id: string): StepReport {
  const all = [...record.general, ...record.fixtures.flatMap(({ steps }) => steps)];
  const found = all.find((step) => step.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
}

export const recorded = (tablet: Tablet): Report => reportOf(tablet.facts);
