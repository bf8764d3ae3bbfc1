import { expect, it } from 'vitest';
import { reportOf, reportText } from '../../../src/core/report/index.ts';
import { createRun } from '../../../src/core/run/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const plan = buildPlan(demoKitchen('flat-coils.kitchen.json'));
const NOW = { wallMs: Date.UTC(2026, 10, 27), monoMs: 0, bootId: 'boot' } as never;

function textOf(app: string | undefined): string {
  const { facts } = createRun(plan, NOW, 0, undefined, app);
  return reportText(reportOf(facts), inEnglish, 'UTC');
}

it('a record tells the app that began its run', () => {
  expect(textOf('0.2.0')).toContain('Begun in Glowpour 0.2.0.');
});

it('a record of before does not', () => {
  expect(textOf(undefined)).not.toContain('Begun in');
});

it('a version from a file stays on its line and turns nothing', () => {
  const text = textOf(`9\n\u202E${'x'.repeat(500)}`);
  expect(text).toContain(`Begun in Glowpour 9 ${'x'.repeat(22)}.\n`);
});
