import { hdrConditions, sdrConditions } from './inventedUnit.ts';

const instrument = sdrConditions.instrument!;
const sdr = sdrConditions;
const pq = hdrConditions;
const hlg = { ...hdrConditions, signal: 'HLG', target: { gamut: 'BT.2020', white: 'D65', eotf: 'HLG' } };
const floorless = { ...sdr, instrument: { ...instrument, floor_cdm2: 0, xy_from_cdm2: 0 } };
const peak = (cdm2: number) => ({ ...pq, target: { ...pq.target, peak: cdm2 } });
const zoned = { ...sdr, dimming: 'as-set' };

export interface DegenerateCase {
  csv: string[];
  conditions?: object;
  /** What is undefined and why; a name ending in * speaks for all that begin so */
  undefined?: Record<string, string>;
  /** What has a value all the same; of a series the value at the first axis */
  value?: Record<string, number>;
  over?: Record<string, number>;
  /** Quantities that may not be listed at all */
  absent?: string[];
}

const greyHead = 'series,stimulus,x,y,Y';
const angleHead = 'series,angle,level,x,y,Y';
const cellHead = 'series,level,position,x,y,Y';
const sweepHead = 'series,hue,saturation,x,y,Y';
const primaryHead = 'series,hue,x,y,Y';
const contrastHead = 'series,pattern,position,Y';
const windowHead = 'series,window,seconds,Y';
const noWhite = 'no 100 % level';
const noBlack = { black: 'no full black pattern and no 0 % level' };
const dark = 'the 100 % level has no luminance';
const notLower = 'the 0 % level is not darker than the 100 % level';
const noWhiteColour = { 'white.*': 'the 100 % level has no usable chromaticity' };
const noSlope = { 'gamma.slope': 'one level has no slope' };
const noRollOff = {
  'eotf.rolloff*': 'no roll-off: the highest level is within 10 % of its target or above',
};
const onTarget = { 'grey.tint.angle': 'every grey is on the target white' };
const noMiddle = {
  gamma: 'no level between 0 and 100 % with a luminance above 0',
  'gamma.*': 'no level from 10 to 90 % above twice the instrument floor',
};
const colours = 'red, green, yellow, blue, magenta, cyan';
const noGreyColour = 'no grey has a chromaticity that can be used: not measured, or too dim';

/** Runs that lack something or hold nothing but nonsense, by the id of the run. */
export const cases: Record<string, DegenerateCase> = {
  'one-grey': {
    csv: [greyHead, 'greyscale,50,0.31,0.33,40'],
    undefined: {
      'grey.de*': noWhite,
      'white*': noWhite,
      'gamma*': noWhite,
      'eotf*': noWhite,
      black: 'no full black pattern and no 0 % level',
    },
    // 100·M⁻¹ of BT.709 in the IEC 61966-2-1 digits: 3.2406·0.31/0.33 − 1.5372 − 0.4986·0.36/0.33
    value: { 'grey.balance.red': 96.3 },
  },
  'one-white': {
    csv: [greyHead, 'greyscale,100,0.3127,0.329,200'],
    undefined: { ...onTarget, ...noMiddle, ...noRollOff, ...noBlack },
    value: { 'grey.de2000': 0, 'grey.tint': 0, white: 200, 'eotf.error': 0 },
  },
  'white-of-no-light': {
    csv: [greyHead, 'greyscale,0,,,0', 'greyscale,50,0.31,0.33,40', 'greyscale,100,,,0'],
    undefined: {
      'grey.d*': 'the reference white has no luminance',
      'grey.deitp': dark,
      'gamma*': dark,
      'eotf*': dark,
      ...noWhiteColour,
    },
    value: { white: 0, black: 0 },
  },
  'no-light-without-floor': {
    csv: [greyHead, 'greyscale,0,0.3,0.3,0', 'greyscale,50,0.31,0.33,0', 'greyscale,100,0.31,0.33,0'],
    conditions: floorless,
    undefined: {
      'grey.d*': 'the reference white has no luminance',
      'grey.deitp': dark,
      'grey.balance*': noGreyColour,
      'grey.tint*': noGreyColour,
      'gamma*': dark,
      'eotf*': dark,
      ...noWhiteColour,
    },
  },
  'only-0': {
    csv: [greyHead, 'greyscale,0,,,0.05'],
    undefined: {
      'grey.de*': noWhite,
      'grey.balance*': noGreyColour,
      'grey.tint*': noGreyColour,
      'white*': noWhite,
      'gamma*': noWhite,
      'eotf*': noWhite,
    },
    value: { black: 0.05 },
  },
  'only-0-pq': {
    csv: [greyHead, 'greyscale,0,0.3127,0.329,0.5'],
    conditions: pq,
    undefined: {
      ...onTarget,
      'white.*': noWhite,
      'eotf.error': 'no level has a target luminance above 0',
      ...noRollOff,
    },
    value: { black: 0.5, 'grey.de2000': 0 },
    absent: ['gamma', 'white'],
  },
  'only-0-hlg': {
    csv: [greyHead, 'greyscale,0,0.3127,0.329,0.5'],
    conditions: hlg,
    undefined: {
      ...onTarget,
      'grey.deitp': noWhite,
      'grey.de2000.total': noWhite,
      'eotf*': noWhite,
      'white.*': noWhite,
    },
  },
  'repeats-without-spread': {
    csv: [
      greyHead,
      ...Array<string>(3).fill('greyscale,100,0.3127,0.329,200'),
      ...Array<string>(3).fill('greyscale,50,0.3127,0.329,50'),
    ],
    value: { white: 200, gamma: 2 },
    undefined: { ...onTarget, ...noSlope, ...noRollOff, ...noBlack },
  },
  'levels-twice': {
    csv: [greyHead, 'greyscale,50,0.31,0.33,40', 'greyscale,100,0.31,0.33,200', 'greyscale,50,0.31,0.33,60'],
    value: { gamma: 2 },
    undefined: {
      ...noSlope,
      ...noRollOff,
      ...noBlack,
    },
  },
  'no-chromaticity': {
    csv: [greyHead, 'greyscale,0,,,0.05', 'greyscale,50,,,50', 'greyscale,100,,,200'],
    undefined: {
      'grey.*': noGreyColour,
      ...noWhiteColour,
      ...noSlope,
      ...noRollOff,
    },
    value: { gamma: 2, white: 200 },
  },
  'chromaticity-of-no-light': {
    csv: [greyHead, 'greyscale,100,0.3,0.0005,200'],
    undefined: {
      'grey.*': noGreyColour,
      ...noWhiteColour,
      ...noMiddle,
      ...noRollOff,
      ...noBlack,
    },
  },
  'black-above-a-level': {
    csv: [greyHead, 'greyscale,0,,,1', 'greyscale,10,,,0.5', 'greyscale,50,,,50', 'greyscale,100,,,200'],
    // Axis 0 is black against itself.
    value: { 'eotf.error': 0, black: 1 },
    undefined: {
      'grey.*': noGreyColour,
      ...noWhiteColour,
      ...noRollOff,
    },
  },
  'black-above-white': {
    csv: [greyHead, 'greyscale,0,,,300', 'greyscale,50,,,50', 'greyscale,100,,,200'],
    undefined: {
      'grey.*': noGreyColour,
      'grey.de2000.total': notLower,
      'grey.deitp': notLower,
      'eotf*': notLower,
      ...noWhiteColour,
      ...noSlope,
    },
    value: { gamma: 2 },
  },
  'unknown-white': {
    csv: [
      'series,stimulus,hue,saturation,patch,ref_x,ref_y,ref_Y,x,y,Y',
      'greyscale,100,,,,,,,0.31,0.33,200',
      'saturation,,red,50,,,,,0.47,0.33,40',
      'chart,,,,01,0.3,0.3,0.2,0.3,0.3,40',
      'primaries,,red,,,,,,0.64,0.33,40',
    ],
    conditions: { ...sdr, target: { ...sdr.target, white: 'tea-coloured' } },
    undefined: {
      'grey.*': 'the target white "tea-coloured" is not known',
      'sweep.red.*': 'the target white "tea-coloured" is not known',
      'chart.*': 'the target white "tea-coloured" is not known',
      'volume.*': 'the target white "tea-coloured" is not known',
      'white.distance': 'the target white "tea-coloured" is not known',
      'coverage.*': 'no chromaticity of full green, blue',
      'area.*': 'no chromaticity of full green, blue',
      ...noMiddle,
      ...noRollOff,
      ...noBlack,
    },
  },
  'hdr-all-below-the-peak': {
    csv: [greyHead, 'greyscale,10,0.3127,0.329,0.3', 'greyscale,50,0.3127,0.329,92'],
    conditions: peak(1000),
    undefined: { ...onTarget, 'white.*': noWhite, ...noRollOff, ...noBlack },
    absent: ['white', 'gamma'],
  },
  'hdr-all-above-the-peak': {
    csv: [greyHead, 'greyscale,80,0.3127,0.329,700', 'greyscale,100,0.3127,0.329,700'],
    conditions: peak(500),
    value: { 'eotf.rolloff': 80, 'eotf.rolloff.spread': 0 },
    undefined: { ...onTarget, ...noBlack },
  },
  'primaries-without-luminance': {
    csv: [primaryHead, 'primaries,red,0.64,0.33,', 'primaries,green,0.3,0.6,', 'primaries,blue,0.15,0.06,'],
    undefined: { 'volume.*': 'no full-amplitude reading of black, yellow, magenta, cyan, white' },
    // Rec. ITU-R BT.709 against itself
    value: { 'coverage.bt709.xy': 100, 'area.bt709.uv': 100 },
  },
  'two-primaries': {
    csv: [primaryHead, 'primaries,red,0.64,0.33,40', 'primaries,green,0.3,0.6,140'],
    undefined: {
      'coverage.*': 'no chromaticity of full blue',
      'area.*': 'no chromaticity of full blue',
      'volume.*': 'no full-amplitude reading of black, yellow, blue, magenta, cyan, white',
    },
  },
  'primaries-on-a-line': {
    csv: [primaryHead, 'primaries,red,0.5,0.3,9', 'primaries,green,0.4,0.3,9', 'primaries,blue,0.3,0.3,9'],
    value: { 'coverage.p3.xy': 0, 'area.p3.xy': 0 },
    undefined: {
      'volume.*': 'no full-amplitude reading of black, yellow, magenta, cyan, white',
    },
  },
  'sweep-without-white': {
    csv: [sweepHead, 'saturation,red,50,0.47,0.33,40', 'saturation,red,100,0.64,0.33,30'],
    undefined: {
      'sweep.red.de2000': 'no white in this run',
      'sweep.red.luminance': 'no white in this run',
      'sweep.red.de2000.L': 'no white in this run',
      'sweep.red.de2000.C': 'no white in this run',
      'sweep.red.de2000.H': 'no white in this run',
      'sweep.red.de76': 'no white in this run',
      'sweep.red.de94': 'no white in this run',
    },
    absent: ['sweep.green.de2000'],
  },
  'sweep-without-luminance': {
    csv: [sweepHead, 'saturation,red,50,0.47,0.33,', 'saturation,red,100,0.64,0.33,'],
    undefined: {
      'sweep.red.*': 'no white in this run',
      'sweep.red.de2000.colour': 'no red step has a luminance',
      'sweep.red.saturation': 'no red step has a luminance',
      'sweep.red.hue': 'no red step has a luminance',
    },
  },
  'sweep-of-white-only': {
    csv: [sweepHead, 'saturation,red,0,0.3127,0.329,100'],
    undefined: {
      'sweep.red.saturation': 'the target has no chroma',
      'sweep.red.hue': 'every step is under 5 C*',
    },
    value: { 'sweep.red.de2000': 0, 'sweep.red.luminance': 0 },
  },
  'chart-without-white': {
    csv: ['series,patch,ref_x,ref_y,ref_Y,x,y,Y', 'chart,01,0.3,0.3,0.2,0.3,0.3,40'],
    undefined: { 'chart.*': 'no white in this run' },
  },
  'chart-without-references': {
    csv: ['series,patch,hue,x,y,Y', 'chart,01,,0.3,0.3,40', 'primaries,,white,0.3127,0.329,200'],
    undefined: {
      'chart.*': 'no patch has a reading and a target',
      'coverage.*': 'no chromaticity of full red, green, blue',
      'area.*': 'no chromaticity of full red, green, blue',
      'volume.*': `no full-amplitude reading of black, ${colours}`,
    },
  },
  'one-cell': {
    csv: [cellHead, 'uniformity,white,r2c2,0.31,0.33,200'],
    undefined: { 'uniformity.*': 'one cell has no evenness' },
  },
  'no-centre-cell': {
    csv: [cellHead, 'uniformity,white,r1c1,0.31,0.33,200', 'uniformity,white,r3c3,0.31,0.33,190'],
    undefined: { 'uniformity.white.cell': 'no centre cell', 'uniformity.white.colour': 'no centre cell' },
    value: { 'uniformity.white': 5 },
  },
  'cells-of-no-light': {
    csv: [cellHead, 'uniformity,black,r1c1,0.31,0.33,0', 'uniformity,black,r2c2,0.31,0.33,0'],
    conditions: floorless,
    undefined: {
      'uniformity.black': "cells are under twice the instrument's floor",
      'uniformity.black.cell': "cells are under twice the instrument's floor",
      'uniformity.black.colour': 'the centre has no usable chromaticity',
    },
  },
  'no-0-degrees': {
    csv: [angleHead, 'angle,-30,white,0.31,0.33,150', 'angle,30,white,0.31,0.33,151'],
    undefined: { 'angle.*': 'no reading at 0°' },
  },
  'only-0-degrees': {
    csv: [angleHead, 'angle,0,white,0.31,0.33,150'],
    undefined: {
      'angle.de2000*': 'no other direction has a usable chromaticity',
      'angle.luminance.at50': '50 % is not passed within 0°',
    },
    value: { 'angle.luminance': 100 },
  },
  'angles-of-black-only': {
    csv: [angleHead, 'angle,0,black,,,0.05', 'angle,30,black,,,0.06'],
    undefined: { 'angle.contrast': 'white and black share no direction', 'angle.black.de2000*': noWhite },
    value: { 'angle.black.luminance': 100 },
  },
  'angles-of-zero-black-without-floor': {
    csv: [angleHead, 'angle,0,white,0.31,0.33,200', 'angle,0,black,,,0'],
    conditions: floorless,
    undefined: {
      'angle.contrast': 'white or black has no luminance in any shared direction',
      'angle.black.*': "the reading at 0° is under twice the instrument's floor",
      'angle.de2000*': 'no other direction has a usable chromaticity',
      'angle.luminance.at50': '50 % is not passed within 0°',
    },
  },
  'angles-dark-on-axis': {
    csv: [angleHead, 'angle,0,white,0.31,0.33,0.001', 'angle,30,white,0.31,0.33,20'],
    undefined: { 'angle.*': "the reading at 0° is under twice the instrument's floor" },
  },
  'zero-black': {
    csv: [contrastHead, 'contrast,full-white,,200', 'contrast,full-black,,0'],
    // 200/(2·0.002)
    over: { 'contrast.native': 50000, 'contrast.sequential': 50000 },
    value: { black: 0 },
  },
  'zero-black-without-floor': {
    csv: [contrastHead, 'contrast,full-white,,200', 'contrast,full-black,,0'],
    conditions: floorless,
    undefined: { 'contrast.*': 'black has no luminance and the instrument states no floor' },
  },
  'no-light-in-contrast': {
    csv: [contrastHead, 'contrast,full-white,,0', 'contrast,full-black,,0'],
    undefined: { 'contrast.*': 'the white pattern has no luminance' },
  },
  'contrast-of-white-only': {
    csv: [contrastHead, 'contrast,full-white,,200'],
    undefined: { 'contrast.*': 'no black pattern', black: 'no full black pattern and no 0 % level' },
  },
  'contrast-with-dimming': {
    csv: [contrastHead, 'contrast,full-white,,200', 'contrast,full-black,,0.1'],
    conditions: zoned,
    undefined: { 'contrast.native': 'dimming was as set, not off' },
    value: { 'contrast.sequential': 2000 },
  },
  'chequer-only': {
    csv: [contrastHead, 'contrast,chequer-white,r1c1,200', 'contrast,chequer-black,r1c2,0.5'],
    value: { 'contrast.chequer': 400 },
    absent: ['contrast.native', 'contrast.sequential'],
    undefined: {
      ...noBlack,
    },
  },
  'one-window': {
    csv: [windowHead, 'window,10,2,700'],
    undefined: {
      'peak.sustained': 'no window was read from 120 s on',
      'peak.hold': 'no window was read both within 10 s and from 120 s on',
    },
    value: { peak: 700 },
    absent: ['peak.abl'],
  },
  'windows-of-no-light': {
    csv: [windowHead, 'window,10,2,0', 'window,50,2,0', 'window,10,180,0'],
    conditions: floorless,
    undefined: { 'peak.hold': 'the peak has no luminance', 'peak.abl': 'no window has a luminance' },
    value: { peak: 0 },
  },
  'warm-up-only': {
    csv: [windowHead, 'window,100,600,180', 'window,100,1200,190', 'window,100,1800,200'],
    undefined: {
      peak: 'no full-signal window was read within 10 s',
      'peak.hold': 'no window was read both within 10 s and from 120 s on',
    },
    value: { 'peak.sustained': 190 },
  },
  'one-lag': { csv: ['series,quantity,value,unit', 'single,lag,14.2,ms'], value: { lag: 14.2 } },
  'one-power': { csv: ['series,quantity,value,unit', 'single,power,0,W'], value: { 'power.calm': 0 } },
};
