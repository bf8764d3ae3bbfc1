import { asWritten } from '../../../../src/core/messages/index.ts';
import { expect } from 'vitest';
import { alertsDue, type RunState } from '../../../../src/core/run/index.ts';
import { elapsed } from '../../../../src/core/run/model/elapsed-interval.ts';
import { DAY_S, planOf, steps } from '../support/fixtures.ts';
import { NEW_YEAR_MS, type Tablet } from '../support/tablet.ts';

export const plan = planOf(steps);

/** Rest days of the second plan, s after the beginning: one on the first evening, one of two days on the third. */
const REST_DAYS_S: readonly (readonly [number, number])[] = [
  [5 * 3600, 12 * 3600],
  [DAY_S + 1800, DAY_S + 5 * 3600],
  [3 * DAY_S, 5 * DAY_S],
];

/** The same in a household that keeps rest days. */
export const planWithRestDays = planOf(steps, {
  days: {
    startWallMs: NEW_YEAR_MS,
    restDays: REST_DAYS_S.map(([fromS, toS], index) => ({
      name: asWritten(`rest day ${index + 1}`),
      fromWallMs: NEW_YEAR_MS + fromS * 1000,
      toWallMs: NEW_YEAR_MS + toS * 1000,
    })),
  },
});

function inRestDay(trueS: number): boolean {
  return REST_DAYS_S.some(([fromS, toS]) => trueS >= fromS && trueS < toS);
}

/** Does the tablet know the right time: by itself, or by a person's word? */
function knowsTime(tablet: Tablet): boolean {
  const trueWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
  const shownMs = tablet.readings().wallMs + tablet.state.clock.errorS * 1000;
  return Math.abs(shownMs - trueWallMs) < 1;
}

/** Slack for clock tolerances that a person's answer counts in, s. */
const SLACK_S = 15;

/** What is true, kept apart from the engine: the slow reference. */
export class Truth {
  /** True time at which each cause of each timer began. */
  readonly beganS = new Map<string, number>();
  readonly seenFacts = { count: 0 };
  /** Deeds looked at inside a rest day. */
  seenRestDays = 0;
  /** True time at which each attempt of a rest began. */
  restBeganS = new Map<string, number>();
  /** The same before the last word that something was used. */
  beforeDoubt = new Map<string, number>();
  last = new Map<string, { atLeastS: number; atMostS: number }>();
  lastSession = '';
}

/** One thing that a person, the device or the world does; `word` asks a person's word, which may move clocks. */
export type Deed = {
  readonly name: string;
  readonly does: (tablet: Tablet) => void;
  readonly resumes?: boolean;
  readonly word?: boolean;
};

/** Nothing but notes lies between a word that something was used and its being taken back (I-17). */
function checkTakenBack(truth: Truth, { facts, state }: Tablet): void {
  const at = facts.findLastIndex(({ body }) => body.kind === 'recheck-withdrawn');
  const before = facts.slice(0, at).findLast(({ body }) => body.kind !== 'noted');
  const taken = facts[at]?.body;
  expect(before?.body).toMatchObject({
    kind: 'recheck-reported',
    fixture: taken?.kind === 'recheck-withdrawn' ? taken.fixture : '',
  });
  truth.restBeganS = new Map(truth.beforeDoubt);
  // The attempt that the word began never was: a later one of that number is another.
  const standing = new Set(Object.keys(state.timers));
  for (const known of [truth.last, truth.beganS])
    for (const key of known.keys()) {
      const [timer, cause] = key.split('!');
      if (cause !== undefined && !standing.has(timer ?? '')) known.delete(key);
    }
}

export function inspect(truth: Truth, tablet: Tablet, deed: Deed, before: RunState): void {
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
      checkRestDay(tablet, body.step, body.by);
    }
    if (body.kind === 'recheck-withdrawn') checkTakenBack(truth, tablet);
    if (body.kind === 'recheck-reported') {
      truth.beforeDoubt = new Map(truth.restBeganS);
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
  // I-19
  if (tablet.state.plan.days && knowsTime(tablet) && inRestDay(trueS)) {
    expect(alertsDue(tablet.view)).toEqual([]);
    truth.seenRestDays += 1;
  }
  checkResources(state);
  checkTimers(truth, tablet, deed);
  checkCoolings(truth, tablet);
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
    expect(one).toMatchObject({ outcome: 'skipped', reason: asWritten('A reason.') });
  }
}

/** Typical work may end this little after a rest day begins, s: the engine's own slack of a minute, and a hair. */
const REACH_SLACK_S = 60.001;

/** I-19: nobody begins anything inside a rest day, or what reaches into one; rests and cool-downs may begin. */
function checkRestDay(tablet: Tablet, started: string, by: 'person' | 'chain'): void {
  const step = plan.steps.find(({ id }) => id === started);
  if (!tablet.state.plan.days || !step || !knowsTime(tablet)) return;
  if (by === 'chain') {
    expect(['rest', 'cool']).toContain(step.kind);
    return;
  }
  expect(inRestDay(tablet.trueS)).toBe(false);
  if (step.kind === 'rest' || step.kind === 'cool') return;
  expect(inRestDay(tablet.trueS + step.durationS.typical - REACH_SLACK_S)).toBe(false);
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

/** I-30: a burn's clock runs until a person's word, and never shows less than is truly left. */
function checkCoolings(truth: Truth, tablet: Tablet): void {
  const { facts, state, view } = tablet;
  const told = facts.flatMap(({ body }) =>
    body.kind === 'fault-raised' && body.faultKind === 'burned' ? [body.fault] : [],
  );
  const ended = facts.flatMap(({ body }) => (body.kind === 'cooling-ended' ? [body.fault] : []));
  const open = told.filter((fault) => !ended.includes(fault));
  expect(view.coolings.map(({ fault }) => fault).toSorted()).toEqual(open.toSorted());
  if (open.length > 0) expect(['running', 'closed']).not.toContain(state.status);
  for (const { id, leftS, over } of view.coolings) {
    if (!truth.beganS.has(id)) truth.beganS.set(id, tablet.trueS);
    const trueLeftS = 1200 - (tablet.trueS - (truth.beganS.get(id) ?? 0));
    expect(leftS).toBeGreaterThanOrEqual(trueLeftS - SLACK_S);
    if (over) expect(trueLeftS).toBeLessThanOrEqual(SLACK_S);
    else expect(leftS).toBeGreaterThan(0);
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
