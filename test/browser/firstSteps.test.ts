import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { proofsAtRest } from './rooms.ts';

let sitting: Sitting;
let page: Page;
beforeAll(async () => {
  sitting = await sitDown();
});
afterAll(() => sitting?.close());
afterEach(() => page?.context().close());

const line = () => page.getByRole('complementary', { name: 'First steps' });
/** The step that is asked for, once it is `asked`. */
const asks = (asked: string) => line().locator('b', { hasText: asked }).waitFor();
const ticks = () => line().locator('.tour-ticks').textContent();

/** Types over the words at the cursor, as one does with the keyboard. */
async function typeOver(words: string, count: number): Promise<void> {
  for (let word = 0; word < count; word += 1) await page.keyboard.press('Control+Shift+ArrowRight');
  await page.keyboard.type(words);
}

describe('the first steps', () => {
  it('lead a newcomer from the planted mistakes to an article of their own, by keyboard alone', async () => {
    page = await sitting.openWindow({ path: '#/shelf', firstRun: true });
    await asks('Open “Thin, quick and a little blue”');
    await page.keyboard.press('Control+k');
    await page.locator('dialog.palette').waitFor();
    await page.keyboard.type('thin');
    await page.keyboard.press('Enter');
    await asks('Go to its first problem');
    await proofsAtRest(page);

    await page.keyboard.press('F8');
    await asks('Read its proof');
    await page.keyboard.press('F7');
    await asks('Settle it');
    expect(await ticks()).toMatch(/^✓✓✓····/);
    await page.keyboard.press('Escape');
    await typeOver('three ', 1);
    await asks('See the readings');

    await page.keyboard.press('F8');
    await page.keyboard.press('F7');
    await page.keyboard.press('Tab');
    while ((await page.evaluate(() => document.activeElement?.textContent)) !== 'Readings')
      await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForURL(/#\/bench\/kasulind-vane-50\//);
    await asks('as its editor does');
    await page.keyboard.press('Alt+5');
    await asks('an article of your own');

    await page.keyboard.press('Alt+n');
    await page.getByLabel('Title').waitFor();
    await page.keyboard.type('My first');
    await page.keyboard.press('Enter');
    await page.waitForURL(/#\/draft\/my-first/);
    await asks('the whole way of a sentence');
    expect(await ticks()).toMatch(/^✓✓✓✓✓✓✓/);

    await page.keyboard.press('Shift+F1');
    for (const word of ['Begin again', 'Close']) {
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(word);
    }
    await page.keyboard.press('Enter');
    await line().waitFor({ state: 'detached' });
    await page.reload();
    await page.locator('.article').waitFor();
    expect(await line().count()).toBe(0);
  });

  it('remember how far one was, speak politely, and can be ended and begun again at any time', async () => {
    page = await sitting.openWindow({ path: '#/draft/vane-50', firstRun: true });
    await asks('Go to its first problem');
    await page.reload();
    await asks('Go to its first problem');
    expect(await page.locator('[aria-live=polite]', { hasText: 'Next:' }).textContent()).toMatch(
      /^Done: Article opened\. Next: Go to its first problem\. F8 goes to the next one/,
    );
    await page.keyboard.press('Control+k');
    await page.keyboard.type('end the first');
    await page.keyboard.press('Enter');
    await line().waitFor({ state: 'detached' });
    await page.keyboard.press('F1');
    await page.getByRole('button', { name: 'Begin them again' }).click();
    await asks('Go to its first problem');
  });

  it('end in every window of the machine, and stay so after a reload', async () => {
    page = await sitting.openWindow({ path: '#/draft/vane-50', firstRun: true });
    await asks('Go to its first problem');
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other
      .getByRole('complementary', { name: 'First steps' })
      .getByRole('button', { name: 'End' })
      .click();
    await line().waitFor({ state: 'detached' });
    await page.keyboard.press('F8');
    await page.reload();
    await page.locator('.proof').first().waitFor();
    expect(await line().count()).toBe(0);
    await other.keyboard.press('F1');
    await other.getByRole('button', { name: 'Begin them again' }).click();
    await line().waitFor();
  });

  it.each(['light', 'dark'] as const)('give axe nothing to object to, %s', async (theme) => {
    page = await sitting.openWindow({ path: '#/shelf', theme, firstRun: true });
    await asks('Open');
    const axe = new AxeBuilder({ page }).setLegacyMode().include('.tour');
    expect((await axe.analyze()).violations.map(({ id }) => id)).toEqual([]);
  });
});
