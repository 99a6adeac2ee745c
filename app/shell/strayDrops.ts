import { briefNotice } from './briefNotices.ts';

const isFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;

/**
 * A file that no place in the window takes would be opened by the browser in the window's stead, and what was not
 * saved would be gone with it. Such a drop does nothing but say where files go. Returns the way to stop.
 */
export function refuseStrayDrops(target: Window): () => void {
  const onOver = (event: DragEvent) => {
    if (!isFiles(event) || event.defaultPrevented) return;
    event.preventDefault();
    if (event.dataTransfer) event.dataTransfer.dropEffect = 'none';
  };
  const onDrop = (event: DragEvent) => {
    if (!isFiles(event) || event.defaultPrevented) return;
    event.preventDefault();
    briefNotice(
      'Readings are dropped on their run on the Bench, photos on an observation or into an article.',
    );
  };
  target.addEventListener('dragover', onOver);
  target.addEventListener('drop', onDrop);
  return () => {
    target.removeEventListener('dragover', onOver);
    target.removeEventListener('drop', onDrop);
  };
}
