/**
 * One mend of the engine and how it is taken out again: each `find` occurs
 * once in its file. The simulation must then find the promise broken in this way.
 */
export type Mend = {
  /** Number of the fault in the list of what was found broken, with a letter for each of its parts. */
  readonly point: string;
  readonly what: string;
  readonly promise: string;
  /** Ways of breaking it, as the oracle names them; any of them will do. */
  readonly ways: readonly string[];
  readonly patches: readonly {
    readonly file: string;
    readonly find: string;
    readonly replace: string;
  }[];
};

const RUN = 'src/core/run';

function mend(
  point: string,
  what: string,
  promise: string,
  ways: readonly string[],
  ...patches: readonly (readonly [file: string, find: string, replace: string])[]
): Mend {
  return {
    point,
    what,
    promise,
    ways,
    patches: patches.map(([file, find, replace]) => ({ file: `${RUN}/${file}`, find, replace })),
  };
}

/** The mends of time: words about clocks and what they credit. */
const TIME: readonly Mend[] = [
  mend(
    '1',
    'A wait that began in doubt is credited by a yes.',
    'I-20',
    ['a doubt about the clock was credited'],
    ['timers/clock-word.ts', "(word.passed && span.base === 'known')", 'word.passed'],
  ),
  mend(
    '2',
    'A clock wrong from the start is believed, and a day is waved through.',
    'I-20',
    ['the clock was wrong from the start'],
    [
      'decide/control.ts',
      'if (!(now.wallMs >= state.notBeforeWallMs)) {',
      'if (Number.isNaN(now.wallMs)) {',
    ],
    [
      'decide/review.ts',
      'return leftS > ASK_CLOCK_S && (!clock.confirmed || leftS >= LONG_GAP_S);',
      'return Number.isNaN(leftS);',
    ],
  ),
  mend(
    '3a',
    'A rest is dated back by the clock as it shows.',
    'I-26',
    ['dated back by a wrong clock'],
    [
      'decide/timers.ts',
      '  const elapsedS = (rightWallMs(state, now) - asked.sinceWallMs) / 1000;',
      '  const elapsedS = (now.wallMs - asked.sinceWallMs) / 1000;',
    ],
  ),
  mend(
    '3b',
    'A cool-down is dated back.',
    'I-26',
    ['a cool-down dated back'],
    [
      'decide/timers.ts',
      "  if (step.kind !== 'rest') return atLeastS;",
      "  if (step.kind !== 'rest') return CORRECT_MAX_S;",
    ],
  ),
  mend(
    '4a',
    'An answer about the clock is final.',
    'I-26',
    ['an answer is final'],
    [
      'decide/review.ts',
      '  if (state.clock.answers.length === 0)',
      '  if (state.clock.answers.length >= 0)',
    ],
  ),
  mend(
    '4b',
    'An answer may be years ahead of any clock.',
    'I-26',
    ['an answer years ahead'],
    ['decide/review.ts', ' && actual <= latest)', ')'],
  ),
  mend(
    '4c',
    'What was concluded from an answer stands when it is taken back.',
    'I-17',
    ['not rested'],
    [
      'apply/withdraw.ts',
      '    if (stands || attempt !== one.attempt) continue;',
      '    if (stands || attempt > 0) continue;',
    ],
  ),
  mend(
    '10b',
    'The allowance for a sleeping page grows with the session.',
    'I-25',
    ['a sleep unseen'],
    [
      'model/elapsed-interval.ts',
      '  return agreementWithin(wallS - monoS, CLOCK_TOLERANCE_S);',
      '  return agreementWithin(wallS - monoS, allowanceS(monoS));',
    ],
    ['apply/index.ts', '    ...(near ? { anchor: at } : {}),', '    ...(near ? {} : {}),'],
  ),
];

/** The mends of days: every way into work. */
const DAYS: readonly Mend[] = [
  mend(
    '5a',
    'A confirm goes on inside a rest day.',
    'I-21',
    ['confirmed inside a rest day', 'confirmed into a rest day'],
    [
      'decide/steps.ts',
      '  const day = stageObstacle(state, step, one, one.stage + 1, now);',
      '  const day = stageObstacle(state, step, one, step.stages.length, now);',
    ],
  ),
  mend(
    '5b',
    'What broke off is begun again inside a rest day.',
    'I-21',
    ['restarted inside a rest day', 'restarted into a rest day'],
    [
      'engine/turn.ts',
      '    const day = stageObstacle(state, step, one, number, now);',
      '    const day = stageObstacle(state, step, one, step.stages.length, now);',
    ],
  ),
  mend(
    '5c',
    'A run is resumed inside a rest day.',
    'I-21',
    ['resumed inside a rest day'],
    [
      'decide/control.ts',
      '  if (day) found.push(workRefusal(day));',
      '  if (day && false) found.push(workRefusal(day));',
    ],
  ),
  mend(
    '5d',
    'A clock set back inside a rest day lets work begin.',
    'I-21',
    ['started inside a rest day', 'confirmed inside a rest day'],
    ['rules/work-guard.ts', '[shownMs, shownMs - apart * MS]', '[shownMs]'],
  ),
  mend(
    '5e, 9e',
    'A purge begins that ends after the hour of leaven.',
    'I-21',
    ['started past the hour of leaven'],
    [
      'rules/work-guard.ts',
      "    if (!deadline || step.phase !== 'purge') continue;",
      "    if (!deadline || step.phase !== 'mark') continue;",
    ],
  ),
];

/**
 * The mends of the purge: what was truly done, with what water, upon what rest.
 * That a doubt without words counts (9c) is not among them: a purge that it
 * stopped is done again all the same since 6a; a test of its own holds it.
 */
const PURGE: readonly Mend[] = [
  mend(
    '6a',
    'A run with a stopped purge is completed.',
    'I-22',
    ['completed, not purged'],
    ['engine/turn.ts', ' || isUndone(state, step),', ','],
  ),
  mend(
    '6b',
    'The picture says done where a purge was stopped.',
    'I-22',
    ['shown as done'],
    [
      'view/fixtures.ts',
      "one.status === 'settled' && isUndone(state, step)",
      "one.status === 'waiting' && isUndone(state, step)",
    ],
  ),
  mend(
    '7',
    '"I ran out here" is refused where there are two kettles.',
    'I-29',
    ['ran out, refused'],
    [
      'decide/amend-guards.ts',
      '  const siblings = work.filter((one) => meansOf(one) === means);',
      '  const siblings = work;',
    ],
  ),
  mend(
    '8a',
    'Boiled water is poured hours later, after a crash or a pause inside the pour.',
    'I-23',
    ['poured stale'],
    [
      'rules/boiled-water.ts',
      "  if (one?.status !== 'active' || !poursFrom(step, one.stage)) return null;",
      "  if (one?.status !== 'settled' || !poursFrom(step, one.stage)) return null;",
    ],
  ),
  mend(
    '8b',
    'A boil left out lets its pour begin.',
    'I-23',
    ['nothing boiled'],
    [
      'rules/needs.ts',
      "    return need.withinS === undefined ? null : { need, why: 'left-out' };",
      '    return null;',
    ],
  ),
  mend(
    '8c',
    'A kettle full of boiled water is free.',
    'I-23',
    ['a full kettle filled'],
    [
      'rules/resources.ts',
      '  const held = heldVessels(state).filter(',
      '  const held = heldVessels(state).slice(0, 0).filter(',
    ],
  ),
  mend(
    '9a',
    'Cleaning again does not restart the rest.',
    'I-24',
    ['cleaned again, and not rested again', 'heat while it is cleaned'],
    [
      'decide/steps.ts',
      "  if (step.kind !== 'clean') return [];",
      "  if (step.kind !== 'mark') return [];",
    ],
  ),
  mend(
    '9b',
    'A doubt about a kettle is not known.',
    'I-24',
    ['a kettle not known'],
    [
      'decide/control.ts',
      "  if (stepsAbout(state.plan, fixture).some(({ kind }) => kind !== 'boil')) return accept(doubt);\n  const uses = state.plan.steps.filter((step) => usesVessel(step, fixture));",
      '  if (state.plan.steps.some((step) => step.fixture === fixture)) return accept(doubt);\n  const uses: typeof state.plan.steps = [];',
    ],
  ),
  mend(
    '9d',
    'A fault at a step that is not there is taken.',
    'I-12',
    ['a fault nowhere', 'an exception'],
    [
      'decide/faults.ts',
      '  if (asked.step !== undefined && !Object.hasOwn(state.steps, asked.step))',
      '  if (asked.step !== undefined && !state.steps[asked.step])',
    ],
  ),
  mend(
    '10a',
    'What a fault broke comes due in the turn in which it is begun again.',
    'I-25',
    ['what broke came due', 'ended though it broke'],
    [
      'rules/faults.ts',
      'isBroken(state, step) || isSaid(state.steps[step]?.restart ?? NO_REASON)',
      'isBroken(state, step)',
    ],
  ),
];

export const MENDS: readonly Mend[] = [...TIME, ...DAYS, ...PURGE];
