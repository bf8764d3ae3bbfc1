import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/core/plan/index.ts';
import { fold, type Fact, type RunView } from '../../src/core/run/index.ts';
import { purgePlan } from '../core/run/support/fixtures.ts';
import { Oracle } from './oracle/index.ts';
import { World, type Asked } from './world.ts';

const START_MS = 1_767_225_600_000;

/** The second boil does not wait for the first pour: one kettle for two. */
const plan: Plan = {
  ...purgePlan,
  steps: purgePlan.steps.map((one) => (one.id === 'boil-2' ? { ...one, needs: [] } : one)),
};

/** A world and the one who judges it, with a run that has begun. */
class Court {
  readonly world = new World(START_MS, plan, 0, START_MS);
  private readonly oracle = new Oracle(this.world);

  constructor() {
    this.does({ kind: 'start-run', clockRight: true });
    this.does({ kind: 'answer-gate', gate: 'scald-dress', scopeKey: 'run', answer: 'yes' });
  }

  does(...all: readonly Asked[]): void {
    for (const asked of all) {
      const { refusal } = this.world.asks(asked);
      if (refusal !== null) throw new Error(`${asked.kind} was refused: ${refusal}`);
      this.world.passes(10);
    }
  }

  boils(number: number): void {
    const step = `boil-${number}`;
    this.does({ kind: 'start-step', step }, { kind: 'confirm', step, stage: 'boil' });
  }

  pours(number: number): void {
    const step = `pour-${number}`;
    this.does(
      { kind: 'start-step', step },
      { kind: 'confirm', step, stage: 'pour' },
      { kind: 'confirm', step, stage: 'cold' },
    );
  }

  /** What an engine says that keeps no promise. */
  hears(body: Fact['body']): void {
    const { world } = this;
    const seq = world.state.seq + 1;
    const fact: Fact = { seq, id: `f${seq}`, at: world.readings(), body };
    world.facts = [...world.facts, fact];
    world.state = fold(world.facts);
    world.watch(world, fact);
    world.watch(world, null);
  }

  /** A screen that an engine without that promise would show. */
  sees(view: RunView): void {
    Object.defineProperty(this.world, 'view', { value: view });
    this.world.watch(this.world, null);
  }

  get found(): string[] {
    return this.oracle.found.all.map(({ promise, way }) => `${promise} ${way}`);
  }
}

describe('the one who judges', () => {
  it('lets a kettle be filled anew once it was doubted, and nobody pour from it as it stands', () => {
    const court = new Court();
    court.boils(1);
    court.does({ kind: 'report-recheck', fixture: 'kettle', text: 'Soup was heated in it.' });
    for (const { id } of court.world.view.faults) court.does({ kind: 'clear-fault', faultId: id });
    court.does({ kind: 'resume' }, { kind: 'start-step', step: 'boil-2' });
    expect(court.found).toEqual([]);
    court.hears({ kind: 'step-started', step: 'pour-1', attempt: 1, by: 'person' });
    expect(court.found).toContain('I-23 nothing boiled');
  });

  it('sees a full kettle filled that nobody doubted', () => {
    const court = new Court();
    court.boils(1);
    court.hears({ kind: 'step-started', step: 'boil-2', attempt: 1, by: 'person' });
    expect(court.found).toContain('I-23 a full kettle filled');
  });

  it('misses no boil whose pour was left out, but every pour that was stopped', () => {
    const court = new Court();
    court.boils(1);
    court.pours(1);
    court.does(
      { kind: 'start-step', step: 'boil-2' },
      { kind: 'skip-step', step: 'pour-2', reason: 'The hour has passed.' },
      { kind: 'stop-step', step: 'boil-2', reason: 'Something else.' },
      { kind: 'confirm-safe', step: 'boil-2' },
      { kind: 'start-step', step: 'cover-sink' },
      { kind: 'confirm', step: 'cover-sink', stage: 'cover' },
    );
    const { view } = court.world;
    expect(view.fixtures).toContainEqual({ id: 'sink', phase: 'covered' });
    expect(court.found).toEqual([]);
    court.sees({
      ...view,
      steps: view.steps.map((one) =>
        one.step.id === 'pour-2' ? { ...one, outcome: 'stopped' as const } : one,
      ),
    });
    expect(court.found).toEqual(['I-22 shown as done']);
  });
});
