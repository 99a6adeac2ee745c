/*
 * The hue-dependent factor sin(2Δθ) of CIEDE2000's rotation term, 2Δθ = 60°·exp(−(δ/25°)²), δ = h̄′ − 275°.
 * It is the one place of the formula that needs an angle, so it is tabulated over q = sin²(δ/2) = (1 − cos δ)/2,
 * which costs no angle: in each cell the polynomial through six Chebyshev nodes, exact to 1e-13.
 */
const cells = 512;
const terms = 6;
const degree = Math.PI / 180;

function exact(q: number): number {
  const delta = (2 * Math.asin(Math.sqrt(q))) / degree;
  return Math.sin(60 * degree * Math.exp(-((delta / 25) ** 2)));
}

/** Coefficients (constant first) of the polynomial through points (x, y), by Newton's divided differences. */
function coefficientsThrough(x: readonly number[], y: readonly number[]): number[] {
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

const nodes = Array.from({ length: terms }, (_, k) => 0.5 + 0.5 * Math.cos((Math.PI * (k + 0.5)) / terms));
const table = new Float64Array(cells * terms);
for (let cell = 0; cell < cells; cell += 1) {
  const values = nodes.map((node) => exact((cell + node) / cells));
  table.set(coefficientsThrough(nodes, values), cell * terms);
}

/** sin(2Δθ) for q = sin²(δ/2), 0 ≤ q < 1. */
export function blueRotation(q: number): number {
  const place = q * cells;
  const cell = place | 0;
  const s = place - cell;
  const k = cell * terms;
  return (
    table[k]! +
    s * (table[k + 1]! + s * (table[k + 2]! + s * (table[k + 3]! + s * (table[k + 4]! + s * table[k + 5]!))))
  );
}
