/*
 * Sums over columns, several terms a pass: a pass over 2,000 worlds costs as much in loads and stores as in
 * arithmetic.
 */

/** Adds Σ factor·error to a column; returns it. */
export function addTerms(
  column: Float64Array,
  errors: readonly Float64Array[],
  factors: readonly number[],
): Float64Array {
  let k = 0;
  for (; k + 3 < errors.length; k += 4)
    addFour(column, errors[k]!, errors[k + 1]!, errors[k + 2]!, errors[k + 3]!, factors, k);
  if (k + 1 < errors.length) {
    addTwo(column, errors[k]!, errors[k + 1]!, factors[k]!, factors[k + 1]!);
    k += 2;
  }
  if (k < errors.length) addOne(column, errors[k]!, factors[k]!);
  return column;
}

function addFour(
  column: Float64Array,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
  e: Float64Array,
  factors: readonly number[],
  k: number,
): void {
  const fa = factors[k]!;
  const fb = factors[k + 1]!;
  const fc = factors[k + 2]!;
  const fe = factors[k + 3]!;
  for (let d = 0; d < column.length; d += 1)
    column[d]! += fa * a[d]! + fb * b[d]! + (fc * c[d]! + fe * e[d]!);
}

function addTwo(column: Float64Array, a: Float64Array, b: Float64Array, fa: number, fb: number): void {
  for (let d = 0; d < column.length; d += 1) column[d]! += fa * a[d]! + fb * b[d]!;
}

function addOne(column: Float64Array, a: Float64Array, fa: number): void {
  for (let d = 0; d < column.length; d += 1) column[d]! += fa * a[d]!;
}
