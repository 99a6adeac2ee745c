import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { goTo, proofsAtRest } from './rooms.ts';

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
});
