import { door } from '../door/door.ts';
import { useArticle } from './article.ts';
import { useEvidence } from './evidence.ts';
import { useLibrary } from './library.ts';

/** Keeps the stores in step with what other windows and the backend change. Returns the way to stop. */
export function followNews(): () => void {
  return door.subscribe((event) => {
    if (event.type !== 'changed') return;
    void useLibrary.getState().load();
    if (event.what === 'unit') void useEvidence.getState().reloadUnit(event.id);
    else if (event.what === 'house') void useEvidence.getState().reloadHouse();
    // The open article judges by its own text and facts; its autosaves need no new evidence.
    else if (event.what === 'library' || event.id !== useArticle.getState().id)
      void useEvidence.getState().load();
  });
}
