import { create } from 'zustand';

type Theme = 'auto' | 'light' | 'dark';
type Contrast = 'auto' | 'more' | 'usual';

const zoomSteps = [0.8, 0.9, 1, 1.1, 1.25, 1.5, 1.75, 2] as const;
const storageKey = 'nitproof.look';

interface Look {
  theme: Theme;
  contrast: Contrast;
  /** Size of everything in the window, 1 = as designed */
  zoom: number;
}

interface LookStore extends Look {
  setTheme(theme: Theme): void;
  setContrast(contrast: Contrast): void;
  /** One step larger (+1), smaller (−1), or back to 1 (0). */
  stepZoom(step: 1 | -1 | 0): void;
}

function remembered(): Look {
  try {
    const kept = JSON.parse(localStorage.getItem(storageKey) ?? '{}') as Partial<Look>;
    return {
      theme: kept.theme === 'light' || kept.theme === 'dark' ? kept.theme : 'auto',
      contrast: kept.contrast === 'more' || kept.contrast === 'usual' ? kept.contrast : 'auto',
      zoom: zoomSteps.find((step) => step === kept.zoom) ?? 1,
    };
  } catch {
    return { theme: 'auto', contrast: 'auto', zoom: 1 };
  }
}

/** How the window looks on this machine: theme, contrast and size; remembered here, never in the library. */
export const useLook = create<LookStore>((set, get) => ({
  ...remembered(),
  setTheme: (theme) => set({ theme }),
  setContrast: (contrast) => set({ contrast }),
  stepZoom: (step) => {
    if (step === 0) return set({ zoom: 1 });
    const at = zoomSteps.indexOf(get().zoom as (typeof zoomSteps)[number]) + step;
    set({ zoom: zoomSteps[Math.min(Math.max(at, 0), zoomSteps.length - 1)]! });
  },
}));

/** Writes the choice onto the root element and keeps following it. Call once. */
export function applyLook(root: HTMLElement): void {
  const wantsMore = window.matchMedia('(prefers-contrast: more)');
  const apply = () => {
    const { theme, contrast, zoom } = useLook.getState();
    if (theme === 'auto') delete root.dataset.theme;
    else root.dataset.theme = theme;
    if (contrast === 'more' || (contrast === 'auto' && wantsMore.matches)) root.dataset.contrast = 'more';
    else delete root.dataset.contrast;
    root.style.setProperty('--zoom', String(zoom));
  };
  apply();
  wantsMore.addEventListener('change', apply);
  useLook.subscribe(({ theme, contrast, zoom }) => {
    apply();
    try {
      localStorage.setItem(storageKey, JSON.stringify({ theme, contrast, zoom }));
    } catch {
      // A window without storage keeps its look until it closes.
    }
  });
}
