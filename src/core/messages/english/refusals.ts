import type { Section } from '../model/message.ts';

/** Why the engine refuses what no screen offers, or what was told already. It comes after the run's page. */
export const refusals = {
  'engine.unknown.step': ({ id }: { id: string }) =>
    `Step is “${id}”; allowed: a step of the plan.`,
  'engine.unknown.stage': ({ id, current }: { id: string; current: string }) =>
    `Stage is “${id}”; allowed: “${current}”, the one in progress.`,
  'engine.unknown.fault': ({ id }: { id: string }) =>
    `Fault is “${id}”; allowed: one that was reported.`,
  'engine.unknown.gate': ({ id }: { id: string }) =>
    `Gate is “${id}”; allowed: a gate of the plan.`,
  'engine.unknown.scope': ({ id, allowed }: { id: string; allowed: readonly string[] }, f) =>
    `Scope is “${id}”; allowed: ${f.list(allowed)}.`,
  'engine.unknown.question': ({ id }: { id: string }) =>
    `Question is “${id}”; allowed: an open one.`,
  'engine.unknown.fixture': ({ id }: { id: string }) =>
    `Fixture is “${id}”; allowed: one that the plan works on, or a vessel that it purges. Choose it on the picture; a vessel it does not purge is put away, and the plan made anew.`,

  'engine.clock.below-build': ({
    shownWallMs,
    fromWallMs,
  }: {
    shownWallMs: number;
    fromWallMs: number;
  }) =>
    `The clock shows ${shownWallMs}; allowed: ${fromWallMs} or later, when this app was built. Set day and time of the tablet right.`,
  'engine.clock.passed-missing': ({ missingS }: { missingS: number }, f) =>
    `${f.duration(missingS)} are missing. Say whether they passed, or the clock was set.`,
  'engine.clock.nothing-answered': 'Nothing about the clock was answered in this run.',

  'engine.reason.skip': 'Say why you skip this step; it goes into the record.',
  'engine.reason.repeat': 'Say why you repeat this step; it goes into the record.',
  'engine.reason.override': 'Write why it may be overridden; it goes into the record.',
  'engine.reason.amend': 'Say why the plan is changed; it goes into the record.',
  'engine.reason.correct': 'Write how you know; it goes into the record.',
  'engine.reason.note': 'The note is empty. Write something.',

  'engine.cooling.first': 'Say first how the cooling of the burn ended.',
  'engine.cooling.short': 'It has not been cooled for 20 minutes yet: keep the water running.',
  'engine.fault.already-cleared': 'It was put right already.',

  'engine.session.open': 'This page has opened the run already.',
  'engine.session.not-open':
    'This page has not opened the run. Open the session first, so that the gap is seen.',
  'engine.storage.down-already': 'The storage is down already.',
  'engine.storage.up-already': 'The storage works already.',
  'engine.timer.ended': ({ id }: { id: string }) =>
    `Timer is “${id}”; allowed: one that runs or calls. It has ended.`,
  'engine.timer.cause': ({ found, most }: { found: number; most: number }) =>
    `cause is ${found}; allowed: 1 to ${most}, as the clock shows it.`,
  'engine.timer.told': 'This was told already; once for each cause is enough.',
  'engine.timer.does-not-call': 'This clock does not call for an answer.',
  'engine.timer.cannot-extend': 'An alarm cannot be put off. Answer it when it sounds.',
  'engine.timer.extend-range': ({ byS, mostS }: { byS: number; mostS: number }) =>
    `byS is ${byS}; allowed: more than 0, at most ${mostS}. Enter the time to add.`,
  'engine.timer.cannot-correct': 'Only a wait such as a rest can be dated.',
  'engine.timer.correct-range': ({ sinceWallMs, mostS }: { sinceWallMs: number; mostS: number }) =>
    `sinceWallMs is ${sinceWallMs}; allowed: from ${mostS} s ago until now, as the record tells of it. Enter when it was last hot.`,

  'engine.clock.not-asked': 'Nobody asked for the time.',
  'engine.clock.range': ({
    actualWallMs,
    fromWallMs,
    toWallMs,
  }: {
    actualWallMs: number;
    fromWallMs: number;
    toWallMs: number;
  }) =>
    `actualWallMs is ${actualWallMs}; allowed: ${fromWallMs}, when this app was built, to ${toWallMs}, a day after the latest time a clock has shown. Set the tablet's clock, or enter the right time.`,
} satisfies Section;
