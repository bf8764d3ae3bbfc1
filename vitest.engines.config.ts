import { defineConfig } from 'vitest/config';
import { leftOut } from './tests/browser/support/browser/left-out.ts';

/** A run in each engine that tablets have. What is not installed is left out by name. */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/engines/**/*.test.ts'],
    reporters: ['default', leftOut],
    testTimeout: 600_000,
    hookTimeout: 120_000,
  },
});
