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
    const saved = async (form: string): Promise<Buffer> => {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        plot.getByRole('button', { name: form, exact: true }).click(),
      ]);
      const chunks: Buffer[] = [];
      for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
      return Buffer.concat(chunks);
    };
    const lines = (await saved('CSV')).toString().trimEnd().split('\n');
    expect(lines[0]).toBe(
      'patch,error (ΔE2000),U = 2u,readings,Vane 50 (ΔE2000),"U = 2u, Vane 50","readings, Vane 50"',
    );
    expect(lines).toHaveLength(25);
    expect(lines[1]).toMatch(
      /^\d\d,[\d.]+,[\d.]+,sdr-calm-delivered-firmware-3-2#\d+,[\d.]+,[\d.]+,sdr-studio-delivered#\d+$/,
    );
    const drawing = await page.evaluate((text) => {
      const holder = document.createElement('div');
      holder.innerHTML = text;
      document.body.append(holder);
      const svg = holder.querySelector('svg')!;
      const { x, y, width, height } = svg.viewBox.baseVal;
      const texts = [...svg.querySelectorAll('text')];
      const outside = texts.filter((one) => {
        const box = one.getBBox();
        return box.x < x || box.x + box.width > x + width || box.y < y || box.y + box.height > y + height;
      });
      holder.remove();
      return { words: texts.map((one) => one.textContent).join(' '), outside: outside.length };
    }, (await saved('SVG')).toString());
    expect(drawing.words).toContain('hollow Vane 50');
    expect(drawing.outside).toBe(0);
    // The signature of ISO/IEC 15948 (PNG), clause 5.2
    expect([...(await saved('PNG')).subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
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
