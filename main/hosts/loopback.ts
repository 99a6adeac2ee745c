import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { door, type Fault, type RequestName, type Workbench } from '../../shared/contract/index.ts';
import { readAppFile } from './appFiles.ts';
import { securityHeaders } from './policy.ts';

export interface LoopbackOptions {
  workbench: Workbench;
  /** Folder with the built window (index.html, assets/) */
  appFolder: string;
  /** 0 or absent: any free port */
  port?: number;
}

export interface LoopbackHost {
  /** `http://127.0.0.1:<port>` */
  origin: string;
  /** A fresh address that opens the window once and then is spent. */
  oneTimeLink(): string;
  close(): Promise<void>;
}

/** Readings files and photos travel as base64 in one message. */
const largestMessageBytes = 256 * 1024 * 1024;
const cookieName = 'nitproof';

/**
 * Serves the window and the door on 127.0.0.1. A one-time link sets a random token as a cookie that scripts
 * cannot read and other sites cannot send; Host and Origin are checked against DNS rebinding and forged
 * requests (RFC 9110 §7.2, RFC 6454, RFC 6265bis SameSite).
 */
export async function serveLoopback(options: LoopbackOptions): Promise<LoopbackHost> {
  const token = randomBytes(32).toString('base64url');
  const unspent = new Set<string>();
  const streams = new Set<ServerResponse>();
  const server = createServer((request, response) => {
    answer(request, response).catch(() => {
      if (!response.headersSent)
        send(response, 500, 'text/plain; charset=utf-8', 'Something went wrong here.');
      else response.destroy();
    });
  });
  const unsubscribe = options.workbench.subscribe((event) => {
    const line = `data: ${JSON.stringify(event)}\n\n`;
    for (const stream of streams) stream.write(line);
  });

  await listen(server, options.port ?? 0);
  const port = (server.address() as AddressInfo).port;
  const hosts = new Set([`127.0.0.1:${port}`, `localhost:${port}`]);
  const origin = `http://127.0.0.1:${port}`;

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const host = request.headers.host ?? '';
    if (!hosts.has(host))
      return send(response, 421, 'text/plain; charset=utf-8', 'This address is not served here.');
    const sender = request.headers.origin;
    if (sender !== undefined && sender !== `http://${host}`) {
      return send(response, 403, 'text/plain; charset=utf-8', 'Requests from other sites are refused.');
    }
    const url = new URL(request.url ?? '/', `http://${host}`);
    if (url.pathname === '/enter') return enter(url, request, response);
    if (!carriesToken(request, token)) return send(response, 401, 'text/html; charset=utf-8', noEntryPage);
    if (url.pathname === '/events' && request.method === 'GET') return stream(response);
    if (url.pathname.startsWith('/door/'))
      return carry(url.pathname.slice('/door/'.length), request, response);
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      return send(response, 405, 'text/plain; charset=utf-8', 'Only reading is possible here.');
    }
    const file = await readAppFile(options.appFolder, url.pathname);
    if (file === null) return send(response, 404, 'text/plain; charset=utf-8', 'There is no such page.');
    const caching = file.immutable ? 'private, max-age=31536000, immutable' : 'no-store';
    send(response, 200, file.mime, file.bytes, { 'cache-control': caching });
  }

  function enter(url: URL, request: IncomingMessage, response: ServerResponse): void {
    const fresh = unspent.delete(url.searchParams.get('once') ?? '');
    // A reload of the spent link by the browser that used it still leads home.
    if (!fresh && !carriesToken(request, token)) {
      send(response, 401, 'text/html; charset=utf-8', noEntryPage);
      return;
    }
    const cookie = { 'set-cookie': `${cookieName}=${token}; HttpOnly; SameSite=Strict; Path=/` };
    send(response, 200, 'text/html; charset=utf-8', enterPage, fresh ? cookie : {});
  }

  function stream(response: ServerResponse): void {
    response.writeHead(200, {
      ...securityHeaders,
      'content-type': 'text/event-stream',
      'cache-control': 'no-store',
    });
    response.write(': listening\n\n');
    streams.add(response);
    response.on('close', () => streams.delete(response));
  }

  async function carry(name: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (request.method !== 'POST' || request.headers['content-type']?.split(';')[0] !== 'application/json') {
      return reply(response, 405, [{ code: 'bad-input', sentence: 'A request is a POST with a JSON body.' }]);
    }
    if (!Object.hasOwn(door, name)) {
      return reply(response, 404, [{ code: 'not-found', sentence: `There is no request “${name}”.` }]);
    }
    const body = await readBody(request);
    if (body === null) {
      reply(response, 413, [{ code: 'bad-input', sentence: 'This message is larger than 256 MiB.' }]);
      request.destroy();
      return;
    }
    let input: unknown;
    try {
      input = JSON.parse(body);
    } catch {
      return reply(response, 400, [{ code: 'bad-input', sentence: 'The body of this request is not JSON.' }]);
    }
    const outcome = await options.workbench.answer(name as RequestName, input);
    send(response, 200, 'application/json; charset=utf-8', JSON.stringify(outcome), {
      'cache-control': 'no-store',
    });
  }

  return {
    origin,
    oneTimeLink() {
      const once = randomBytes(24).toString('base64url');
      unspent.add(once);
      return `${origin}/enter?once=${once}`;
    },
    async close() {
      unsubscribe();
      for (const stream of streams) stream.end();
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
    },
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function carriesToken(request: IncomingMessage, token: string): boolean {
  for (const part of (request.headers.cookie ?? '').split(';')) {
    const [name, value] = part.trim().split('=');
    if (name !== cookieName || value === undefined) continue;
    const given = Buffer.from(value);
    const wanted = Buffer.from(token);
    if (given.length === wanted.length && timingSafeEqual(given, wanted)) return true;
  }
  return false;
}

async function readBody(request: IncomingMessage): Promise<string | null> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    bytes += part.length;
    if (bytes > largestMessageBytes) return null;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

function reply(response: ServerResponse, status: number, faults: Fault[]): void {
  send(response, status, 'application/json; charset=utf-8', JSON.stringify({ ok: false, faults }));
}

function send(
  response: ServerResponse,
  status: number,
  mime: string,
  body: string | Uint8Array,
  headers: Record<string, string> = {},
): void {
  response.writeHead(status, { ...securityHeaders, 'content-type': mime, ...headers });
  response.end(response.req.method === 'HEAD' ? undefined : body);
}

const page = (title: string, head: string, text: string) =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><link rel="icon" href="data:,"><title>${title}</title>${head}<style>body{font:17px/1.6 Georgia,serif;max-width:34rem;margin:16vh auto;padding:0 1rem;color-scheme:light dark}</style></head><body><p>${text}</p></body></html>`;

/** A page, not a redirect: a Strict cookie set on a redirect that another program began is not sent at once. */
const enterPage = page(
  'Nitproof',
  '<meta http-equiv="refresh" content="0;url=/">',
  '<a href="/">Open Nitproof</a>',
);

const noEntryPage = page(
  'Nitproof: no entry',
  '',
  'This window has no key to the library. Each link opens it once: press Enter in the terminal that serves Nitproof for a fresh one.',
);
