import { cpSync } from 'node:fs';
import { defineConfig, type Plugin } from 'vite';

/** The demo world travels with the program as the plain folder that it is. */
const copyDemo: Plugin = {
  name: 'copy-demo-dossier',
  closeBundle() {
    cpSync('main/demo/dossier', 'dist/demo', { recursive: true });
  },
};

/** Electron's main process, bundled; native modules and Electron itself stay outside. */
export default defineConfig({
  build: {
    ssr: true,
    target: 'node24',
    outDir: 'dist/main',
    emptyOutDir: false,
    minify: false,
    rollupOptions: {
      input: { electron: 'main/hosts/electronMain.ts' },
      external: ['electron', 'better-sqlite3'],
      output: { format: 'es', entryFileNames: '[name].js' },
    },
  },
  ssr: { noExternal: true, external: ['electron', 'better-sqlite3'] },
  plugins: [copyDemo],
});
