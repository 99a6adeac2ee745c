import type { Uniform } from './random.ts';

/*
 * Rational approximations of the inverse normal distribution, relative error about 1e-16: Wichura 1988, algorithm AS 241
 * (PPND16), Applied Statistics 37, 477–484. Ascending powers; its third pair, for p < 1.4e-11, is not needed.
 */
const middle = [
  3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
  45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
];
const underMiddle = [
  1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
  39307.89580009271061, 28729.085735721942674, 5226.495278852854561,
];
const tail = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 0.00077454501427834140764,
];
const underTail = [
  1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
  0.0151986665636164571966, 0.0005475938084995344946, 1.05075007164441684324e-9,
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
