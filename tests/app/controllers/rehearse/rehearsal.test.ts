import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import {
  createRehearsal,
  type Ahead,
  type Rehearsal,
} from '../../../../src/app/controllers/rehearse/rehearsal.ts';
import { chooseLanguage } from '../../../../src/app/context/language.ts';
import type { Plan } from '../../../../src/core/plan/index.ts';
import { simulateRun } from '../../../../src/core/run/index.ts';
import { planOfDemo } from '../../../core/plan/support/plans.ts';
import { smallPlan } from '../../../core/run/support/fixtures.ts';

beforeAll(() => chooseLanguage(['en']));

let realMs: number;
let isStill: boolean;
let rehearsal: Rehearsal;

/** A rehearsal of a plan from real time 0 on. */
async function rehearse(plan: Plan): Promise<void> {
  realMs = 0;
  isStill = false;
  rehearsal = createRehearsal(plan, {
    readMs: () => realMs,
    nowWallMs: () => Date.UTC(2026, 2, 1, 15),
    isStill: () => isStill,
  });
  await rehearsal.open();
}

beforeEach(() => rehearse(smallPlan));

const seen = () => rehearsal.view() ?? expect.fail('no view yet');

/** Lets real time pass in beats until the run is over or so much has passed; gives what was announced, each once. */
async function play(mostMs: number): Promise<readonly Ahead[]> {
  const told: Ahead[] = [rehearsal.ahead()];
  for (const endMs = realMs + mostMs; realMs < endMs; realMs += 100) {
    await rehearsal.beat();
    if (told.at(-1) !== rehearsal.ahead()) told.push(rehearsal.ahead());
    if (rehearsal.ahead().kind === 'over') break;
  }
  return told;
}

describe('a rehearsal', () => {
  it('stands on the first screen until the opening was shown', async () => {
    expect(seen().status).toBe('drafting');
    expect(rehearsal.ahead()).toEqual({
      kind: 'press',
      request: { kind: 'start-run' },
      step: undefined,
    });
    await rehearsal.beat();
    expect(seen().status).toBe('drafting');
  });

  it.each([
    ['a small plan', () => smallPlan],
    ['the flat with coils', () => planOfDemo('flat-coils')],
  ])('plays the whole of %s in about three minutes, everything done', async (_, plan) => {
    await rehearse(plan());
    await play(600_000);
    expect(rehearsal.ahead().kind).toBe('over');
    expect(seen().closedAs).toBe('completed');
    expect(seen().steps.every(({ outcome }) => outcome === 'done')).toBe(true);
    expect(realMs).toBeGreaterThan(140_000);
    expect(realMs).toBeLessThan(210_000);
  });

  it('presses what the played person presses, each announced before, gates too', async () => {
    const told = await play(600_000);
    const pressed = told.flatMap((one) => (one.kind === 'press' ? [one] : []));
    const { facts } = simulateRun(smallPlan, { startWallMs: Date.UTC(2026, 2, 1, 15) });
    const count = (kind: string) => facts.filter(({ body }) => body.kind === kind).length;
    const announced = (kind: string) => pressed.filter(({ request }) => request.kind === kind);
    expect(count('gate-answered')).toBeGreaterThan(0);
    expect(announced('answer-gate')).toHaveLength(count('gate-answered'));
    expect(announced('acknowledge-timer')).toHaveLength(count('timer-acknowledged'));
    // Each names the step whose screen is to be shown.
    const unnamed = pressed.filter(({ step }) => step === undefined);
    expect(unnamed.map(({ request }) => request.kind)).toEqual(['start-run']);
  });

  it('stands while paused, also when real time passes', async () => {
    await play(20_000);
    rehearsal.play(false);
    const before = [rehearsal.nowMs(), seen().doneSteps, rehearsal.ahead()];
    await play(60_000);
    expect([rehearsal.nowMs(), seen().doneSteps, rehearsal.ahead()]).toEqual(before);
    rehearsal.play(true);
    await play(60_000);
    expect(seen().doneSteps).toBeGreaterThan(before[1] as number);
  });

  it('is stepped without real time passing, and stands after each step', async () => {
    let steps = 0;
    for (; rehearsal.ahead().kind !== 'over' && steps < 1000; steps += 1) {
      const before = rehearsal.ahead();
      await rehearsal.step();
      expect(rehearsal.ahead()).not.toBe(before);
      expect(rehearsal.playing()).toBe(false);
    }
    expect(realMs).toBe(0);
    expect(seen().closedAs).toBe('completed');
  });

  it('takes twice as long at half the speed', async () => {
    rehearsal.setSpeed(0.5);
    await play(1_200_000);
    const slowMs = realMs;
    expect(seen().closedAs).toBe('completed');
    expect(slowMs).toBeGreaterThan(260_000);
  });

  it('takes the presses of whoever sits there, and says what is refused', async () => {
    await rehearsal.step();
    expect(seen().status).toBe('running');
    expect(await rehearsal.send({ kind: 'start-step', step: 'none such' })).toBe(false);
    expect(rehearsal.refusal()).toBeDefined();
    expect(await rehearsal.send({ kind: 'pause' })).toBe(true);
    expect(rehearsal.refusal()).toBeUndefined();
    expect(seen().status).toBe('held');
    await rehearsal.send({ kind: 'resume' });
    rehearsal.play(true);
    await play(600_000);
    expect(seen().closedAs).toBe('completed');
  });

  it('stands when a fault is told: nobody is hurried through a burn', async () => {
    await rehearsal.step();
    rehearsal.play(true);
    expect(await rehearsal.send({ kind: 'report-fault', fault: 'burned' })).toBe(true);
    const before = rehearsal.nowMs();
    await play(60_000);
    expect(rehearsal.playing()).toBe(false);
    expect(rehearsal.nowMs()).toBe(before);
  });

  it('leaps from moment to moment where nothing is to move', async () => {
    isStill = true;
    const shown = new Set<number>();
    const turns = new Set<Ahead>();
    for (let n = 0; n < 400; n += 1) {
      await rehearsal.beat();
      shown.add(rehearsal.nowMs());
      turns.add(rehearsal.ahead());
      realMs += 200;
    }
    expect(shown.size).toBeGreaterThan(1);
    expect(shown.size).toBeLessThanOrEqual(turns.size + 1);
  });
});
