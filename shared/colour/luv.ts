import { requireFinite, requirePositive } from './domain.ts';
import { type Uv, uvToXy, type Xyz, xyToUv, xyYToXyz, xyzToXy } from './xyz.ts';

/** CIE 1976 L*, u*, v*. Chroma and hue angle: `chroma` and `hueAngle` of `lab.ts`. */
export type Luv = readonly [L: number, u: number, v: number];

const kappa = (29 / 3) ** 3;
const epsilon = (6 / 29) ** 3;

function uvOf(xyz: Xyz): Uv {
  const [x, y] = xyzToXy(xyz);
  return xyToUv(x, y);
}

/**
 * L*u*v* of `xyz` under `white`, both on the same scale. Exact black is (0, 0, 0).
 * Source: ISO/CIE 11664-5, from memory.
 * @throws RangeError for numbers that are not finite, Y below 0 or a white that is not above 0
 */
export function xyzToLuv(xyz: Xyz, white: Xyz): Luv {
  const Y = requireFinite(xyz[1], 'Y') / requirePositive(white[1], 'white Y');
  if (Y < 0) throw new RangeError('Y must not be below 0');
  if (Y === 0) return [0, 0, 0];
  const L = Y > epsilon ? 116 * Math.cbrt(Y) - 16 : kappa * Y;
  const [u, v] = uvOf(xyz);
  const [uWhite, vWhite] = uvOf(white);
  return [L, 13 * L * (u - uWhite), 13 * L * (v - vWhite)];
}

/** Tristimulus values of an L*u*v* colour, on the scale of `white`: the inverse of {@link xyzToLuv}. */
export function luvToXyz([L, u, v]: Luv, white: Xyz): Xyz {
  requireFinite(L, 'L*');
  if (L < 0) throw new RangeError('L* must not be below 0');
  if (L === 0) return [0, 0, 0];
  const [uWhite, vWhite] = uvOf(white);
  const [x, y] = uvToXy(u / (13 * L) + uWhite, v / (13 * L) + vWhite);
  const Y = white[1] * (L > kappa * epsilon ? ((L + 16) / 116) ** 3 : L / kappa);
  return xyYToXyz(x, y, Y);
}
