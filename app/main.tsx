import { createRoot } from 'react-dom/client';
import './theme/fonts.css';
import './theme/tokens.css';
import './theme/base.css';
import './shell/shell.css';
import { Shell } from './shell/Shell.tsx';
import { applyLook } from './theme/themeChoice.ts';

applyLook(document.documentElement);
createRoot(document.getElementById('window')!).render(<Shell />);
