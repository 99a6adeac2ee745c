import { requireFinite } from '../domain.ts';

const gamma = 2.4;

/** Gain a (cd/m²) and black lift b of Rec. ITU-R BT.1886 Annex 1. */
export type Bt1886 = { readonly a: number; readonly b: number };

/**
 * Gain and lift of a set with white Lw and black Lb in cd/m².
 * Source: Rec. ITU-R BT.1886 Annex 1; numbers checked, clause from memory.
 * @throws RangeError unless 0 ≤ Lb < Lw, both finite
 */
export function bt1886Parameters(Lw: number, Lb: number): Bt1886 {
  if (!(Lb >= 0 && Lb < requireFinite(Lw, 'Lw')))
    throw new RangeError(`black ${Lb} must lie from 0 to below white ${Lw}`);
  const white = Lw ** (1 / gamma);
  const black = Lb ** (1 / gamma);
  return { a: (white - black) ** gamma, b: black / (white - black) };
}

/** BT.1886 EOTF: signal (0 to 1) to luminance in cd/m², a·max(V + b, 0)^2.4. Monotone. */
export function bt1886Eotf(signal: number, Lw: number, Lb: number): number {
  const { a, b } = bt1886Parameters(Lw, Lb);
  return a * Math.max(requireFinite(signal, 'signal') + b, 0) ** gamma;
}

/** Inverse of {@link bt1886Eotf}; luminance below 0 is taken as 0. */
export function bt1886InverseEotf(luminance: number, Lw: number, Lb: number): number {
  const { a, b } = bt1886Parameters(Lw, Lb);
  return (Math.max(requireFinite(luminance, 'luminance'), 0) / a) ** (1 / gamma) - b;
}
