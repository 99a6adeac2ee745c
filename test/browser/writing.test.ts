import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Sitting, sitDown } from './harness.ts';

let sitting: Sitting;

beforeAll(async () => {
  sitting = await sitDown();
});
afterAll(async () => {
  await sitting?.close();
});

async function markdownOf(article: string): Promise<string> {
  const reply = await sitting.workbench.answer('article.read', { article });
  if (!reply.ok) throw new Error(reply.faults[0]?.sentence);
  return reply.value.markdown;
}

describe('writing in the Draft', () => {
  it('begins an article whose outline holds what was measured and says what is not', async () => {
    const page = await sitting.openWindow({ path: '#/draft' });
    await page.locator('.article').waitFor();
    await page.keyboard.press('Alt+n');
    await page.getByLabel('Title').fill('A filled outline');
    await page.getByLabel('Set under review').selectOption('orrinvale-hearth-55');
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    await page.locator('.article h1', { hasText: 'A filled outline' }).waitFor();
    await page.locator('.article .measured', { hasText: '742' }).waitFor();
    expect(await page.locator('.article h2', { hasText: 'Local dimming' }).count()).toBe(1);
    const markdown = await markdownOf('a-filled-outline');
    expect(markdown).toContain('A 10% window reaches [742');
    await page.context().close();
  });

  it('puts a house phrase, a photo and a link into the text by key alone', async () => {
    const created = await sitting.workbench.answer('article.create', {
      article: 'by-key',
      meta: {
        title: 'By key',
        unit: 'orrinvale-hearth-55',
        state: 'draft',
        date: '2026-10-02',
        locale: 'en-GB',
      },
      markdown: '# By key\n\n## SDR, as delivered\n\nIt stood here.\n',
    });
    expect(created.ok).toBe(true);
    const page = await sitting.openWindow({ path: '#/draft/by-key' });
    await page.locator('.article p').last().click();
    await page.keyboard.press('End');
    await page.keyboard.press('Alt+h');
    await page.getByLabel('Which phrase').fill('native');
    await page.locator('.read-as li').first().waitFor();
    await page.keyboard.press('Enter');
    await page.locator('.article .measured', { hasText: ':1' }).waitFor();
    await page.locator('.proof.holds').first().waitFor();
    await page.locator('.article [data-claim]', { hasText: ':1' }).first().waitFor();
    await page.keyboard.press('Alt+p');
    await page.locator('.photo-choice button').first().click();
    await page.getByLabel('What it shows').fill('A bright disc on black');
    await page.getByLabel('Caption').fill('Haloes seen at night.');
    await page.keyboard.press('Enter');
    await page.locator('.article .photo img').waitFor();
    await page.locator('.article p', { hasText: 'It stood' }).click();
    await page.keyboard.press('Home');
    await page.keyboard.press('Shift+End');
    await page.keyboard.press('Alt+l');
    await page.getByLabel('Address').fill('javascript:alert(1)');
    await page.keyboard.press('Enter');
    await page.getByText('An article may link to').waitFor();
    await page.keyboard.press('Escape');
    await page.waitForTimeout(900);
    await page.getByText('Saved', { exact: true }).waitFor();
    const markdown = await markdownOf('by-key');
    expect(markdown).toMatch(/The native contrast is \[1,6\d\d:1\]\(measured:/);
    expect(markdown).toMatch(/!\[A bright disc on black\]\(\.\.\/units\/orrinvale-hearth-55\/photos\//);
    expect(markdown).toContain('*Haloes seen at night.*');
    const stored = await sitting.workbench.answer('article.read', { article: 'by-key' });
    expect(stored.ok && stored.value.claims.map(({ origin, proof }) => [origin, proof?.verdict])).toEqual([
      ['manual', 'holds'],
    ]);
    await page.context().close();
  });

  it('leaves a blank where a house phrase has no number, and says what is missing', async () => {
    const page = await sitting.openWindow({ path: '#/draft/gloam-48' });
    await page.locator('.article p').last().click();
    await page.keyboard.press('End');
    await page.keyboard.press('Alt+h');
    await page.getByLabel('Which phrase').fill('after adjustment');
    await page.locator('.read-as li', { hasText: 'Not measured yet' }).first().waitFor();
    await page.keyboard.press('Enter');
    await page
      .getByText(/^Left blank, not measured yet: Colour error of the greyscale/)
      .first()
      .waitFor();
    expect(await page.evaluate(() => getSelection()?.toString())).toBe('…');
    await page.context().close();
  });

  it('signs accepted proofs with the name that a person gave', async () => {
    const page = await sitting.openWindow({ path: '#/draft/hearth-55' });
    await page.locator('.article').waitFor();
    await page.keyboard.press('Control+k');
    await page.keyboard.type('your name');
    await page.keyboard.press('Enter');
    await page.getByLabel('Stands under the proofs').fill('The second reviewer');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => localStorage.getItem('nitproof.person') === 'The second reviewer');
    await page.context().close();
  });

  it('shows the sentences of crowded problems, not a clipped line', async () => {
    const page = await sitting.openWindow({ path: '#/draft/vane-50' });
    await page.waitForFunction(
      () => document.querySelectorAll('.proof').length > 0 && !document.querySelector('.proof.working'),
    );
    await page.waitForTimeout(400);
    const forms = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('.margin > .proof.breaks')].map(
        (proof) => proof.dataset.form,
      ),
    );
    expect(forms.length).toBeGreaterThan(3);
    expect(forms.filter((form) => form === 'line')).toEqual([]);
    await page.context().close();
  });
});
