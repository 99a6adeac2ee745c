import { requireFinite, requirePositive } from './domain.ts';

/** CIE 1931 2° tristimulus values X, Y, Z; relative or in cd/m², as the function that takes them says. */
export type Xyz = readonly [X: number, Y: number, Z: number];

/** CIE 1931 chromaticity x, y. */
export type Xy = readonly [x: number, y: number];

/** CIE 1976 UCS chromaticity u′, v′. */
export type Uv = readonly [uPrime: number, vPrime: number];

/**
 * Says why a pair cannot be a chromaticity that this folder computes with, or `undefined` when it can.
 * Domain: x ≥ 0, y > 0, x + y ≤ 1 (a hair of 1e-9 is allowed for rounding). Use it where readings come in.
 */
export function chromaticityFault(x: number, y: number): string | undefined {
  if (!Number.isFinite(x) || !Number.isFinite(y)) return 'x and y must be numbers';
  if (x < 0) return 'x is below 0';
  if (y <= 0) return 'y is not above 0';
  if (x + y > 1 + 1e-9) return 'x + y is above 1';
  return undefined;
}

/**
 * Tristimulus values of chromaticity x, y at luminance Y (any unit). Source: CIE 15, from memory.
 * @throws RangeError for y = 0 or numbers that are not finite
 */
export function xyYToXyz(x: number, y: number, Y: number): Xyz {
  requireFinite(x, 'x');
  requireFinite(Y, 'Y');
  if (y === 0) throw new RangeError('y must not be 0');
  const scale = Y / requireFinite(y, 'y');
  return [x * scale, Y, (1 - x - y) * scale];
}

/**
 * Chromaticity of X, Y, Z. Source: CIE 15, from memory.
 * @throws RangeError unless X + Y + Z is above 0: black has no chromaticity
 */
export function xyzToXy([X, Y, Z]: Xyz): Xy {
  const sum = requirePositive(X + Y + Z, 'X + Y + Z');
  return [X / sum, Y / sum];
}

/**
 * CIE 1976 u′, v′ of x, y. Source: CIE 15; the formulas were seen.
 * @throws RangeError where −2x + 12y + 3 is not above 0 (no chromaticity with x ≤ 1 and y ≥ 0 is there)
 */
export function xyToUv(x: number, y: number): Uv {
  const denominator = requirePositive(-2 * x + 12 * y + 3, '−2x + 12y + 3');
  return [(4 * x) / denominator, (9 * y) / denominator];
}

/**
 * x, y of CIE 1976 u′, v′: the inverse of {@link xyToUv}.
 * @throws RangeError where 6u′ − 16v′ + 12 is not above 0
 */
export function uvToXy(uPrime: number, vPrime: number): Xy {
  const denominator = requirePositive(6 * uPrime - 16 * vPrime + 12, '6u′ − 16v′ + 12');
  return [(9 * uPrime) / denominator, (4 * vPrime) / denominator];
}
