import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session, shell } from 'electron';
import type { Reply, RequestName, Workbench } from '../../shared/contract/index.ts';
import { faultLine } from '../../shared/contract/index.ts';
import { openWorkbench } from '../openWorkbench.ts';
import { readAppFile } from './appFiles.ts';
import { menuTemplate } from './menu.ts';
import { securityHeaders } from './policy.ts';
import { readWindowState, type WindowState, withRecent, writeWindowState } from './windowState.ts';

/** The window is served from its own scheme, so that it has an origin, a policy and no file access. */
const appOrigin = 'app://nitproof';

export interface ElectronHostOptions {
  /** Folder with the built window */
  appFolder: string;
  /** The sandboxed preload: one CommonJS file */
  preload: string;
  /** Library to open; absent: the last one, else the demo library in the user's data folder */
  library?: string;
  /** Demo dossier from which the demo library is made */
  demoDossier: string;
}

/**
 * The Electron host: windows, menu, `app://` protocol and the door over IPC. It carries the contract and adds
 * nothing. Settings follow Electron's security checklist: context isolation, sandbox, no Node in the window,
 * strict policy, no permissions, no navigation, senders checked.
 */
export async function runElectronHost(options: ElectronHostOptions): Promise<void> {
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  protocol.registerSchemesAsPrivileged([
    { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, stream: false } },
  ]);
  await app.whenReady();

  const stateFile = join(app.getPath('userData'), 'window.json');
  mkdirSync(dirname(stateFile), { recursive: true });
  let state: WindowState = readWindowState(stateFile);
  const keep = (change: Partial<WindowState>) => {
    state = { ...state, ...change };
    writeWindowState(stateFile, state);
  };

  let workbench: Workbench | null = null;
  let unsubscribe = () => {};

  async function openLibrary(file: string): Promise<boolean> {
    const opened = await openWorkbench({ library: file, demoDossier: options.demoDossier });
    if (!opened.ok) {
      dialog.showErrorBox('This library cannot be opened', opened.faults.map(faultLine).join('\n'));
      return false;
    }
    unsubscribe();
    await workbench?.close();
    workbench = opened.value;
    unsubscribe = workbench.subscribe((event) => {
      for (const window of BrowserWindow.getAllWindows()) window.webContents.send('news', event);
    });
    keep({ recent: withRecent(state.recent, file) });
    refreshMenu();
    return true;
  }

  function refreshMenu(): void {
    Menu.setApplicationMenu(
      Menu.buildFromTemplate(
        menuTemplate(process.platform, state.recent, {
          command: (action) =>
            BrowserWindow.getFocusedWindow()?.webContents.send('news', { type: 'menu', action }),
          newWindow: () => openWindow(),
          openLibrary: async () => {
            const chosen = await dialog.showOpenDialog({
              title: 'Open a library',
              filters: [{ name: 'Nitproof library', extensions: ['sqlite'] }],
              properties: ['openFile'],
            });
            const [file] = chosen.filePaths;
            if (file !== undefined && (await openLibrary(file))) reloadAll();
          },
          openRecent: async (file) => {
            if (await openLibrary(file)) reloadAll();
          },
        }),
      ),
    );
  }

  function reloadAll(): void {
    for (const window of BrowserWindow.getAllWindows()) window.webContents.reload();
  }

  function openWindow(): void {
    const window = new BrowserWindow({
      width: 1280,
      height: 800,
      ...state.bounds,
      minWidth: 640,
      minHeight: 480,
      show: false,
      title: 'Nitproof',
      webPreferences: {
        preload: options.preload,
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
      },
    });
    if (state.bounds?.maximized) window.maximize();
    window.once('ready-to-show', () => window.show());
    window.on('close', () => {
      keep({ bounds: { ...window.getNormalBounds(), maximized: window.isMaximized() } });
    });
    window.webContents.setWindowOpenHandler(({ url }) => {
      // Links in an article open in the reader's own browser, never inside the workbench.
      if (url.startsWith('https://')) void shell.openExternal(url);
      return { action: 'deny' };
    });
    window.webContents.on('will-navigate', (event) => {
      if (!event.url.startsWith(`${appOrigin}/`)) event.preventDefault();
    });
    window.webContents.on('will-attach-webview', (event) => event.preventDefault());
    void window.loadURL(`${appOrigin}/`);
  }

  protocol.handle('app', async (request) => {
    const url = new URL(request.url);
    if (`${url.protocol}//${url.host}` !== appOrigin)
      return new Response('There is no such page.', { status: 404 });
    const file = await readAppFile(options.appFolder, url.pathname);
    if (file === null)
      return new Response('There is no such page.', { status: 404, headers: securityHeaders });
    return new Response(Buffer.from(file.bytes), {
      headers: { ...securityHeaders, 'content-type': file.mime },
    });
  });

  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.defaultSession.setPermissionCheckHandler(() => false);

  ipcMain.handle('door', async (event, name: unknown, input: unknown): Promise<Reply<RequestName>> => {
    if (!event.senderFrame?.url.startsWith(`${appOrigin}/`) || event.senderFrame.parent !== null) {
      return {
        ok: false,
        faults: [{ code: 'refused', sentence: 'Only the workbench’s own window may ask.' }],
      };
    }
    if (workbench === null) {
      return { ok: false, faults: [{ code: 'not-found', sentence: 'No library is open.' }] };
    }
    return workbench.answer(name as RequestName, input);
  });

  app.on('second-instance', () => {
    const [window] = BrowserWindow.getAllWindows();
    if (window === undefined) return;
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) openWindow();
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  app.on('will-quit', () => {
    unsubscribe();
    void workbench?.close();
  });

  const wanted = options.library ?? state.recent[0] ?? join(app.getPath('userData'), 'demo.sqlite');
  const demo = join(app.getPath('userData'), 'demo.sqlite');
  if (!(await openLibrary(wanted)) && (wanted === demo || !(await openLibrary(demo)))) {
    app.quit();
    return;
  }
  openWindow();
}

/** Where things stand beside the built program (`dist/main/electron.js`). */
export function builtOptions(moduleUrl: string, args: readonly string[]): ElectronHostOptions {
  const here = dirname(fileURLToPath(moduleUrl));
  const given = args.find((argument) => argument.startsWith('--library='));
  return {
    appFolder: join(here, '..', 'app'),
    preload: join(here, 'preload.cjs'),
    demoDossier: join(here, '..', 'demo'),
    ...(given === undefined ? {} : { library: given.slice('--library='.length) }),
  };
}
