import { expect } from 'vitest';
import type { RunState } from '../../../../src/core/run/index.ts';
import { elapsed } from '../../../../src/core/run/timers/span.ts';
import { DAY_S, planOf, steps } from '../fixtures.ts';
import type { Tablet } from '../tablet.ts';

export const plan = planOf(steps);

/** Slack for clock tolerances that a person's answer counts in, s. */
const SLACK_S = 15;

/** What is true, kept apart from the engine: the slow reference. */
export class Truth {
  /** True time at which each cause of each timer began. */
  readonly beganS = new Map<string, number>();
  readonly seenFacts = { count: 0 };
  /** True time at which each attempt of a rest began. */
  readonly restBeganS = new Map<string, number>();
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
