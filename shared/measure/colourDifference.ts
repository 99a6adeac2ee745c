import { deltaE2000Loop } from '../colour/deltaE2000Kernel.ts';
import { tabulate, valueAt } from '../colour/piecewise.ts';
import type { TargetColours } from './conditions.ts';
import type { World } from './points.ts';

const cubicFrom = (6 / 29) ** 3;
const slope = 1 / (3 * (6 / 29) ** 2);

/** The cube root from 0 to 2 as a table: four times as fast as the function, equal to 1e-9. */
const cellsPerUnit = 1024;
const cubeRoots = tabulate((place) => Math.cbrt(2 * place), 2 * cellsPerUnit);

/** The L*a*b* curve of ISO/CIE 11664-4; in place, because it runs in every draw. */
export function compress(ratio: number): number {
  if (!(ratio > cubicFrom)) return ratio * slope + 4 / 29;
  return ratio < 2 ? valueAt(cubeRoots, ratio * cellsPerUnit) : Math.cbrt(ratio);
}

const scratch = () => new Float64Array(1);
const [L1s, a1s, b1s, L2s, a2s, b2s, result] = [
  scratch(),
  scratch(),
  scratch(),
  scratch(),
  scratch(),
  scratch(),
  scratch(),
];

function deltaE2000Of(L1: number, a1: number, b1: number, L2: number, a2: number, b2: number): number {
  L1s[0] = L1;
  a1s[0] = a1;
  b1s[0] = b1;
  L2s[0] = L2;
  a2s[0] = a2;
  b2s[0] = b2;
  deltaE2000Loop(L1s, a1s, b1s, L2s, a2s, b2s, result);
  return result[0]!;
}

/**
 * CIEDE2000 between two colours x, y, Y under the target white's chromaticity at luminance `Yr`.
 * Y and Yr on one scale. Source: ISO/CIE 11664-4 and -6, from memory; the kernel is checked on the published pairs.
 */
export function de2000(
  white: TargetColours,
  Yr: number,
  x1: number,
  y1: number,
  Y1: number,
  x2: number,
  y2: number,
  Y2: number,
): number {
  const fy1 = compress(Y1 / Yr);
  const fx1 = compress(((x1 / y1) * Y1) / (Yr * white.whiteX));
  const fz1 = compress((((1 - x1 - y1) / y1) * Y1) / (Yr * white.whiteZ));
  const fy2 = Y1 === Y2 ? fy1 : compress(Y2 / Yr);
  const fx2 = compress(((x2 / y2) * Y2) / (Yr * white.whiteX));
  const fz2 = compress((((1 - x2 - y2) / y2) * Y2) / (Yr * white.whiteZ));
  return deltaE2000Of(
    116 * fy1 - 16,
    500 * (fx1 - fy1),
    200 * (fy1 - fz1),
    116 * fy2 - 16,
    500 * (fx2 - fy2),
    200 * (fy2 - fz2),
  );
}

const blockSize = 256;
const block = () => ({
  L: new Float64Array(blockSize),
  a: new Float64Array(blockSize),
  b: new Float64Array(blockSize),
});
// Room for one block of two colours; nothing is kept between calls.
const [ones, others] = [block(), block()];

/** {@link de2000} of two points in many worlds, into `out`; `Yr` and both points have one number a world. */
export function de2000InWorlds(
  white: TargetColours,
  Yr: Float64Array,
  one: World,
  other: World,
  out: Float64Array,
): void {
  for (let start = 0; start < out.length; start += blockSize) {
    const part = out.subarray(start, start + blockSize);
    labInWorlds(white, Yr, one, start, part.length, ones);
    labInWorlds(white, Yr, other, start, part.length, others);
    deltaE2000Loop(ones.L, ones.a, ones.b, others.L, others.a, others.b, part);
  }
}

function labInWorlds(
  white: TargetColours,
  Yr: Float64Array,
  { x, y, Y }: World,
  start: number,
  count: number,
  into: typeof ones,
): void {
  for (let k = 0; k < count; k += 1) {
    const d = start + k;
    const relative = Y[d]! / Yr[d]!;
    const scale = relative / y[d]!;
    const fy = compress(relative);
    const fx = compress((x[d]! * scale) / white.whiteX);
    const fz = compress(((1 - x[d]! - y[d]!) * scale) / white.whiteZ);
    into.L[k] = 116 * fy - 16;
    into.a[k] = 500 * (fx - fy);
    into.b[k] = 200 * (fy - fz);
  }
}

/** CIEDE2000 of x, y, Y against a neutral of luminance `Yt`: the target of every grey. */
export function de2000OfGrey(
  white: TargetColours,
  Yr: number,
  x: number,
  y: number,
  Y: number,
  Yt: number,
): number {
  const fy = compress(Y / Yr);
  const fx = compress(((x / y) * Y) / (Yr * white.whiteX));
  const fz = compress((((1 - x - y) / y) * Y) / (Yr * white.whiteZ));
  const ft = Y === Yt ? fy : compress(Yt / Yr);
  return deltaE2000Of(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz), 116 * ft - 16, 0, 0);
}

/** L*, a*, b* of x, y, Y under the target white at luminance `Yr`. */
export function labOf(
  white: TargetColours,
  Yr: number,
  x: number,
  y: number,
  Y: number,
): [number, number, number] {
  const fy = compress(Y / Yr);
  const fx = compress(((x / y) * Y) / (Yr * white.whiteX));
  const fz = compress((((1 - x - y) / y) * Y) / (Yr * white.whiteZ));
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}
