import { HOUR_S, type Trouble } from './moment.ts';

export const fallsBack: Trouble = (world, dice) => {
  if (dice.chance(0.35))
    world.setsClock(-world.startMs / 1000 - world.trueS, 'the battery died: the clock shows 1970');
  else world.setsClock(world.offsetS - 30 * HOUR_S, 'the clock falls back 30 h');
};
export const comesRight: Trouble = (world) => {
  if (Math.abs(world.offsetS) > 1) world.setsClock(0, 'the network puts the clock right');
};
export const anHourOff: Trouble = (world, dice) =>
  world.setsClock(
    world.offsetS + (dice.chance(0.5) ? HOUR_S : -HOUR_S),
    'somebody sets the clock an hour over',
  );
export const runsAhead: Trouble = (world, dice) =>
  world.setsClock(world.offsetS + dice.between(2, 40) * HOUR_S, 'the clock is set ahead');
export const sleeps: Trouble = (world, dice, _, { holding }) => {
  if (holding && dice.chance(0.5)) world.truth.breaks(holding.step.id, false);
  world.sleeps(dice.chance(0.5) ? dice.between(0.1, 2) * HOUR_S : dice.between(5, 11) * HOUR_S);
};

/** A short nap is seen however old the page is (I-25). */
export const naps: Trouble = (world, dice, found) => {
  const lastMs = world.facts.at(-1)?.at.wallMs ?? 0;
  const sinceS = Math.max(0, (world.readings().wallMs - lastMs) / 1000);
  const forS = dice.between(16, 40);
  const count = world.facts.length;
  world.sleeps(forS);
  const seen = world.facts.slice(count).some(({ body }) => body.kind === 'clocks-disagree');
  const open = world.state.status !== 'closed' && world.state.status !== 'drafting';
  if (open && !seen && forS > 15 + 1e-4 * sinceS)
    found.add(
      world,
      'I-25',
      'a sleep unseen',
      `The tablet slept ${Math.round(forS)} s, ${Math.round(sinceS)} s after the last fact, unseen.`,
    );
};

/** Pages. */
export const dies: Trouble = (world, dice, _, { holding }) => {
  if (holding && dice.chance(0.4)) world.truth.breaks(holding.step.id, false);
  const awayS = dice.chance(0.5) ? dice.between(5, 300) : dice.between(0.2, 8) * HOUR_S;
  world.dies(awayS, 0, dice.chance(0.15));
};
export const otherTablet: Trouble = (world, dice, found) => {
  world.tells('another tablet takes the run over; its clock is a little off');
  world.dies(dice.between(20, 600), dice.chance(0.6) ? 0 : dice.between(-4000, 4000), false);
  if (!world.overtakenPageSpeaks())
    found.add(world, 'I-02', 'two writers', 'A page that was overtaken was heard.');
};
export const storageFails: Trouble = (world, dice) => {
  world.asks({ kind: 'storage-failed', text: 'No room left.' });
  world.passes(dice.between(10, 2000));
  world.asks({ kind: 'storage-mended' });
};

/** Absences. */
export const goesAway: Trouble = (world, dice) => {
  const awayS = dice.chance(0.12)
    ? dice.between(4, 9) * 24 * HOUR_S
    : dice.between(0.5, 9) * HOUR_S;
  world.tells(`the person goes away for ${Math.round(awayS)} s`);
  world.passes(awayS);
};
export const pauses: Trouble = (world, dice) => {
  world.asks({ kind: 'pause' });
  world.passes(dice.chance(0.5) ? dice.between(5, 500) : dice.between(0.5, 6) * HOUR_S);
};
