import { describe, expect, it } from 'vitest';
import { CUSTOMS_DIFFER, describePlan } from '../../../src/core/plan/index.ts';
import { lengthText, momentText, spreadText } from '../../../src/core/plan/describe/times.ts';
import { DEMOS, planOfDemo } from './plans.ts';

describe('moments and lengths', () => {
  it.each([
    [0, 'T+00:00'],
    [3 * 3600 + 59, 'T+03:00'],
    [86_400 + 2 * 3600 + 600, 'T+1 day 02:10'],
    [3 * 86_400, 'T+3 days 00:00'],
  ])('%d s after the start is %s', (s, text) => expect(momentText(s)).toBe(text));

  it.each([
    [45, '45 s'],
    [145, '2 min 25 s'],
    [540, '9 min'],
    [599, '10 min'],
    [60 * 60, '60 min'],
    [3 * 3600 + 300, '3 h 05 min'],
    [86_400, '24 h'],
  ])('%d s is told as %s', (s, text) => expect(lengthText(s)).toBe(text));

  it('tells a spread only where there is one', () => {
    expect(spreadText({ low: 600, typical: 600, high: 620 })).toBe('10 min');
    expect(spreadText({ low: 600, typical: 720, high: 900 })).toBe('12 min (10 min to 15 min)');
  });
});

describe.each(DEMOS)('the text of %s', (demo) => {
  const plan = planOfDemo(demo);
  const text = describePlan(plan);

  it('carries the standing line at its head and its foot', () => {
    expect(text.split(CUSTOMS_DIFFER)).toHaveLength(3);
  });

  it('names every fixture, question, notice, thing to buy and step', () => {
    for (const { name } of plan.kitchen.fixtures) expect(text).toContain(name);
    for (const { ask } of plan.questions) expect(text).toContain(ask);
    for (const notice of plan.notices) expect(text).toContain(notice);
    for (const { name } of plan.shopping) expect(text).toContain(name);
    for (const { title } of plan.steps) expect(text).toContain(title);
  });

  it('says every caution and every question of a gate in its words', () => {
    for (const { say } of plan.cautions) expect(text).toContain(say);
    for (const { ask } of plan.gates) expect(text).toContain(ask);
  });

  it('has no word that only a machine would say', () => {
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
  });
});
