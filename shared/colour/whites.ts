import type { Xy } from './xyz.ts';

/**
 * Named whites as CIE 1931 2° x, y.
 * Sources: CIE 15:2004 Table T.3 (A, C, D50, D55, D75), Rec. ITU-R BT.709-6 item 1.3 (D65, four digits as
 * television rounds it), definition (E), SMPTE RP 431-2 (DCI); D93 is the daylight formula at 9305 K, the white
 * in common use for "9300 K" studio monitors. All seen, except D93, which is computed.
 */
const whites = {
  A: [0.44758, 0.40745],
  C: [0.31006, 0.31616],
  D50: [0.3457, 0.3585],
  D55: [0.33243, 0.34744],
  D65: [0.3127, 0.329],
  D75: [0.29903, 0.31488],
  D93: [0.2831, 0.2971],
  E: [1 / 3, 1 / 3],
  DCI: [0.314, 0.351],
} as const satisfies Record<string, Xy>;

export type WhiteName = keyof typeof whites;

/** Every name that {@link whiteXy} knows. */
export const whiteNames = Object.keys(whites) as readonly WhiteName[];

/** True for a name that {@link whiteXy} knows; for text from outside. */
export function isWhiteName(name: string): name is WhiteName {
  return Object.hasOwn(whites, name);
}

/** Chromaticity of a named white. */
export function whiteXy(name: WhiteName): Xy {
  return whites[name];
}
