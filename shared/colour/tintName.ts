import { requireFinite } from './domain.ts';
import { gamut } from './gamuts.ts';
import { degreesOfDirection, hueDifference } from './lab.ts';
import { apply3, rgbToXyzMatrix } from './rgb.ts';
import { whiteXy } from './whites.ts';
import { xyToUv, xyzToXy } from './xyz.ts';

/** Names of tints, in order of hue angle. Warm and cool are words for colour temperature and are not among them. */
export const tintHues = ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'] as const;
export type TintHue = (typeof tintHues)[number];

/** How large a tint is; house values, see {@link tintSize}. */
export type TintSize = 'none' | 'slight' | 'mild' | 'obvious';

export type Tint = {
  readonly size: TintSize;
  /** The name of the sector first, then the neighbour's when its border is within 8°. Empty without a shift. */
  readonly hues: readonly TintHue[];
  /** Hue angle of the shift in u′, v′, degrees from 0 to below 360; undefined without a shift. */
  readonly angle: number | undefined;
  /** Δu′v′. */
  readonly distance: number;
};

const signals = {
  red: [1, 0, 0],
  yellow: [1, 1, 0],
  green: [0, 1, 0],
  cyan: [0, 1, 1],
  blue: [0, 0, 1],
  magenta: [1, 0, 1],
} as const;

const toXyz = rgbToXyzMatrix(gamut('BT.709').primaries, whiteXy('D65'));
const [uWhite, vWhite] = xyToUv(...whiteXy('D65'));

/** Hue angle in u′, v′, seen from D65, of each BT.709 primary and complement at full signal. */
const directions = tintHues.map((hue) => {
  const [uPrime, vPrime] = xyToUv(...xyzToXy(apply3(toXyz, signals[hue])));
  return degreesOfDirection(uPrime - uWhite, vPrime - vWhite);
});

/** Border i lies half way from hue i to the next one, in degrees. */
export const tintBorders: readonly number[] = directions.map((direction, i) => {
  const next = directions[(i + 1) % directions.length]!;
  return (direction + hueDifference(direction, next) / 2 + 360) % 360;
});

/** Within this many degrees of a border both names hold: nobody can tell there. */
const eitherNameDegrees = 8;

/** Size of a shift Δu′v′: none under 0.002, slight under 0.004, mild under 0.008, obvious from there (house values). */
export function tintSize(distance: number): TintSize {
  if (distance < 0.002) return 'none';
  if (distance < 0.004) return 'slight';
  return distance < 0.008 ? 'mild' : 'obvious';
}

/**
 * Names the shift (Δu′, Δv′) of a grey from the target white by the direction of the BT.709 primary or complement
 * that it leans to.
 * @throws RangeError for numbers that are not finite
 */
export function tintName(deltaU: number, deltaV: number): Tint {
  const distance = Math.hypot(requireFinite(deltaU, 'Δu′'), requireFinite(deltaV, 'Δv′'));
  const size = tintSize(distance);
  if (distance === 0) return { size, hues: [], angle: undefined, distance };
  const angle = degreesOfDirection(deltaU, deltaV);
  const sector = tintHues.findIndex((_, i) => {
    const start = tintBorders[(i + 5) % 6]!;
    const width = (tintBorders[i]! - start + 360) % 360;
    return (angle - start + 360) % 360 < width;
  });
  const hues = [tintHues[sector]!];
  if (Math.abs(hueDifference(angle, tintBorders[sector]!)) <= eitherNameDegrees)
    hues.push(tintHues[(sector + 1) % 6]!);
  else if (Math.abs(hueDifference(angle, tintBorders[(sector + 5) % 6]!)) <= eitherNameDegrees)
    hues.push(tintHues[(sector + 5) % 6]!);
  return { size, hues, angle, distance };
}
