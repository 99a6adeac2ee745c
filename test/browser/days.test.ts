import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { proofsAtRest } from './rooms.ts';

let sitting: Sitting;
beforeAll(async () => {
  sitting = await sitDown();
});
afterAll(() => sitting?.close());

const pixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);
const focusedName = (page: Page) => page.locator('.proof.focused').getAttribute('aria-label');

describe('a day of', () => {
  it('the reviewer: logs a set, brings readings, notes what was seen, writes, mends and accepts', async () => {
    const page = await sitting.openWindow({ path: '#/shelf' });
    await page.getByRole('link', { name: 'Log a unit' }).click();
    await page.getByLabel('Maker').fill('Veltrane');
    await page.getByLabel('Model').fill('Marsh 50');
    await page.getByLabel('Firmware').fill('1.4.0');
    await page.getByRole('button', { name: 'Log it' }).click();
    await page.waitForURL(/#\/bench\/veltrane-marsh-50/);

    await page.getByRole('button', { name: /^Begin (another|the first) run$/ }).click();
    await page.getByLabel('Picture mode').fill('Calm');
    await page.getByRole('button', { name: 'Begin the run' }).click();
    const run = page.locator('#run-sdr-calm-delivered');
    await run.locator('.bring input[type=file]').setInputFiles({
      name: 'contrast.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        'series,stimulus,x,y,Y\ngreyscale,0,0.31,0.33,0.10\ngreyscale,50,0.3127,0.3290,22\ngreyscale,100,0.3127,0.3290,120\n',
      ),
    });
    await run.getByText('3 readings', { exact: true }).first().waitFor();

    await page.keyboard.press('Alt+o');
    await page.locator('[name=topic]').fill('banding');
    await page.locator('[name=severity][value="0"]').check();
    await page
      .locator('.photo-place input')
      .setInputFiles({ name: 'ramp.png', mimeType: 'image/png', buffer: pixel });
    await page.locator('.photo-place img').waitFor();
    await page.getByRole('button', { name: 'Keep' }).click();
    await page.locator('.observation', { hasText: 'Banding, not seen' }).locator('img').waitFor();

    await page.keyboard.press('Alt+n');
    await page.getByLabel('Title').fill('Marsh, first light');
    await page.getByLabel('Set under review').selectOption('veltrane-marsh-50');
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.waitForURL(/#\/draft\/marsh-first-light/);
    await page.locator('.article').waitFor();
    await page.locator('.article').click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type(
      'There is no banding. White reaches 150 nits in SDR, as delivered, in Calm mode.',
    );
    await page.locator('.proof.holds').first().waitFor();
    const broken = page.getByRole('group', { name: /^Breaks: White reaches 150/ });
    await broken.waitFor();
    await page.locator('.article .claim.breaks', { hasText: '150' }).click();
    await broken.getByRole('button', { name: /^Write “/ }).click();
    await broken.waitFor({ state: 'detached' });
    const mended = page.getByRole('group', { name: /^Holds: White reaches 120.nits in SDR/u });
    await mended.waitFor();
    await page.locator('.article .claim', { hasText: /120.nits in SDR/u }).click();
    await page.keyboard.press('Control+Enter');
    await mended.getByRole('button', { name: 'Let go' }).waitFor();
    await page.keyboard.press('Control+s');
    await page.getByText('Saved', { exact: true }).waitFor();

    const reply = await sitting.workbench.answer('article.read', { article: 'marsh-first-light' });
    expect(reply.ok && reply.value.markdown).toMatch(/White reaches 120.nits in SDR/u);
    // The outline's own sentence brought its proof along; the reviewer's stands beside it.
    const accepted = reply.ok
      ? reply.value.claims.map(({ anchor, proof }) => [anchor.exact, proof?.verdict])
      : [];
    expect(accepted).toContainEqual([expect.stringMatching(/White reaches 120.nits in SDR/u), 'holds']);
    expect(accepted.every(([, verdict]) => verdict === 'holds')).toBe(true);
    await page.context().close();
  });

  it('the editor, by keyboard only: steps through problems, marks an opinion, looks up readings, goes to the Desk', async () => {
    const page = await sitting.openWindow({ path: '#/shelf' });
    await page.locator('.shelf-line').first().waitFor();
    await page.keyboard.press('Control+k');
    await page.locator('dialog.palette').waitFor();
    const article = await sitting.workbench.answer('article.read', { article: 'vane-50' });
    if (!article.ok) throw new Error(article.faults[0]?.sentence);
    await page.keyboard.type(article.value.meta.title.slice(0, 24));
    await page.keyboard.press('Enter');
    await page.waitForURL(/#\/draft\/vane-50/);
    await proofsAtRest(page);

    await page.keyboard.press('F8');
    const first = await focusedName(page);
    await page.keyboard.press('F8');
    const second = await focusedName(page);
    expect(new Set([first, second, null]).size).toBe(3);

    await page.keyboard.press('Alt+o');
    await page.locator('.proof.focused.opinion').waitFor();
    await page.keyboard.press('Control+s');
    await page.getByText('Saved', { exact: true }).waitFor();

    const readings = page.locator('.proof.focused').getByRole('button', { name: 'Readings' });
    for (let step = 0; step < 30 && (await readings.count()) === 0; step += 1) {
      await page.keyboard.press('F8');
    }
    await page.keyboard.press('F7');
    for (let step = 0; step < 12; step += 1) {
      if (await page.evaluate(() => document.activeElement?.textContent === 'Readings')) break;
      await page.keyboard.press('Tab');
    }
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Readings');
    await page.keyboard.press('Enter');
    await page.waitForURL(/#\/bench\//);
    await page.locator('.bench-name').waitFor();

    await page.keyboard.press('Alt+5');
    await page.locator('.galley li').first().waitFor();
    const verdicts = await page.locator('.galley-verdict').allInnerTexts();
    expect(verdicts[0]).toContain('Breaks');
    expect(verdicts.some((verdict) => verdict.includes('Opinion'))).toBe(true);
    const stored = await sitting.workbench.answer('article.read', { article: 'vane-50' });
    expect(stored.ok && stored.value.claims.some((claim) => claim.opinion)).toBe(true);
    await page.context().close();
  });

  it('the comparer: narrows the Shelf, places two sets side by side, opens a run behind a number', async () => {
    const page = await sitting.openWindow({ path: '#/shelf' });
    await page.getByLabel('Panel').selectOption('LCD IPS');
    await page.getByLabel('Price up to').fill('1100');
    await page.getByLabel('Order').selectOption('peak');
    await page.getByLabel('Place Orrinvale Hearth 55 side by side').check();
    await page.getByRole('searchbox').fill('');
    await page.getByLabel('Panel').selectOption('');
    await page.getByLabel('Place Kasulind Vane 50 side by side').check();
    await page.getByRole('button', { name: 'Place side by side' }).click();
    const table = page.locator('table.beside').last();
    await table
      .getByText(/too close to call/)
      .first()
      .waitFor();
    await table.getByRole('link', { name: 'Kasulind Vane 50' }).click();
    await page.waitForURL(/#\/bench\/kasulind-vane-50\//);
    await page.getByRole('heading', { name: 'Kasulind Vane 50', level: 1 }).waitFor();
    await page.context().close();
  });
});
