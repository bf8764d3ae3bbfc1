import type { Message, Section } from '../../model/message.ts';

/** Why a change of a running plan is refused. It comes after the run's page: nobody changes a plan in its first moment. */
export const amend = {
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
} satisfies Section;
