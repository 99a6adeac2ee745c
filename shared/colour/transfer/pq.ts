import { requireFinite } from '../domain.ts';
import { tabulate, valueAt } from '../piecewise.ts';

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
  return exactSignal(Math.max(requireFinite(luminance, 'luminance'), 0) / pqPeak);
}

function exactSignal(relative: number): number {
  const power = relative ** m1;
  return ((c1 + c2 * power) / (1 + c3 * power)) ** m2;
}

const blackSignal = exactSignal(0);
const cells = 512;
const table = tabulate((root) => exactSignal(root ** 8), cells);
/** Under this eighth root the curve bends too sharply for the cells; 2.3e-6 cd/m². */
const smallestRoot = 1 / 16;

/**
 * {@link pqInverseEotf} of luminance/10000 for loops over many colours: a table over the eighth root, several times as
 * fast as the two powers of the formula and equal to 1e-13. Without the guard: a NaN comes out as NaN.
 */
export function pqSignal(relative: number): number {
  if (relative <= 0) return blackSignal;
  const root = Math.sqrt(Math.sqrt(Math.sqrt(relative)));
  return root >= smallestRoot && root < 1 ? valueAt(table, root * cells) : exactSignal(relative);
}
