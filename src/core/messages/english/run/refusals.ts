import type { Message, Section } from '../../model/message.ts';

type Step = { step: Message };

/**
 * Why the engine refuses what no screen offers, what was told already, and
 * changes of a running plan. It comes after the run's page: nobody asks for
 * any of it in its first moment.
 */
export const refusals = {
  'engine.unknown.step': ({ id }: { id: string }) =>
    `Step is “${id}”; allowed: a step of the plan.`,
  // A second press reaches a step that has gone on meanwhile: said to a person, so without its name in the plan.
  'engine.unknown.stage': 'That part is over already. Look at what the step asks for now.',
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
  'engine.recheck.stands':
    'It cannot be taken back any more: something has happened since. Its rest goes on from when it was told.',
  'engine.timer.ended': 'This clock has ended already; nothing is left to answer.',
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

  'engine.amend.begun': ({ step }: { step: Message }, f) =>
    `“${f.say(step)}” has begun; only what has not can change.`,
  'engine.amend.bad-number': ({ id, found, field }: { id: string; found: string; field: string }) =>
    `Step "${id}" has ${found} as its ${field}; allowed: a finite number above 0.`,
  'engine.amend.need-twice': ({ id, need }: { id: string; need: string }) =>
    `Step "${id}" needs "${need}" twice; allowed: once.`,
  'engine.amend.no-stage': ({ id }: { id: string }) =>
    `Step "${id}" has no stage; allowed: one or more.`,
  'engine.amend.stage-twice': ({ id, stage }: { id: string; stage: string }) =>
    `Step "${id}" has the stage "${stage}" twice; allowed: once.`,
  'engine.amend.timer-twice': ({ id, timer }: { id: string; timer: string }) =>
    `Step "${id}" has the timer "${timer}" twice in one stage; allowed: once.`,
  'engine.amend.start-of-none': ({ id }: { id: string }) =>
    `startS names "${id}", which is no step.`,
  'engine.amend.start-range': ({ id, found }: { id: string; found: string }) =>
    `startS of "${id}" is ${found}; allowed: a finite number, 0 or more.`,
  'engine.amend.empty': 'The amendment has no step; allowed: one or more.',
  'engine.amend.twice': 'The amendment names a step twice; allowed: once.',
  'engine.amend.cycle': ({ id }: { id: string }) =>
    `Step "${id}" would need itself; no order is left.`,
  'engine.amend.no-need': ({ id, need }: { id: string; need: string }) =>
    `Step "${id}" needs "${need}", which is no step.`,
  'engine.amend.no-resource': ({ id, resource }: { id: string; resource: string }) =>
    `Step "${id}" demands "${resource}", which is no resource.`,
  'engine.amend.no-gate': ({ id, gate }: { id: string; gate: string }) =>
    `Step "${id}" names the gate "${gate}", which does not exist.`,
  'engine.amend.lacks-gate': ({ id, gate }: { id: string; gate: string }) =>
    `Step "${id}" lacks the gate "${gate}".`,
  'engine.amend.lacks-caution': ({ id, caution }: { id: string; caution: string }) =>
    `Step "${id}" lacks the caution "${caution}".`,
  'engine.amend.stages': (
    { id, found, allowed }: { id: string; found: readonly string[]; allowed: readonly string[] },
    f,
  ) =>
    `Step "${id}" has the stages ${f.list(found)}; allowed: with ${f.list(allowed)} in this order.`,
  'engine.amend.demands-less': ({
    id,
    resource,
    wanted,
  }: {
    id: string;
    resource: string;
    wanted: number;
  }) => `Step "${id}" demands less of "${resource}" than ${wanted}.`,
  'engine.amend.guards-less': ({ id, step }: { id: string; step: Message }, f) =>
    `Step "${id}" guards less than “${f.say(step)}”: a hazard, a clock or its making safe.`,
  'engine.amend.other-work': ({ id, step }: { id: string; step: Message }, f) =>
    `Step "${id}" is other work than “${f.say(step)}”; allowed: the same fixture and kind.`,
  'engine.amend.drops-need': ({ id, need, step }: { id: string; need: string; step: Message }, f) =>
    `Step "${id}" no longer needs "${need}" as “${f.say(step)}” does.`,
  'engine.amend.no-sibling': ({
    id,
    kind,
    fixture,
    means,
    allowed,
  }: {
    id: string;
    kind: string;
    fixture: string;
    means: string;
    allowed: readonly string[];
  }) =>
    `Step "${id}" is a ${kind} of ${fixture} with ${means}; allowed: work the plan already has there${allowed.map((one) => `, with ${one}`).join('')}.`,
  'engine.amend.not-fresh': ({ id, step }: { id: string; step: Message }, f) =>
    `Step "${id}" does not need fresh water as “${f.say(step)}” does.`,
  'engine.amend.not-begun-so': ({ id, step }: { id: string; step: Message }, f) =>
    `Step "${id}" is not begun as “${f.say(step)}” is.`,

  'engine.step.over': ({ step }: Step, f) => `“${f.say(step)}” is over.`,
  'engine.step.over-repeat': ({ step }: Step, f) =>
    `“${f.say(step)}” is over. Repeat it to do it again.`,
  'engine.step.begun': ({ step }: Step, f) => `“${f.say(step)}” has begun.`,
  'engine.step.not-begun': ({ step }: Step, f) => `“${f.say(step)}” has not begun.`,
  'engine.step.stopped': ({ step }: Step, f) => `“${f.say(step)}” was stopped. Make it safe.`,
  'engine.step.not-over': ({ step }: Step, f) => `“${f.say(step)}” is not over yet. Stop it first.`,
  'engine.step.cannot-repeat': ({ step }: Step, f) => `“${f.say(step)}” cannot be repeated.`,
  'engine.step.fault-open': 'Put right first what was reported about this step.',
  'engine.step.not-stopped': 'This step was not stopped, so there is nothing to make safe.',
  'engine.resume.review-gap': 'Answer first what happened in the gap.',
  'engine.resume.review-clock': 'Say first whether the time shown is right.',
  'engine.resume.storage': 'Nothing can be written down yet.',
  'engine.resume.hot': 'Make safe first what is still hot.',
  'engine.resume.fault': ({ fault }: { fault: Message }, f) =>
    `Not put right yet: ${f.say(fault)}.`,
  'engine.resume.gate-settling': ({ ask }: { ask: Message }, f) =>
    `Wait until it has settled: ${f.say(ask)}`,
  'engine.resume.gate-asked': ({ ask }: { ask: Message }, f) => `Answer first: ${f.say(ask)}`,

  'engine.status.drafting': 'The run has not started. Start it first.',
  'engine.status.running': 'The run is going on already.',
  'engine.status.held': 'The run is paused. Resume it first.',
  'engine.status.suspended': 'The run is suspended. Put right what stopped it, then resume.',
  'engine.status.reviewing': 'Answer first what happened while the app was away.',
  'engine.status.closing': 'The run is being stopped. Only making safe is left.',
  'engine.status.closed': 'The run is closed.',
} satisfies Section;
