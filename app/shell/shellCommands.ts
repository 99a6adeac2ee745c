import type { Command } from '../commands/command.ts';
import { useLook } from '../theme/themeChoice.ts';
import { go, roomNames, rooms } from './route.ts';
import { openSheet } from './sheets.ts';

/** Commands of the window itself, possible in every room. */
export const shellCommands: readonly Command[] = [
  ...rooms.map(
    (room, index): Command => ({
      id: `room.${room}`,
      name: `Go to the ${roomNames[room]}`,
      keywords: `room ${roomNames[room]}`,
      key: `Alt+${index + 1}`,
      group: 'Go',
      perform: () => go(room),
    }),
  ),
  {
    id: 'palette.open',
    name: 'Find a command',
    keywords: 'palette search menu',
    key: 'Mod+K',
    group: 'Window',
    perform: () => openSheet('palette'),
  },
  {
    id: 'help.open',
    name: 'Keys and verdicts',
    keywords: 'help shortcuts keyboard words',
    key: 'F1',
    group: 'Window',
    perform: () => openSheet('help'),
  },
  {
    id: 'person.rename',
    name: 'Your name',
    keywords: 'person author reviewer editor sign',
    group: 'Window',
    perform: () => openSheet('name'),
  },
  {
    id: 'article.new',
    name: 'New article',
    keywords: 'create write review',
    key: 'Alt+N',
    group: 'Draft',
    perform: () => openSheet('new-article'),
  },
  {
    id: 'look.larger',
    name: 'Larger',
    keywords: 'zoom in bigger text',
    key: 'Mod+=',
    group: 'Window',
    perform: () => useLook.getState().stepZoom(1),
  },
  {
    id: 'look.smaller',
    name: 'Smaller',
    keywords: 'zoom out text',
    key: 'Mod+-',
    group: 'Window',
    perform: () => useLook.getState().stepZoom(-1),
  },
  {
    id: 'look.usual-size',
    name: 'Usual size',
    keywords: 'zoom reset',
    key: 'Mod+0',
    group: 'Window',
    perform: () => useLook.getState().stepZoom(0),
  },
  ...(['auto', 'light', 'dark'] as const).map(
    (theme): Command => ({
      id: `look.${theme}`,
      name: theme === 'auto' ? 'Theme of the system' : theme === 'light' ? 'Light theme' : 'Dark theme',
      keywords: 'theme colour appearance look',
      group: 'Window',
      perform: () => useLook.getState().setTheme(theme),
    }),
  ),
  {
    id: 'look.contrast',
    name: 'High contrast on or off',
    keywords: 'theme accessibility',
    group: 'Window',
    perform: () => {
      const { contrast, setContrast } = useLook.getState();
      setContrast(contrast === 'more' ? 'usual' : 'more');
    },
  },
];
