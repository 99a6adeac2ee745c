import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The window: built to `dist/app`, which every host serves as plain files under a strict policy. */
export default defineConfig({
  root: 'app',
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../dist/app',
    emptyOutDir: true,
    target: 'chrome140',
    // A strict content policy refuses `data:` fonts and scripts.
    assetsInlineLimit: 0,
    sourcemap: false,
    chunkSizeWarningLimit: 5000,
  },
});
