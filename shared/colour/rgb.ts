import { requireFinite } from './domain.ts';
import { type Xy, type Xyz, xyYToXyz } from './xyz.ts';

type Row = readonly [number, number, number];

/** A 3 × 3 matrix as rows. */
export type Matrix3 = readonly [Row, Row, Row];

/** Chromaticities of three primaries. */
export type Primaries = { readonly red: Xy; readonly green: Xy; readonly blue: Xy };

/** Matrix times column vector. */
export function apply3(matrix: Matrix3, vector: Row): [number, number, number] {
  const [a, b, c] = vector;
  const [p, q, r] = matrix;
  return [p[0] * a + p[1] * b + p[2] * c, q[0] * a + q[1] * b + q[2] * c, r[0] * a + r[1] * b + r[2] * c];
}

/** Matrix product `left` · `right`: `right` acts first. */
export function multiply3(left: Matrix3, right: Matrix3): Matrix3 {
  const [one, two, three] = transpose3(right);
  const columns: Matrix3 = [apply3(left, one), apply3(left, two), apply3(left, three)];
  return transpose3(columns);
}

function transpose3([p, q, r]: Matrix3): Matrix3 {
  return [
    [p[0], q[0], r[0]],
    [p[1], q[1], r[1]],
    [p[2], q[2], r[2]],
  ];
}

function cross([a, b, c]: Row, [d, e, f]: Row): Row {
  return [b * f - c * e, c * d - a * f, a * e - b * d];
}

/**
 * Inverse by cofactors.
 * @throws RangeError for a matrix without an inverse, for example from three primaries on one line
 */
export function invert3([p, q, r]: Matrix3): Matrix3 {
  const qr = cross(q, r);
  const determinant = p[0] * qr[0] + p[1] * qr[1] + p[2] * qr[2];
  const size = Math.hypot(...p) * Math.hypot(...q) * Math.hypot(...r);
  // Relative to the size of the rows, so that a matrix in cd/m² and one in relative units are judged alike.
  if (!(Math.abs(determinant) > 1e-14 * size)) throw new RangeError('the matrix has no inverse');
  const scale = (row: Row): Row => [row[0] / determinant, row[1] / determinant, row[2] / determinant];
  return transpose3([scale(qr), scale(cross(r, p)), scale(cross(p, q))]);
}

/**
 * Matrix from linear R, G, B (0 to 1) to X, Y, Z with Y = 1 for white (1, 1, 1).
 * Source: SMPTE RP 177 derivation, from memory; results agree with published matrices.
 * @throws RangeError for primaries on one line, y = 0 or numbers that are not finite
 */
export function rgbToXyzMatrix(primaries: Primaries, white: Xy): Matrix3 {
  const column = ([x, y]: Xy): Row => [
    requireFinite(x, 'x of a primary'),
    requireFinite(y, 'y of a primary'),
    1 - x - y,
  ];
  const chromaticities = transpose3([column(primaries.red), column(primaries.green), column(primaries.blue)]);
  const whiteXyz: Xyz = xyYToXyz(white[0], white[1], 1);
  const [red, green, blue] = apply3(invert3(chromaticities), whiteXyz);
  const scale = (row: Row): Row => [row[0] * red, row[1] * green, row[2] * blue];
  return [scale(chromaticities[0]), scale(chromaticities[1]), scale(chromaticities[2])];
}
