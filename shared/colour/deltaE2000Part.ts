import type { Lab } from './lab.ts';

const degree = Math.PI / 180;
const chromaPivot = 25 ** 7;

/**
 * One of ΔL′/SL, ΔC′/SC and ΔH′/SH of CIEDE2000, `other` minus `one`: what `deltaE2000Parts` gives, with no more worked
 * out than that part needs. Source: ISO/CIE 11664-6, from memory. Precondition: finite coordinates.
 */
export function weightedPart(part: 'L' | 'C' | 'H', one: Lab, other: Lab): number {
  if (part === 'L') {
    const fromMiddle = ((one[0] + other[0]) / 2 - 50) ** 2;
    return (other[0] - one[0]) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  }
  const [, a1, b1] = one;
  const [, a2, b2] = other;
  const meanLab = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
  const cubed = meanLab * meanLab * meanLab;
  const seventh = cubed * cubed * meanLab;
  const stretch = 1.5 - 0.5 * Math.sqrt(seventh / (seventh + chromaPivot));
  const p1 = a1 * stretch;
  const p2 = a2 * stretch;
  const C1 = Math.sqrt(p1 * p1 + b1 * b1);
  const C2 = Math.sqrt(p2 * p2 + b2 * b2);
  const meanC = (C1 + C2) / 2;
  if (part === 'C') return (C2 - C1) / (1 + 0.045 * meanC);
  if (C1 * C2 === 0) return 0;
  const h1 = Math.atan2(b1, p1);
  const between = differenceOf(h1, Math.atan2(b2, p2));
  const mean = h1 + between / 2;
  const T =
    1 -
    0.17 * Math.cos(mean - 30 * degree) +
    0.24 * Math.cos(2 * mean) +
    0.32 * Math.cos(3 * mean + 6 * degree) -
    0.2 * Math.cos(4 * mean - 63 * degree);
  return (2 * Math.sqrt(C1 * C2) * Math.sin(between / 2)) / (1 + 0.015 * meanC * T);
}

/** The shorter way between two hues of −π to π; opposite ones go from the smaller angle of 0 to 2π to the larger. */
function differenceOf(from: number, to: number): number {
  const difference = to - from;
  if (Math.abs(difference) === Math.PI) {
    const positive = (angle: number) => (angle < 0 ? angle + 2 * Math.PI : angle);
    return positive(to) - positive(from);
  }
  if (difference > Math.PI) return difference - 2 * Math.PI;
  return difference < -Math.PI ? difference + 2 * Math.PI : difference;
}
