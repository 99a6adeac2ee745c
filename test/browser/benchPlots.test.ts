import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { patient, sitAtTheBench } from './benchWindow.ts';

const { openNotebook } = sitAtTheBench();

const run = 'sdr-calm-delivered-firmware-3-2';

async function laidOver(other: string): Promise<{ page: Page; entry: Locator }> {
  const page = await openNotebook(`orrinvale-hearth-55/${run}`);
  const entry = page.locator(`#run-${run}`);
  await entry.getByLabel('Lay over').selectOption(other);
  return { page, entry };
}

/** Opens the large plot of a question and waits until it is drawn. */
async function larger(entry: Locator, question: string): Promise<Locator> {
  const plot = entry.getByRole('figure', { name: question }).first();
  await plot.hover();
  await plot.getByRole('button', { name: 'Larger' }).click();
  await plot.locator('.main-svg').first().waitFor({ timeout: 60_000 });
  return plot;
}

describe('two units laid over each other', () => {
  it('stand as pairs in the large chart; a bar of the other unit picks that unit’s reading', async () => {
    const { page, entry } = await laidOver('kasulind-vane-50/sdr-studio-delivered');
    const plot = await larger(entry, 'Which colours of the chart are off?');
    // Twenty-four of each unit, and between them one without height that gives the legend its colour.
    const bars = plot.locator('.bars .point');
    await expect.poll(() => bars.count(), patient).toBe(49);
    await plot.locator('.plot-large').evaluate((element) => element.scrollIntoView({ block: 'center' }));
    const box = (await bars.nth(27).boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height - 6, { steps: 4 });
    await plot.locator('.hoverlayer .hovertext').waitFor();
    expect(await plot.locator('.hoverlayer').textContent()).toMatch(/^\d\d, Vane 50: \d\.\d\s±\s0\.\d/);
    await page.mouse.down();
    await page.mouse.up();
    await entry.locator('.picked').waitFor();
    expect(await entry.locator('.picked').innerText()).toContain('Kasulind Vane 50, Studio');
  });

  it('stand as two screens and their difference in the large map', async () => {
    const { entry } = await laidOver('kasulind-vane-50/sdr-studio-delivered');
    const plot = await larger(entry, 'Which part of the screen is darker or brighter?');
    await expect.poll(() => plot.locator('.heatmaplayer .hm').count(), patient).toBe(3);
    expect(await plot.locator('.annotation').allTextContents()).toEqual([
      'Hearth 55',
      'Vane 50',
      'Vane 50 minus Hearth 55',
    ]);
  });

  it('each have their say in every title, and leave in every form', async () => {
    const { page, entry } = await laidOver('kasulind-vane-50/sdr-studio-delivered');
    await expect.poll(() => entry.locator('.plot-title').nth(1).innerText(), patient).toMatch(/Vane 50/);
    const titles = await entry.locator('.plot-title').allInnerTexts();
    expect(titles.filter((title) => !/Vane 50/.test(title))).toEqual([]);
    const plot = entry.getByRole('figure', { name: 'Which colours of the chart are off?' });
    await plot.hover();
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      plot.getByRole('button', { name: 'CSV' }).click(),
    ]);
    const chunks: Buffer[] = [];
    for await (const chunk of await csv.createReadStream()) chunks.push(chunk as Buffer);
    const lines = Buffer.concat(chunks).toString().trimEnd().split('\n');
    expect(lines[0]).toBe(
      'patch,error (ΔE2000),U = 2u,readings,Vane 50 (ΔE2000),"U = 2u, Vane 50","readings, Vane 50"',
    );
    expect(lines).toHaveLength(25);
    expect(lines[1]).toMatch(
      /^\d\d,[\d.]+,[\d.]+,sdr-calm-delivered-firmware-3-2#\d+,[\d.]+,[\d.]+,sdr-studio-delivered#\d+$/,
    );
  });

  it('keep gamma’s uncertainty as a band in the small and in the large plot', async () => {
    const { entry } = await laidOver('kasulind-vane-50/sdr-studio-delivered');
    const question = 'How steep is the tone curve, and does it stay so?';
    expect(await entry.getByRole('figure', { name: question }).locator('.plot-band').count()).toBe(2);
    const plot = await larger(entry, question);
    await expect
      .poll(() => plot.locator('.scatterlayer .fills path').count(), patient)
      .toBeGreaterThanOrEqual(2);
  });
});

it('every plot can be read as a table whose readings can be picked', async () => {
  const page = await openNotebook(`orrinvale-hearth-55/${run}`);
  const entry = page.locator(`#run-${run}`);
  await entry.locator('figure.plot').nth(5).waitFor();
  const count = await entry.locator('figure.plot').count();
  expect(count).toBeGreaterThan(12);
  for (let index = 0; index < count; index += 1) {
    const plot = entry.locator('figure.plot').nth(index);
    await plot.hover();
    await plot.getByRole('button', { name: 'Numbers' }).click();
    expect(await plot.getByRole('row').count()).toBeGreaterThan(3);
    expect(await plot.locator('td button').count()).toBeGreaterThan(0);
  }
  await entry.locator('td button').first().click();
  await entry.locator('.picked').waitFor();
});
