import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = new URL('.', import.meta.url).pathname;

// biome-ignore lint/style/noDefaultExport: the bundler reads its settings from the default export
export default defineConfig({
  root: here,
  // Relative addresses: the built folder runs from any place that serves files.
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    // No data: addresses, which the content-security policy would refuse to fetch.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // Plotly alone is 4.5 MB before compression; it is loaded when the first figure is drawn.
    chunkSizeWarningLimit: 6000,
  },
});
