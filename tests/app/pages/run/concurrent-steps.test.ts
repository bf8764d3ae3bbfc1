import { asWritten, type Message } from '../../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import { handTicks } from '../../../../src/app/pages/run/step/progress.ts';
import { ovenAtS, concurrentStep } from '../../../../src/app/pages/run/step/concurrent-steps.ts';
import type { Stage, StageRole } from '../../../../src/core/plan/index.ts';
import type { TimerView, StepView } from '../../../../src/core/run/index.ts';
import { purgePlan } from '../../../core/run/support/fixtures.ts';
import { Tablet } from '../../../core/run/support/tablet.ts';

const [blank] = new Tablet(purgePlan).view.steps as readonly [StepView];

const NOTHING: Message = asWritten('');

const timer = (role: TimerView['role'], atLeastS: number, lengthS: number): TimerView => ({
  id: 'c',
  step: 's',
  stage: 'x',
  label: NOTHING,
  purpose: 'at-least',
  role,
  status: 'running',
  lengthS,
  atLeastS,
  atMostS: atLeastS,
  leftS: lengthS - atLeastS,
  alerting: false,
  lateByS: 0,
  cause: 1,
});

function oven(role: StageRole, timers: readonly TimerView[]): StepView {
  const stage: Stage = {
    id: role,
    role,
    title: NOTHING,
    detail: [],
    timers: [],
    resumption: 'ask',
    hazards: [],
  };
  return {
    ...blank,
    status: 'active',
    stage: 0,
    timers,
    step: {
      ...blank.step,
      kind: 'self-clean',
      stages: [stage],
      picture: {
        kind: 'oven',
        stages: [
          { name: asWritten('Heat'), lengthS: 2400, tempC: 480 },
          { name: asWritten('Hold'), lengthS: 7200, tempC: 480 },
          { name: asWritten('Cool'), lengthS: 3600, tempC: 260 },
        ],
      },
    },
  };
}

describe('the now mark of an oven', () => {
  it.each([
    ['start', [], undefined],
    ['cycle', [timer('hold', 3000, 9600)], 3000],
    ['cool', [timer('hold', 600, 3600)], 10_200],
    ['warm-up', [timer('estimate', 5000, 2400)], 2400],
    ['hold', [timer('hold', 100, 7200)], 2500],
    ['off', [], 9600],
    ['open', [], 13_200],
  ] as const)('in %s', (role, timers, atS) => {
    expect(ovenAtS(oven(role, timers))).toBe(atS);
  });
  it('is not there before it runs', () => {
    expect(ovenAtS({ ...oven('cycle', []), status: 'ready' })).toBeUndefined();
  });
});

describe('the hand speed as a still picture', () => {
  it('has a tick each ten seconds of the pour, and none after it', () => {
    const pour = { ...oven('pour', [timer('estimate', 0, 43)]), stage: 0 };
    expect(handTicks(pour).map(({ atS }) => atS)).toEqual([10, 20, 30, 40]);
    expect(handTicks(pour)[0]?.share).toBeCloseTo(10 / 43);
    expect(handTicks({ ...pour, stage: 1 })).toEqual([]);
  });
});

describe('moving from step to step by pedal', () => {
  const named = (id: string): StepView => ({ ...blank, step: { ...blank.step, id } });
  const all = ['a', 'b', 'c'].map(named);
  it('goes on and back, round the end', () => {
    expect(concurrentStep(all, 'a', 1)).toBe('b');
    expect(concurrentStep(all, 'c', 1)).toBe('a');
    expect(concurrentStep(all, 'a', -1)).toBe('c');
    expect(concurrentStep(all, 'gone', 1)).toBe('a');
    expect(concurrentStep([], 'a', 1)).toBeUndefined();
  });
});
