import type { Uniform } from './random.ts';

/*
 * Rational approximations of the inverse normal distribution, relative error about 1e-16: Wichura 1988, algorithm AS 241
 * (PPND16), Applied Statistics 37, 477–484. Ascending powers; its third pair, for p < 1.4e-11, is not needed. Written
 * with the digits that a double holds: the numbers are those published.
 */
const middle = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
];
const underMiddle = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852854,
];
const tail = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
];
const underTail = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
];

function polynomial(coefficients: readonly number[], r: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * r + coefficient, 0);
}

/** The value that a standard normal number stays under with probability p, for p from 1e-10 to 1 − 1e-10. */
export function normalQuantile(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(middle, r)) / polynomial(underMiddle, r);
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p)) - 1.6;
  const z = polynomial(tail, r) / polynomial(underTail, r);
  return q < 0 ? -z : z;
}

let quantiles = new Float64Array(0);

/**
 * Standard normal numbers, one out of the middle of each stratum of equal probability, in random order. The share of
 * them beyond any limit is right to one draw, where that of 2,000 free draws scatters by as much as 0.01.
 */
export function fillStrata(uniform: Uniform, out: Float64Array): Float64Array {
  if (quantiles.length !== out.length)
    quantiles = Float64Array.from(out, (_, i) => normalQuantile((i + 0.5) / out.length));
  out.set(quantiles);
  const places = new Float64Array(out.length);
  uniform.fill(places);
  for (let i = out.length - 1; i > 0; i -= 1) {
    const other = Math.floor(places[i]! * (i + 1));
    const value = out[i]!;
    out[i] = out[other]!;
    out[other] = value;
  }
  return out;
}
