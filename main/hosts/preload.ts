import { contextBridge, ipcRenderer } from 'electron';
import type { DoorClient, DoorEvent } from '../../shared/contract/door.ts';

/**
 * The whole surface that the sandboxed window sees: ask and subscribe. No channel name comes from the page,
 * and nothing of `ipcRenderer` is handed out.
 */
const client: DoorClient = {
  ask: (name, input) => ipcRenderer.invoke('door', name, input),
  subscribe(listener) {
    const carry = (_: unknown, event: DoorEvent) => listener(event);
    ipcRenderer.on('news', carry);
    return () => {
      ipcRenderer.off('news', carry);
    };
  },
};

contextBridge.exposeInMainWorld('nitproof', client);
