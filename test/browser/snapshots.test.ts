import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';
import { compareWithStored } from './pictures.ts';
import { goTo, paintTwice, roomsAtRest } from './rooms.ts';

let sitting: Sitting;
let canvas: Page;
beforeAll(async () => {
  sitting = await sitDown();
  canvas = await sitting.browser.newPage();
});
afterAll(() => sitting?.close());

const sizes = [
  [1280, 800],
  [1920, 1080],
] as const;
const views = (['light', 'dark'] as const).flatMap((theme) =>
  sizes.map(([width, height]) => ({ theme, width, height })),
);

describe.each(views)('$theme, $width × $height', ({ theme, width, height }) => {
  let page: Page;
  beforeAll(async () => {
    page = await sitting.openWindow({ path: '#/score/hearth-55', theme, width, height });
    // A day of the demo's own year: nothing in a picture depends on when it is taken.
    await page.clock.setFixedTime(new Date('2026-10-05T10:00:00Z'));
  });
  afterAll(() => page?.context().close());

  it.each(roomsAtRest)('the room $name looks as it did', async ({ name, path, rest }) => {
    await goTo(page, path);
    await rest(page);
    await page.evaluate(() => document.fonts.ready);
    await paintTwice(page);
    expect(await compareWithStored(page, `${name}-${theme}-${width}`, canvas)).toBeNull();
  });
});
