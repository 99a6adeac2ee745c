import { createRoot } from 'react-dom/client';
import { Shell } from './shell/Shell.tsx';
import { applyLook } from './theme/themeChoice.ts';

applyLook(document.documentElement);
createRoot(document.getElementById('window')!).render(<Shell />);
