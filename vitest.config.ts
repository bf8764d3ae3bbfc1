import { defineConfig } from 'vitest/config';

/** Core, host and command-line tests: plain Node, no page (browser tests have a config of their own). */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    testTimeout: 30_000,
    // By default one core is left idle, which on two is half of them.
    maxWorkers: '100%',
  },
});
