import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { goTo, roomsAtRest } from './rooms.ts';

let sitting: Sitting;
beforeAll(async () => {
  sitting = await sitDown();
});
afterAll(() => sitting?.close());

const looks = [
  { look: 'light', theme: 'light', contrast: 'no-preference' },
  { look: 'dark', theme: 'dark', contrast: 'no-preference' },
  { look: 'high contrast, light', theme: 'light', contrast: 'more' },
  { look: 'high contrast, dark', theme: 'dark', contrast: 'more' },
] as const;

const unit = '#/bench/orrinvale-hearth-55';
const draft = '#/draft/vane-50';

/** What can lie over a room or open in it, and the keys or words that open it. */
const openings: readonly { name: string; path: string; open(page: Page): Promise<void>; shows: string }[] = [
  key('palette', '#/shelf', 'Control+k', 'dialog.palette [cmdk-item]'),
  key('help', draft, 'F1', 'dialog .keys'),
  key('new article', '#/shelf', 'Alt+n', 'dialog form'),
  key('find', draft, 'Control+f', '.find-line'),
  key('measured value', draft, 'Alt+v', 'dialog'),
  key('photo', draft, 'Alt+p', 'dialog'),
  key('link', draft, 'Alt+l', 'dialog'),
  key('phrase', draft, 'Alt+h', 'dialog'),
  key('a proof in focus', draft, 'F8', '.proof.focused'),
  {
    name: 'other readings of a sentence',
    path: draft,
    async open(page) {
      const choice = page.locator('.proof.focused').getByRole('button', { name: 'Read as…' });
      for (let step = 0; step < 12 && (await choice.count()) === 0; step += 1) {
        await page.keyboard.press('F8');
        await page.locator('.proof.focused').waitFor();
      }
      await choice.click();
    },
    shows: '.read-as',
  },
  { name: 'new unit', path: '#/bench/new', open: async () => {}, shows: '.bench-form' },
  {
    name: 'new run',
    path: unit,
    open: (page) => page.getByRole('button', { name: 'Begin another run' }).click(),
    shows: '.bench-form',
  },
  key('observation form', unit, 'Alt+o', '.observation-form'),
  {
    name: 'numbers of a plot',
    path: unit,
    async open(page) {
      const plot = page.locator('figure.plot').first();
      await plot.hover();
      await plot.getByRole('button', { name: 'Numbers' }).click();
    },
    shows: 'figure.plot table',
  },
];

function key(name: string, path: string, keys: string, shows: string) {
  return { name, path, shows, open: (page: Page) => page.keyboard.press(keys) };
}

/**
 * Each objection with the element it is about. High contrast changes colours only, so only colours are looked at
 * there; `part` narrows the look to what has just been opened.
 */
async function objections(page: Page, coloursOnly: boolean, part?: string): Promise<string[]> {
  // The window has no frames; without them axe need not open a page of its own to join its results.
  const axe = new AxeBuilder({ page }).setLegacyMode();
  if (part) axe.include(part);
  if (coloursOnly) axe.withRules(['color-contrast']);
  const { violations } = await axe.analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.html.slice(0, 160)} (${node.any[0]?.message.slice(0, 160) ?? ''})`),
  );
}

describe.each(looks)('axe, $look', ({ theme, contrast }) => {
  const coloursOnly = contrast === 'more';
  let page: Page;
  beforeAll(async () => {
    page = await sitting.openWindow({ path: '#/shelf', theme });
    await page.emulateMedia({ contrast });
  });
  afterAll(() => page?.context().close());

  it.each(roomsAtRest)('objects to nothing in the room $name', async ({ path, rest }) => {
    await goTo(page, path);
    await rest(page);
    expect(await objections(page, coloursOnly)).toEqual([]);
  });

  it.each(openings)('objects to nothing with $name open', async ({ path, open, shows }) => {
    // Elsewhere first, so that what an earlier test opened is closed.
    await page.keyboard.press('Escape');
    await goTo(page, '#/release/hearth-55');
    await page.locator('.page .article h1').waitFor();
    await goTo(page, path);
    await page.locator('.shelf-line, .proof:not(.working), .bench-name').first().waitFor();
    await open(page);
    await page.locator(shows).first().waitFor();
    expect(await objections(page, coloursOnly, shows.split(' ')[0])).toEqual([]);
  });
});
