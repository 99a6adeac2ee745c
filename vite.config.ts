import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const beginning =
  /node_modules\/(react|zustand)\/|vite\/preload-helper|app\/(begin\.ts|door\/|stores\/(news|library|evidence|article|articleAhead)\.ts|shell\/(route|roomParts|Fetched)\.tsx?|theme\/(themeChoice\.ts|\w+\.css)|shell\/shell\.css)/;
const frame =
  /node_modules\/(react-dom|scheduler)\/|app\/(main\.tsx|theme\/|commands\/|tour\/|shell\/(Shell|FetchedSheet|heldKeys|ErrorBoundary|ShutDoorPage|Slots|briefNotices|sheets|shellCommands|strayDrops|announce|afterPaint)\.tsx?)|app\/draft\/proofs\/(proofStore|proofItem)\.ts|contract\/(faultLine|claim)\.ts/;

/**
 * Names the frame and the two fonts of every room in the page itself: they are fetched while what asks for them is
 * still being read, and the first picture has its letters.
 */
const frameAhead: Plugin = {
  name: 'frame-ahead',
  transformIndexHtml: {
    order: 'post',
    handler: (_html, { bundle }) =>
      Object.values(bundle ?? {}).flatMap((part) => {
        const attrs =
          part.type === 'chunk' && part.name === 'frame'
            ? { rel: 'modulepreload' }
            : /(literata-latin-opsz|hanken-grotesk-latin-wght)-normal/.test(part.fileName)
              ? { rel: 'preload', as: 'font', type: 'font/woff2' }
              : null;
        return attrs
          ? [
              {
                tag: 'link',
                attrs: { ...attrs, crossorigin: true, href: `./${part.fileName}` },
                injectTo: 'head' as const,
              },
            ]
          : [];
      }),
  },
};

const shared = `${import.meta.dirname.replaceAll('\\', '/')}/shared/`;

/** The window: built to `dist/app`, which every host serves as plain files under a strict policy. */
export default defineConfig({
  root: 'app',
  base: './',
  plugins: [react(), frameAhead],
  worker: { format: 'es' },
  // The editor's Markdown reader brings a tokenizer of its own, of which only a default is made that nothing uses.
  resolve: { dedupe: ['markdown-it'] },
  build: {
    outDir: '../dist/app',
    emptyOutDir: true,
    target: 'chrome140',
    // A strict content policy refuses `data:` fonts and scripts.
    assetsInlineLimit: 0,
    // All styles together are smaller than one font: one file, at once, and no room stands unstyled for a moment.
    cssCodeSplit: false,
    sourcemap: false,
    chunkSizeWarningLimit: 5000,
    rolldownOptions: {
      // Modules of `shared` only define: what a room never uses need not come with it. No function is called pure by
      // its name: packages come shortened to names of one letter, and without its own `z` one of them drew no plot.
      treeshake: { moduleSideEffects: (id) => (id.startsWith(shared) ? false : undefined) },
      // What every window begins with comes in two pieces: what asks for the rest, and the frame around the room.
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [
            { name: 'begin', test: beginning, priority: 3 },
            { name: 'frame', test: frame, priority: 2 },
            // What quantities are called and how they are written, for lines that stand before anything is measured.
            {
              name: 'wording',
              test: /shared\/(measure\/catalogue|article\/formatNumber)|app\/(plots\/numberText|stores\/citations\.ts|bench\/(runOrder|headlines|dateText))/,
              priority: 2,
            },
            {
              name: 'measure',
              test: /shared\/(measure|certainty|colour)\/|contract\/runDefaults|app\/stores\/measurements/,
              priority: 1,
            },
            {
              name: 'editor',
              test: /node_modules\/(prosemirror|orderedmap|w3c-keyname|rope-sequence)|app\/draft\/document\//,
              priority: 1,
            },
          ],
        },
      },
    },
  },
});
