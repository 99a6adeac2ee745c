import { requireFinite } from '../domain.ts';

/**
 * sRGB signal (0 to 1) to linear light (0 to 1), odd about 0. Monotone.
 * Source: IEC 61966-2-1:1999 with threshold 0.04045; numbers checked.
 */
export function srgbEotf(signal: number): number {
  const size = Math.abs(requireFinite(signal, 'signal'));
  return Math.sign(signal) * (size <= 0.04045 ? size / 12.92 : ((size + 0.055) / 1.055) ** 2.4);
}

/** Linear light (0 to 1) to sRGB signal: the inverse of {@link srgbEotf}, threshold 0.0031308. */
export function srgbInverseEotf(linear: number): number {
  const size = Math.abs(requireFinite(linear, 'linear light'));
  return Math.sign(linear) * (size <= 0.0031308 ? size * 12.92 : 1.055 * size ** (1 / 2.4) - 0.055);
}
