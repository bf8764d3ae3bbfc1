import { defineConfig } from 'vitest/config';

/**
 * The tests of the run engine alone, for changes that are made to it on
 * purpose (stryker.config.json). Without those that draw at random, since a
 * change would be found or not by luck; without the long replays, for which
 * each change that survives would wait; and without those that read texts of
 * source files, which are others when changes are built in.
 */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/core/run/**/*.test.ts'],
    exclude: ['model', 'gaps/cut', 'gaps/cut-recorded', 'permits', 'invariants'].map(
      (name) => `tests/core/run/${name}.test.ts`,
    ),
    testTimeout: 30_000,
  },
});
