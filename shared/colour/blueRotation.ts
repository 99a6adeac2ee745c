import { tabulate, valueAt } from './piecewise.ts';

const cells = 512;
const degree = Math.PI / 180;

const table = tabulate((q) => {
  const delta = (2 * Math.asin(Math.sqrt(q))) / degree;
  return Math.sin(60 * degree * Math.exp(-((delta / 25) ** 2)));
}, cells);

/**
 * The hue-dependent factor sin(2Δθ) of CIEDE2000's rotation term, 2Δθ = 60°·exp(−(δ/25°)²), δ = h̄′ − 275°,
 * for q = sin²(δ/2) = (1 − cos δ)/2. It is the one place of the formula that needs an angle; over q it needs none.
 * Exact to 1e-13. Precondition: 0 ≤ q < 1.
 */
export function blueRotation(q: number): number {
  return valueAt(table, q * cells);
}
