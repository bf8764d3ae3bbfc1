import { afterEach, describe, expect, it, vi } from 'vitest';
import { latestOf } from '../../../../src/app/controllers/planner/latest.ts';
import { createPlanner } from '../../../../src/app/controllers/planner/planner.ts';
import { JobStopped } from '../../../../src/app/controllers/planner/job-stopped.ts';
import { errorData, errorOf } from '../../../../src/app/controllers/planner/wire.ts';
import { workOff } from '../../../../src/app/controllers/planner/work-off.ts';
import { surenessOf } from '../../../../src/core/advice/index.ts';
import { planCovers } from '../../../../src/core/covering/index.ts';
import { buildPlan } from '../../../../src/core/plan/index.ts';
import { LanesRefusal } from '../../../../src/core/pouring/index.ts';
import { ScheduleRefusal } from '../../../../src/core/schedule/index.ts';
import { OutOfRangeError } from '../../../../src/core/units/index.ts';
import { buildUtensilPlan } from '../../../../src/core/utensils/index.ts';
import { kitchenOf } from '../../../core/plan/support/plans.ts';
import { otherThread } from './threads.ts';

const KITCHEN = kitchenOf('flat-coils');
const START = { startWallMs: Date.parse('2027-04-18T13:00:00Z') };
const NAMES = { kettle: 'Second kettle', 'stove-kettle': 'Kettle on the stove', urn: 'Urn' };
const before = () => ({
  situation: { kitchen: KITCHEN, options: START },
  plan: buildPlan(KITCHEN, START),
});

afterEach(() => vi.useRealTimers());

describe('a planner with a thread of its own', () => {
  it('gives the same plan as the page would, copied twice, and starts one worker for all', async () => {
    const { planner, starts, log } = otherThread();
    const { plan, heat, pours } = await planner.ask('plan', { kitchen: KITCHEN, options: START });
    expect(plan).toEqual(buildPlan(KITCHEN, START));
    expect(heat.length).toBeGreaterThan(2);
    expect(pours.length).toBeGreaterThan(0);
    const { told, sureness } = await planner.ask('sureness', { plan, options: START });
    expect(told.length).toBeGreaterThan(0);
    expect(sureness).toEqual(surenessOf(plan, START));
    expect((await planner.ask('pour-moves', plan)).length).toBe(8);
    expect(starts).toHaveLength(1);
    expect(log).not.toContain('here');
    expect(planner.isHere()).toBe(false);
  });

  it('tells how far advice is, and stops it when it is asked to', async () => {
    const { planner, log } = otherThread();
    const stopping = new AbortController();
    const seen: number[] = [];
    const list = planner.ask(
      'advice',
      { before: before(), options: { names: NAMES } },
      {
        signal: stopping.signal,
        onProgress: (now) => {
          if (now) seen.push(now.done);
          if (now?.done === 3) stopping.abort();
        },
      },
    );
    await expect(list).rejects.toBeInstanceOf(JobStopped);
    expect(seen).toEqual([1, 2, 3]);
    expect(log).toEqual(['ask 1 advice', 'stop 1']);
    // What is stopped before it is asked is not asked.
    const never = planner.ask('pour-moves', before().plan, { signal: stopping.signal });
    await expect(never).rejects.toBeInstanceOf(JobStopped);
    expect(log).toHaveLength(2);
  });

  it('stops an older request when a newer one comes', async () => {
    const { planner, log } = otherThread();
    const ask = latestOf(planner.ask);
    const older = ask('plan', { kitchen: KITCHEN, options: START });
    const newer = ask('plan', { kitchen: { ...KITCHEN, altitudeM: 500 }, options: START });
    await expect(older).rejects.toBeInstanceOf(JobStopped);
    expect((await newer).plan.kitchen.altitudeM).toBe(500);
    expect(log).toEqual(['ask 1 plan', 'stop 1', 'ask 2 plan']);
  });

  it('gives refusals back with their class, words, field, value found and what is allowed', async () => {
    const { planner } = otherThread();
    const asked = { kitchen: KITCHEN, fixtures: ['nothing'], what: 'spilt', options: START };
    const refusal = await planner.ask('recheck', asked).catch((error: unknown) => error);
    expect(refusal).toBeInstanceOf(OutOfRangeError);
    const made = await workOff('recheck', asked, {
      isStopped: () => false,
      onProgress: () => undefined,
    }).catch((error: unknown) => error);
    expect(refusal).toMatchObject({ input: 'fixtureIds', found: 'nothing' });
    expect(errorData(refusal)).toEqual(errorData(made));
    for (const error of [
      new ScheduleRefusal('infeasible', 'deadlineS', 3, '4 or more', 'Wait.'),
      new LanesRefusal('too-fine', 'swathM', 0.001, 'up to 500 lanes', 'Pour wider.'),
      new TypeError('x is not a function'),
      new JobStopped(),
    ]) {
      const again = errorOf(structuredClone(errorData(error)));
      expect(again.message).toBe(error.message);
      if (error.name !== 'TypeError') expect(again.constructor).toBe(error.constructor);
      expect({ ...errorData(again), name: error.name }).toEqual(errorData(error));
    }
    // A value that cannot be copied is told in words.
    expect(errorData(new OutOfRangeError('x', () => 1, 'a number')).found).toBeTypeOf('string');
  });
});

describe('a planner whose thread is missing or lost', () => {
  it('works on the page where no worker can be started, and says so', async () => {
    const start = vi.fn(() => {
      throw new Error('no workers here');
    });
    const planner = createPlanner({ start, here: async () => ({ workOff }) });
    expect(planner.isHere()).toBe(false);
    const { plan } = await planner.ask('plan', { kitchen: KITCHEN, options: START });
    expect(plan).toEqual(buildPlan(KITCHEN, START));
    expect(planner.isHere()).toBe(true);
    await planner.ask('pour-moves', plan);
    expect(start).toHaveBeenCalledTimes(1);
  });

  it('loses nothing when the worker fails to load or dies with work open', async () => {
    const { planner, starts, log } = otherThread({ isMute: true });
    const plan = planner.ask('plan', { kitchen: KITCHEN, options: START });
    const moves = planner.ask('pour-moves', before().plan);
    starts[0]?.onFailed();
    expect((await plan).plan).toEqual(buildPlan(KITCHEN, START));
    expect(await moves).toHaveLength(8);
    expect(log).toEqual(['ask 1 plan', 'ask 2 pour-moves', 'end', 'here', 'here']);
    expect(planner.isHere()).toBe(true);
  });

  it('starts one that worked once more after it died, and no more than that', async () => {
    const { planner, starts } = otherThread();
    const { plan } = await planner.ask('plan', { kitchen: KITCHEN, options: START });
    starts[0]?.onFailed();
    expect(planner.isHere()).toBe(false);
    await planner.ask('pour-moves', plan);
    expect(starts).toHaveLength(2);
    // What the first one says now is heard by nobody.
    starts[0]?.onFailed();
    expect(planner.isHere()).toBe(false);
    starts[1]?.onFailed();
    expect(planner.isHere()).toBe(true);
    expect(await planner.ask('pour-moves', plan)).toHaveLength(8);
    expect(starts).toHaveLength(2);
  });

  it('takes over from a worker that says nothing', async () => {
    vi.useFakeTimers();
    const { planner, log } = otherThread({ isMute: true });
    const moves = planner.ask('pour-moves', before().plan);
    await vi.advanceTimersByTimeAsync(14_000);
    expect(log).not.toContain('end');
    await vi.advanceTimersByTimeAsync(2000);
    expect(log).toContain('end');
    await vi.advanceTimersByTimeAsync(100);
    expect(await moves).toHaveLength(8);
  });
});

it('covers and utensils are worked out there as here', async () => {
  const { planner, log } = otherThread();
  const kitchen = kitchenOf('mountain-gas');
  const plan = buildPlan(kitchen, START);
  expect(await planner.ask('covers', plan)).toEqual(planCovers(kitchen, plan));
  expect(await planner.ask('utensils', kitchen)).toEqual(buildUtensilPlan(kitchen));
  expect(log).not.toContain('here');
});
