import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';
import { offlinePlugin } from './tools/vite-plugin-offline.ts';

export default defineConfig({
  plugins: [solid(), offlinePlugin()],
  define: { BUILT_WALL_MS: JSON.stringify(Date.now()) },
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    rolldownOptions: {
      // The polygon library does not say that its modules do nothing by themselves; it is a third of its size without the unused ones.
      treeshake: { moduleSideEffects: (id: string) => !id.includes('clipper2-ts') },
    },
  },
  preview: { port: 4173, open: '/#/plan/flat-coils' },
});
