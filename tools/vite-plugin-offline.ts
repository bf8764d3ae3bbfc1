import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build, type Plugin, type ResolvedConfig } from 'vite';
import { injectManifest } from 'workbox-build';

/** Entry of the worker, its name beside the page, and the largest file it keeps, bytes. */
const ENTRY = 'src/offline/service-worker.ts';
const NAME = 'service-worker.js';
const MAX_FILE_BYTES = 1_000_000;

/** Bundles the worker as one classic script: workers without module support run it too. */
async function bundleWorker(root: string, outDir: string): Promise<string> {
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      outDir,
      emptyOutDir: false,
      target: 'es2022',
      rollupOptions: {
        input: resolve(root, ENTRY),
        output: { format: 'iife', entryFileNames: NAME, codeSplitting: false },
      },
    },
  });
  return join(outDir, NAME);
}

/**
 * After the app is built: bundles the offline worker into the output folder
 * and writes into it the list of everything else there.
 */
export function offlinePlugin(): Plugin {
  let config: ResolvedConfig;
  let written = false;
  return {
    name: 'glowpour-offline',
    apply: 'build',
    enforce: 'post',
    configResolved(resolved) {
      config = resolved;
    },
    writeBundle() {
      written = true;
    },
    async closeBundle() {
      // Called after a failed build too.
      if (!written) return;
      const dist = resolve(config.root, config.build.outDir);
      const folder = mkdtempSync(join(tmpdir(), 'glowpour-worker-'));
      try {
        const { count, size, warnings } = await injectManifest({
          swSrc: await bundleWorker(config.root, folder),
          swDest: join(dist, NAME),
          globDirectory: dist,
          globPatterns: ['**/*'],
          globIgnores: ['**/*.map', NAME],
          // Names made by the builder carry a hash; asking for them again would only cost.
          dontCacheBustURLsMatching: /^assets\//,
          maximumFileSizeToCacheInBytes: MAX_FILE_BYTES,
        });
        if (warnings.length > 0) throw new Error(`Not all is kept offline: ${warnings.join('; ')}`);
        config.logger.info(`Offline: ${count} files, ${(size / 1000).toFixed(0)} kB.`);
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  };
}
