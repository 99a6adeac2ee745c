import { gamut } from './gamuts.ts';
import { apply3, invert3, type Matrix3, multiply3, rgbToXyzMatrix } from './rgb.ts';
import { pqEotf, pqSignal } from './transfer/pq.ts';
import { whiteXy } from './whites.ts';
import type { Xyz } from './xyz.ts';

/** I, Ct, Cp of Rec. ITU-R BT.2100 (PQ form); I from 0 to 1. */
export type ICtCp = readonly [I: number, Ct: number, Cp: number];

const rgbToLms: Matrix3 = [
  [1688 / 4096, 2146 / 4096, 262 / 4096],
  [683 / 4096, 2951 / 4096, 462 / 4096],
  [99 / 4096, 309 / 4096, 3688 / 4096],
];
const lmsToIctcp: Matrix3 = [
  [2048 / 4096, 2048 / 4096, 0],
  [6610 / 4096, -13613 / 4096, 7003 / 4096],
  [17933 / 4096, -17390 / 4096, -543 / 4096],
];
const bt2020ToXyz = rgbToXyzMatrix(gamut('BT.2020').primaries, whiteXy('D65'));
const xyzToLms = multiply3(rgbToLms, invert3(bt2020ToXyz));
const lmsToXyz = invert3(xyzToLms);
const ictcpToLms = invert3(lmsToIctcp);
// Luminance 10 000 cd/m² is 1 inside the loop.
const [[xl, yl, zl], [xm, ym, zm], [xs, ys, zs]] = xyzToLms.map((row) =>
  row.map((value) => value / 10000),
) as unknown as Matrix3;

/**
 * I, Ct, Cp of absolute X, Y, Z in cd/m² (white D65, BT.2020 container). A cone response below 0, which noise in
 * the dark or a colour outside the container can give, counts as 0.
 * Source: Rec. ITU-R BT.2100-2 Table 7; integers seen, clause from memory.
 * Precondition: finite numbers (a NaN comes out as NaN).
 */
export function xyzToICtCp([X, Y, Z]: Xyz): ICtCp {
  return lmsSignalToICtCp([
    pqSignal(X * xl + Y * yl + Z * zl),
    pqSignal(X * xm + Y * ym + Z * zm),
    pqSignal(X * xs + Y * ys + Z * zs),
  ]);
}

function lmsSignalToICtCp(signal: readonly [number, number, number]): ICtCp {
  return apply3(lmsToIctcp, signal);
}

/** Absolute X, Y, Z in cd/m² of I, Ct, Cp: the inverse of {@link xyzToICtCp}. */
export function ictcpToXyz(ictcp: ICtCp): Xyz {
  const [L, M, S] = apply3(ictcpToLms, ictcp);
  return apply3(lmsToXyz, [pqEotf(L), pqEotf(M), pqEotf(S)]);
}

/**
 * ΔE_ITP = 720·√(ΔI² + ΔT² + ΔP²) with T = Ct/2 and P = Cp; 1 is about a just noticeable difference. Symmetric.
 * Source: Rec. ITU-R BT.2124-0 Annex 1; clause from memory.
 */
export function deltaEItp(one: ICtCp, other: ICtCp): number {
  return itpDistance(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

function itpDistance(deltaI: number, deltaCt: number, deltaP: number): number {
  return 720 * Math.sqrt(deltaI * deltaI + 0.25 * deltaCt * deltaCt + deltaP * deltaP);
}

/** X, Y and Z of many colours in cd/m², absolute. */
export type XyzColumns = { readonly X: Float64Array; readonly Y: Float64Array; readonly Z: Float64Array };

/**
 * ΔE_ITP of many pairs into `out`, whose length says how many.
 * @throws RangeError when an input is shorter than `out`
 */
export function deltaEItpArray(one: XyzColumns, other: XyzColumns, out: Float64Array): Float64Array {
  for (const input of [one.X, one.Y, one.Z, other.X, other.Y, other.Z])
    if (input.length < out.length) throw new RangeError('an input is shorter than the output');
  for (let i = 0; i < out.length; i += 1) {
    const X1 = one.X[i]!;
    const Y1 = one.Y[i]!;
    const Z1 = one.Z[i]!;
    const X2 = other.X[i]!;
    const Y2 = other.Y[i]!;
    const Z2 = other.Z[i]!;
    const L = pqSignal(X1 * xl + Y1 * yl + Z1 * zl) - pqSignal(X2 * xl + Y2 * yl + Z2 * zl);
    const M = pqSignal(X1 * xm + Y1 * ym + Z1 * zm) - pqSignal(X2 * xm + Y2 * ym + Z2 * zm);
    const S = pqSignal(X1 * xs + Y1 * ys + Z1 * zs) - pqSignal(X2 * xs + Y2 * ys + Z2 * zs);
    const [I, Ct, Cp] = lmsToIctcp;
    out[i] = itpDistance(
      I[0] * L + I[1] * M,
      Ct[0] * L + Ct[1] * M + Ct[2] * S,
      Cp[0] * L + Cp[1] * M + Cp[2] * S,
    );
  }
  return out;
}
