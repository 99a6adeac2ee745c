/*
 * A smooth function as a table of polynomials: the domain 0 to 1 cut into equal cells, in each the polynomial of
 * degree five through six Chebyshev nodes. For inner loops where the function itself is too slow; how close the
 * table comes is tested where it is used.
 */
const terms = 6;

/** Polynomials of `f` on `cells` equal cells of 0 to 1, six coefficients each, constant first. */
export function tabulate(f: (place: number) => number, cells: number): Float64Array {
  const nodes = Array.from({ length: terms }, (_, k) => 0.5 + 0.5 * Math.cos((Math.PI * (k + 0.5)) / terms));
  const table = new Float64Array(cells * terms);
  for (let cell = 0; cell < cells; cell += 1) {
    const values = nodes.map((node) => f((cell + node) / cells));
    table.set(polynomialThrough(nodes, values), cell * terms);
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

/** Coefficients, constant first, of the polynomial through points (x, y): Newton's divided differences. */
function polynomialThrough(x: readonly number[], y: readonly number[]): number[] {
  const divided = [...y];
  for (let order = 1; order < x.length; order += 1)
    for (let k = x.length - 1; k >= order; k -= 1)
      divided[k] = (divided[k]! - divided[k - 1]!) / (x[k]! - x[k - order]!);
  let polynomial: number[] = [];
  for (let k = x.length - 1; k >= 0; k -= 1) {
    const raised = [divided[k]!, ...polynomial];
    polynomial.forEach((coefficient, power) => {
      raised[power]! -= x[k]! * coefficient;
    });
    polynomial = raised;
  }
  return polynomial;
}
