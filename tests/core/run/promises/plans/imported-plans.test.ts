import { describe, expect, it } from 'vitest';
import { readRun } from '../../../../../src/core/import/index.ts';
import { asWritten } from '../../../../../src/core/messages/index.ts';
import { inEnglish } from '../../../../support/english.ts';
import { encodeEntries } from '../../../../../src/core/journal/index.ts';
import { checkPlan, type Plan, type Step } from '../../../../../src/core/plan/index.ts';
import { createRun, simulateRun } from '../../../../../src/core/run/index.ts';
import { DEMOS, planOfDemo } from '../../../plan/support/plans.ts';

const AT = { wallMs: 1_767_225_600_000, monoMs: 0, session: 'page' };
const plan = planOfDemo('flat-coils');

function problemsOf(changed: unknown): readonly string[] {
  const body = { kind: 'drafted' as const, plan: changed as Plan, notBeforeWallMs: 0 };
  const read = readRun(encodeEntries([{ seq: 1, id: 'a', at: AT, body }]));
  return 'problems' in read ? read.problems.map(inEnglish.say) : [];
}

function withSteps(change: (step: Step) => Step): Plan {
  return { ...plan, steps: plan.steps.map(change) };
}

describe('a run from a file', () => {
  it.each(DEMOS)('of a good plan is taken: %s', (demo) => {
    // Verifies: I-28
    expect(problemsOf(planOfDemo(demo))).toEqual([]);
  });

  it('that was led to its end is taken', () => {
    const { facts } = simulateRun(plan, { eager: true });
    expect('facts' in readRun(encodeEntries(facts))).toBe(true);
  });

  it('with a plan of another version, or none, is refused by what it lacks', () => {
    // Verifies: I-28
    expect(problemsOf({ ...plan, version: 99 })).toEqual([
      expect.stringContaining('plan.version is 99; allowed: 2'),
    ]);
    expect(problemsOf({ ...plan, steps: 7 })[0]).toContain('plan.steps is 7');
    expect(problemsOf({ ...plan, kitchen: { format: 'other' } })[0]).toContain('plan.kitchen');
    const holed = withSteps((step) => ({ ...step, stages: undefined }) as unknown as Step);
    expect(problemsOf(holed)[0]).toContain('plan.steps[0].stages');
    const endless = withSteps((step) => ({ ...step, durationS: { ...step.durationS, low: -1 } }));
    expect(problemsOf(endless)[0]).toContain('durationS.low');
  });

  it('of a plan from before fridges were switched on again is taken', () => {
    const chilled = new Set(['unplug', 'thaw', 'switch-on']);
    const steps = plan.steps
      .filter(({ kind }) => !chilled.has(kind))
      .map((step) => ({
        ...step,
        needs: step.needs.filter(({ step: id }) =>
          plan.steps.some((one) => one.id === id && !chilled.has(one.kind)),
        ),
      }));
    expect(checkPlan({ ...plan, steps }).map(({ rule }) => rule)).toContain('chilled');
    expect(problemsOf({ ...plan, steps })).toEqual([]);
  });

  it('with a rest from a last hot use that nobody told is refused', () => {
    // Verifies: I-17, I-28
    const early = withSteps((step) =>
      step.kind === 'rest' ? { ...step, lastHotWallMs: 1 } : step,
    );
    expect(problemsOf(early).join()).toContain('the kitchen tells no last hot use of it');
  });

  it('without rests, or with rests of a second, is refused in words', () => {
    // Verifies: I-28, I-17
    const restless = {
      ...plan,
      steps: plan.steps
        .filter(({ kind }) => kind !== 'rest')
        .map((step) => ({
          ...step,
          needs: step.needs.filter((need) => !need.step.startsWith('rest-')),
        })),
    };
    expect(problemsOf(restless).join()).toContain('has no rest before it');
    const short = withSteps((step) =>
      step.kind === 'rest'
        ? {
            ...step,
            stages: step.stages.map((stage) => ({
              ...stage,
              timers: stage.timers.map((timer) => ({ ...timer, lengthS: 1 })),
            })),
          }
        : step,
    );
    expect(problemsOf(short).join()).toMatch(/rests 1 s; the custom asks for 86400 s/);
  });

  it('with doubled ids is refused', () => {
    // Verifies: I-28
    const doubled = { ...plan, steps: [...plan.steps, plan.steps[0]] };
    expect(problemsOf(doubled).join()).toContain('is named twice');
  });

  it('with a change of the plan that the engine would not take is refused', () => {
    // Verifies: I-28
    const begun = createRun(plan, AT);
    const pour = plan.steps.find(({ kind }) => kind === 'pour') as Step;
    const facts = [
      ...begun.facts,
      { seq: 2, id: 'b', at: AT, body: { kind: 'run-started' as const } },
      {
        seq: 3,
        id: 'c',
        at: AT,
        body: {
          kind: 'plan-amended' as const,
          steps: [{ ...pour, gates: [] }],
          startS: {},
          reason: asWritten('So.'),
        },
      },
    ];
    const read = readRun(encodeEntries(facts));
    expect('problems' in read && read.problems.map(inEnglish.say).join()).toMatch(/lacks the gate/);
  });
});
