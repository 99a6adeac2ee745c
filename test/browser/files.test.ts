import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { goTo, proofsAtRest } from './rooms.ts';

let sitting: Sitting;
let page: Page;
beforeAll(async () => {
  sitting = await sitDown();
  page = await sitting.openWindow({ path: '#/shelf' });
  await page.locator('.shelf-line').first().waitFor();
});
afterAll(() => sitting?.close());

const pixel =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

/** Drops a file on the first element that fits, as a person does: over it first. True when the window took it. */
async function drop(selector: string, name: string, type: string, base64: string): Promise<boolean> {
  return await page
    .locator(selector)
    .first()
    .evaluate(
      (element, file) => {
        const bytes = Uint8Array.from(atob(file.base64), (letter) => letter.charCodeAt(0));
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([bytes], file.name, { type: file.type }));
        const { left, top } = element.getBoundingClientRect();
        const at = { clientX: left + 4, clientY: top + 4, bubbles: true, cancelable: true, dataTransfer };
        element.dispatchEvent(new DragEvent('dragover', at));
        return !element.dispatchEvent(new DragEvent('drop', at));
      },
      { name, type, base64 },
    );
}

const csv = (rows: string) => Buffer.from(`series,stimulus,x,y,Y\n${rows}`).toString('base64');

describe('a file that is dropped', () => {
  it('on a run is read and kept', async () => {
    const created = await sitting.workbench.answer('unit.save', {
      unit: 'veltrane-marsh-50',
      content: { maker: 'Veltrane', model: 'Marsh 50' },
    });
    expect(created.ok).toBe(true);
    await goTo(page, '#/bench/veltrane-marsh-50');
    await page.getByRole('button', { name: /^Begin (another|the first) run$/ }).click();
    await page.getByLabel('Picture mode').fill('Calm');
    await page.getByRole('button', { name: 'Begin the run' }).click();
    await page.locator('.bring').waitFor();
    const taken = await drop('.bring', 'greys.csv', 'text/csv', csv('greyscale,100,0.31,0.33,120\n'));
    expect(taken).toBe(true);
    await page.locator('.bring').getByText('1 reading', { exact: true }).waitFor();
  });

  it('into an article, a picture, is kept with the set and asks what it shows', async () => {
    await goTo(page, '#/draft/vane-50');
    await proofsAtRest(page);
    expect(await drop('.article p', 'foot.png', 'image/png', pixel)).toBe(true);
    await page.locator('.article .photo img[src^="blob:"]').waitFor();
    await page.getByRole('button', { name: 'Say what this picture shows' }).click();
    await page.keyboard.type('The foot of folded steel');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+s');
    await page.waitForTimeout(300);
    await page.getByText('Saved', { exact: true }).waitFor();
    const article = await sitting.workbench.answer('article.read', { article: 'vane-50' });
    expect(article.ok && article.value.markdown).toContain(
      '![The foot of folded steel](../units/kasulind-vane-50/photos/foot.png)',
    );
  });

  it('where nothing takes it leaves the window as it is and says where files go', async () => {
    const before = page.url();
    expect(await drop('.nav', 'greys.csv', 'text/csv', csv(''))).toBe(true);
    await page.getByText('Readings are dropped on their run on the Bench').waitFor();
    expect(page.url()).toBe(before);
  });
});

describe('bringing readings in', () => {
  it('that is stopped keeps nothing of the file and says so', async () => {
    const rows = Array.from(
      { length: 60_000 },
      (_, index) => `greyscale,${index % 101},0.3127,0.329,${(index % 101) + 0.5}`,
    );
    await goTo(page, '#/bench/tamarick-linden-50');
    await page.getByRole('button', { name: /^Begin (another|the first) run$/ }).click();
    await page.getByLabel('Picture mode').fill('Long');
    await page.getByRole('button', { name: 'Begin the run' }).click();
    await page.locator('.bring input[type=file]').setInputFiles({
      name: 'long.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(`series,stimulus,x,y,Y\n${rows.join('\n')}\n`),
    });
    await page.getByRole('button', { name: 'Stop; keep nothing of it' }).click();
    await page.locator('.bring').getByText('Stopped.').waitFor();
    const unit = await sitting.workbench.answer('unit.read', { unit: 'tamarick-linden-50' });
    const run = unit.ok && unit.value.runs.find(({ conditions }) => conditions.mode === 'Long');
    expect(run ? run.readings.length : 0).toBe(0);
  });
});
