import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { sitDown } from './harness.ts';
import { paintTwice, roomsAtRest } from './rooms.ts';

/**
 * `npm run screens [folder]`: pictures of every room in both themes, taken from the running program on the demo
 * library. Without a folder they go to `docs/screens`, at 1280 × 800; with one also at 1920 × 1080.
 */
const [folder] = process.argv.slice(2);
const target = folder ?? join(import.meta.dirname, '..', '..', 'docs', 'screens');
const sizes =
  folder === undefined
    ? [[1280, 800]]
    : [
        [1280, 800],
        [1920, 1080],
      ];
mkdirSync(target, { recursive: true });
const sitting = await sitDown();
for (const theme of ['light', 'dark'] as const) {
  for (const [width, height] of sizes) {
    for (const { name, path, rest } of roomsAtRest) {
      const page = await sitting.openWindow({ path, theme, width, height });
      await rest(page);
      await page.evaluate(() => document.fonts.ready);
      await paintTwice(page);
      const size = folder === undefined ? '' : `-${width}`;
      await page.screenshot({ path: join(target, `${name}-${theme}${size}.png`) });
      await page.context().close();
    }
  }
}
await sitting.close();
