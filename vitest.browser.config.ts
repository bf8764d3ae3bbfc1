import { defineConfig } from 'vitest/config';

/** Tests in a real browser, one at a time: they share the machine's two cores with it. */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/browser/**/*.test.ts'],
    testTimeout: 180_000,
    hookTimeout: 120_000,
    fileParallelism: false,
  },
});
