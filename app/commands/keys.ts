import type { Command } from './command.ts';

const onMac = typeof navigator !== 'undefined' && /Mac|iPhone|iPad/.test(navigator.platform);

/** The parts of a KeyboardEvent that a key is matched on. */
export interface Press {
  key: string;
  code?: string;
  ctrlKey: boolean;
  metaKey: boolean;
  altKey: boolean;
  shiftKey: boolean;
}

/** Does a key press match `Mod+Shift+K`? On letters and digits Shift must be as named. */
export function matches(key: string, press: Press, mac = onMac): boolean {
  // Asked of every command at every letter typed: most are told apart by this alone.
  if (!key.toLowerCase().endsWith(press.key.toLowerCase())) return false;
  const parts = key.split('+');
  const last = parts.pop() || '+';
  const wanted = new Set(parts.map((part) => (part === 'Mod' ? (mac ? 'Meta' : 'Control') : part)));
  if (press.ctrlKey !== wanted.has('Control')) return false;
  if (press.metaKey !== wanted.has('Meta')) return false;
  if (press.altKey !== wanted.has('Alt')) return false;
  // Signs such as "?" and "+" need Shift on some keyboards and not on others.
  if (/^([A-Za-z0-9]|\w{2,})$/.test(last) && press.shiftKey !== wanted.has('Shift')) return false;
  return press.key.toLowerCase() === last.toLowerCase();
}

/** As printed for people: `⌘K` on a Mac, `Ctrl+K` elsewhere. */
export function keyLabel(key: string, mac = onMac): string {
  if (!mac) return key.replace('Mod', 'Ctrl');
  return key.replace('Mod+', '⌘').replace('Shift+', '⇧').replace('Alt+', '⌥');
}

/** The first possible command whose key was pressed. */
export function commandFor(press: Press, commands: Iterable<Command>): Command | undefined {
  for (const command of commands) {
    if (command.key && matches(command.key, press) && (command.when?.() ?? true)) return command;
  }
  return undefined;
}
