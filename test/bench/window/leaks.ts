import type { CDPSession, Page } from 'playwright-core';
import { proofsAtRest } from '../../browser/rooms.ts';

/** What a page keeps after forced collection. */
export interface Kept {
  /** Bytes of the script heap in use */
  heap: number;
  /** Nodes alive, those outside the page's tree included */
  nodes: number;
  listeners: number;
  workers: number;
}

/** What a page keeps: collected three times, because what a finaliser lets go falls to the next collection. */
export async function keptBy(page: Page, session: CDPSession): Promise<Kept> {
  for (let turn = 0; turn < 3; turn += 1) await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? 0;
  return {
    heap: usedSize,
    nodes: of('Nodes'),
    listeners: of('JSEventListeners'),
    workers: page.workers().length,
  };
}

/**
 * Shows articles in turn by their addresses, inside the page, each until its first proof stands. None may be the one
 * that is shown already: nothing would happen.
 */
export async function switchArticles(page: Page, articles: readonly string[], times: number): Promise<void> {
  await page.evaluate(
    async ({ articles, times, patience }) => {
      const proofsOfAnother = (before: Element | null, id: string) =>
        new Promise<void>((resolve, reject) => {
          const stands = () => {
            const article = document.querySelector('.article');
            return article !== null && article !== before && document.querySelector('.proof') !== null;
          };
          const observer = new MutationObserver(() => {
            if (!stands()) return;
            end();
            resolve();
          });
          const timer = setTimeout(() => {
            end();
            const article = document.querySelector('.article');
            const shown = article === null ? 'no article' : article === before ? 'the one before' : 'it';
            reject(
              new Error(
                `Waited ${patience} ms for the first proof of ${id}; the page shows ${shown}, no proof.`,
              ),
            );
          }, patience);
          function end() {
            clearTimeout(timer);
            observer.disconnect();
          }
          observer.observe(document.body, { childList: true, subtree: true });
        });
      for (let turn = 0; turn < times; turn += 1) {
        const id = articles[turn % articles.length]!;
        if (window.location.hash.split('?')[0] === `#/draft/${id}`)
          throw new Error(`${id} is shown already; there is nothing to switch to.`);
        const standing = proofsOfAnother(document.querySelector('.article'), id);
        window.location.hash = `/draft/${id}`;
        await standing;
      }
    },
    { articles: [...articles], times, patience: 20_000 },
  );
}

/** Opens the proofs of the article in turn, inside the page; every fourth is also painted. */
export async function openProofs(page: Page, times: number): Promise<void> {
  await page.evaluate(async (times) => {
    const channel = new MessageChannel();
    const nextTask = () =>
      new Promise<void>((resolve) => {
        channel.port1.onmessage = () => resolve();
        channel.port2.postMessage(0);
      });
    for (let turn = 0; turn < times; turn += 1) {
      const heads = document.querySelectorAll<HTMLElement>('.proof-head');
      const head = heads[turn % heads.length]!;
      head.click();
      await nextTask();
      if (head.getAttribute('aria-expanded') !== 'true')
        throw new Error(`Opening ${turn}: the proof “${head.parentElement?.textContent}” did not open.`);
      if (turn % 4 === 3) await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    channel.port1.close();
  }, times);
}

/** The same state before each measurement: one article with every verdict there, its first proof open. */
export async function comeToRest(page: Page, article: string): Promise<void> {
  if (!page.url().endsWith(`#/draft/${article}`)) await switchArticles(page, [article], 1);
  await proofsAtRest(page);
  await openProofs(page, 1);
  await proofsAtRest(page);
}
