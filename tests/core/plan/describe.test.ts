import { describe, expect, it } from 'vitest';
import { describePlan } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMOS, planOfDemo } from './support/plans.ts';

const { say, t } = inEnglish;

describe('a moment after the start', () => {
  const lengthS = { low: 600, typical: 600, high: 600 };
  const at = (days: number, hours: number, minutes: number): string =>
    t('plan.step.offset', {
      days,
      hours,
      minutes,
      step: planOfDemo('hall').steps[0]!.title,
      lengthS,
    });

  it.each([
    [0, 3, 0, 'T+03:00  '],
    [1, 2, 10, 'T+1 day 02:10  '],
    [3, 0, 0, 'T+3 days 00:00  '],
  ])('%d days, %d h, %d min', (days, hours, minutes, text) => {
    expect(at(days, hours, minutes).startsWith(text)).toBe(true);
  });
});

describe.each(DEMOS)('the text of %s', (demo) => {
  const plan = planOfDemo(demo);
  const text = describePlan(plan, inEnglish);

  it('carries the standing line at its head and its foot', () => {
    expect(text.split(t('plan.customs-differ'))).toHaveLength(3);
  });

  it('names every fixture, question, notice, thing to buy and step', () => {
    for (const { name } of plan.kitchen.fixtures) expect(text).toContain(name);
    for (const { ask } of plan.questions) expect(text).toContain(say(ask));
    for (const notice of plan.notices) expect(text).toContain(say(notice));
    for (const { name } of plan.shopping) expect(text).toContain(say(name));
    for (const { title } of plan.steps) expect(text).toContain(say(title));
  });

  it('says every caution and every question of a gate in its words', () => {
    for (const caution of plan.cautions) expect(text).toContain(say(caution.say));
    for (const { ask } of plan.gates) expect(text).toContain(say(ask));
  });

  it('has no word that only a machine would say, and no key without its sentence', () => {
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(text).not.toMatch(/\b(?:plan|steps|custom|cautions|sources|common|calendar)\.[a-z]/);
  });
});
