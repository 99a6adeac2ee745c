import { d65, type Triple, xyz } from './expected.ts';

/** Additive mixture for the tests, sharing no code with the program. */

/** BT.709 to X, Y, Z by the RP 177 derivation, solved here by Cramer's rule. */
function matrix(R: [number, number], G: [number, number], B: [number, number]): Triple[] {
  const columns = [R, G, B].map(([x, y]) => xyz(x, y, 1));
  const W = xyz(...d65, 1);
  const det = (m: Triple[]) =>
    m[0]![0] * (m[1]![1] * m[2]![2] - m[1]![2] * m[2]![1]) -
    m[1]![0] * (m[0]![1] * m[2]![2] - m[0]![2] * m[2]![1]) +
    m[2]![0] * (m[0]![1] * m[1]![2] - m[0]![2] * m[1]![1]);
  const whole = det(columns);
  return columns.map((column, i) => {
    const replaced = columns.map((each, k) => (k === i ? W : each));
    const scale = det(replaced) / whole;
    return column.map((value) => value * scale) as Triple;
  });
}

export const bt709 = matrix([0.64, 0.33], [0.3, 0.6], [0.15, 0.06]);
export const p3 = matrix([0.68, 0.32], [0.265, 0.69], [0.15, 0.06]);

/** Light of linear R, G, B, white = (1, 1, 1). */
export function mix(columns: Triple[], rgb: Triple): Triple {
  return [0, 1, 2].map((k) => rgb.reduce((sum, value, i) => sum + value * columns[i]![k]!, 0)) as Triple;
}

export function xyOf([X, Y, Z]: Triple): [number, number] {
  return [X / (X + Y + Z), Y / (X + Y + Z)];
}

/** Linear R, G, B of a chromaticity with the largest at 1, found by solving the mixture numerically. */
export function fullRgb(columns: Triple[], x: number, y: number): Triple {
  const target = xyz(x, y, 1);
  const det = (a: Triple, b: Triple, c: Triple) =>
    a[0] * (b[1] * c[2] - b[2] * c[1]) -
    b[0] * (a[1] * c[2] - a[2] * c[1]) +
    c[0] * (a[1] * b[2] - a[2] * b[1]);
  const [r, g, b] = columns as [Triple, Triple, Triple];
  const whole = det(r, g, b);
  const rgb: Triple = [det(target, g, b) / whole, det(r, target, b) / whole, det(r, g, target) / whole];
  const most = Math.max(...rgb);
  return rgb.map((value) => value / most) as Triple;
}
