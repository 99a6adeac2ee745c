/*
 * CIEDE2000 without angles. Hue angles enter the formula only as the direction half way between the two colours
 * and as ΔH′; both follow from the vectors (a′, b) by additions, products and roots. The blue rotation term alone
 * needs an angle; it comes from a series about h′ = 275°.
 */

const chromaPivot = 25 ** 7;
const degrees = Math.PI / 180;
const cos30 = Math.cos(30 * degrees);
const sin30 = Math.sin(30 * degrees);
const cos6 = Math.cos(6 * degrees);
const sin6 = Math.sin(6 * degrees);
const cos63 = Math.cos(63 * degrees);
const sin63 = Math.sin(63 * degrees);
const cos275 = Math.cos(275 * degrees);
const sin275 = Math.sin(275 * degrees);

/** CIEDE2000 of (L1, a1, b1) and (L2, a2, b2). Precondition: finite numbers. */
export function deltaE2000Of(L1: number, a1: number, b1: number, L2: number, a2: number, b2: number): number {
  const meanLabChroma = 0.5 * (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2));
  const squared = meanLabChroma * meanLabChroma;
  const seventh = squared * squared * squared * meanLabChroma;
  const stretch = 1.5 - 0.5 * Math.sqrt(seventh / (seventh + chromaPivot));
  const p1 = a1 * stretch;
  const p2 = a2 * stretch;
  const C1 = Math.sqrt(p1 * p1 + b1 * b1);
  const C2 = Math.sqrt(p2 * p2 + b2 * b2);

  const meanL = 0.5 * (L1 + L2) - 50;
  const fromMiddle = meanL * meanL;
  const lightness = (L2 - L1) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const meanC = 0.5 * (C1 + C2);
  const chroma = (C2 - C1) / (1 + 0.045 * meanC);
  const product = C1 * C2;
  // A neutral colour has no hue: ΔH′ is 0 and with it all that hangs on the mean hue.
  if (product === 0) return Math.sqrt(lightness * lightness + chroma * chroma);

  const dot = p1 * p2 + b1 * b2;
  const cross = p1 * b2 - b1 * p2;
  // Which way round is shorter. Exactly opposite hues go from the smaller angle to the larger.
  const anticlockwise = cross > 0 || (cross === 0 && (b1 > 0 || (b1 === 0 && p1 > 0)));
  let deltaH: number;
  let x: number;
  let y: number;
  if (dot >= 0) {
    deltaH = cross / Math.sqrt(0.5 * (product + dot));
    x = C2 * p1 + C1 * p2;
    y = C2 * b1 + C1 * b2;
  } else {
    // Beyond a right angle the sum of the directions loses digits; their difference, turned by 90°, does not.
    deltaH = Math.sqrt(2 * (product - dot));
    x = C1 * b2 - C2 * b1;
    y = C2 * p1 - C1 * p2;
    if (!anticlockwise) {
      deltaH = -deltaH;
      x = -x;
      y = -y;
    }
  }
  const length = Math.sqrt(x * x + y * y);
  const cos = x / length;
  const sin = y / length;

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

  const meanSquared = meanC * meanC;
  const meanSeventh = meanSquared * meanSquared * meanSquared * meanC;
  const RC = 2 * Math.sqrt(meanSeventh / (meanSeventh + chromaPivot));
  const blue = rotation(cos * cos275 + sin * sin275);
  return Math.sqrt(
    Math.max(0, lightness * lightness + chroma * chroma + hue * hue - blue * RC * chroma * hue),
  );
}

/** sin(2Δθ) of the standard, 2Δθ = 60°·exp(−(δ/25°)²), from the cosine of δ = h̄′ − 275°. */
function rotation(cosine: number): number {
  const delta = Math.acos(Math.min(1, Math.max(-1, cosine))) / degrees / 25;
  return Math.sin(60 * degrees * Math.exp(-delta * delta));
}
