import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import solid from 'vite-plugin-solid';
import { serve } from '../support/server.ts';

/** Builds the bare page as the app is built, serves it, and forgets it at the end. */
export async function serveBare(): Promise<{
  readonly url: string;
  readonly stop: () => Promise<void>;
}> {
  const outDir = mkdtempSync(join(tmpdir(), 'glowpour-bare-'));
  await build({
    configFile: false,
    root: join(import.meta.dirname, 'bare'),
    base: './',
    logLevel: 'error',
    plugins: [solid()],
    build: { outDir, emptyOutDir: true, target: 'es2022' },
  });
  const site = await serve(outDir);
  return {
    url: site.url,
    stop: async () => {
      await site.stop();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
