import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** A Chromium-family browser found on PATH, or null. */
export function findBrowser(): string | null {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of names) {
      const file = join(folder, name);
      try {
        accessSync(file, constants.X_OK);
        return file;
      } catch {
        // not here
      }
    }
  }
  return null;
}

/** Launches the browser headless, with a fresh profile and without any background traffic of its own. */
export async function launchBrowser(extraFlags: readonly string[] = []): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('No Chromium on PATH: install the package "chromium".');
  return chromium.launch({
    executablePath,
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--font-render-hinting=none',
      ...extraFlags,
    ],
  });
}
