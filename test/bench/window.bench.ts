/*
 * What the window costs: typing in a long article against a bare editor, the first usable Shelf and Draft against a
 * page with as much script, and memory after many switches and openings.
 * Run: npm run bench window; `typing`, `first` or `leaks` after it picks one; `lines` leaves a cost of the driver out of
 * `first`; `leaks` takes about ten minutes on two busy cores; `switches=250 openings=2500` makes it shorter, and 0 leaves
 * one of the two out.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page, Response } from 'playwright-core';
import { build } from 'vite';
import { type Sitting, sitDown } from '../browser/harness.ts';
import { proofsAtRest } from '../browser/rooms.ts';
import { comeToRest, type Kept, keptBy, openProofs, switchArticles } from './window/leaks.ts';
import { longArticle } from './window/longArticle.ts';
import { sameSizeScript } from './window/sameSizeScript.ts';
import { median, quantile } from './window/statistics.ts';
import { createTypist, placeCursor, type Typist } from './window/typing.ts';

const assets = join(import.meta.dirname, '..', '..', 'dist', 'app', 'assets');
const options = process.argv.slice(2);
const chosen = options.filter((option) => !option.includes('=') && option !== 'lines');
const wanted = (name: string) => chosen.length === 0 || chosen.includes(name);
/** `name=number` on the command line, else as many as the target speaks of. */
const amount = (name: string, usual: number) =>
  Number(options.find((option) => option.startsWith(`${name}=`))?.slice(name.length + 1) ?? usual);
let missed = 0;

function verdict(what: string, value: number, target: number, digits = 2): void {
  const met = value <= target;
  if (!met) missed += 1;
  console.log(
    `  ${what.padEnd(58)} ${value.toFixed(digits).padStart(8)}  target ${target}  ${met ? 'met' : 'MISSED'}`,
  );
}

/** The bare editor, bundled from its own entry, with the article's type. */
async function bareEditor(markdown: string): Promise<Map<string, { type: string; body: string | Buffer }>> {
  const folder = mkdtempSync(join(tmpdir(), 'nitproof-bare-'));
  await build({
    root: join(import.meta.dirname, 'window'),
    configFile: false,
    logLevel: 'error',
    build: {
      outDir: folder,
      emptyOutDir: true,
      lib: { entry: 'barePage.ts', formats: ['es'], fileName: 'bare' },
    },
  });
  const script = readFileSync(join(folder, readdirSync(folder).find((file) => file.startsWith('bare'))!));
  rmSync(folder, { recursive: true });
  const font = readdirSync(assets).find((file) => file.startsWith('literata-latin-opsz-normal'))!;
  const escaped = markdown.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  const page = `<!doctype html><meta charset="utf-8"><style>
@font-face { font-family: Literata; src: url(/font.woff2); font-weight: 200 900 }
html, body { height: 100%; margin: 0 } #room { height: 100%; overflow: auto }
.article { font: 400 17px/1.62 Literata, serif; width: 620px; margin: 0 auto; white-space: pre-wrap; outline: none }
</style><script type="text/plain" id="markdown">${escaped}</script><div id="room"></div><script type="module" src="/bare.js"></script>`;
  return new Map([
    ['/', { type: 'text/html', body: page }],
    ['/bare.js', { type: 'text/javascript', body: script }],
    ['/font.woff2', { type: 'font/woff2', body: readFileSync(join(assets, font)) }],
  ]);
}

type Figure = (part: 'script' | 'layout' | 'frame', share: number) => number;

async function typing(sitting: Sitting): Promise<void> {
  const markdown = longArticle(10_000);
  const reply = await sitting.workbench.answer('article.create', {
    article: 'long-look',
    meta: {
      title: 'A long look at one hearth',
      unit: 'orrinvale-hearth-55',
      state: 'draft',
      date: '2026-10-02',
      locale: 'en-GB',
      conditions: {
        SDR: { mode: 'Calm', stage: 'as-delivered', dimming: 'off' },
        HDR10: { mode: 'HDR Calm', stage: 'as-delivered' },
      },
    },
    markdown,
  });
  if (!reply.ok) throw new Error(reply.faults[0]?.sentence);
  const ours = await sitting.openWindow({ path: '#/draft/long-look' });
  await proofsAtRest(ours);
  const proofs = await ours.locator('.margin > .proof').count();
  const files = await bareEditor(markdown);
  const bare = await (await sitting.browser.newContext({ viewport: { width: 1280, height: 800 } })).newPage();
  await bare.route('http://bare.test/**', (route) => {
    const file = files.get(new URL(route.request().url()).pathname);
    return file ? route.fulfill({ contentType: file.type, body: file.body }) : route.fulfill({ status: 204 });
  });
  await bare.goto('http://bare.test/');
  await bare.locator('.article p').first().waitFor();
  console.log(`\ntyping: ${markdown.split(/\s+/).length} words, ${proofs} proofs, blocks of 30 keys in turn`);
  const typists: Typist[] = [];
  for (const page of [ours, bare]) {
    await placeCursor(page);
    const typist = await createTypist(page);
    await typist.type(' The picture warms up slowly.', 60);
    typist.strokes.length = 0;
    typists.push(typist);
  }
  for (let round = 0; round < 8; round += 1) {
    for (const typist of round % 2 ? typists.toReversed() : typists) {
      await typist.page.bringToFront();
      await typist.type(' The lamp by the door hums low', 90);
    }
  }
  const [own, plain] = typists.map(
    ({ strokes }) =>
      (part: 'script' | 'layout' | 'frame', share: number) =>
        quantile(
          strokes.map((stroke) => stroke[part]),
          share,
        ),
  ) as [Figure, Figure];
  for (const [name, figure] of [
    ['Nitproof', own],
    ['bare editor', plain],
  ] as const) {
    const show = (part: 'script' | 'layout' | 'frame') =>
      `${part} ${figure(part, 0.5).toFixed(1)} / ${figure(part, 0.95).toFixed(1)}`;
    console.log(
      `  ${name.padEnd(12)} ${show('script')}, ${show('layout')}, ${show('frame')} ms (median / p95)`,
    );
  }
  verdict('script of a keydown, p95, ms', own('script', 0.95), 4);
  verdict('keydown to frame, median, times the bare editor', own('frame', 0.5) / plain('frame', 0.5), 1.5);
  verdict('keydown to frame, p95, times the bare editor', own('frame', 0.95) / plain('frame', 0.95), 1.5);
  await ours.context().close();
  await bare.context().close();
}

declare global {
  interface Window {
    usableAt?: number;
  }
}

/**
 * How long the browser is left alone after a new page, ms: it prepares pages of its own for each new window, which took
 * a whole core for about a second (found in a trace of all its processes).
 */
const browserAtRest = 2000;

/** Milliseconds from the start of the navigation until the selector is there and one frame has shown it. */
async function usableAfter(page: Page, address: string, selector: string): Promise<number> {
  await page.addInitScript((awaited) => {
    const observer = new MutationObserver(() => {
      if (!document.querySelector(awaited)) return;
      observer.disconnect();
      requestAnimationFrame(() =>
        setTimeout(() => {
          window.usableAt = performance.now();
        }),
      );
    });
    observer.observe(document, { childList: true, subtree: true });
  }, selector);
  await page.waitForTimeout(browserAtRest);
  await page.goto(address);
  await page.waitForFunction(() => window.usableAt !== undefined);
  return page.evaluate(() => window.usableAt!);
}

/** The page to compare with: nothing but a script, served over HTTP as the window is. */
async function serveYard(script: string): Promise<{ origin: string; close(): void }> {
  const server = createServer((request, response) => {
    const isScript = request.url?.endsWith('.js') ?? false;
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(
      isScript
        ? script
        : '<!doctype html><meta charset="utf-8"><body><script type="module" src="/yard.js"></script>',
    );
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}/`, close: () => server.close() };
}

async function first(sitting: Sitting): Promise<void> {
  console.log('\nfirst usable room, median of 9, cold cache');
  for (const [name, path, selector] of [
    ['Shelf', '#/shelf', '.shelf-line'],
    ['Draft', '#/draft/hearth-55', '.article p'],
  ] as const) {
    const ours: number[] = [];
    const plain: number[] = [];
    let bytes = 0;
    let plots = 0;
    for (let turn = 0; turn < 9; turn += 1) {
      const entry = await sitting.openWindow({ path: '#/score/hearth-55' });
      const context = entry.context();
      await entry.close();
      const page = await context.newPage();
      const session = await context.newCDPSession(page);
      await session.send('Network.setCacheDisabled', { cacheDisabled: true });
      bytes = 0;
      const sizes: Promise<void>[] = [];
      const count = (response: Response) => {
        if (!response.url().endsWith('.js') || /Worker/.test(response.url())) return;
        if (/plotly/.test(response.url())) plots += 1;
        sizes.push(
          response.body().then(
            (body) => {
              bytes += body.length;
            },
            () => undefined,
          ),
        );
      };
      page.on('response', count);
      ours.push(await usableAfter(page, `${sitting.host.origin}/${path}`, selector));
      // What comes after the room can be used is no part of what it began with.
      page.off('response', count);
      await Promise.all(sizes);
      await page.close();
      const yardstick = await context.newPage();
      const yard = await serveYard(sameSizeScript(bytes));
      plain.push(await usableAfter(yardstick, yard.origin, '#done'));
      await context.close();
      yard.close();
    }
    console.log(
      `  ${name}: ${median(ours).toFixed(0)} ms with ${(bytes / 1000).toFixed(0)} kB of script; the page of that size ${median(plain).toFixed(0)} ms`,
    );
    verdict(`first usable ${name}, times a page of as much script`, median(ours) / median(plain), 1.3);
    verdict(`chart program fetched before the first chart, ${name}`, plots, 0, 0);
  }
}

/** Two that judge much and one that judges little; the one that is measured comes last. */
const articles = ['vane-50', 'linden-50', 'hearth-55'] as const;

/**
 * The engine compiles what runs often again and again, over hundreds of switches, and counts that code as heap: the
 * window keeps nothing more for it. Without the optimising compilers the figure is what the program itself keeps.
 */
const withoutOptimising = ['--js-flags=--no-opt --no-maglev'];

async function leaks(sitting: Sitting): Promise<void> {
  const switches = amount('switches', 1000);
  const openings = amount('openings', 10_000);
  const warmUp = { switches: Math.min(switches, 100), openings: Math.min(openings, 500) };
  console.log('\nmemory of one page after forced collection');
  const page = await sitting.openWindow({ path: '#/draft/hearth-55' });
  page.setDefaultTimeout(60_000);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  await proofsAtRest(page);

  const start = performance.now();
  const keep = async (what: string): Promise<Kept> => {
    await comeToRest(page, 'hearth-55');
    const kept = await keptBy(page, session);
    const seconds = ((performance.now() - start) / 1000).toFixed(0);
    console.log(
      `  ${what.padEnd(24)} ${(kept.heap / 1e6).toFixed(2).padStart(7)} MB ${String(kept.nodes).padStart(7)} nodes ${String(kept.listeners).padStart(6)} listeners ${kept.workers} workers, after ${seconds} s`,
    );
    return kept;
  };
  await switchArticles(page, articles, warmUp.switches);
  await comeToRest(page, 'hearth-55');
  await openProofs(page, warmUp.openings);
  const warm = await keep('warm');
  /** In five parts with a measurement after each, so that a growth can be told from a step. */
  const inParts = async (
    before: Kept,
    what: string,
    times: number,
    act: (times: number) => Promise<void>,
  ) => {
    let kept = before;
    for (let part = 0; part < 5 && times > 0; part += 1) {
      const upTo = (share: number) => Math.round((times * share) / 5);
      await act(upTo(part + 1) - upTo(part));
      kept = await keep(`${upTo(part + 1)} ${what}`);
    }
    return kept;
  };

  const switched = await inParts(warm, 'switches', switches, (times) =>
    switchArticles(page, articles, times),
  );
  const opened = await inParts(switched, 'openings', openings, (times) => openProofs(page, times));
  for (const part of ['heap', 'nodes', 'listeners'] as const) {
    if (switches > 0)
      verdict(
        `${part} after ${switches} article switches, times before`,
        switched[part] / warm[part],
        1.05,
        3,
      );
    if (openings > 0)
      verdict(
        `${part} after ${openings} proof openings, times before`,
        opened[part] / switched[part],
        1.05,
        3,
      );
  }
  await page.context().close();
}

/**
 * Under the driver the engine notes where each `Error` is made, thrown or not, and reads the enclosing function again
 * to know the line: for those that react-dom makes as it loads some 70 ms of processor time (found in a trace, as
 * `V8.CollectSourcePositions`). `lines` has the lines noted as scripts are compiled, on both pages alike, which leaves
 * this out; that a window without a driver is spared it is concluded from the engine's ways, not measured.
 */
const linesAtOnce = options.includes('lines') ? ['--js-flags=--no-enable-lazy-source-positions'] : [];

async function on(flags: readonly string[], names: Record<string, (sitting: Sitting) => Promise<void>>) {
  const benches = Object.entries(names).filter(([name]) => wanted(name));
  if (benches.length === 0) return;
  const sitting = await sitDown(flags);
  try {
    for (const [, bench] of benches) await bench(sitting);
  } finally {
    await sitting.close();
  }
}

await build({ configFile: join(import.meta.dirname, '..', '..', 'vite.config.ts'), logLevel: 'error' });
await on([], { typing });
await on(linesAtOnce, { first });
await on(withoutOptimising, { leaks });
process.exit(missed > 0 ? 1 : 0);
