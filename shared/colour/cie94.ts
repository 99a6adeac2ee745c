import type { Lab } from './lab.ts';

/** Parametric factors of CIE94. */
export type Cie94Parameters = { readonly kL: number; readonly K1: number; readonly K2: number };

/** The two published sets. Source: CIE 116-1995, from memory. */
export const cie94Parameters = {
  graphicArts: { kL: 1, K1: 0.045, K2: 0.015 },
  textiles: { kL: 2, K1: 0.048, K2: 0.014 },
} as const satisfies Record<string, Cie94Parameters>;

/**
 * CIE94 colour difference of `sample` from `reference`. Not symmetric: the weights follow the chroma of the
 * reference. Source: CIE 116-1995, from memory.
 * Precondition: finite coordinates (a NaN comes out as NaN).
 */
export function cie94(
  reference: Lab,
  sample: Lab,
  parameters: Cie94Parameters = cie94Parameters.graphicArts,
): number {
  const referenceChroma = chroma(reference);
  const deltaL = reference[0] - sample[0];
  const deltaC = referenceChroma - chroma(sample);
  const deltaA = reference[1] - sample[1];
  const deltaB = reference[2] - sample[2];
  // Rounding can bring this a hair below 0 for two colours of equal hue.
  const deltaHSquared = Math.max(0, deltaA * deltaA + deltaB * deltaB - deltaC * deltaC);
  const SC = 1 + parameters.K1 * referenceChroma;
  const SH = 1 + parameters.K2 * referenceChroma;
  return Math.sqrt((deltaL / parameters.kL) ** 2 + (deltaC / SC) ** 2 + deltaHSquared / (SH * SH));
}

/** C*ab by a plain root, several times as fast as Math.hypot: this runs in draws. */
function chroma([, a, b]: Lab): number {
  return Math.sqrt(a * a + b * b);
}
