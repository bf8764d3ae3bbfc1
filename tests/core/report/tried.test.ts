import { describe, expect, it } from 'vitest';
import { simulateRun } from '../../../src/core/run/index.ts';
import { reportOf, reportText } from '../../../src/core/report/index.ts';
import { inEnglish } from '../../support/english.ts';
import { planOfDemo } from '../plan/support/plans.ts';
import { stepOf } from './runs.ts';

describe('a cool-down in the record', () => {
  it.each([
    ['flat-coils', 'cool-coil-front-left', 'steps.cool.say.drop', 'No hiss, no heat felt'],
    ['flat-glass-230', 'cool-zone-front-left', 'steps.cool.say.lamp', 'Lamp out, no heat felt'],
  ] as const)(
    'of %s ends by a word after the clock, and says which test',
    (demo, id, key, words) => {
      const { facts } = simulateRun(planOfDemo(demo));
      const report = reportOf(facts);
      const stage = stepOf(report, id).attempts.at(-1)?.stages[0];
      expect(stage?.endedBy).toBe('person');
      expect(stage?.said?.key).toBe(key);
      const [hold] = stage?.holds ?? [];
      expect(hold?.provedS).toBeGreaterThanOrEqual(hold?.neededS ?? Infinity);
      expect(reportText(report, inEnglish, 'UTC')).toContain(`: ${words}.`);
    },
  );
});
