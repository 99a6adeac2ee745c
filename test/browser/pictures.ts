import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const folder = join(import.meta.dirname, 'snapshots');
/** Largest difference of a channel that counts as the same (rounding of a glyph's edge), of 255. */
const sameChannel = 40;
/** Share of pixels that may differ: the edges of glyphs as another build of the browser draws them, never a moved line. */
const sameShare = 0.003;

/**
 * What stands between a picture of the page and the stored one: null when they are the same, else a sentence. A
 * picture that differs is written beside the stored one as `<name>.now.png`; `UPDATE_SNAPSHOTS=1` accepts it.
 * `canvas` is any page in which pictures can be decoded and compared.
 */
export async function compareWithStored(page: Page, name: string, canvas: Page): Promise<string | null> {
  const stored = join(folder, `${name}.png`);
  const beside = join(folder, `${name}.now.png`);
  const taken = await page.screenshot({ animations: 'disabled', caret: 'hide' });
  const [difference, small] = await inCanvas(canvas, taken, existsSync(stored) ? readFileSync(stored) : null);
  const same = typeof difference === 'number' && difference <= sameShare;
  if (process.env.UPDATE_SNAPSHOTS === '1') {
    mkdirSync(folder, { recursive: true });
    rmSync(beside, { force: true });
    if (!same) writeFileSync(stored, small);
    return null;
  }
  if (same) {
    rmSync(beside, { force: true });
    return null;
  }
  writeFileSync(beside, small);
  return difference === null
    ? `${name}: no picture is stored`
    : typeof difference === 'string'
      ? `${name}: ${difference}`
      : `${name}: ${(100 * difference).toFixed(2)} % of the pixels differ`;
}

/** The share of differing pixels, or what makes a comparison pointless; and the taken picture, coarsened to be small. */
async function inCanvas(
  canvas: Page,
  taken: Buffer,
  stored: Buffer | null,
): Promise<[difference: number | string | null, small: Buffer]> {
  const [difference, small] = await canvas.evaluate(
    async ([one, other, limit]) => {
      const decode = async (base64: string) => {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
        const surface = new OffscreenCanvas(bitmap.width, bitmap.height);
        const context = surface.getContext('2d', { willReadFrequently: true })!;
        context.drawImage(bitmap, 0, 0);
        return { surface, context, pixels: context.getImageData(0, 0, bitmap.width, bitmap.height) };
      };
      const now = await decode(one);
      const { data, width, height } = now.pixels;
      // Sixteen steps a channel: enough to look at and to compare, a third of the bytes.
      for (let at = 0; at < data.length; at += 1) if (at % 4 < 3) data[at] = Math.round(data[at]! / 17) * 17;
      now.context.putImageData(now.pixels, 0, 0);
      const blob = await now.surface.convertToBlob({ type: 'image/png' });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      let binary = '';
      for (let at = 0; at < bytes.length; at += 0x8000)
        binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
      if (other === null) return [null, btoa(binary)] as const;
      const before = (await decode(other)).pixels;
      if (before.width !== width || before.height !== height)
        return ['the sizes differ', btoa(binary)] as const;
      let differing = 0;
      for (let at = 0; at < data.length; at += 4) {
        const far = [0, 1, 2].some((part) => Math.abs(data[at + part]! - before.data[at + part]!) > limit);
        if (far) differing += 1;
      }
      return [differing / (width * height), btoa(binary)] as const;
    },
    [taken.toString('base64'), stored?.toString('base64') ?? null, sameChannel] as const,
  );
  return [difference, Buffer.from(small, 'base64')];
}
