import * as fc from 'fast-check';
import type { Request } from '../../../../src/core/run/index.ts';
import { DAY_S } from '../support/fixtures.ts';
import { NEW_YEAR_MS, type Tablet } from '../support/tablet.ts';
import { plan, type Deed } from './truth.ts';

/** Person's word about the clock, always true: it was right at the start, so what is missing passed. */
function tellsTime(tablet: Tablet): void {
  const trueWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
  const right = Math.abs(trueWallMs - tablet.readings().wallMs) < 1;
  tablet.tries(
    right
      ? { kind: 'answer-clock', right, passed: true }
      : { kind: 'answer-clock', right, actualWallMs: trueWallMs, passed: true },
  );
}

function startsSomething(tablet: Tablet, pick: number): void {
  const ready = tablet.view.steps.filter(({ status }) => status === 'ready');
  const step = ready[pick % Math.max(1, ready.length)];
  if (!step) return;
  for (const { gate, scopeKey } of step.gates)
    tablet.tries({ kind: 'answer-gate', gate: gate.id, scopeKey, answer: 'yes' });
  tablet.tries({ kind: 'start-step', step: step.step.id });
}

function confirmsAll(tablet: Tablet): void {
  for (const { canConfirm, step, stage } of tablet.view.steps) {
    if (canConfirm)
      tablet.tries({ kind: 'confirm', step: step.id, stage: step.stages[stage]?.id ?? '' });
  }
}

const pick = fc.nat({ max: 20 });
const anyStep = fc.constantFrom(...plan.steps.map(({ id }) => id));

function asks(name: string, make: (tablet: Tablet) => Request[], flags: Partial<Deed> = {}): Deed {
  return { name, does: (tablet) => make(tablet).forEach((one) => tablet.tries(one)), ...flags };
}

export const deeds: fc.Arbitrary<Deed>[] = [
  pick.map((n) => ({ name: `starts ${n}`, does: (tablet) => startsSomething(tablet, n) })),
  pick.map((n) => ({ name: `starts ${n}`, does: (tablet) => startsSomething(tablet, n) })),
  fc.constant({ name: 'confirms', does: confirmsAll }),
  fc.constant({ name: 'confirms', does: confirmsAll }),
  fc
    .integer({ min: 1, max: 4000 })
    .map((s) => ({ name: `passes ${s}`, does: (tablet) => tablet.passes(s) })),
  fc
    .integer({ min: 4000, max: 90_000 })
    .map((s) => ({ name: `passes ${s}`, does: (tablet) => tablet.passes(s) })),
  fc
    .integer({ min: 10, max: 40_000 })
    .map((s) => ({ name: `sleeps ${s}`, does: (tablet) => tablet.sleeps(s) })),
  fc
    .integer({ min: -200_000, max: 200_000 })
    .filter((s) => Math.abs(s) >= 60)
    .map((s) => ({ name: `clock ${s}`, does: (tablet) => tablet.setsClock(s) })),
  fc
    .integer({ min: 0, max: 40_000 })
    .map((s) => ({ name: `restarts after ${s}`, does: (tablet) => tablet.restarts(s) })),
  fc
    .tuple(fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 60, max: 90_000 }))
    .map(([s, set]) => ({
      name: `restarts after ${s}, clock set ${set}`,
      does: (tablet) => {
        tablet.setsClock(set, false);
        tablet.restarts(s);
      },
    })),
  fc.integer({ min: 0, max: 9000 }).map((s) => ({
    name: `restarts after ${s}, clock far back`,
    does: (tablet) => {
      tablet.setsClock(-s - 400_000, false);
      tablet.restarts(s);
    },
  })),
  fc.constant(asks('pauses', () => [{ kind: 'pause' }])),
  fc.constant(asks('resumes', () => [{ kind: 'resume' }], { resumes: true })),
  fc.constant({ name: 'tells time', does: tellsTime, resumes: true, word: true }),
  fc.constant(
    asks('knows no time', () => [{ kind: 'answer-clock', right: false }], {
      resumes: true,
      word: true,
    }),
  ),
  fc
    .constantFrom('went-on', 'broke-off', 'unknown')
    .map((answer) =>
      asks(
        `reviews ${answer}`,
        (tablet) =>
          tablet.view.review.map(({ id }) => ({ kind: 'answer-review', question: id, answer })),
        { resumes: true, word: true },
      ),
    ),
  fc.constant(
    asks('acknowledges', (tablet) =>
      [...tablet.view.timers, ...tablet.view.coolings]
        .filter(({ alerting }) => alerting)
        .map(({ id }) => ({ kind: 'acknowledge-timer', timer: id })),
    ),
  ),
  fc
    .constantFrom('flame-out', 'power-cut', 'co-alarm', 'cracked', 'undefined')
    .map((fault) => asks(`fault ${fault}`, () => [{ kind: 'report-fault', fault } as Request])),
  fc.constant(asks('somebody is burned', () => [{ kind: 'report-fault', fault: 'burned' }])),
  fc
    .constantFrom('cooled', 'taken-over', 'mistake')
    .map((as) =>
      asks(`cooling ends: ${as}`, (tablet) =>
        tablet.view.coolings.map(({ fault }) => ({ kind: 'end-cooling', faultId: fault, as })),
      ),
    ),
  fc.constant(
    asks('clears faults', (tablet) =>
      tablet.view.faults
        .filter(({ cleared }) => !cleared)
        .map(({ id }) => ({ kind: 'clear-fault', faultId: id })),
    ),
  ),
  fc.constant(
    asks('air is good', () => [
      { kind: 'answer-gate', gate: 'air', scopeKey: 'run', answer: 'yes' },
    ]),
  ),
  anyStep.map((step) =>
    asks(`skips ${step}`, () => [{ kind: 'skip-step', step, reason: 'A reason.' }]),
  ),
  anyStep.map((step) =>
    asks(`stops ${step}`, () => [{ kind: 'stop-step', step, reason: 'A reason.' }]),
  ),
  anyStep.map((step) =>
    asks(`repeats ${step}`, () => [{ kind: 'repeat-step', step, reason: 'A reason.' }]),
  ),
  fc
    .constantFrom('sink', 'hob')
    .map((fixture) =>
      asks(`doubts ${fixture}`, () => [{ kind: 'report-recheck', fixture, text: 'Touched.' }]),
    ),
  fc
    .constantFrom('sink', 'hob')
    .map((fixture) =>
      asks(`takes a doubt about ${fixture} back`, () => [{ kind: 'withdraw-recheck', fixture }]),
    ),
  fc.constant(
    asks('makes safe', (tablet) =>
      tablet.view.hot.map(({ step }) => ({ kind: 'confirm-safe', step })),
    ),
  ),
  fc.constantFrom('alarm-handed', 'alarm-failed').map((kind) => ({
    name: kind,
    does: (tablet) => {
      for (const { id, cause, leftS } of [...tablet.view.timers, ...tablet.view.coolings])
        if (leftS < 90) tablet.tries({ kind, timer: id, cause, text: 'Sound is off.' });
    },
  })),
  fc.constant({
    name: 'storage fails',
    does: (tablet) => void tablet.tries({ kind: 'storage-failed', text: 'Full.' }),
  }),
  fc.constant({
    name: 'storage mends',
    does: (tablet) => void tablet.tries({ kind: 'storage-mended' }),
  }),
];

const cleaned = (fixture: string): Deed[] => [
  asks(`cleans ${fixture}`, () => [{ kind: 'start-step', step: `clean-${fixture}` }]),
  { name: 'passes 600', does: (tablet) => tablet.passes(600) },
  { name: 'confirms', does: confirmsAll },
];
const rested: Deed[] = [
  ...cleaned('sink'),
  ...cleaned('hob'),
  { name: 'a day passes', does: (tablet) => tablet.passes(DAY_S + 20) },
];
const glowing: readonly Deed[] = [
  ...rested,
  asks('lights', () => [
    { kind: 'answer-gate', gate: 'burner-clear', scopeKey: 'glow#1', answer: 'yes' },
    { kind: 'answer-gate', gate: 'air', scopeKey: 'run', answer: 'yes' },
    { kind: 'start-step', step: 'glow' },
  ]),
  { name: 'confirms', does: confirmsAll },
  { name: 'confirms', does: confirmsAll },
];

/** Where the random part begins, so that it reaches every part of the work. */
export const openings: Readonly<Record<string, readonly Deed[]>> = {
  fresh: [],
  resting: [...cleaned('sink'), ...cleaned('hob')],
  rested,
  pouring: [
    ...rested,
    asks('boils', () => [{ kind: 'start-step', step: 'boil-1' }]),
    { name: 'confirms', does: confirmsAll },
    asks('pours', () => [
      { kind: 'answer-gate', gate: 'scald-dress', scopeKey: 'run', answer: 'yes' },
      { kind: 'start-step', step: 'pour-1' },
    ]),
  ],
  glowing,
  // A break in a glow is rare in a random sequence, and what follows it is what matters most.
  interrupted: [...glowing, { name: 'dies', does: (tablet) => tablet.restarts(300) }],
};
