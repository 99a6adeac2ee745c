import { clientId, door } from '../door/door.ts';
import { useEvidence } from './evidence.ts';
import { useLibrary } from './library.ts';

/** Keeps the stores in step with what other windows and the backend change. Returns the way to stop. */
export function followNews(): () => void {
  return door.subscribe((event) => {
    if (event.type !== 'changed') return;
    void useLibrary.getState().load();
    if (event.what === 'unit') void useEvidence.getState().reloadUnit(event.id);
    else if (event.what === 'house') void useEvidence.getState().reloadHouse();
    else if (event.what === 'library' || event.by !== clientId) void useEvidence.getState().load();
  });
}
