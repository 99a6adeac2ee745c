import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { goTo, paintTwice, proofsAtRest } from './rooms.ts';

let sitting: Sitting;
let page: Page;
beforeAll(async () => {
  sitting = await sitDown();
  page = await sitting.openWindow({ path: '#/desk/vane-50' });
  await page.locator('.galley li').first().waitFor();
});
afterAll(() => sitting?.close());

/** What stands out of the window's width: parts of the frame whose content is wider than they are. */
const cut = () =>
  page.evaluate(() =>
    ['.window', '.nav', '.room', '.tour', '.status', '.status-slot'].filter((selector) => {
      const part = document.querySelector(selector);
      return part !== null && part.scrollWidth > part.clientWidth + 1;
    }),
  );

describe('the size of everything', () => {
  it.each([
    ['smaller', '-', 2],
    ['larger', '=', 5],
  ])(
    'goes to its end by keyboard, %s, and nothing of the Draft and the Desk is cut',
    async (_name, key, steps) => {
      await page.keyboard.press('Control+0');
      const usual = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
      for (let step = 0; step < steps + 1; step += 1) await page.keyboard.press(`Control+${key}`);
      const now = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
      expect([usual, now]).toEqual(['16px', key === '=' ? '32px' : '12.8px']);
      expect(await cut()).toEqual([]);
      await goTo(page, '#/draft/vane-50');
      await proofsAtRest(page);
      expect(await cut()).toEqual([]);
      await goTo(page, '#/desk/vane-50');
      await page.locator('.galley li').first().waitFor();
    },
  );

  it('puts the rooms over the text where the window is narrow for its type, not only for its pixels', async () => {
    const nav = await page.locator('.nav').boundingBox();
    const room = await page.locator('.room').boundingBox();
    expect(nav!.y + nav!.height).toBeLessThanOrEqual(room!.y + 1);
    await page.keyboard.press('Control+0');
    await expect.poll(async () => (await page.locator('.room').boundingBox())!.x).toBeGreaterThan(150);
  });

  it.each([
    ['the Shelf', '#/shelf', '.shelf-line'],
    ['sets side by side', '#/shelf?beside=orrinvale-hearth-55,kasulind-vane-50', '.beside'],
    ['the Bench', '#/bench/orrinvale-hearth-55', 'figure.plot'],
    ['a form of the Bench', '#/bench/new', '.bench-form'],
    ['the Score sheet', '#/score/hearth-55', '.page'],
    ['the Release', '#/release/hearth-55', '.page .article h1'],
  ])('at its largest cuts nothing of %s and gives axe nothing to object to', async (_name, path, shows) => {
    await goTo(page, path);
    await page.locator(shows).first().waitFor();
    await page.keyboard.press('Control+0');
    for (let step = 0; step < 6; step += 1) await page.keyboard.press('Control+=');
    await paintTwice(page);
    expect(await cut()).toEqual([]);
    const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
    expect(
      violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`)),
    ).toEqual([]);
    await page.keyboard.press('Control+0');
  });

  it('folds the contents of a room away at its largest; unfolded they can be read to their end', async () => {
    await goTo(page, '#/draft/vane-50');
    await proofsAtRest(page);
    for (let step = 0; step < 6; step += 1) await page.keyboard.press('Control+=');
    const contents = page.locator('#nav-contents');
    expect(await contents.isVisible()).toBe(false);
    const folded = (await page.locator('.nav').boundingBox())!.height;
    expect(folded).toBeLessThan(800 * 0.35);
    await page.getByRole('button', { name: 'Contents' }).press('Enter');
    const last = page.locator('.nav-contents .nav-link').last();
    await last.scrollIntoViewIfNeeded();
    const [nav, link] = [(await page.locator('.nav').boundingBox())!, (await last.boundingBox())!];
    expect(link.y + link.height).toBeLessThanOrEqual(nav.y + nav.height + 1);
    await page.locator('.nav-contents .nav-link').first().press('Enter');
    expect((await page.locator('.nav').boundingBox())!.height).toBe(folded);
    await page.keyboard.press('Control+0');
  });
});
