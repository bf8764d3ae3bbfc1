import { Dice } from './dice.ts';
import { Oracle, type Finding } from './oracle/index.ts';
import { Person } from './person.ts';
import { settingFor } from './plans.ts';
import { trouble } from './troubles/index.ts';
import { World } from './world.ts';

const DAY_S = 86_400;

export type Told = {
  readonly seed: number;
  readonly name: string;
  readonly found: readonly Finding[];
  readonly story: readonly string[];
  readonly facts: number;
  readonly status: string;
};

/** How many looks a person takes at most before it is stopped. */
const LOOKS = 220;

/** A clock wrong from the start, s: mostly it is right. */
function startingOffsetS(dice: Dice, startMs: number): number {
  if (!dice.chance(0.14)) return 0;
  return dice.chance(0.3) ? -startMs / 1000 : dice.pick([-1, 1, -8 / 24, -3])! * DAY_S;
}

/** One run from its seed: the same seed tells the same story. */
export function runOne(seed: number): Told {
  const dice = new Dice(seed);
  const { plan, startMs, name } = settingFor(dice);
  const builtMs = startMs - 40 * DAY_S * 1000;
  const world = new World(startMs, plan, startingOffsetS(dice, startMs), builtMs);
  const oracle = new Oracle(world);
  const person = new Person(world, dice, dice.chance(0.7));
  const mishaps = dice.pick([0.03, 0.08, 0.15]) ?? 0.1;
  for (let looks = 0; looks < LOOKS && world.state.status !== 'closed'; looks += 1) {
    if (dice.chance(mishaps)) trouble(world, dice, oracle.found);
    if (!person.works())
      world.passes(person.waitS() * (dice.chance(0.9) ? 1 : dice.between(0.2, 1)));
    else world.passes(dice.between(1, 20));
    if (world.trueS > 25 * DAY_S) break;
  }
  closes(world);
  oracle.end(world);
  return {
    seed,
    name,
    found: oracle.found.all,
    story: world.story,
    facts: world.facts.length,
    status: world.state.closedAs ?? world.state.status,
  };
}

/** *Stop* is always accepted and leads to an end (I-13). */
function closes(world: World): void {
  if (world.state.status === 'closed') return;
  world.asks({ kind: 'stop-run', reason: 'The end.' });
  for (const { step, confirmed } of world.view.hot)
    if (!confirmed) world.asks({ kind: 'confirm-safe', step });
  for (const { fault } of world.view.coolings)
    world.asks({ kind: 'end-cooling', faultId: fault, as: 'taken-over' });
}
