import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import type { RequestReply } from '../../shared/contract/door.ts';
import { type Sitting, sitDown } from './harness.ts';

/** For what comes from the backend or a worker while other tests take their share of the machine */
export const patient = { timeout: 20_000 };

/** The Bench in a real browser, for the tests of one file. */
export interface BenchSitting {
  /** A window on a unit's notebook page, with its protocol there. */
  openNotebook(path: string, look?: { theme?: 'light' | 'dark'; width?: number }): Promise<Page>;
  /** What the library holds of a unit. */
  unitOf(id: string): Promise<RequestReply<'unit.read'>>;
}

/** One library and browser for a file; windows of a finished test must not work on while the next one runs. */
export function sitAtTheBench(): BenchSitting {
  let sitting: Sitting;
  const windows: Page[] = [];
  beforeAll(async () => {
    sitting = await sitDown();
  });
  afterEach(async () => {
    for (const page of windows.splice(0)) await page.context().close();
  });
  afterAll(() => sitting.close());
  return {
    async openNotebook(path, look = {}) {
      const page = await sitting.openWindow({ path: `#/bench/${path}`, ...look });
      windows.push(page);
      await page.waitForSelector('.bench-name');
      return page;
    },
    async unitOf(id) {
      const reply = await sitting.workbench.answer('unit.read', { unit: id });
      if (!reply.ok) throw new Error(reply.faults[0]?.sentence);
      return reply.value;
    },
  };
}
