/**
 * Facts that no reading proves: key → how they are named and what measures them.
 * `unit` is a dimension of `unitWords`; `count` facts are a bare number before the noun ("four HDMI ports").
 */
export interface FactWord {
  phrases: string;
  unit:
    | 'count'
    | 'length'
    | 'mass'
    | 'frequency'
    | 'months'
    | 'word'
    | 'formats'
    | 'money'
    | 'time'
    | 'version'
    | 'inch'
    | 'flag';
}

export const factWords: Readonly<Record<string, FactWord>> = {
  'hdmi.count': {
    phrases: `hdmi input(s); hdmi port(s); hdmi socket(s); hdmi connection(s); hdmi connector(s); hdmi(s); hdmi sockets; hdmi terminals`,
    unit: 'count',
  },
  'hdmi.version': { phrases: `hdmi version; hdmi standard; version of hdmi`, unit: 'version' },
  'usb.count': {
    phrases: `usb port(s); usb socket(s); usb input(s); usb connection(s); usb(s); usb connector(s)`,
    unit: 'count',
  },
  'hdr.formats': {
    phrases: `hdr format(s); formats; hdr signals; hdr standards; hdr variants; hdr flavours; kinds of hdr; hdr support`,
    unit: 'formats',
  },
  refresh: {
    phrases: `refresh rate; panel refresh rate; refresh; native refresh rate; refreshes`,
    unit: 'frequency',
  },
  resolution: {
    phrases: `resolution; panel resolution; native resolution; pixel count; pixels`,
    unit: 'word',
  },
  depth: {
    phrases: `from front to back; front to back; depth; deep; thick; thickness; panel depth; in depth`,
    unit: 'length',
  },
  width: { phrases: `width; wide; in width; overall width`, unit: 'length' },
  height: { phrases: `height; tall; high; in height; overall height`, unit: 'length' },
  weight: {
    phrases: `weight; weighs; weigh; weighed; heavy; mass; tips the scales; in weight; weighing`,
    unit: 'mass',
  },
  'stand.width': {
    phrases: `stand width; stand; foot; feet; width of the stand; stand's width; stand needs; feet stand; feet are; between the feet`,
    unit: 'length',
  },
  warranty: {
    phrases: `warranty; guarantee; guaranteed; of cover; year's cover; years' cover; guarantees; warrantied; warranties`,
    unit: 'months',
  },
  zones: { phrases: `dimming zone(s); zone(s); backlight zone(s); local dimming zone(s)`, unit: 'count' },
};

/** HDR formats named in prose → the name used in facts; the maker-neutral names of open standards. */
export const formatWords: Readonly<Record<string, string>> = {
  HDR10: `hdr10; hdr 10`,
  'HDR10+': `hdr10 +; hdr10 plus`,
  HLG: `hlg; hybrid log gamma`,
};

export const resolutionWords: Readonly<Record<string, string>> = {
  '3840x2160': `4 k; ultra hd; uhd; 3840 × 2160; 3840 x 2160; 3,840 × 2,160; 2160 p; four k; 3,840 x 2,160; 3840 by 2160`,
  '1920x1080': `full hd; 1920 × 1080; 1920 x 1080; 1080 p; 1,920 × 1,080; fhd`,
  '7680x4320': `8 k; 7680 × 4320; 7680 x 4320; 4320 p`,
};

/** Kinds of panel and of backlight → the fact that has them, the name that is looked for there, and their words. */
export const panelWords: Readonly<Record<string, { fact: 'panel' | 'backlight'; phrases: string }>> = {
  IPS: { fact: 'panel', phrases: `ips` },
  VA: { fact: 'panel', phrases: `va` },
  OLED: { fact: 'panel', phrases: `oled; organic led; organic light emitting diode` },
  LCD: { fact: 'panel', phrases: `lcd; liquid crystal` },
  'mini-LED': { fact: 'backlight', phrases: `mini led; miniled; mini leds` },
  'full-array LED': { fact: 'backlight', phrases: `full array; full array led; fald` },
  'edge LED': {
    fact: 'backlight',
    phrases: `edge lit; edge led; lit from the edge(s); edge lighting; edge leds`,
  },
  'direct LED': { fact: 'backlight', phrases: `direct lit; direct led; directly lit` },
};

/** What a kind of panel or backlight stands before: "a VA panel", "an OLED television". */
export const panelNouns = `panel; screen; backlight; backlighting; lighting; illumination; set; television; tv; telly; model; display; layer; technology; local; dimming; design`;

/** Verbs that say what a set has or is: "uses a VA panel". */
export const panelVerbs = `is; get; isn't; 's; was; wasn't; has; lacks; uses; use; pairs; combines; marries; sports; offers; carries; gets; remains; fits; employs; built; based on; relies on; is an; comes with; and; with`;
