import { defineConfig } from 'vite';

/** A sandboxed preload must be one CommonJS file. */
export default defineConfig({
  build: {
    ssr: true,
    target: 'node24',
    outDir: 'dist/main',
    emptyOutDir: false,
    minify: false,
    rollupOptions: {
      input: { preload: 'main/hosts/preload.ts' },
      external: ['electron'],
      output: { format: 'cjs', entryFileNames: '[name].cjs' },
    },
  },
  ssr: { noExternal: true, external: ['electron'] },
});
