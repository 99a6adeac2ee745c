import { create } from 'zustand';
import { door } from '../door/door.ts';
import type { Command } from './command.ts';
import { commandFor } from './keys.ts';

interface Registry {
  commands: readonly Command[];
}

/** Every command that the rooms on show have put there. */
export const useCommands = create<Registry>(() => ({ commands: [] }));

/** Adds commands until the returned function is called; a later one of the same id stands in for the earlier. */
export function registerCommands(added: readonly Command[]): () => void {
  const ids = new Set(added.map((command) => command.id));
  useCommands.setState(({ commands }) => ({
    commands: [...commands.filter((command) => !ids.has(command.id)), ...added],
  }));
  return () =>
    useCommands.setState(({ commands }) => ({
      commands: commands.filter((command) => !added.includes(command)),
    }));
}

const listeners = new Set<(id: string) => void>();

/** Calls back with the id of each command that was performed, by key, menu, palette or button. */
export function onPerformed(listener: (id: string) => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

const readers = new Set<() => void>();

/**
 * Calls back before a key is looked up among the commands. The browser tells of a new selection in a task of its own,
 * after keys that were pressed meanwhile: who acts on the selection reads it here.
 */
export function beforeKeys(reader: () => void): () => void {
  readers.add(reader);
  return () => readers.delete(reader);
}

function perform(command: Command): void {
  void command.perform();
  for (const listener of listeners) listener(command.id);
}

/** Performs by id, as menus do; false when there is no such command or it is not possible now. */
export function performCommand(id: string): boolean {
  const command = useCommands.getState().commands.find((candidate) => candidate.id === id);
  if (!command || !(command.when?.() ?? true)) return false;
  perform(command);
  return true;
}

/** Keys and the desktop host's menu both end here. Returns the way to stop listening. */
export function listenForCommands(target: Window): () => void {
  const onKey = (event: KeyboardEvent) => {
    if (event.isComposing) return;
    for (const reader of readers) reader();
    const command = commandFor(event, useCommands.getState().commands);
    // A sheet over the window has the keys to itself; looked for last, since most keys are letters.
    if (!command || document.querySelector('dialog[open]')) return;
    event.preventDefault();
    event.stopPropagation();
    perform(command);
  };
  // Before the editor, which keeps Enter and Escape with any modifier for itself.
  target.addEventListener('keydown', onKey, true);
  const stopMenu = door.subscribe((event) => {
    if (event.type === 'menu') performCommand(event.action);
  });
  return () => {
    target.removeEventListener('keydown', onKey, true);
    stopMenu();
  };
}
