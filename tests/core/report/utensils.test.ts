import { describe, expect, it } from 'vitest';
import { buildPlan, type Plan } from '../../../src/core/plan/index.ts';
import {
  lacksOf,
  reportOf,
  reportText,
  utensilsOf,
  vesselsOf,
} from '../../../src/core/report/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import { kitchenOf, only } from '../plan/support/plans.ts';

const ZONE = 'America/Denver';
const plan: Plan = buildPlan(only(kitchenOf('mountain-gas'), 'range-top', 'sink-steel'));
const whole = reportOf(simulateRun(plan).facts);
const batches = plan.steps.filter(({ work }) => work.on === 'utensils' && work.batch);

/** Stopped when the second batch has begun. */
const cut = reportOf(
  simulateRun(plan, {
    script: ({ steps, status }) =>
      status === 'running' &&
      steps.some(({ step, status: at }) => step.id === batches[1]?.id && at === 'active')
        ? [{ kind: 'stop-run', reason: 'The gas is empty.' }]
        : [],
  }).facts,
);

const said = (lines: readonly Parameters<typeof inEnglish.say>[0][]) => lines.map(inEnglish.say);

describe('the record of utensils', () => {
  it('tells each batch with what was in it and when, and nothing of it among the kettles', () => {
    const told = said(utensilsOf(whole, ZONE));
    for (const { title, work } of batches) {
      const line = told.find((one) => one.includes(inEnglish.say(title).replace(/\.$/, '')));
      expect(line).toMatch(/\d\d:\d\d/);
      if (work.on !== 'utensils') continue;
      for (const { count, name } of work.items)
        expect(line).toContain(`${count} × ${inEnglish.say(name)}`);
    }
    expect(said(vesselsOf(whole, ZONE)).join(' ')).not.toContain('Dip batch');
    expect(lacksOf(whole, ZONE).some(({ key }) => key === 'report.lack.utensils')).toBe(false);
  });

  it('tells among what is left out every batch that was broken off or never begun', () => {
    const lacks = lacksOf(cut, ZONE).filter(({ key }) => key === 'report.lack.utensils');
    const text = said(lacks).join('\n');
    for (const [at, { title }] of batches.entries())
      expect(text.includes(inEnglish.say(title).replace(/\.$/, ''))).toBe(at > 0);
    expect(text).toContain('not purged');
    expect(text).toContain('The gas is empty.');
  });

  it('stands in the text that is shared', () => {
    const text = reportText(whole, inEnglish, ZONE);
    expect(text).toContain('Utensils');
    expect(text).toContain('12 × Cutlery (Dairy)');
  });
});
