import { mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type LoopbackHost, serveLoopback } from '../../main/hosts/loopback.ts';
import { openWorkbench } from '../../main/openWorkbench.ts';
import type { Workbench } from '../../shared/contract/index.ts';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'nitproof-loopback-'));
let workbench: Workbench;
let host: LoopbackHost;

beforeAll(async () => {
  const opened = await openWorkbench({
    library: join(folder, 'library.sqlite'),
    demoDossier: join(root, 'main', 'demo', 'dossier'),
  });
  if (!opened.ok) throw new Error(opened.faults[0].sentence);
  workbench = opened.value;
  host = await serveLoopback({ workbench, appFolder: join(root, 'app') });
});

afterAll(async () => {
  await host.close();
  await workbench.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

/** Raw requests, because fetch would not let a test forge Host and Origin. */
function send(path: string, headers: Record<string, string> = {}, body?: string): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const url = new URL(path, host.origin);
    const outgoing = request(
      {
        host: '127.0.0.1',
        port: url.port,
        path: url.pathname + url.search,
        method: body === undefined ? 'GET' : 'POST',
        headers,
      },
      (incoming) => {
        let text = '';
        incoming.setEncoding('utf8');
        incoming.on('data', (part) => {
          text += part;
        });
        incoming.on('end', () =>
          resolve({ status: incoming.statusCode ?? 0, headers: incoming.headers, body: text }),
        );
      },
    );
    outgoing.on('error', reject);
    outgoing.end(body);
  });
}

async function enter(): Promise<string> {
  const link = new URL(host.oneTimeLink());
  const answer = await send(link.pathname + link.search);
  expect(answer.status).toBe(200);
  return String(answer.headers['set-cookie']).split(';')[0];
}

const json = { 'content-type': 'application/json' };

describe('the loopback host', () => {
  it('lets nobody in without the link, and by the link once', async () => {
    expect((await send('/')).status).toBe(401);
    expect((await send('/door/shelf.list', json, '{}')).status).toBe(401);
    const link = new URL(host.oneTimeLink());
    const first = await send(link.pathname + link.search);
    expect(first.status).toBe(200);
    expect(String(first.headers['set-cookie'])).toMatch(
      /^nitproof=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/,
    );
    expect((await send(link.pathname + link.search)).status).toBe(401);
    expect((await send('/', { cookie: 'nitproof=wrong' })).status).toBe(401);
  });

  it('carries requests for the window that has the cookie', async () => {
    const cookie = await enter();
    const answer = await send('/door/shelf.list', { ...json, cookie }, '{}');
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toMatchObject({
      ok: true,
      value: { library: { demo: false, units: 0 } },
    });
  });

  it('refuses another Host (DNS rebinding) and another Origin', async () => {
    const cookie = await enter();
    expect((await send('/', { cookie, host: 'rebound.example.org' })).status).toBe(421);
    const forged = { ...json, cookie, origin: 'https://example.org' };
    expect((await send('/door/shelf.list', forged, '{}')).status).toBe(403);
    const own = { ...json, cookie, origin: host.origin };
    expect((await send('/door/shelf.list', own, '{}')).status).toBe(200);
  });

  it('gives the strict policy with every page and nothing outside the window’s folder', async () => {
    const cookie = await enter();
    const page = await send('/', { cookie });
    expect(page.headers['content-security-policy']).toContain("default-src 'none'; script-src 'self';");
    expect(page.headers['x-content-type-options']).toBe('nosniff');
    expect((await send('/..%2fpackage.json', { cookie })).status).toBe(404);
    expect((await send('/%00', { cookie })).status).toBe(404);
    expect((await send('/%', { cookie })).status).toBe(404);
  });

  it('answers wrong messages with a sentence, never a crash', async () => {
    const cookie = await enter();
    const cases: [string, Record<string, string>, string, number][] = [
      ['/door/no.such', json, '{}', 404],
      ['/door/toString', json, '{}', 404],
      ['/door/shelf.list', { 'content-type': 'text/plain' }, '{}', 405],
      ['/door/shelf.list', json, '{', 400],
      ['/door/unit.read', json, '{"unit":"../x"}', 200],
    ];
    for (const [path, headers, body, status] of cases) {
      const answer = await send(path, { ...headers, cookie }, body);
      expect(answer.status).toBe(status);
      const outcome = JSON.parse(answer.body);
      expect(outcome.ok).toBe(false);
      expect(outcome.faults[0].sentence).toMatch(/\.$/);
    }
  });

  it('sends news to every open window', async () => {
    const cookie = await enter();
    const controller = new AbortController();
    const response = await fetch(`${host.origin}/events`, { headers: { cookie }, signal: controller.signal });
    const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
    await reader.read();
    const made = await send(
      '/door/unit.save',
      { ...json, cookie },
      JSON.stringify({ unit: 'orrinvale-test-43', content: { maker: 'Orrinvale', model: 'Test 43' } }),
    );
    expect(JSON.parse(made.body)).toMatchObject({ ok: true });
    const { value } = await reader.read();
    expect(value).toContain('"what":"unit","id":"orrinvale-test-43"');
    controller.abort();
  });
});
