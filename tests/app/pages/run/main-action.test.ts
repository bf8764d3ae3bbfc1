import { describe, expect, it } from 'vitest';
import { leadTimer, mainAction, openGate } from '../../../../src/app/pages/run/step/main-action.ts';
import { asWritten } from '../../../../src/core/messages/index.ts';
import type { RunView, StepView } from '../../../../src/core/run/index.ts';
import { purgePlan, smallPlan } from '../../../core/run/support/fixtures.ts';
import { glowing, Tablet } from '../../../core/run/support/tablet.ts';

/** Id of the stage in which the glow is held. */
function holdOf(tablet: Tablet): string | undefined {
  return tablet.step('glow').step.stages.find(({ role }) => role === 'hold')?.id;
}

/** What the big button of the first step says. */
function shown(view: RunView): string {
  const step = view.currentSteps[0];
  if (!step) return 'nothing';
  const action = mainAction(view, step);
  if (action.kind === 'gate') return `gate ${action.gate.gate.id}`;
  return action.label.key;
}

/** Presses the main action of the first step, as a person does. */
function press(tablet: Tablet): void {
  const view = tablet.view;
  const step = view.currentSteps[0];
  if (!step) return;
  const action = mainAction(view, step);
  if (action.kind === 'press') expect(tablet.tries(action.request)).toBeNull();
  else if (action.kind === 'gate')
    expect(
      tablet.tries({
        kind: 'answer-gate',
        gate: action.gate.gate.id,
        scopeKey: action.gate.scopeKey,
        answer: 'yes',
      }),
    ).toBeNull();
}

describe('the one main action', () => {
  it('is never refused when it can be pressed, all the way through a run', () => {
    const tablet = new Tablet(smallPlan);
    expect(tablet.tries({ kind: 'start-run' })).toBeNull();
    for (let n = 0; n < 400 && tablet.view.status !== 'closed'; n += 1) {
      const view = tablet.view;
      const step = view.currentSteps[0];
      const action = step && mainAction(view, step);
      if (action && action.kind !== 'wait') press(tablet);
      else {
        tablet.passes(Math.max(1, (view.wakeInS ?? 60) + 1));
      }
    }
    expect(tablet.view.status).toBe('closed');
    expect(tablet.view.closedAs).toBe('completed');
  });

  it('asks gates one at a time before a step can begin', () => {
    const tablet = new Tablet(purgePlan);
    tablet.tries({ kind: 'start-run' });
    const asked: string[] = [];
    for (let n = 0; n < 20 && shown(tablet.view).startsWith('gate'); n += 1) {
      asked.push(shown(tablet.view));
      press(tablet);
    }
    expect(new Set(asked).size).toBe(asked.length);
    expect(shown(tablet.view)).toBe('run.action.begin');
  });

  it('lets an alarm be answered and a glow be ended while the run is held', () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'pause' });
    tablet.passes(310);
    const looking = mainAction(tablet.view, tablet.step('glow'));
    expect(looking).toMatchObject({ request: { kind: 'acknowledge-timer' } });
    if (looking.kind === 'press') expect(tablet.tries(looking.request)).toBeNull();
    tablet.passes(300);
    const ending = mainAction(tablet.view, tablet.step('glow'));
    expect(ending).toMatchObject({ request: { kind: 'confirm', stage: holdOf(tablet) } });
    if (ending.kind === 'press') expect(tablet.tries(ending.request)).toBeNull();
  });

  it('offers only to go on while the run is held', () => {
    const tablet = new Tablet(purgePlan);
    tablet.tries({ kind: 'start-run' });
    tablet.tries({ kind: 'pause' });
    const view = tablet.view;
    const step = view.steps.find((s) => s.status === 'ready') as StepView;
    expect(mainAction(view, step)).toMatchObject({ kind: 'press', request: { kind: 'resume' } });
  });
});

describe('what leads a step', () => {
  const view = new Tablet(purgePlan).view;
  const step = view.steps[0] as StepView;
  const timer = {
    id: 'x',
    step: 's',
    stage: 'x',
    label: asWritten(''),
    purpose: 'at-least',
    status: 'running',
  } as const;
  const numbers = {
    cause: 1,
    lengthS: 10,
    atLeastS: 0,
    atMostS: 0,
    leftS: 10,
    lateByS: 0,
    alerting: false,
  };

  it('is the alerting timer before all others', () => {
    const hold = { ...timer, ...numbers, role: 'hold' } as const;
    const reminder = { ...timer, ...numbers, id: 'r', role: 'reminder', alerting: true } as const;
    expect(leadTimer({ ...step, timers: [hold, reminder] })?.id).toBe('r');
    expect(leadTimer({ ...step, timers: [{ ...reminder, alerting: false }, hold] })?.id).toBe('x');
    expect(leadTimer({ ...step, timers: [] })).toBeUndefined();
  });

  it('treats an unknown gate, and one that still settles, as open', () => {
    const gate = purgePlan.gates[0];
    if (!gate) throw new Error('the plan has no gate');
    const yes = { gate, scopeKey: 'run', value: 'yes', settlesInS: 0 } as const;
    expect(openGate({ ...step, gates: [yes] })).toBeUndefined();
    expect(openGate({ ...step, gates: [{ ...yes, value: 'unknown' }] })).toBeDefined();
    expect(openGate({ ...step, gates: [{ ...yes, settlesInS: 9 }] })).toBeDefined();
  });
});
