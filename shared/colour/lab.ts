import { requireFinite, requirePositive } from './domain.ts';
import type { Xyz } from './xyz.ts';

/** CIE 1976 L*, a*, b*. */
export type Lab = readonly [L: number, a: number, b: number];

// ISO/CIE 11664-4: the curve is a cube root above (6/29)³ and its tangent below. The exact fractions, not the
// rounded 0.008856 and 903.3, so that both pieces meet.
const delta = 6 / 29;

function compress(ratio: number): number {
  return ratio > delta ** 3 ? Math.cbrt(ratio) : ratio / (3 * delta ** 2) + 4 / 29;
}

function expand(value: number): number {
  return value > delta ? value ** 3 : 3 * delta ** 2 * (value - 4 / 29);
}

/**
 * L*a*b* of `xyz` under `white`, both on the same scale (cd/m² or relative). White has L* = 100.
 * Slightly negative tristimulus values (noise in the dark) are taken on the linear piece.
 * Source: ISO/CIE 11664-4, from memory.
 * @throws RangeError for numbers that are not finite or a white that is not above 0
 */
export function xyzToLab(xyz: Xyz, white: Xyz): Lab {
  const fx = compress(requireFinite(xyz[0], 'X') / requirePositive(white[0], 'white X'));
  const fy = compress(requireFinite(xyz[1], 'Y') / requirePositive(white[1], 'white Y'));
  const fz = compress(requireFinite(xyz[2], 'Z') / requirePositive(white[2], 'white Z'));
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/** Tristimulus values of an L*a*b* colour, on the scale of `white`: the inverse of {@link xyzToLab}. */
export function labToXyz([L, a, b]: Lab, white: Xyz): Xyz {
  const fy = (requireFinite(L, 'L*') + 16) / 116;
  return [
    requirePositive(white[0], 'white X') * expand(fy + requireFinite(a, 'a*') / 500),
    requirePositive(white[1], 'white Y') * expand(fy),
    requirePositive(white[2], 'white Z') * expand(fy - requireFinite(b, 'b*') / 200),
  ];
}

/**
 * C*ab (or C*uv): distance from the neutral axis in the plane of the two opponent coordinates.
 * Precondition here and below: finite numbers.
 */
export function chroma([, a, b]: readonly [number, number, number]): number {
  return Math.hypot(a, b);
}

/** Hue angle h_ab (or h_uv) in degrees, 0 ≤ h < 360. A neutral colour has none; 0 is returned by convention. */
export function hueAngle([, a, b]: readonly [number, number, number]): number {
  return degreesOfDirection(a, b);
}

/** Direction of (horizontal, vertical) in degrees, 0 ≤ angle < 360, anticlockwise from the horizontal axis. */
export function degreesOfDirection(horizontal: number, vertical: number): number {
  const degrees = (Math.atan2(vertical, horizontal) * 180) / Math.PI;
  // A tiny negative angle plus 360 rounds to 360 itself, hence the second step.
  return (degrees < 0 ? degrees + 360 : degrees) % 360;
}

/** The shorter way from angle `from` to angle `to`, in degrees: −180 < difference ≤ 180. */
export function hueDifference(from: number, to: number): number {
  const turn = (((to - from) % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}
