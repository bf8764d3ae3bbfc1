import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { describePlan } from '../../../src/core/plan/index.ts';
import { DEMOS, planOfDemo } from './plans.ts';

describe('the plans of the demo kitchens', () => {
  it.each(DEMOS)('%s reads as it did', async (demo) => {
    const path = join(import.meta.dirname, 'golden', `${demo}.txt`);
    await expect(describePlan(planOfDemo(demo))).toMatchFileSnapshot(path);
  });
});
