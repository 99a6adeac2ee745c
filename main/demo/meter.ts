import { type Xyz, xyzToXy } from '../../shared/colour/xyz.ts';
import type { Noise } from './noise.ts';

/** What the invented instrument shows for one patch, as text with the digits that it shows. */
export interface Shown {
  x: string;
  y: string;
  Y: string;
}

/** Relative repeatability of a luminance reading and absolute repeatability of x and y. */
const repeatability = { luminance: 0.0004, chromaticity: 0.00003 };

/** Below this the instrument gives no chromaticity, cd/m². */
const chromaticityFrom = 0.02;

/** Four digits of luminance, three under 1 cd/m², never more than four decimals. */
function luminanceText(Y: number): string {
  const digits = Y >= 1 ? 4 : 3;
  const decimals = Math.min(4, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.max(Y, 1e-4)))));
  return Y.toFixed(decimals);
}

/** Reads a patch given in absolute XYZ (cd/m²). */
export function readPatch(patch: Xyz, noise: Noise): Shown {
  const Y = Math.max(0, patch[1] * (1 + repeatability.luminance * noise()));
  const [dx, dy] = [repeatability.chromaticity * noise(), repeatability.chromaticity * noise()];
  if (Y < chromaticityFrom) return { x: '', y: '', Y: luminanceText(Y) };
  const [x, y] = xyzToXy(patch);
  return { x: (x + dx).toFixed(4), y: (y + dy).toFixed(4), Y: luminanceText(Y) };
}
