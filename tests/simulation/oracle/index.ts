import { isDeepStrictEqual } from 'node:util';
import type { Step } from '../../../src/core/plan/index.ts';
import { fold, type Fact, type RunView } from '../../../src/core/run/index.ts';
import { Truth } from '../truth.ts';
import type { World } from '../world.ts';
import { restDayKept } from './days.ts';
import { Findings } from './findings.ts';
import { ClocksWatched, waitEnded } from './time.ts';
import { purgeBegun, resourcesHeld, waterUsed } from './work.ts';

export type { Finding } from './findings.ts';

/**
 * A boil whose every pour is done, or left out by a person with a reason: its
 * water is waited for by nobody, and that it was stopped leaves nothing undone.
 * The pours themselves are judged as ever.
 */
function servesNobody({ steps }: RunView, boil: Step): boolean {
  if (boil.kind !== 'boil') return false;
  const pours = steps.filter(({ step }) =>
    step.needs.some((need) => need.step === boil.id && need.withinS !== undefined),
  );
  return (
    pours.length > 0 &&
    pours.every(
      ({ outcome, reason }) =>
        outcome === 'done' || (outcome === 'skipped' && reason !== undefined),
    )
  );
}

/**
 * Judges a run by the promises I-01 to I-30, from the true world: what was
 * truly hot, cleaned, boiled, lit, and when. It reads what the engine says
 * (facts, view), never how it reckons.
 */
export class Oracle {
  readonly found = new Findings();
  private readonly clocks = new ClocksWatched();
  private readonly causes = new Set<string>();
  private seq = 1;

  constructor(world: World) {
    world.watch = (_, fact) => {
      if (fact) this.fact(world, fact);
      else this.look(world, world.view);
    };
    world.threw = (asked, error) =>
      this.found.add(world, 'I-12', 'an exception', `${asked.kind} threw ${String(error)}`);
  }

  private fact(world: World, { seq, body }: Fact): void {
    const { truth } = world;
    if (seq !== this.seq + 1)
      this.found.add(world, 'I-02', 'numbers', `fact ${seq} follows ${this.seq}.`);
    this.seq = seq;
    const before = 'step' in body ? truth.places.get(body.step ?? '') : undefined;
    const place = before && { ...before };
    waterUsed(this.found, world, body, place);
    truth.follow(body, world.trueS);
    waitEnded(this.found, world, body, place);
    if (body.kind === 'step-started') purgeBegun(this.found, world, body, world.view);
    restDayKept(this.found, world, body);
    if (body.kind === 'timer-due') {
      const cause = `${body.timer}!${body.cause}`;
      if (this.causes.has(cause)) this.found.add(world, 'I-09', 'told twice', cause);
      this.causes.add(cause);
    }
    if (body.kind === 'fault-raised' && body.faultKind === 'burned')
      this.clocks.burned(body.fault, world.trueS);
    if (body.kind === 'fault-raised' && body.text.startsWith('A turn'))
      this.found.add(world, 'I-16', 'an endless turn', body.text);
    if (body.kind === 'run-closed' && body.as === 'completed') this.completed(world);
  }

  /** I-22: completed means every purge truly done, after the last doubt, or left out by a person with a reason. */
  private completed(world: World): void {
    const { truth } = world;
    for (const { step, outcome, reason } of world.view.steps) {
      // A boil serves its pour, and the pour is what must have been done.
      if (step.phase !== 'purge' || step.kind === 'boil') continue;
      if (outcome === 'skipped' && reason !== undefined) continue;
      const doneS = truth.purgedS.get(step.id);
      const doubtS = truth.doubtedS.get(Truth.thing(step));
      if (outcome !== 'done' || doneS === undefined)
        this.found.add(
          world,
          'I-22',
          'completed, not purged',
          `${step.id} is ${String(outcome)} in a completed run.`,
        );
      else if (doubtS !== undefined && doubtS > doneS)
        this.found.add(
          world,
          'I-24',
          'a doubt forgotten',
          `${step.id} was done before ${Truth.thing(step)} was doubted.`,
        );
    }
  }

  /** What stands on the screen, at any moment. */
  private look(world: World, view: RunView): void {
    this.clocks.look(this.found, world, view.timers);
    this.clocks.cools(this.found, world, view);
    resourcesHeld(this.found, world, view);
    for (const { id, phase } of view.fixtures) {
      if (phase !== 'done' && phase !== 'covered') continue;
      const left = view.steps.find(
        ({ step, outcome }) =>
          step.fixture === id &&
          step.phase === 'purge' &&
          !servesNobody(view, step) &&
          (outcome === 'stopped' || outcome === 'failed' || outcome === 'not-run'),
      );
      if (left)
        this.found.add(
          world,
          'I-22',
          'shown as done',
          `${id} is shown as ${phase}; ${left.step.id} is ${String(left.outcome)}.`,
        );
    }
  }

  /** At the end: the state is the fold of the facts (I-01). */
  end(world: World): void {
    if (!isDeepStrictEqual(fold(world.facts), world.state))
      this.found.add(world, 'I-01', 'fold', 'The facts fold to another state.');
    if (world.state.status !== 'closed')
      this.found.add(
        world,
        'I-13',
        'cannot be closed',
        `The run is ${world.state.status} after a stop.`,
      );
  }
}
