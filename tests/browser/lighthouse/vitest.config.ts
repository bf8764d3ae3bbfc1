import { defineConfig } from 'vitest/config';

/** An audit a page, each three times; it is fetched by npx, since nothing else needs it. */
export default defineConfig({
  test: {
    globalSetup: 'tests/browser/support/browser/global-setup.ts',
    environment: 'node',
    include: ['tests/browser/lighthouse/*.audit.ts'],
    testTimeout: 900_000,
    hookTimeout: 180_000,
    fileParallelism: false,
  },
});
