import type { CDPSession, Page } from 'playwright-core';

/**
 * One key, ms: what its own task took of the main thread's processor time, by kind, and the time on the clock until
 * the frame that shows it.
 */
export interface Keystroke {
  script: number;
  layout: number;
  frame: number;
}

declare global {
  interface Window {
    frameAfterKey: number;
  }
}

/**
 * Notes for every keydown the time from its own stamp (waiting behind other work counts) until the next animation
 * frame has been laid out and painted.
 */
async function noteFrames(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.addEventListener(
      'keydown',
      (event) => {
        window.frameAfterKey = 0;
        requestAnimationFrame(() => {
          const painted = new MessageChannel();
          painted.port1.onmessage = () => {
            window.frameAfterKey = performance.now() - event.timeStamp;
            painted.port1.close();
          };
          painted.port2.postMessage(0);
        });
      },
      true,
    );
  });
}

/** A page that is typed into, and what each key cost. */
export interface Typist {
  page: Page;
  strokes: Keystroke[];
  type(text: string, pause: number): Promise<void>;
}

/**
 * Script and layout are the browser's own counters in the thread's processor time (DevTools protocol,
 * `Performance`, time domain `threadTicks`), which do not count what else the machine does.
 */
export async function createTypist(page: Page): Promise<Typist> {
  const session: CDPSession = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await noteFrames(page);
  const counters = async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    const of = (name: string) => 1000 * (metrics.find((metric) => metric.name === name)?.value ?? 0);
    return { script: of('ScriptDuration'), layout: of('LayoutDuration') + of('RecalcStyleDuration') };
  };
  const strokes: Keystroke[] = [];
  return {
    page,
    strokes,
    async type(text, pause) {
      for (const character of text) {
        const before = await counters();
        await page.keyboard.type(character);
        const after = await counters();
        await page.waitForTimeout(pause);
        strokes.push({
          script: after.script - before.script,
          layout: after.layout - before.layout,
          frame: await page.evaluate(() => window.frameAfterKey),
        });
      }
    },
  };
}

/** Puts the cursor at the end of a paragraph in the middle of the text. */
export async function placeCursor(page: Page): Promise<void> {
  const paragraphs = page.locator('.article > p');
  const middle = paragraphs.nth(Math.floor((await paragraphs.count()) / 2));
  await middle.scrollIntoViewIfNeeded();
  await middle.click();
  await page.keyboard.press('End');
}
