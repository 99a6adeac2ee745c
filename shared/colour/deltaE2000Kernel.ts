import { blueRotation } from './blueRotation.ts';

/*
 * CIEDE2000 without angles. Hue angles enter the formula only as the direction half way between the two colours
 * and as ΔH′; both follow from the vectors (a′, b) by sums, products and roots.
 * The loop stands in the function because a call for each pair would cost half as much again.
 */

const chromaPivot = 25 ** 7;
const degree = Math.PI / 180;
const cos30 = Math.cos(30 * degree);
const sin30 = Math.sin(30 * degree);
const cos6 = Math.cos(6 * degree);
const sin6 = Math.sin(6 * degree);
const cos63 = Math.cos(63 * degree);
const sin63 = Math.sin(63 * degree);
const cos275 = Math.cos(275 * degree);
const sin275 = Math.sin(275 * degree);
/** Product of chromas under which squares would underflow; ΔH′ is under 1e-49 there. */
const neutral = 1e-100;
/** Beyond this the rotation term is under 1e-14; in q = sin²(δ/2). */
const noRotation = 0.9;

/** CIEDE2000 of the pairs 0 to out.length − 1. Precondition: no input shorter than `out`. */
export function deltaE2000Loop(
  L1s: Float64Array,
  a1s: Float64Array,
  b1s: Float64Array,
  L2s: Float64Array,
  a2s: Float64Array,
  b2s: Float64Array,
  out: Float64Array,
): void {
  for (let i = 0; i < out.length; i += 1) {
    const L1 = L1s[i]!;
    const a1 = a1s[i]!;
    const b1 = b1s[i]!;
    const L2 = L2s[i]!;
    const a2 = a2s[i]!;
    const b2 = b2s[i]!;

    const labChroma = 0.5 * (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2));
    const labCubed = labChroma * labChroma * labChroma;
    const labSeventh = labCubed * labCubed * labChroma;
    const stretch = 1.5 - 0.5 * Math.sqrt(labSeventh / (labSeventh + chromaPivot));
    const p1 = a1 * stretch;
    const p2 = a2 * stretch;
    const C1 = Math.sqrt(p1 * p1 + b1 * b1);
    const C2 = Math.sqrt(p2 * p2 + b2 * b2);

    const meanL = 0.5 * (L1 + L2) - 50;
    const fromMiddle = meanL * meanL;
    const lightness = (L2 - L1) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
    const meanC = 0.5 * (C1 + C2);
    const chroma = (C2 - C1) / (1 + 0.045 * meanC);
    let squared = lightness * lightness + chroma * chroma;

    const product = C1 * C2;
    // A neutral colour has no hue: ΔH′ is 0, and with it all that hangs on the mean hue.
    if (product > neutral) {
      const dot = p1 * p2 + b1 * b2;
      const cross = p1 * b2 - b1 * p2;
      let deltaH: number;
      let x: number;
      let y: number;
      if (dot >= 0) {
        deltaH = cross / Math.sqrt(0.5 * (product + dot));
        x = C2 * p1 + C1 * p2;
        y = C2 * b1 + C1 * b2;
      } else {
        // Beyond a right angle the sum of the directions loses digits; their difference, turned by 90° towards the
        // shorter way round, does not. Exactly opposite hues go from the smaller angle to the larger.
        const side = cross > 0 || (cross === 0 && (b1 > 0 || (b1 === 0 && p1 > 0))) ? 1 : -1;
        deltaH = side * Math.sqrt(2 * (product - dot));
        x = side * (C1 * b2 - C2 * b1);
        y = side * (C2 * p1 - C1 * p2);
      }
      const scale = 1 / Math.sqrt(x * x + y * y);
      const cos = x * scale;
      const sin = y * scale;

      const cos2 = 2 * cos * cos - 1;
      const sin2 = 2 * sin * cos;
      const cos3 = cos * (2 * cos2 - 1);
      const sin3 = sin * (2 * cos2 + 1);
      const cos4 = 2 * cos2 * cos2 - 1;
      const sin4 = 2 * sin2 * cos2;
      const T =
        1 -
        0.17 * (cos * cos30 + sin * sin30) +
        0.24 * cos2 +
        0.32 * (cos3 * cos6 - sin3 * sin6) -
        0.2 * (cos4 * cos63 + sin4 * sin63);
      const hue = deltaH / (1 + 0.015 * meanC * T);
      squared += hue * hue;

      // The standard counts δ = h̄′ − 275° from h̄′ between 0 and 360° without going round, so hues from 0 to 90°
      // are far from blue, not 85° and more.
      const q = 0.5 - 0.5 * (cos * cos275 + sin * sin275);
      if ((sin < 0 || cos < 0) && q < noRotation) {
        const meanCubed = meanC * meanC * meanC;
        const meanSeventh = meanCubed * meanCubed * meanC;
        const RC = 2 * Math.sqrt(meanSeventh / (meanSeventh + chromaPivot));
        // Rounding may leave q a hair below 0 at 275° itself.
        squared -= RC * blueRotation(Math.max(q, 0)) * chroma * hue;
      }
    }
    out[i] = Math.sqrt(squared);
  }
}
