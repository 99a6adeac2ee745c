import { adaptationMatrix } from '../../shared/colour/adaptation.ts';
import { gamut } from '../../shared/colour/gamuts.ts';
import { type Lab, labToXyz } from '../../shared/colour/lab.ts';
import { apply3, invert3, rgbToXyzMatrix } from '../../shared/colour/rgb.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { xyYToXyz } from '../../shared/colour/xyz.ts';

/** A patch of Lanternwick's own chart: an object colour in CIELAB under D50, 2°. */
export interface ChartPatch {
  patch: string;
  Lab: Lab;
  /** Linear BT.709 amounts under D65, 0 to 1 of white */
  linear: [number, number, number];
}

const d50 = xyYToXyz(...whiteXy('D50'), 1);
const d65 = xyYToXyz(...whiteXy('D65'), 1);
const fromD50 = adaptationMatrix(d50, d65, 'bradford');
const toRgb = invert3(rgbToXyzMatrix(gamut('BT.709').primaries, whiteXy('D65')));

function linearOf(Lab: Lab): [number, number, number] {
  return apply3(toRgb, apply3(fromD50, labToXyz(Lab, d50)));
}

function isInside(Lab: Lab): boolean {
  return linearOf(Lab).every((amount) => amount >= 0 && amount <= 1);
}

function atHue(L: number, C: number, degrees: number): Lab {
  const radians = (degrees * Math.PI) / 180;
  return [L, C * Math.cos(radians), C * Math.sin(radians)];
}

/** Greatest whole chroma at a lightness and hue that BT.709 can show. */
function greatestChroma(L: number, degrees: number): number {
  let C = 0;
  while (isInside(atHue(L, C + 1, degrees))) C += 1;
  return C;
}

const rounded = (value: number) => Math.round(value * 100) / 100 || 0;

/**
 * The 24 colours: 18 hues 20° apart, their lightness going round 45, 60 and 75, at four fifths of the chroma that
 * BT.709 reaches there, then six quiet ones of chroma 15, 60° apart. Nothing is taken from a published chart.
 */
export function lanternwickChart(): ChartPatch[] {
  const vivid = Array.from({ length: 18 }, (_, index) => {
    const [L, degrees] = [[45, 60, 75][index % 3]!, index * 20];
    return atHue(L, 0.8 * greatestChroma(L, degrees), degrees);
  });
  const quiet = Array.from({ length: 6 }, (_, index) => atHue(40 + 8 * index, 15, 40 + index * 60));
  return [...vivid, ...quiet].map(([L, a, b], index) => {
    const Lab: Lab = [rounded(L), rounded(a), rounded(b)];
    return { patch: String(index + 1).padStart(2, '0'), Lab, linear: linearOf(Lab) };
  });
}
