import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';

export default defineConfig({
  plugins: [solid()],
  build: { target: 'es2022', assetsInlineLimit: 0 },
  preview: { port: 4173, open: '/#/plan/flat-coils' },
});
