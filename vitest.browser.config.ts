import { defineConfig } from 'vitest/config';
import { leftOut } from './tests/browser/support/browser/left-out.ts';

const FOREVER = ['node_modules/**'];
/** What is measured by ear or by the minute wants a calm machine; these two hardly load it. */
const ALONE = ['tests/browser/faults/alarm-heard.test.ts', 'tests/browser/idle.test.ts'];

/**
 * Tests in a real browser. Most of their time is waiting, so two files run at
 * once on two cores; those that measure run after them.
 */
export default defineConfig({
  test: {
    globalSetup: 'tests/browser/support/browser/global-setup.ts',
    reporters: ['default', leftOut],
    projects: [
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          exclude: [...FOREVER, ...ALONE],
          testTimeout: 240_000,
          hookTimeout: 120_000,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'measured',
          environment: 'node',
          include: ALONE,
          testTimeout: 180_000,
          hookTimeout: 120_000,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
