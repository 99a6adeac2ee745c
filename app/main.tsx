import { createRoot } from 'react-dom/client';
import { Shell } from './shell/Shell.tsx';

/** Draws the window's frame with the room in it. Call once. */
export function show(): void {
  createRoot(document.getElementById('window')!).render(<Shell />);
}
