/*
 * A smooth function as a table of polynomials: the domain 0 to 1 cut into equal cells, in each the polynomial of
 * degree five through six Chebyshev nodes. For inner loops where the function itself is too slow; how close the
 * table comes is tested where it is used.
 */
const terms = 6;

/** Polynomials of `f` on `cells` equal cells of 0 to 1, six coefficients each, constant first. */
export function tabulate(f: (place: number) => number, cells: number): Float64Array {
  const nodes = Float64Array.from(
    { length: terms },
    (_, k) => 0.5 + 0.5 * Math.cos((Math.PI * (k + 0.5)) / terms),
  );
  const values = new Float64Array(terms);
  const table = new Float64Array(cells * terms);
  for (let cell = 0; cell < cells; cell += 1) {
    for (let k = 0; k < terms; k += 1) values[k] = f((cell + nodes[k]!) / cells);
    fitThrough(nodes, values, table.subarray(cell * terms, (cell + 1) * terms));
  }
  return table;
}

/** Value of a table at `place` counted in cells. Precondition: 0 ≤ place < cells; elsewhere NaN. */
export function valueAt(table: Float64Array, place: number): number {
  const cell = place | 0;
  const s = place - cell;
  const k = cell * terms;
  return (
    table[k]! +
    s * (table[k + 1]! + s * (table[k + 2]! + s * (table[k + 3]! + s * (table[k + 4]! + s * table[k + 5]!))))
  );
}

/**
 * Coefficients, constant first, of the polynomial through points (x, y): Newton's divided differences, multiplied
 * out. `y` is used up and `polynomial` filled: tables are made while a window opens, and lists for each cell cost
 * more there than the arithmetic.
 */
function fitThrough(x: Float64Array, y: Float64Array, polynomial: Float64Array): void {
  for (let order = 1; order < terms; order += 1)
    for (let k = terms - 1; k >= order; k -= 1) y[k] = (y[k]! - y[k - 1]!) / (x[k]! - x[k - order]!);
  polynomial.fill(0);
  for (let k = terms - 1; k >= 0; k -= 1) {
    for (let power = terms - 1; power >= 1; power -= 1)
      polynomial[power] = polynomial[power - 1]! - x[k]! * polynomial[power]!;
    polynomial[0] = y[k]! - x[k]! * polynomial[0]!;
  }
}
