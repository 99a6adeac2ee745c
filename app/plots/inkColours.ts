import { formatRgb, parse } from 'culori';

/** The theme's tokens as `rgb(…)`, for drawing programs that do not read OKLCH or custom properties. */
export interface InkColours {
  paper: string;
  ink: string;
  quiet: string;
  hair: string;
  rule: string;
  accent: string;
  breaks: string;
  /** Half way from the rule's grey to the paper: ink can be read on it */
  shade: string;
  sans: string;
}

/** Reads the tokens as they stand at `element`, in whichever theme is on. */
export function inkColours(element: HTMLElement): InkColours {
  const probe = document.createElement('span');
  element.append(probe);
  const colour = (token: string) => mixed(`var(${token})`);
  const mixed = (css: string) => {
    probe.style.color = css;
    return formatRgb(parse(getComputedStyle(probe).color)) ?? 'rgb(128, 128, 128)';
  };
  const colours = {
    paper: colour('--paper'),
    ink: colour('--ink'),
    quiet: colour('--quiet'),
    hair: colour('--hair'),
    rule: colour('--rule'),
    accent: colour('--accent'),
    breaks: colour('--breaks'),
    shade: mixed('color-mix(in oklab, var(--rule) 45%, var(--paper))'),
    sans: getComputedStyle(probe).fontFamily,
  };
  probe.remove();
  return colours;
}
