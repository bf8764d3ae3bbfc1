import { defineConfig } from 'vitest/config';
import { leftOut } from './tests/browser/support/browser/left-out.ts';

const FOREVER = ['node_modules/**'];
/** Minutes long, and not what an everyday change breaks: CI runs them, `npm run browser:long` here. */
const LONG = [
  'tests/browser/pseudo-locale.test.ts',
  'tests/browser/faults/old-build.test.ts',
  'tests/browser/faults/power-cut.test.ts',
  'tests/browser/faults/screen-and-sleep.test.ts',
  'tests/browser/faults/sound-light.test.ts',
];
/** What is measured by ear or by the minute wants a calm machine; these two hardly load it. */
const ALONE = ['tests/browser/faults/alarm-heard.test.ts', 'tests/browser/idle.test.ts'];

/**
 * Tests in a real browser. Most of their time is waiting, so two files run at
 * once on two cores; in the long lane those that measure run after the others.
 */
const long = process.env.GLOWPOUR_LONG !== undefined;
export default defineConfig({
  test: {
    globalSetup: 'tests/browser/support/browser/global-setup.ts',
    reporters: ['default', leftOut],
    projects: [
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: long ? LONG : ['tests/browser/**/*.test.ts'],
          exclude: long ? FOREVER : [...FOREVER, ...ALONE, ...LONG],
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
          include: long ? ALONE : [],
          testTimeout: 180_000,
          hookTimeout: 120_000,
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
