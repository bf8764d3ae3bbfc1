import { defineConfig } from 'vitest/config';

/** What a slow tablet meets; one file at a time, for it measures. */
export default defineConfig({
  test: {
    globalSetup: 'tests/browser/support/browser/global-setup.ts',
    environment: 'node',
    include: ['tests/browser/slow/*.slow.ts'],
    testTimeout: 600_000,
    hookTimeout: 180_000,
    fileParallelism: false,
  },
});
