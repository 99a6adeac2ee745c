import type { MenuItemConstructorOptions } from 'electron';

export interface MenuActions {
  /** Sends a command id of the window to the focused window */
  command(action: string): void;
  newWindow(): void;
  openLibrary(): void;
  openRecent(file: string): void;
}

/**
 * The application menu. What belongs to the window's own commands is sent there by id, so that menu, keys and
 * palette cannot differ; editing and zoom use the platform's roles.
 */
export function menuTemplate(
  platform: NodeJS.Platform,
  recent: readonly string[],
  actions: MenuActions,
): MenuItemConstructorOptions[] {
  const command = (label: string, id: string, accelerator?: string): MenuItemConstructorOptions => ({
    label,
    ...(accelerator === undefined ? {} : { accelerator }),
    click: () => actions.command(id),
  });
  const library: MenuItemConstructorOptions = {
    label: 'Library',
    submenu: [
      { label: 'New window', accelerator: 'CmdOrCtrl+Shift+N', click: () => actions.newWindow() },
      { label: 'Open a library…', accelerator: 'CmdOrCtrl+O', click: () => actions.openLibrary() },
      {
        label: 'Open lately used',
        enabled: recent.length > 0,
        submenu: recent.map((file) => ({ label: file, click: () => actions.openRecent(file) })),
      },
      { type: 'separator' },
      platform === 'darwin' ? { role: 'close' } : { role: 'quit' },
    ],
  };
  const rooms: MenuItemConstructorOptions = {
    label: 'Rooms',
    submenu: [
      command('Shelf', 'room.shelf'),
      command('Bench', 'room.bench'),
      command('Draft', 'room.draft'),
      command('Score sheet', 'room.score'),
      command('Desk', 'room.desk'),
      command('Release', 'room.release'),
    ],
  };
  const help: MenuItemConstructorOptions = {
    label: 'Help',
    submenu: [
      command('Find a command…', 'palette.open'),
      command('Keys and words', 'help.open'),
      command('First steps, from the beginning', 'tour.begin'),
    ],
  };
  return [
    ...(platform === 'darwin' ? [{ role: 'appMenu' } satisfies MenuItemConstructorOptions] : []),
    library,
    { role: 'editMenu' },
    rooms,
    {
      label: 'View',
      submenu: [
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { role: 'resetZoom' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
    help,
  ];
}
