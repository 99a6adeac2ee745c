import { EventEmitter } from 'node:events';

/** What the host told Electron, kept for the tests to read. Stands in for the module `electron`, whose program is not in the package. */
export const told = {
  schemes: [] as { scheme: string; privileges: Record<string, boolean> }[],
  protocolHandlers: new Map<string, (request: Request) => Promise<Response>>(),
  ipcHandlers: new Map<string, (event: unknown, ...args: unknown[]) => Promise<unknown>>(),
  permissionRequest: null as
    | null
    | ((contents: unknown, permission: string, answer: (granted: boolean) => void) => void),
  permissionCheck: null as null | (() => boolean),
  menu: null as null | MenuItem[],
  external: [] as string[],
  errors: [] as string[],
  exposed: new Map<string, unknown>(),
  userData: '',
};

export interface MenuItem {
  label?: string;
  role?: string;
  accelerator?: string;
  submenu?: MenuItem[];
  click?: () => void;
}

class FakeContents extends EventEmitter {
  sent: [string, unknown][] = [];
  windowOpen: null | ((details: { url: string }) => { action: string }) = null;
  reloads = 0;
  send(channel: string, message: unknown) {
    this.sent.push([channel, message]);
  }
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }) {
    this.windowOpen = handler;
  }
  reload() {
    this.reloads++;
  }
}

export class BrowserWindow extends EventEmitter {
  static all: BrowserWindow[] = [];
  static getAllWindows = () => BrowserWindow.all;
  static getFocusedWindow = () => BrowserWindow.all[0] ?? null;
  webContents = new FakeContents();
  options: Record<string, unknown> & { webPreferences: Record<string, unknown> };
  url = '';
  shown = false;
  constructor(options: BrowserWindow['options']) {
    super();
    this.options = options;
    BrowserWindow.all.push(this);
  }
  async loadURL(url: string) {
    this.url = url;
  }
  show() {
    this.shown = true;
  }
  maximize() {}
  isMaximized() {
    return false;
  }
  isMinimized() {
    return false;
  }
  getNormalBounds() {
    return { x: 10, y: 20, width: 1400, height: 900 };
  }
  focus() {}
}

class FakeApp extends EventEmitter {
  quits = 0;
  requestSingleInstanceLock = () => true;
  whenReady = async () => {};
  getPath = (_: string) => told.userData;
  quit() {
    this.quits++;
  }
}
export const app = new FakeApp();

export const protocol = {
  registerSchemesAsPrivileged(schemes: typeof told.schemes) {
    told.schemes = schemes;
  },
  handle(scheme: string, handler: (request: Request) => Promise<Response>) {
    told.protocolHandlers.set(scheme, handler);
  },
};

export const session = {
  defaultSession: {
    setPermissionRequestHandler(handler: NonNullable<typeof told.permissionRequest>) {
      told.permissionRequest = handler;
    },
    setPermissionCheckHandler(handler: () => boolean) {
      told.permissionCheck = handler;
    },
  },
};

export const ipcMain = {
  handle(channel: string, handler: (event: unknown, ...args: unknown[]) => Promise<unknown>) {
    told.ipcHandlers.set(channel, handler);
  },
};

export const ipcRenderer = Object.assign(new EventEmitter(), {
  invoked: [] as unknown[][],
  async invoke(...args: unknown[]) {
    this.invoked.push(args);
    return { ok: true, value: null };
  },
});

export const contextBridge = {
  exposeInMainWorld(name: string, value: unknown) {
    told.exposed.set(name, value);
  },
};

export const Menu = {
  buildFromTemplate: (template: MenuItem[]) => template,
  setApplicationMenu(template: MenuItem[]) {
    told.menu = template;
  },
};

export const dialog = {
  showErrorBox(title: string, text: string) {
    told.errors.push(`${title}: ${text}`);
  },
  async showOpenDialog() {
    return { canceled: true, filePaths: [] as string[] };
  },
};

export const shell = {
  async openExternal(url: string) {
    told.external.push(url);
  },
};
