import { defineConfig } from 'vitest/config';

/** Core, host and command-line tests: plain Node, no page (browser tests have a config of their own). */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    // Ten times what the slowest takes on a calm machine: on a busy one nothing fails for slowness.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // By default one core is left idle, which on two is half of them.
    maxWorkers: '100%',
  },
});
