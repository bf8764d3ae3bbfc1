import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, type Request, type RunState } from '../../../src/core/run/index.ts';
import { elapsed } from '../../../src/core/run/timers/span.ts';
import { DAY_S, planOf, steps } from './fixtures.ts';
import { NEW_YEAR_MS, Tablet } from './tablet.ts';

const plan = planOf(steps);

/** Slack for clock tolerances that a person's answer counts in, s. */
const SLACK_S = 15;

/** What is true, kept apart from the engine: the slow reference. */
class Truth {
  /** True time at which each cause of each timer began. */
  readonly beganS = new Map<string, number>();
  readonly seenFacts = { count: 0 };
  /** True time at which each attempt of a rest began. */
  readonly restBeganS = new Map<string, number>();
  last = new Map<string, { atLeastS: number; atMostS: number }>();
  lastSession = '';
}

/** One thing that a person, the device or the world does; `word` asks a person's word, which may move clocks. */
type Deed = {
  readonly name: string;
  readonly does: (tablet: Tablet) => void;
  readonly resumes?: boolean;
  readonly word?: boolean;
};

function inspect(truth: Truth, tablet: Tablet, deed: Deed, before: RunState): void {
  const { state, facts, trueS } = tablet;
  const fresh = facts.slice(truth.seenFacts.count);
  truth.seenFacts.count = facts.length;

  // I-02, I-09, I-16
  const dues = facts.flatMap(({ body }) =>
    body.kind === 'timer-due' ? [`${body.timer}!${body.cause}`] : [],
  );
  expect(new Set(dues).size).toBe(dues.length);
  expect(facts.at(-1)?.seq).toBe(facts.length);
  expect(state.faults.some(({ text }) => text.startsWith('A turn'))).toBe(false);

  // I-06: only a person's word leads back to running.
  if (before.status !== 'running' && before.status !== 'drafting' && state.status === 'running') {
    expect(deed.resumes).toBe(true);
  }
  // I-04
  if (before.status === 'closed') expect(fresh).toEqual([]);

  for (const { body } of fresh) {
    if (body.kind === 'step-started') {
      truth.restBeganS.set(`${body.step}#${body.attempt}`, trueS);
      checkStart(truth, tablet, body.step);
    }
    if (body.kind === 'doubt-reported') {
      for (const step of plan.steps) {
        const one = state.steps[step.id];
        if (step.kind === 'rest' && step.fixture === body.fixture && one?.status === 'active')
          truth.restBeganS.set(`${step.id}#${one.attempt}`, trueS);
      }
    }
    // I-18
    if (body.kind === 'step-settled' && body.step.startsWith('pour') && body.outcome === 'done') {
      expect(
        facts.some(
          (fact) =>
            fact.body.kind === 'stage-ended' &&
            fact.body.step === body.step &&
            fact.body.attempt === body.attempt &&
            fact.body.stage === 'cold',
        ),
      ).toBe(true);
    }
  }
  checkResources(state);
  checkTimers(truth, tablet, deed);
}

/** I-17: when a purge step starts, the truth says that its fixture rested for a day, or somebody said why not. */
function checkStart(truth: Truth, tablet: Tablet, started: string): void {
  const step = plan.steps.find(({ id }) => id === started);
  if (step?.phase !== 'purge') return;
  const rest = `rest-${step.fixture ?? ''}`;
  const one = tablet.state.steps[rest];
  expect(one?.status).toBe('settled');
  if (one?.outcome === 'done') {
    const beganS = truth.restBeganS.get(`${rest}#${one.attempt}`) ?? Infinity;
    expect(tablet.trueS - beganS).toBeGreaterThanOrEqual(DAY_S - SLACK_S);
  } else {
    expect(one).toMatchObject({ outcome: 'skipped', reason: 'A reason.' });
  }
}

/** I-11 */
function checkResources(state: RunState): void {
  for (const { id, capacity } of plan.resources) {
    const used = plan.steps
      .filter((step) => ['active', 'unwinding'].includes(state.steps[step.id]?.status ?? ''))
      .reduce((sum, step) => sum + (step.demands[id] ?? 0), 0);
    expect(used).toBeLessThanOrEqual(capacity);
  }
}

/** I-05, I-07, I-08 against the true clock. */
function checkTimers(truth: Truth, tablet: Tablet, deed: Deed): void {
  const now = tablet.readings();
  const last = new Map<string, { atLeastS: number; atMostS: number }>();
  for (const timer of Object.values(tablet.state.timers)) {
    const key = `${timer.id}!${timer.spec.repeats === true ? timer.cause : 0}`;
    if (!truth.beganS.has(key)) truth.beganS.set(key, tablet.trueS);
    if (timer.mode !== 'running') continue;
    const trueS = tablet.trueS - (truth.beganS.get(key) ?? 0);
    const { atLeastS, atMostS } = elapsed(timer.span, now);
    expect(atLeastS).toBeGreaterThanOrEqual(0);
    expect(atLeastS).toBeLessThanOrEqual(trueS + SLACK_S);
    expect(atMostS).toBeGreaterThanOrEqual(trueS - SLACK_S);
    const before = truth.last.get(key);
    if (before && deed.word !== true && truth.lastSession === now.session) {
      expect(atLeastS).toBeGreaterThanOrEqual(before.atLeastS - 1e-6);
      expect(atMostS).toBeGreaterThanOrEqual(before.atMostS - 1e-6);
    }
    last.set(key, { atLeastS, atMostS });
    const alarm = timer.spec.purpose === 'at-most';
    if (alarm && trueS >= timer.lengthS + SLACK_S) expect(timer.announced).toBe(true);
    if (!alarm && timer.announced) expect(trueS).toBeGreaterThanOrEqual(timer.lengthS - SLACK_S);
  }
  truth.last = last;
  truth.lastSession = now.session;
}

/** A deed as a command of the property tester. */
class Act implements fc.Command<Truth, Tablet> {
  readonly deed: Deed;
  constructor(deed: Deed) {
    this.deed = deed;
  }
  check(): boolean {
    return true;
  }
  run(truth: Truth, tablet: Tablet): void {
    const before = tablet.state;
    this.deed.does(tablet);
    tablet.tries({ kind: 'tick' });
    inspect(truth, tablet, this.deed, before);
  }
  toString(): string {
    return this.deed.name;
  }
}

/** Person's word about the clock, always true. */
function tellsTime(tablet: Tablet): void {
  const trueWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
  const right = Math.abs(trueWallMs - tablet.readings().wallMs) < 1;
  tablet.tries(
    right
      ? { kind: 'answer-clock', right }
      : { kind: 'answer-clock', right, actualWallMs: trueWallMs },
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

const deeds: fc.Arbitrary<Deed>[] = [
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
      tablet.view.clocks
        .filter(({ alerting }) => alerting)
        .map(({ id }) => ({ kind: 'acknowledge-timer', timer: id })),
    ),
  ),
  fc
    .constantFrom('flame-out', 'power-cut', 'co-alarm', 'cracked', 'undefined')
    .map((fault) => asks(`fault ${fault}`, () => [{ kind: 'report-fault', fault } as Request])),
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
      asks(`doubts ${fixture}`, () => [{ kind: 'report-doubt', fixture, text: 'Touched.' }]),
    ),
  fc.constant(
    asks('makes safe', (tablet) =>
      tablet.view.hot.map(({ step }) => ({ kind: 'confirm-safe', step })),
    ),
  ),
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
/** Where the random part begins, so that it reaches every part of the work. */
const openings: Readonly<Record<string, readonly Deed[]>> = {
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
  glowing: [
    ...rested,
    asks('lights', () => [
      { kind: 'answer-gate', gate: 'burner-clear', scopeKey: 'glow#1', answer: 'yes' },
      { kind: 'answer-gate', gate: 'air', scopeKey: 'run', answer: 'yes' },
      { kind: 'start-step', step: 'glow' },
    ]),
    { name: 'confirms', does: confirmsAll },
    { name: 'confirms', does: confirmsAll },
  ],
};

describe('any sequence of deeds, against a true clock that nobody sees', () => {
  it('keeps the invariants, folds to its state, and can be stopped to the end', () => {
    // Verifies: I-01, I-04, I-05, I-06, I-07, I-08, I-09, I-11, I-13, I-16, I-17, I-18
    const commands = fc.commands(
      deeds.map((deed) => deed.map((one) => new Act(one))),
      { maxCommands: 40, size: 'max' },
    );
    const met: Record<string, number> = {};
    const opening = fc.constantFrom(...Object.keys(openings));
    fc.assert(
      fc.property(opening, commands, (name, sequence) => {
        const real = new Tablet(plan);
        real.does({ kind: 'start-run' });
        const model = new Truth();
        for (const deed of openings[name] ?? []) new Act(deed).run(model, real);
        fc.modelRun(() => ({ model, real }), sequence);
        expect(fold(real.facts)).toEqual(real.state);
        for (const kind of new Set(real.kinds())) met[kind] = (met[kind] ?? 0) + 1;
        if (real.state.status === 'closed') return;
        real.does({ kind: 'stop-run', reason: 'The end.' });
        for (const { step, confirmed } of real.view.hot) {
          if (!confirmed) real.does({ kind: 'confirm-safe', step });
        }
        expect(real.state.status).toBe('closed');
      }),
      { numRuns: Number(process.env['MODEL_RUNS'] ?? 600) },
    );
    // The sequences are no idle ones: each of these came about in many of them.
    for (const kind of [
      'stage-restarted',
      'step-repeated',
      'safe-confirmed',
      'clock-answered',
      'resumed',
      'review-answered',
      'timer-due',
      'doubt-reported',
      'fault-cleared',
    ])
      expect(met[kind], kind).toBeGreaterThan(20);
  });
});
