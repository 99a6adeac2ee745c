import { gamut } from './gamuts.ts';
import { apply3, invert3, type Matrix3, multiply3, rgbToXyzMatrix } from './rgb.ts';
import { pqEotf, pqPeak, pqSignal } from './transfer/pq.ts';
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
// Luminance 10 000 cd/m² is 1 for the PQ curve.
const [toL, toM, toS] = xyzToLms.map((row) => row.map((value) => value / pqPeak)) as unknown as Matrix3;

/**
 * I, Ct, Cp of absolute X, Y, Z in cd/m² (white D65, BT.2020 container). A cone response below 0, which noise in
 * the dark or a colour outside the container can give, counts as 0.
 * Source: Rec. ITU-R BT.2100-2 Table 7; integers seen, clause from memory.
 * Precondition: finite numbers (a NaN comes out as NaN).
 */
export function xyzToICtCp([X, Y, Z]: Xyz): ICtCp {
  const response = ([x, y, z]: Matrix3[number]) => pqSignal(X * x + Y * y + Z * z);
  return apply3(lmsToIctcp, [response(toL), response(toM), response(toS)]);
}

/** Absolute X, Y, Z in cd/m² of I, Ct, Cp: the inverse of {@link xyzToICtCp}. */
export function ictcpToXyz(ictcp: ICtCp): Xyz {
  const [L, M, S] = apply3(ictcpToLms, ictcp);
  return apply3(lmsToXyz, [pqEotf(L), pqEotf(M), pqEotf(S)]);
}

/**
 * ΔE_ITP = 720·√(ΔI² + ΔT² + ΔP²) with T = Ct/2 and P = Cp; 1 is about a just noticeable difference. Symmetric.
 * Source: Rec. ITU-R BT.2124-0 Annex 1; clause from memory.
 * Precondition: finite numbers (a NaN comes out as NaN).
 */
export function deltaEItp(one: ICtCp, other: ICtCp): number {
  return itpDistance(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

function itpDistance(deltaI: number, deltaCt: number, deltaP: number): number {
  return 720 * Math.sqrt(deltaI * deltaI + 0.25 * deltaCt * deltaCt + deltaP * deltaP);
}

/** {@link deltaEItp} of two colours given by X, Y, Z in cd/m², absolute: for loops that make no arrays on the way. */
export function deltaEItpOfXyz(
  X1: number,
  Y1: number,
  Z1: number,
  X2: number,
  Y2: number,
  Z2: number,
): number {
  const L = signalOf(toL, X1, Y1, Z1) - signalOf(toL, X2, Y2, Z2);
  const M = signalOf(toM, X1, Y1, Z1) - signalOf(toM, X2, Y2, Z2);
  const S = signalOf(toS, X1, Y1, Z1) - signalOf(toS, X2, Y2, Z2);
  return itpDistance(
    rowI[0] * L + rowI[1] * M,
    rowCt[0] * L + rowCt[1] * M + rowCt[2] * S,
    rowCp[0] * L + rowCp[1] * M + rowCp[2] * S,
  );
}

function signalOf(row: Matrix3[number], X: number, Y: number, Z: number): number {
  return pqSignal(X * row[0] + Y * row[1] + Z * row[2]);
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
  // Channel by channel in short blocks: loops this small keep the PQ curve inlined and the block in the cache.
  for (let start = 0; start < out.length; start += block) {
    const count = Math.min(block, out.length - start);
    signalDifferences(toL, one, other, start, count, differences.L);
    signalDifferences(toM, one, other, start, count, differences.M);
    signalDifferences(toS, one, other, start, count, differences.S);
    for (let i = 0; i < count; i += 1) {
      const L = differences.L[i]!;
      const M = differences.M[i]!;
      const S = differences.S[i]!;
      out[start + i] = itpDistance(
        rowI[0] * L + rowI[1] * M,
        rowCt[0] * L + rowCt[1] * M + rowCt[2] * S,
        rowCp[0] * L + rowCp[1] * M + rowCp[2] * S,
      );
    }
  }
  return out;
}

const block = 256;
const differences = { L: new Float64Array(block), M: new Float64Array(block), S: new Float64Array(block) };
const [rowI, rowCt, rowCp] = lmsToIctcp;

/** PQ signal of one cone response in `one` minus that in `other`, for `count` pairs from `start`. */
function signalDifferences(
  row: Matrix3[number],
  one: XyzColumns,
  other: XyzColumns,
  start: number,
  count: number,
  into: Float64Array,
): void {
  const x = row[0];
  const y = row[1];
  const z = row[2];
  for (let i = 0; i < count; i += 1) {
    const k = start + i;
    into[i] =
      pqSignal(one.X[k]! * x + one.Y[k]! * y + one.Z[k]! * z) -
      pqSignal(other.X[k]! * x + other.Y[k]! * y + other.Z[k]! * z);
  }
}
