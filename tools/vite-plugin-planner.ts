import { resolve } from 'node:path';
import type { Plugin, ResolvedConfig } from 'vite';

/** The worker, beside the page, and the file that starts it. */
const WORKER = 'src/app/controllers/planner/worker.ts';
const STARTED_BY = /\/controllers\/planner\/planner\.ts$/;
const ADDRESS = 'PLANNER_WORKER_URL';

/**
 * Bundles the planner's worker as one more chunk of the page's build, so that both share what they
 * have in common and the page can do the same work without it. A worker bundled by itself would
 * carry the whole core a second time.
 */
export function plannerPlugin(): Plugin {
  let config: ResolvedConfig;
  let file = '';
  return {
    name: 'glowpour-planner',
    configResolved(resolved) {
      config = resolved;
    },
    buildStart() {
      if (config.command === 'build')
        file = this.emitFile({
          type: 'chunk',
          id: resolve(config.root, WORKER),
          name: 'planner-worker',
        });
    },
    transform: {
      filter: { id: STARTED_BY },
      handler: (code) => {
        const address =
          config.command === 'build'
            ? `import.meta.ROLLUP_FILE_URL_${file}`
            : JSON.stringify(`/${WORKER}?worker_file&type=module`);
        return code.replaceAll(ADDRESS, address);
      },
    },
  };
}
