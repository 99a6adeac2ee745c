import type { Primaries } from './rgb.ts';
import type { WhiteName } from './whites.ts';

/** A standard gamut: chromaticities of its primaries and the name of its white. */
export type Gamut = { readonly primaries: Primaries; readonly white: WhiteName };

/**
 * Sources: Rec. ITU-R BT.709-6 items 1.3 and 1.4; BT.601-7 (625 and 525 lines, SMPTE RP 145); SMPTE EG 432-1 and
 * RP 431-2 (P3); BT.2020-2 Table 3. The numbers were seen in an open data set; clause numbers from memory.
 */
const gamuts = {
  'BT.709': { primaries: { red: [0.64, 0.33], green: [0.3, 0.6], blue: [0.15, 0.06] }, white: 'D65' },
  'BT.601-625': { primaries: { red: [0.64, 0.33], green: [0.29, 0.6], blue: [0.15, 0.06] }, white: 'D65' },
  'BT.601-525': { primaries: { red: [0.63, 0.34], green: [0.31, 0.595], blue: [0.155, 0.07] }, white: 'D65' },
  'P3-D65': { primaries: { red: [0.68, 0.32], green: [0.265, 0.69], blue: [0.15, 0.06] }, white: 'D65' },
  'BT.2020': { primaries: { red: [0.708, 0.292], green: [0.17, 0.797], blue: [0.131, 0.046] }, white: 'D65' },
} as const satisfies Record<string, Gamut>;

export type GamutName = keyof typeof gamuts;

/** Every name that {@link gamut} knows. */
export const gamutNames = Object.keys(gamuts) as readonly GamutName[];

/** True for a name that {@link gamut} knows; for text from outside. */
export function isGamutName(name: string): name is GamutName {
  return Object.hasOwn(gamuts, name);
}

/** Primaries and white of a named gamut. */
export function gamut(name: GamutName): Gamut {
  return gamuts[name];
}
