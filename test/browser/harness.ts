import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { type LoopbackHost, serveLoopback } from '../../main/hosts/loopback.ts';
import { openWorkbench } from '../../main/openWorkbench.ts';
import type { Workbench } from '../../shared/contract/index.ts';
import { launchBrowser } from './browser.ts';

export interface Sitting {
  browser: Browser;
  workbench: Workbench;
  host: LoopbackHost;
  /** SQLite file of this sitting */
  library: string;
  /** A new window on the library, already let in; `path` is the hash route. */
  openWindow(options?: WindowOptions): Promise<Page>;
  close(): Promise<void>;
}

export interface WindowOptions {
  path?: string;
  theme?: 'light' | 'dark';
  width?: number;
  height?: number;
  /** A window on a machine that never saw the program: the first steps are proposed. */
  firstRun?: boolean;
}

const root = join(import.meta.dirname, '..', '..');

/** The real backend on a fresh copy of the demo library, the built window, and a real browser. */
export async function sitDown(flags: readonly string[] = []): Promise<Sitting> {
  const folder = mkdtempSync(join(tmpdir(), 'nitproof-sitting-'));
  const library = join(folder, 'demo.sqlite');
  const opened = await openWorkbench({ library, demoDossier: join(root, 'main', 'demo', 'dossier') });
  if (!opened.ok) throw new Error(opened.faults.map((fault) => fault.sentence).join('\n'));
  const host = await serveLoopback({ workbench: opened.value, appFolder: join(root, 'dist', 'app') });
  const browser = await launchBrowser(flags);
  const contexts: BrowserContext[] = [];
  return {
    browser,
    workbench: opened.value,
    host,
    library,
    async openWindow({ path = '', theme = 'light', width = 1280, height = 800, firstRun = false } = {}) {
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme: theme,
        reducedMotion: 'reduce',
        locale: 'en-GB',
        timezoneId: 'Europe/London',
      });
      contexts.push(context);
      if (!firstRun)
        await context.addInitScript(() => {
          const key = 'nitproof.first-steps';
          localStorage.setItem(key, localStorage.getItem(key) ?? '{"state":"ended"}');
        });
      const page = await context.newPage();
      await page.goto(host.oneTimeLink());
      await page.waitForURL((url) => url.pathname === '/');
      if (path !== '') await page.goto(`${host.origin}/${path}`);
      return page;
    },
    async close() {
      for (const context of contexts) await context.close();
      await browser.close();
      await host.close();
      await opened.value.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
