import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';
import { HEADERS } from './tools/content-policy.ts';
import { FIRST_PIECE } from './tools/first-piece.ts';
import { hasDesktop } from './tools/has-desktop.ts';
import { packageVersion } from './tools/package-version.ts';
import { dataPlugin } from './tools/vite-plugin-data.ts';
import { offlinePlugin } from './tools/vite-plugin-offline.ts';
import { plannerPlugin } from './tools/vite-plugin-planner.ts';

/**
 * Without its hidden memos: one that is made while a handler or a timer reads
 * a property has no owner, lives for ever, and throws when what it reads is
 * gone. Where elements depend on a condition, Show and Switch keep them.
 */
const CONDITIONALS = { solid: { wrapConditionals: false } };

/** Where the app is shown first: the plan of a demo kitchen. */
const DEMO = '/#/plan/flat-coils';
const PORT = 4173;
const opens = hasDesktop(process.platform, process.env);

export default defineConfig({
  // A host may serve it under any path.
  base: './',
  plugins: [
    solid(CONDITIONALS),
    dataPlugin(),
    plannerPlugin(),
    offlinePlugin(),
    {
      name: 'address',
      configurePreviewServer: (server) => {
        server.printUrls = () => {
          const address = server.resolvedUrls?.local[0] ?? `http://localhost:${PORT}/`;
          server.config.logger.info(`  ${address}${DEMO.slice(1)}`);
        };
      },
    },
  ],
  define: {
    BUILT_WALL_MS: JSON.stringify(Date.now()),
    BUILT_VERSION: JSON.stringify(packageVersion()),
  },
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    // What is here first would carry the names of all that its later pieces need, and these name it
    // themselves. Only the pages beside the run, which are looked at first, are asked for at once.
    modulePreload: {
      resolveDependencies: (piece, needs, { hostId }) =>
        /index-[^/]*$/.test(hostId) && !piece.includes('pages-frame')
          ? needs.filter((name) => name.endsWith('.css'))
          : needs,
    },
    rolldownOptions: {
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [FIRST_PIECE],
        },
      },
      // The polygon library does not say that its modules do nothing by themselves; it is a third of its size without the unused ones.
      treeshake: { moduleSideEffects: (id: string) => !id.includes('clipper2-ts') },
    },
  },
  // Its core alone: no sound here comes from a place in space.
  resolve: { alias: [{ find: /^howler$/, replacement: 'howler/dist/howler.core.min.js' }] },
  preview: { port: PORT, open: opens && DEMO, headers: { ...HEADERS } },
});
