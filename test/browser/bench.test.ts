import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { sitAtTheBench } from './benchWindow.ts';

const unit = 'orrinvale-hearth-55';
const run = 'sdr-calm-delivered-firmware-3-2';
const { openNotebook, unitOf } = sitAtTheBench();

/** A picture of one pixel. */
const pixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

describe('a unit’s notebook page', () => {
  it('opens at a reading named by its address, lit in the table, with the sentences that rest on it', async () => {
    const page = await openNotebook(`${unit}/${run}/8`);
    await page.locator('.reading-picked').waitFor();
    expect(await page.locator('.reading-picked').innerText()).toMatch(/60\s% stimulus/);
    await page.locator('.picked li a').first().waitFor({ timeout: 60_000 });
    await page.locator('.picked li a').first().click();
    await expect.poll(() => page.url()).toMatch(/#\/draft\/[a-z0-9-]+\?at=\d+/);
  });

  it('draws only the rows in sight of a long table', async () => {
    const page = await openNotebook(`${unit}/${run}/150`);
    await page.locator('.reading-picked').waitFor();
    expect(await page.locator('.reading').count()).toBeLessThan(60);
  });

  it('lets the keyboard go from mark to mark and pick one', async () => {
    const page = await openNotebook(`${unit}/${run}`);
    const plot = page.locator('figure.plot').first();
    await plot.locator('[data-spot][tabindex="0"]').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await plot.locator('.plot-note').innerText()).toMatch(/^20\s%: 1\.0\s±\s0\.1, reading \d+$/);
    await page.keyboard.press('Enter');
    await page.locator('.picked').waitFor();
    expect(page.url()).toMatch(new RegExp(`#/bench/${unit}/${run}/\\d+$`));
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.picked').count()).toBe(0);
  });

  it('fetches the large plot’s program only when one is opened, and no policy objects', async () => {
    const page = await openNotebook(`${unit}/${run}`);
    const scripts: string[] = [];
    const objections: string[] = [];
    page.on('request', (request) => scripts.push(request.url()));
    page.on('console', (message) => {
      if (/content security policy/i.test(message.text())) objections.push(message.text());
    });
    const plot = page.locator('figure.plot').first();
    expect(scripts.filter((url) => /plotly/.test(url))).toEqual([]);
    await plot.hover();
    await plot.getByRole('button', { name: 'Larger' }).click();
    await plot.locator('.plot-large .main-svg').first().waitFor({ timeout: 60_000 });
    expect(scripts.some((url) => /plotly/.test(url))).toBe(true);
    expect(objections).toEqual([]);
  });

  it('hands a plot over as CSV, SVG and PNG', async () => {
    const page = await openNotebook(`${unit}/${run}`);
    const plot = page.locator('figure.plot').first();
    await plot.hover();
    for (const [kind, start] of [
      ['CSV', 'stimulus (%),colour error (ΔE2000),U = 2u,readings\n'],
      ['SVG', '<svg'],
      ['PNG', '\u0089PNG'],
    ] as const) {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        plot.getByRole('button', { name: kind }).click(),
      ]);
      const chunks: Buffer[] = [];
      for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
      const file = Buffer.concat(chunks);
      expect(file.toString(kind === 'PNG' ? 'latin1' : 'utf8').startsWith(start)).toBe(true);
    }
  });

  it('gives a plot’s numbers as a table too', async () => {
    const page = await openNotebook(`${unit}/${run}`);
    const plot = page.locator('figure.plot').first();
    await plot.hover();
    await plot.getByRole('button', { name: 'Numbers' }).click();
    expect(await plot.getByRole('row').count()).toBeGreaterThan(10);
  });

  it('lays another unit’s run over a plot', async () => {
    const page = await openNotebook(`${unit}/${run}`);
    const entry = page.locator(`#run-${run}`);
    await entry.getByLabel('Lay over').selectOption({ index: 1 });
    await expect.poll(() => entry.locator('.plot-title').first().innerText()).toMatch(/error/);
    expect(await entry.locator('figure.plot').first().locator('.plot-label').count()).toBe(2);
  });

  it('keeps a fact that is put right in its line', async () => {
    const page = await openNotebook(unit);
    await page.getByRole('button', { name: /^Depth: 71/ }).click();
    await page.getByLabel('Value').fill('72');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /^Depth: 72/ }).waitFor();
    expect((await unitOf(unit)).unit.facts?.depth).toMatchObject({ value: 72, unit: 'mm' });
  });

  it('takes an observation by keyboard alone, with a picture, and strikes it out again', async () => {
    const page = await openNotebook('orrinvale-ember-65');
    await page.keyboard.press('Alt+o');
    await page.locator('[name=topic]').waitFor();
    await page.keyboard.type('banding');
    await page.keyboard.press('Tab');
    await page.keyboard.press('2');
    await page
      .locator('.photo-place input')
      .setInputFiles({ name: 'sky.png', mimeType: 'image/png', buffer: pixel });
    await page.locator('.photo-place img').waitFor();
    await page.keyboard.press('Control+Enter');
    const entry = page.locator('.observation', { hasText: 'Banding, visible' });
    await entry.locator('img').waitFor();
    const kept = (await unitOf('orrinvale-ember-65')).observations;
    expect(kept.at(-1)).toMatchObject({
      topic: 'banding',
      severity: 2,
      photo: expect.stringMatching(/png$/),
    });
    await entry.getByRole('button', { name: /Strike out/ }).click();
    await expect.poll(() => page.locator('.observation', { hasText: 'Banding, visible' }).count()).toBe(0);
  });

  it('shows the caution on flashing before such a step can be noted', async () => {
    const page = await openNotebook('orrinvale-kiln-55');
    const step = page.locator('.step', { hasText: 'Flicker' });
    await step.getByRole('button', { name: /Note what was seen/ }).click();
    expect(await step.locator('.caution').innerText()).toMatch(/epilepsy/);
    expect(await page.locator('.observation-form').count()).toBe(0);
    await step.getByRole('button', { name: 'Read; note what was seen' }).click();
    await page.locator('.observation-form .caution').waitFor();
    expect(await page.locator('[name=topic]').inputValue()).toBe('flicker');
  });

  it('says what an update made out of date', async () => {
    const page = await openNotebook(unit);
    await page.locator('.step-out-of-date').first().waitFor();
    expect(await page.locator('.step-out-of-date').first().innerText()).toContain(
      'Measured on firmware 3.1.7; the set now runs 3.2.0',
    );
  });

  it('logs a unit, begins a run, refuses a bad readings file by line and takes a good one', async () => {
    const page = await openNotebook('new');
    await page.getByLabel('Maker').fill('Tamarick');
    await page.getByLabel('Model').fill('Alder 43');
    await page.getByRole('button', { name: 'Log it' }).click();
    await page.waitForURL(/#\/bench\/tamarick-alder-43/);
    await page.getByRole('heading', { name: 'Tamarick Alder 43', level: 1 }).waitFor();
    await page.getByRole('button', { name: /^Begin (another|the first) run$/ }).click();
    await page.getByLabel('Picture mode').fill('Theatre');
    await page.getByRole('button', { name: 'Begin the run' }).click();
    const entry = page.locator('#run-sdr-theatre-delivered');
    await entry.waitFor();
    const picker = entry.locator('.bring input[type=file]');
    const csv = (rows: string) => ({
      name: 'greys.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(`series,stimulus,x,y,Y\n${rows}`),
    });
    await picker.setInputFiles(csv('greyscale,0,,,0.05\ngreyscale,50,0.31,0.33,bright\n'));
    await entry.getByRole('alert').waitFor();
    expect(await entry.getByRole('alert').innerText()).toMatch(/greys\.csv:3/);
    await picker.setInputFiles(
      csv('greyscale,0,,,0.05\ngreyscale,50,0.3127,0.3290,20\ngreyscale,100,0.3127,0.3290,100\n'),
    );
    await entry.getByText('3 readings', { exact: true }).first().waitFor();
    expect((await unitOf('tamarick-alder-43')).runs[0]?.readings.length).toBe(3);
    await entry.locator('figure.plot').first().waitFor();
  });

  it.each(['light', 'dark'] as const)('has nothing that axe objects to, %s', async (theme) => {
    const page = await openNotebook(`${unit}/${run}/8`, { theme });
    await page.locator('.reading-picked').waitFor();
    await page.keyboard.press('Alt+o');
    await page.locator('.observation-form').waitFor();
    expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([]);
  });
});
