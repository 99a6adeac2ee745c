import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { DoorClient } from '../../shared/contract/index.ts';
import { app, BrowserWindow, ipcRenderer, type MenuItem, told } from './fakeElectron.ts';

vi.mock('electron', () => import('./fakeElectron.ts'));

const root = join(import.meta.dirname, '..', '..');
const own = { senderFrame: { url: 'app://nitproof/', parent: null } };

beforeAll(async () => {
  told.userData = mkdtempSync(join(tmpdir(), 'nitproof-electron-'));
  const { runElectronHost } = await import('../../main/hosts/electron.ts');
  await runElectronHost({
    appFolder: join(root, 'app'),
    preload: join(root, 'dist', 'main', 'preload.cjs'),
    demoDossier: join(root, 'main', 'demo', 'dossier'),
  });
});

afterAll(() => {
  app.emit('will-quit');
  rmSync(told.userData, { recursive: true, force: true });
});

const ask = (event: unknown, ...args: unknown[]) => told.ipcHandlers.get('door')!(event, ...args);

describe('the Electron host', () => {
  it('opens one window that is isolated, sandboxed and without Node', () => {
    expect(BrowserWindow.all).toHaveLength(1);
    const [window] = BrowserWindow.all;
    expect(window.url).toBe('app://nitproof/');
    expect(window.options.webPreferences).toEqual({
      preload: join(root, 'dist', 'main', 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: true,
    });
  });

  it('shows the window only once it can paint, and remembers where it stood', () => {
    const [window] = BrowserWindow.all;
    expect(window.shown).toBe(false);
    window.emit('ready-to-show');
    expect(window.shown).toBe(true);
    window.emit('close');
    const kept = JSON.parse(readFileSync(join(told.userData, 'window.json'), 'utf8'));
    expect(kept.bounds).toEqual({ x: 10, y: 20, width: 1400, height: 900, maximized: false });
    expect(kept.recent).toEqual([join(told.userData, 'demo.sqlite')]);
  });

  it('serves the window from app:// with the strict policy and nothing outside its folder', async () => {
    expect(told.schemes).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, stream: false } },
    ]);
    const serve = told.protocolHandlers.get('app')!;
    const page = await serve(new Request('app://nitproof/'));
    expect(page.status).toBe(200);
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'; script-src 'self';");
    expect(await page.text()).toContain('<html');
    for (const wrong of [
      'app://elsewhere/',
      'app://nitproof/..%2f..%2fpackage.json',
      'app://nitproof/none.js',
    ]) {
      expect((await serve(new Request(wrong))).status).toBe(404);
    }
  });

  it('grants no permission', () => {
    const answers: boolean[] = [];
    for (const permission of ['media', 'geolocation', 'notifications', 'openExternal']) {
      told.permissionRequest!(null, permission, (granted) => answers.push(granted));
    }
    expect(answers).toEqual([false, false, false, false]);
    expect(told.permissionCheck!()).toBe(false);
  });

  it('refuses navigation and new windows; a web link opens in the reader’s browser', () => {
    const { webContents } = BrowserWindow.all[0];
    const visit = (url: string) => {
      const event = { url, prevented: false, preventDefault: (): undefined => undefined };
      event.preventDefault = () => {
        event.prevented = true;
      };
      webContents.emit('will-navigate', event);
      return event.prevented;
    };
    expect(visit('https://example.org/')).toBe(true);
    expect(visit('file:///etc/passwd')).toBe(true);
    expect(visit('app://nitproof.example.org/')).toBe(true);
    expect(visit('app://nitproof/')).toBe(false);
    expect(webContents.windowOpen!({ url: 'https://example.org/' })).toEqual({ action: 'deny' });
    expect(webContents.windowOpen!({ url: 'file:///etc/passwd' })).toEqual({ action: 'deny' });
    expect(told.external).toEqual(['https://example.org/']);
  });

  it('answers the door for its own top frame alone', async () => {
    expect(await ask(own, 'shelf.list', {})).toMatchObject({ ok: true, value: { library: { demo: true } } });
    for (const stranger of [
      { senderFrame: { url: 'https://example.org/', parent: null } },
      { senderFrame: { url: 'app://nitproof/', parent: {} } },
      { senderFrame: null },
    ]) {
      expect(await ask(stranger, 'shelf.list', {})).toMatchObject({
        ok: false,
        faults: [{ code: 'refused' }],
      });
    }
  });

  it('gives an error as a value when a message is not in the contract', async () => {
    expect(await ask(own, 'no.such', {})).toMatchObject({ ok: false });
    expect(await ask(own, 'unit.read', { unit: '../../x' })).toMatchObject({
      ok: false,
      faults: [{ code: 'bad-input' }],
    });
    expect(await ask(own, 'constructor', {})).toMatchObject({ ok: false });
  });

  it('has a menu that sends the window’s own commands', () => {
    const flat: MenuItem[] = told.menu!.flatMap((item) => [item, ...(item.submenu ?? [])]);
    flat.find((item) => item.label === 'Draft')!.click!();
    expect(BrowserWindow.all[0].webContents.sent).toContainEqual([
      'news',
      { type: 'menu', action: 'room.draft' },
    ]);
  });

  it('offers the first steps under Help', () => {
    const help = told.menu!.find((item) => item.label === 'Help')!;
    help.submenu!.find((item) => /First steps/.test(item.label ?? ''))!.click!();
    expect(BrowserWindow.all[0].webContents.sent).toContainEqual([
      'news',
      { type: 'menu', action: 'tour.begin' },
    ]);
  });
});

describe('the preload', () => {
  it('exposes ask and subscribe and nothing else', async () => {
    await import('../../main/hosts/preload.ts');
    expect([...told.exposed.keys()]).toEqual(['nitproof']);
    const client = told.exposed.get('nitproof') as DoorClient;
    expect(Object.keys(client).sort()).toEqual(['ask', 'subscribe']);
    await client.ask('shelf.list', {});
    expect(ipcRenderer.invoked).toEqual([['door', 'shelf.list', {}]]);
    const heard: unknown[] = [];
    const stop = client.subscribe((event) => heard.push(event));
    ipcRenderer.emit('news', {}, { type: 'menu', action: 'room.desk' });
    stop();
    ipcRenderer.emit('news', {}, { type: 'menu', action: 'room.shelf' });
    expect(heard).toEqual([{ type: 'menu', action: 'room.desk' }]);
  });
});
