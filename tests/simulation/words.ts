import type { Dice } from './dice.ts';
import type { Asked, World } from './world.ts';

/** The newer engine's view says how much time is missing; the older one does not. */
function missingS(world: World): number {
  const { clockQuestion } = world.view as { clockQuestion?: { missingS: number } };
  return clockQuestion?.missingS ?? 0;
}

/** A person's word about the clock, always true; half of them first mend the clock exactly. */
export function tellsTime(world: World, dice: Dice): boolean {
  const { truth } = world;
  if (Math.abs(world.offsetS) > 1 && dice.chance(0.4)) {
    world.setsClock(0, 'the clock is put exactly right');
    if (!world.view.askClock) return true;
  }
  const right = Math.abs(world.offsetS) < 2;
  const passed = truth.sleptOnly;
  const said: Asked = right
    ? { kind: 'answer-clock', right }
    : { kind: 'answer-clock', right, actualWallMs: world.trueMs };
  const done = world.asks(said);
  const again = done.refusal === 'passed-missing' ? world.asks({ ...said, passed } as Asked) : done;
  if (again.refusal !== null) return false;
  truth.clockTold();
  return true;
}

/**
 * A wrong word about the clock, seen as wrong a while later and taken back.
 * Whether an answer far beyond any clock is taken, is told too.
 */
export function tellsWrongTime(world: World, dice: Dice): { farAhead: boolean; given: boolean } {
  if (!world.view.askClock) return { farAhead: false, given: false };
  const years = world.trueMs + 40 * 365 * 86_400_000;
  const far = dice.chance(0.25);
  const actualWallMs = far ? years : world.trueMs + dice.between(6, 30) * 3_600_000;
  const passed = missingS(world) > 0 || dice.chance(0.7);
  const before = world.truth.stained;
  world.truth.stained = true;
  const done = world.asks({ kind: 'answer-clock', right: false, actualWallMs, passed } as Asked);
  if (done.refusal !== null) {
    world.truth.stained = before;
    return { farAhead: false, given: false };
  }
  return { farAhead: far, given: true };
}

/** The untrue word is taken back; false: it could not be. */
export function takesBack(world: World): boolean {
  const { truth } = world;
  const done = world.asks({ kind: 'withdraw-clock-answer' });
  if (done.refusal !== null) return false;
  truth.stained = false;
  truth.tookBack = true;
  return true;
}
