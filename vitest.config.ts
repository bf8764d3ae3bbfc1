import { defineConfig } from 'vitest/config';

/** Ten times what the slowest takes on a calm machine: on a busy one nothing fails for slowness. */
const TIMEOUT_MS = 300_000;

/**
 * Core, host and command-line tests: plain Node, no page (browser tests have a
 * config of their own). The core is pure and keeps nothing that a test could
 * see, so its files share what is loaded: a third less time.
 */
export default defineConfig({
  test: {
    // By default one core is left idle, which on two is half of them.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'core',
          environment: 'node',
          include: ['tests/core/**/*.test.ts', 'tests/data/**/*.test.ts'],
          isolate: false,
          testTimeout: TIMEOUT_MS,
          hookTimeout: TIMEOUT_MS,
        },
      },
      {
        test: {
          name: 'around',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: [
            'tests/browser/**',
            'tests/engines/**',
            'tests/core/**',
            'tests/data/**',
            'node_modules/**',
          ],
          testTimeout: TIMEOUT_MS,
          hookTimeout: TIMEOUT_MS,
        },
      },
    ],
  },
});
