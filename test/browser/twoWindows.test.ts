import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { goTo, proofsAtRest } from './rooms.ts';

let sitting: Sitting;
let one: Page;
let other: Page;
beforeAll(async () => {
  sitting = await sitDown();
  one = await sitting.openWindow({ path: '#/shelf' });
  other = await sitting.openWindow({ path: '#/shelf' });
  for (const page of [one, other]) await page.locator('.shelf-line').first().waitFor();
});
afterAll(() => sitting?.close());

/** An article about the Hearth with one sentence. */
async function create(article: string, sentence: string): Promise<void> {
  const reply = await sitting.workbench.answer('article.create', {
    article,
    meta: {
      title: 'Two of us',
      unit: 'orrinvale-hearth-55',
      state: 'draft',
      date: '2026-10-02',
      locale: 'en-GB',
      conditions: { SDR: { mode: 'Calm', stage: 'as-delivered' } },
    },
    markdown: `# Two of us\n\n${sentence}\n`,
  });
  expect(reply.ok).toBe(true);
}

describe('two windows on one library', () => {
  it('both show a set that one of them logs', async () => {
    await one.getByRole('link', { name: 'Log a unit' }).click();
    await one.getByLabel('Maker').fill('Veltrane');
    await one.getByLabel('Model').fill('Fen 43');
    await one.getByRole('button', { name: 'Log it' }).click();
    await one.waitForURL(/veltrane-fen-43/);
    await other.locator('.shelf-line', { hasText: 'Veltrane Fen 43' }).waitFor();
  });

  it('judge by a fact that one of them puts right, while the other has the article open', async () => {
    await create('shared-fact', 'The cabinet is 71 mm deep.');
    await goTo(other, '#/draft/shared-fact');
    await other.locator('.proof.holds').waitFor();
    await goTo(one, '#/bench/orrinvale-hearth-55');
    await one.getByRole('button', { name: /^Depth: 71/ }).click();
    await one.getByLabel('Value').fill('75');
    await one.keyboard.press('Enter');
    await other.locator('.proof.breaks').waitFor();
  });

  it('follow what the other writes, and may write once the other has gone', async () => {
    await create('shared-text', 'It stood here.');
    await goTo(one, '#/draft/shared-text');
    await one.locator('.article p', { hasText: 'It stood' }).click();
    await one.keyboard.press('End');
    await goTo(other, '#/draft/shared-text');
    await other.getByText('Another window is writing this article').waitFor();
    await one.keyboard.type(' A 10% window reaches 742 nits.');
    await other.locator('.article .claim', { hasText: '742' }).waitFor();
    await proofsAtRest(one);
    await one.locator('.article .claim', { hasText: '742' }).click();
    // No hand is as quick as a browser is between a click and the selection that follows it.
    await one.locator('.proof.focused').waitFor();
    await one.keyboard.press('Control+Enter');
    await one.getByRole('button', { name: 'Let go' }).waitFor();
    await other.locator('.article [data-claim]').waitFor();
    await one.context().close();
    await other.locator('.article[contenteditable=true]').waitFor({ timeout: 60_000 });
    await other.locator('.article p', { hasText: '742' }).click();
    await other.keyboard.press('End');
    await other.keyboard.type(' Mine now.');
    await other.getByText('Saved', { exact: true }).waitFor();
    await expect
      .poll(async () => {
        const reply = await sitting.workbench.answer('article.read', { article: 'shared-text' });
        return reply.ok && [reply.value.markdown.includes('Mine now.'), reply.value.claims.length];
      })
      .toEqual([true, 1]);
  });
});
