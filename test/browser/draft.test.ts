import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';

let sitting: Sitting;

beforeAll(async () => {
  sitting = await sitDown();
});
afterAll(async () => {
  await sitting?.close();
});

/** The Draft with every verdict known. */
async function openDraft(
  article: string,
  options: { width?: number; theme?: 'light' | 'dark' } = {},
): Promise<Page> {
  const page = await sitting.openWindow({ path: `#/draft/${article}`, ...options });
  await settled(page);
  return page;
}

async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const proofs = document.querySelectorAll('.proof');
    return proofs.length > 0 && !document.querySelector('.proof.working');
  });
}

/** A fresh article about the Hearth with one paragraph. */
async function write(id: string, paragraph: string): Promise<void> {
  const reply = await sitting.workbench.answer('article.create', {
    article: id,
    meta: {
      title: 'A trial',
      unit: 'orrinvale-hearth-55',
      state: 'draft',
      date: '2026-10-02',
      locale: 'en-GB',
      conditions: {
        SDR: { mode: 'Calm', stage: 'as-delivered' },
        HDR10: { mode: 'HDR Calm', stage: 'as-delivered' },
      },
    },
    markdown: `# A trial\n\n${paragraph}\n`,
  });
  if (!reply.ok) throw new Error(reply.faults[0]?.sentence);
}

async function stored(id: string) {
  const reply = await sitting.workbench.answer('article.read', { article: id });
  if (!reply.ok) throw new Error(reply.faults[0]?.sentence);
  return reply.value;
}

const saved = (page: Page) => page.getByText('Saved', { exact: true }).waitFor();
const verdictOf = (page: Page, words: string) =>
  page.locator('.article .claim', { hasText: words }).first().getAttribute('class');

describe('the Draft', () => {
  it('shows a proof for a sentence as it is typed, and another when its number changes', async () => {
    await write('typed', 'The set stood here.');
    const page = await sitting.openWindow({ path: '#/draft/typed' });
    await page.locator('.article p').last().click();
    await page.keyboard.press('End');
    await page.keyboard.type(' A 10% window reaches 742 nits.');
    await settled(page);
    expect(await verdictOf(page, '742')).toContain('holds');
    await page.keyboard.type(' A full white screen reaches 900 nits.');
    await page.locator('.proof.breaks').waitFor();
    expect(await verdictOf(page, '900')).toContain('breaks');
    await saved(page);
    expect((await stored('typed')).markdown).toContain('A full white screen reaches 900 nits.');
  });

  it('goes from problem to problem with F8, to the proof with F7 and back with Escape', async () => {
    await write(
      'keys',
      'A 10% window reaches 900 nits.\n\nSo be it.\n\nA full white screen reaches 900 nits.',
    );
    const page = await openDraft('keys');
    await page.keyboard.press('F8');
    expect(await page.locator('.proof.focused').getAttribute('aria-label')).toContain('10%');
    await page.keyboard.press('F8');
    expect(await page.locator('.proof.focused').getAttribute('aria-label')).toContain('full white');
    await page.keyboard.press('F7');
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('proof-head');
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('article');
    await page.keyboard.press('Shift+F8');
    expect(await page.locator('.proof.focused').getAttribute('aria-label')).toContain('10%');
  });

  it('acts on the sentence that was clicked, however soon the key follows', async () => {
    await write('quick', 'A 10% window reaches 900 nits.\n\nA full white screen reaches 900 nits.');
    const page = await openDraft('quick');
    await page.locator('.article .claim', { hasText: '10%' }).click();
    const place = (await page.locator('.article .claim', { hasText: 'full white' }).boundingBox())!;
    const client = await page.context().newCDPSession(page);
    const at = {
      x: place.x + place.width / 2,
      y: place.y + place.height / 2,
      button: 'left',
      clickCount: 1,
    } as const;
    const alt = { key: 'o', code: 'KeyO', windowsVirtualKeyCode: 79, modifiers: 1 } as const;
    // All on their way at once: none waits for what the one before has done to the page.
    await Promise.all([
      client.send('Input.dispatchMouseEvent', { type: 'mousePressed', ...at }),
      client.send('Input.dispatchMouseEvent', { type: 'mouseReleased', ...at }),
      client.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...alt }),
    ]);
    await page.locator('.article .claim.opinion').waitFor();
    expect(await page.locator('.article .claim.opinion').allTextContents()).toEqual([
      expect.stringContaining('full white'),
    ]);
  });

  it('keeps its one worker from article to article', async () => {
    const page = await openDraft('vane-50');
    const workers = page.workers().length;
    let begun = 0;
    page.on('worker', () => {
      begun += 1;
    });
    for (const article of ['linden-50', 'hearth-55', 'vane-50']) {
      await page.evaluate((id) => {
        window.location.hash = `/draft/${id}`;
      }, article);
      await page.locator('.article h1').waitFor();
      await settled(page);
    }
    expect([begun, page.workers().length]).toEqual([0, workers]);
    // The next window on this article must be its writer.
    await page.context().close();
  });

  it('takes text and proof back together with one undo', async () => {
    await write('undo', 'A 10% window reaches 742 nits.');
    const page = await openDraft('undo');
    await page.locator('.article .claim').first().click();
    await page.keyboard.press('Control+Enter');
    await page.getByRole('button', { name: 'Let go' }).waitFor();
    await page.keyboard.press('End');
    await page.waitForTimeout(600);
    await page.keyboard.type(' Good.');
    await saved(page);
    expect((await stored('undo')).claims.map(({ origin }) => origin)).toEqual(['accepted']);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await page.waitForFunction(() => !document.querySelector('[data-claim]'));
    await page.waitForTimeout(700);
    await saved(page);
    const { claims, markdown } = await stored('undo');
    expect([claims, markdown]).toEqual([[], '# A trial\n\nA 10% window reaches 742 nits.\n']);
    await page.keyboard.press('Control+y');
    await page.waitForFunction(() => document.querySelector('[data-claim]'));
  });

  it('turns an accepted proof stale when its number is changed, and reads it again', async () => {
    await write('stale', 'A 10% window reaches 742 nits.');
    const page = await openDraft('stale');
    await page.locator('.article .claim').first().click();
    await page.keyboard.press('Control+Enter');
    await page.locator('[data-claim]').waitFor();
    await page.evaluate(() => {
      const text =
        document.querySelector('[data-claim]')!.firstChild!.firstChild ??
        document.querySelector('[data-claim]')!.firstChild!;
      const node = (text.nodeType === 3 ? text : text.firstChild)!;
      const at = node.textContent!.indexOf('742');
      getSelection()!.setBaseAndExtent(node, at, node, at + 3);
    });
    await page.keyboard.type('900');
    await page.locator('.proof.stale').waitFor();
    await page.getByRole('button', { name: 'Read again' }).click();
    await page.locator('.proof.breaks').waitFor();
    expect(await page.locator('.proof.stale').count()).toBe(0);
  });

  it('never lets proofs overlap, at any width', async () => {
    for (const width of [1280, 1440, 1920]) {
      const page = await openDraft('vane-50', { width });
      await page.keyboard.press('F8');
      await page.waitForTimeout(300);
      const overlaps = await page.evaluate(() => {
        const boxes = [...document.querySelectorAll('.margin > .proof:not([hidden])')].map((proof) =>
          proof.getBoundingClientRect(),
        );
        return boxes.filter((box, index) => index > 0 && box.top < boxes[index - 1]!.bottom - 0.5).length;
      });
      expect([width, overlaps]).toEqual([width, 0]);
      await page.context().close();
    }
  });

  it('folds problems under their sentences in a narrow window', async () => {
    await write('narrow', 'A 10% window reaches 900 nits.');
    const page = await sitting.openWindow({ path: '#/draft/narrow', width: 820 });
    await page.locator('.fold .proof.breaks').waitFor();
    const [sentence, proof] = [
      await page.locator('.article .claim').first().boundingBox(),
      await page.locator('.fold .proof').first().boundingBox(),
    ];
    expect(proof!.y).toBeGreaterThan(sentence!.y + sentence!.height - 4);
    expect(await page.locator('.margin').count()).toBe(0);
  });

  it('opens a folded proof whole, with what the margin shows, and by keyboard', async () => {
    const page = await sitting.openWindow({ path: '#/draft/vane-50', width: 900 });
    await settled(page);
    await page.locator('.fold .proof', { hasText: '1.89' }).waitFor();
    const proof = page.locator('.fold .proof.focused');
    await page.keyboard.press('F8');
    await proof.waitFor();
    while (!(await proof.textContent())?.includes('1.89')) await page.keyboard.press('F8');
    await proof.locator('.proof-figure svg').waitFor();
    const shown = (await proof.textContent()) ?? '';
    expect(shown).toMatch(/1\.89\s±\s0\.13 at 40/u);
    expect(shown).toContain('Colour error of the greyscale; SDR as delivered, Studio, 11 readings');
    expect(await proof.locator('.do button').allTextContents()).toEqual(
      expect.arrayContaining(['Accept', 'Readings', 'Read as…', 'Opinion']),
    );
    for (const part of ['.proof-figure', '.proof-more', '.do button'])
      expect(await proof.locator(part).first().isVisible()).toBe(true);

    await page.keyboard.press('F7');
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('proof-head');
    const first = await proof.getAttribute('data-key');
    await page.keyboard.press('ArrowDown');
    await page.waitForFunction(
      (key) => document.querySelector<HTMLElement>('.fold .proof.focused')?.dataset.key !== key,
      first,
    );
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('.proof.focused .do') !== null)).toBe(
      true,
    );
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.className)).toContain('article');
    await page.context().close();
  });

  it('lets a second window follow and not write', async () => {
    await write('leased', 'A 10% window reaches 742 nits.');
    const writer = await openDraft('leased');
    const follower = await sitting.openWindow({ path: '#/draft/leased' });
    await follower.getByText('Another window is writing this article').waitFor();
    expect(await follower.locator('.article').getAttribute('contenteditable')).toBe('false');
    await writer.locator('.article p').last().click();
    await writer.keyboard.press('End');
    await writer.keyboard.type(' And more.');
    await follower.locator('.article', { hasText: 'And more.' }).waitFor();
  });

  it('offers a choice when the article was saved elsewhere, and overwrites nothing', async () => {
    await write('overtaken', 'A 10% window reaches 742 nits.');
    const page = await openDraft('overtaken');
    const before = await stored('overtaken');
    await page.locator('.article p').last().click();
    await page.keyboard.press('End');
    await page.route(
      '**/door/article.save',
      async (route) => {
        await sitting.workbench.answer('article.save', {
          article: 'overtaken',
          revision: before.revision,
          meta: before.meta,
          markdown: '# A trial\n\nTheirs.\n',
          claims: [],
          by: 'editor',
        });
        await route.continue();
      },
      { times: 1 },
    );
    await page.keyboard.type(' Mine.');
    await page.getByText('saved elsewhere while you were writing').waitFor();
    expect((await stored('overtaken')).markdown).toContain('Theirs.');
    await page.getByRole('button', { name: 'Keep my text' }).click();
    await saved(page);
    expect((await stored('overtaken')).markdown).toContain('Mine.');
  });

  it('brings unsaved text back after a crash and says from when', async () => {
    await write('crashed', 'A 10% window reaches 742 nits.');
    const page = await openDraft('crashed');
    await page.locator('.article p').last().click();
    await page.keyboard.press('End');
    await page.context().setOffline(true);
    await page.keyboard.type(' Almost lost.');
    await page.getByText('Not saved', { exact: true }).waitFor();
    const context = page.context();
    await page.goto('chrome://crash').catch(() => undefined);
    await page.close();
    await context.setOffline(false);
    expect((await stored('crashed')).markdown).not.toContain('Almost lost.');
    const again = await context.newPage();
    await again.goto(`${sitting.host.origin}/#/draft/crashed`);
    await again.getByText('Text that was not saved when the window closed is back').waitFor();
    expect(await again.locator('.article').textContent()).toContain('Almost lost.');
    // The window that crashed still holds the article until its lease lapses; then the text is saved.
    await again.getByText('Saved', { exact: true }).waitFor({ timeout: 40_000 });
    expect((await stored('crashed')).markdown).toContain('Almost lost.');
  });

  it('replaces everywhere in one step of the history', async () => {
    await write('replace', 'One hedge, two hedges.\n\nA hedge more.');
    const page = await sitting.openWindow({ path: '#/draft/replace' });
    await page.locator('.article p').last().click();
    await page.keyboard.press('Control+f');
    await page.getByLabel('Find', { exact: true }).fill('hedge');
    await page.getByText('3 places').waitFor();
    await page.getByLabel('Replace with').fill('fence');
    await page.getByRole('button', { name: 'Replace all' }).click();
    expect(await page.locator('.article').textContent()).toContain('One fence, two fences.');
    await page.locator('.article p').last().click();
    await page.keyboard.press('Control+z');
    expect(await page.locator('.article').textContent()).toContain('One hedge, two hedges.');
    expect(await page.locator('.article').textContent()).toContain('A hedge more.');
  });

  it('keeps a measured number in step with its quantity', async () => {
    await write(
      'live',
      'White peaks at [1 cd/m²](measured:orrinvale-hearth-55/hdr-calm-delivered/peak?axis=10) here.',
    );
    const page = await sitting.openWindow({ path: '#/draft/live' });
    await page.locator('.article .measured', { hasText: '742' }).waitFor();
    await page.waitForTimeout(600);
    await saved(page);
    expect((await stored('live')).markdown).toMatch(/\[742\scd\/m²\]\(measured:/u);
  });

  it('ties words to another run by choice, and keeps that choice', async () => {
    await write('relink', 'The average error is 0.6.');
    const page = await openDraft('relink');
    await page.keyboard.press('F8');
    await page.getByRole('button', { name: 'Read as…' }).click();
    await page.locator('.read-as button', { hasText: 'SDR, adjusted' }).first().click();
    await page.locator('.proof.holds').waitFor();
    await page.waitForTimeout(600);
    await saved(page);
    expect((await stored('relink')).claims.map(({ origin }) => origin)).toEqual(['manual']);
  });

  it('performs a command found by a few letters of its name', async () => {
    const page = await openDraft('plain-50');
    await page.keyboard.press('Control+k');
    await page.keyboard.type('dark th');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.documentElement.dataset.theme === 'dark');
    expect(await page.locator('dialog').count()).toBe(0);
  });

  it('keeps what is typed while the palette is still on its way', async () => {
    const page = await sitting.openWindow({ path: '#/shelf' });
    await page.route(/Palette[^/]*\.js/, async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 700));
      await route.continue();
    });
    await page.reload();
    await page.locator('.nav').waitFor();
    await page.keyboard.press('Control+k');
    await page.keyboard.type('dark th');
    await page.keyboard.press('Enter');
    expect(await page.locator('dialog').count()).toBe(0);
    await page.waitForFunction(() => document.documentElement.dataset.theme === 'dark');
    await page.context().close();
  });

  it.each(['light', 'dark'] as const)('has no accessibility faults in the %s theme', async (theme) => {
    const page = await openDraft('hearth-55', { theme });
    await page.keyboard.press('F8');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
  });
});
