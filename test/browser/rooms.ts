import type { Page } from 'playwright-core';

/** Every room with something in it, and when it has come to rest. */
export const roomsAtRest = [
  { name: 'shelf', path: '#/shelf', rest: shelfAtRest },
  {
    name: 'shelf-beside',
    path: '#/shelf?beside=orrinvale-hearth-55,kasulind-vane-50',
    rest: seen('.beside'),
  },
  { name: 'bench', path: '#/bench/orrinvale-hearth-55', rest: seen('.bench-name', 'figure.plot') },
  { name: 'draft', path: '#/draft/vane-50', rest: proofsAtRest },
  { name: 'draft-calm', path: '#/draft/hearth-55', rest: proofsAtRest },
  { name: 'score', path: '#/score/hearth-55', rest: seen('.page .prose') },
  { name: 'desk', path: '#/desk/vane-50', rest: deskAtRest },
  { name: 'release', path: '#/release/hearth-55', rest: seen('.page .article h1') },
] as const;

function seen(...selectors: string[]): (page: Page) => Promise<void> {
  return async (page) => {
    for (const selector of selectors) await page.locator(selector).first().waitFor();
  };
}

/** Verdicts come from a worker: at rest once none is being worked out and every proof has its place. */
export async function proofsAtRest(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector('.proof') !== null &&
      document.querySelector('.proof.working') === null &&
      (document.querySelector('.margin') === null || document.querySelector('.margin[data-placed]') !== null),
  );
  await paintTwice(page);
}

async function deskAtRest(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector('.galley li') !== null && document.querySelector('.galley li.working') === null,
  );
}

/** At rest once each article has its count of verdicts. */
async function shelfAtRest(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const lines = [...document.querySelectorAll('.article-line')];
    return lines.length > 0 && lines.every((line) => line.querySelector('.article-total') !== null);
  });
}

export async function paintTwice(page: Page): Promise<void> {
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
}

/** Goes to a room in the same window by its address. */
export async function goTo(page: Page, path: string): Promise<void> {
  await page.evaluate(
    (hash) => {
      window.location.hash = hash;
    },
    path.replace(/^#/, ''),
  );
}
