import { ranOut } from '../../../src/core/plan/index.ts';
import { Truth } from '../truth.ts';
import { takesBack, tellsWrongTime } from '../words.ts';
import { HOUR_S, type Trouble } from './moment.ts';

export const doubts: Trouble = (world, dice) => {
  const touched = [...new Set(world.view.steps.map(({ step }) => step.fixture))];
  const fixture = dice.pick(touched.filter((one): one is string => one !== undefined));
  if (fixture === undefined) return;
  const text = dice.chance(0.4) ? '' : 'Milk boiled over.';
  const at = Math.floor(world.trueMs / 1000);
  if (world.asks({ kind: 'report-recheck', fixture, text }).refusal !== null) return;
  // A third of them pressed the wrong one, and half of those see it a little later; no die is cast for it, so that older runs stay as they were.
  if (at % 3 !== 0) return;
  if (at % 2 === 0) world.passes(20);
  world.asks({ kind: 'withdraw-recheck', fixture });
};
export const doubtsKettle: Trouble = (world, dice, found) => {
  const kettles = world.view.plan.steps.flatMap(({ work }) =>
    work.on === 'vessel' || work.on === 'kettle' ? [work.vessel.id] : [],
  );
  const kettle = dice.pick([...new Set(kettles)]);
  if (kettle === undefined) return;
  const done = world.asks({
    kind: 'report-recheck',
    fixture: kettle,
    text: 'Soup was heated in it.',
  });
  if (done.refusal === 'unknown-fixture')
    found.add(
      world,
      'I-24',
      'a kettle not known',
      `A doubt about ${kettle} was refused: ${done.refusal}.`,
    );
};
export const cleansAgain: Trouble = (world, dice) => {
  const cleaned = world.view.steps.filter(
    ({ step, status, outcome }) =>
      step.kind === 'clean' &&
      status === 'settled' &&
      outcome === 'done' &&
      step.fixture !== undefined,
  );
  const again = dice.pick(cleaned);
  if (again)
    world.asks({
      kind: 'repeat-step',
      step: again.step.id,
      reason: 'Grease was left; with hot water.',
    });
};
export const skips: Trouble = (world, dice) => {
  const open = world.view.steps.filter(({ status }) => status === 'ready' || status === 'waiting');
  const boils = open.filter(({ step }) => step.kind === 'boil');
  const one = dice.pick(
    boils.length > 0 && dice.chance(0.6)
      ? boils.slice(0, 1)
      : open.filter(({ step }) => step.kind !== 'rest' && step.kind !== 'clean'),
  );
  if (one) world.asks({ kind: 'skip-step', step: one.step.id, reason: 'Left out.' });
};
export const stops: Trouble = (world, dice) => {
  const one = dice.pick(
    world.view.steps.filter(({ step, status }) => status === 'active' && step.phase !== 'rest'),
  );
  if (one) world.asks({ kind: 'stop-step', step: one.step.id, reason: 'Something else.' });
};
export const repeats: Trouble = (world, dice) => {
  const one = dice.pick(world.view.steps.filter(({ status }) => status === 'settled'));
  if (one) world.asks({ kind: 'repeat-step', step: one.step.id, reason: 'Again.' });
};
/** "It was last hot at …", truly, as a clock on the wall would tell it. */
export const dates: Trouble = (world, dice) => {
  const clocks = world.view.timers.filter(
    ({ purpose, role }) => purpose === 'at-least' && role === 'hold',
  );
  const clock = dice.pick(clocks);
  if (!clock) return;
  const { truth } = world;
  const thing = Truth.thing(truth.step(clock.step));
  const hot = truth.step(clock.step).kind !== 'rest';
  const atS = hot
    ? world.trueS - dice.between(1, 5) * HOUR_S
    : (truth.touchedS.get(thing) ?? 0) - dice.between(1, 10) * HOUR_S;
  if (!hot && (truth.doubtedS.get(thing) ?? -Infinity) >= atS) return;
  const before = truth.datedS.get(thing);
  truth.corrections += 1;
  if (!hot) truth.datedS.set(thing, atS);
  const done = world.asks({
    kind: 'correct-time',
    timer: clock.id,
    sinceWallMs: world.startMs + atS * 1000,
    reason: 'The clock on the wall said so.',
    // Who looks at the tablet beside the clock on the wall says it is right only when it is.
    ...(Math.abs(world.offsetS) < 2 && { clockRight: true }),
  });
  if (done.refusal === null) return;
  truth.corrections -= 1;
  if (hot) return;
  if (before === undefined) truth.datedS.delete(thing);
  else truth.datedS.set(thing, before);
};
export const wrongWord: Trouble = (world, dice, found) => {
  const { farAhead, given } = tellsWrongTime(world, dice);
  if (farAhead)
    found.add(
      world,
      'I-26',
      'an answer years ahead',
      'An answer 40 years ahead of any clock was taken.',
    );
  if (!given) return;
  world.passes(dice.between(30, 4000));
  if (world.state.status !== 'closed' && !takesBack(world))
    found.add(
      world,
      'I-26',
      'an answer is final',
      'A wrong answer about the clock could not be taken back.',
    );
};
/** "I ran out here" is accepted, or says what to do (I-29). */
export const runsOut: Trouble = (world, dice, found, { pouring }) => {
  if (!pouring) return;
  const { plan, steps } = world.view;
  const begun = new Set(
    steps
      .filter(
        ({ step, status }) =>
          (status !== 'waiting' && status !== 'ready' && status !== 'stalled') ||
          world.truth.places.has(step.id),
      )
      .map(({ step }) => step.id),
  );
  let amendment: ReturnType<typeof ranOut>;
  try {
    amendment = ranOut(plan, pouring.step.id, dice.between(0.1, 0.95), (id) => begun.has(id));
  } catch (error) {
    found.add(world, 'I-29', 'ran out, threw', `${pouring.step.id} ran out: ${String(error)}`);
    return;
  }
  if (!amendment || !('steps' in amendment)) return;
  const done = world.asks({ kind: 'amend-plan', ...amendment });
  if (done.refusal?.startsWith('amendment') === true || done.refusal === 'bad-amendment')
    found.add(world, 'I-29', 'ran out, refused', `${pouring.step.id} ran out: ${done.refusal}.`);
};
