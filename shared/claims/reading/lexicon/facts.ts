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
    phrases: `hdr format(s); hdr signals; hdr standards; hdr variants; hdr flavours; kinds of hdr; hdr support`,
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
  depth: { phrases: `depth; deep; thick; thickness; panel depth; in depth`, unit: 'length' },
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
    phrases: `warranty; guarantee; guaranteed; guarantees; warrantied; warranties`,
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
