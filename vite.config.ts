import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';
import { offlinePlugin } from './tools/vite-plugin-offline.ts';

export default defineConfig({
  plugins: [solid(), offlinePlugin()],
  define: { BUILT_WALL_MS: JSON.stringify(Date.now()) },
  build: { target: 'es2022', assetsInlineLimit: 0 },
  preview: { port: 4173, open: '/#/plan/flat-coils' },
});
