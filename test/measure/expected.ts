import Color from 'colorjs.io';
import { expect } from 'vitest';
import type { MeasuredSeries, Measurement, RunMeasurements } from '../../shared/contract/measurement.ts';

/** The second opinion of these tests: written from the published formulas, sharing no code with the program. */

export type Triple = [number, number, number];

export const d65: [number, number] = [0.3127, 0.329];

/** x, y, Y to X, Y, Z. */
export function xyz(x: number, y: number, Y: number): Triple {
  return [(x * Y) / y, Y, ((1 - x - y) * Y) / y];
}

/** CIE 1976 L*a*b* from the printed definition. */
export function lab([X, Y, Z]: Triple, [Xn, Yn, Zn]: Triple): Triple {
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27 / 116) * t + 16 / 116);
  return [116 * f(Y / Yn) - 16, 500 * (f(X / Xn) - f(Y / Yn)), 200 * (f(Y / Yn) - f(Z / Zn))];
}

/** CIEDE2000 by colorjs.io, from L*a*b* coordinates as they are. */
export function de2000(one: Triple, other: Triple): number {
  return new Color('lab', one).deltaE(new Color('lab', other), '2000');
}

/** Δu′v′ from the printed definition of u′ and v′. */
export function uv(x: number, y: number): [number, number] {
  const d = -2 * x + 12 * y + 3;
  return [(4 * x) / d, (9 * y) / d];
}

/** BT.1886 Annex 1 as printed. */
export function bt1886(V: number, Lw: number, Lb: number): number {
  const root = (L: number) => L ** (1 / 2.4);
  const a = (root(Lw) - root(Lb)) ** 2.4;
  const b = root(Lb) / (root(Lw) - root(Lb));
  return a * Math.max(V + b, 0) ** 2.4;
}

/** ST 2084 EOTF as printed. */
export function pq(V: number): number {
  const [m1, m2, c1, c2, c3] = [0.1593017578125, 78.84375, 0.8359375, 18.8515625, 18.6875];
  const p = V ** (1 / m2);
  return 10000 * (Math.max(p - c1, 0) / (c2 - c3 * p)) ** (1 / m1);
}

export function measured(measurements: RunMeasurements, id: string): MeasuredSeries {
  const quantity = measurements.get(id);
  expect(quantity, `${id} is there`).toBeDefined();
  // Written out on failure only: a written quantity has every u computed, drawn ones too.
  if (quantity!.state !== 'measured') expect.fail(`${id}: ${JSON.stringify(quantity)}`);
  return quantity as MeasuredSeries;
}

/** `[axis, value]` pairs of a series. */
export function pairs(measurements: RunMeasurements, id: string): [number | string | undefined, number][] {
  return measured(measurements, id).values.map(({ axis, value }) => [axis, value]);
}

export function scalar(measurements: RunMeasurements, id: string): number {
  const { values } = measured(measurements, id);
  expect(values).toHaveLength(1);
  return values[0]!.value;
}

export function reasonOf(quantity: Measurement | undefined): string | undefined {
  return quantity?.state === 'undefined' ? quantity.undefined : undefined;
}

/** Values in order, each within a relative or absolute 1e-6 unless told otherwise. */
export function expectValues(
  found: readonly (readonly [unknown, number])[],
  expected: readonly (readonly [unknown, number])[],
  tolerance = 1e-6,
): void {
  expect(found.map(([axis]) => axis)).toEqual(expected.map(([axis]) => axis));
  expected.forEach(([axis, value], i) => {
    expect(Math.abs(found[i]![1] - value), `at ${axis}: ${found[i]![1]} for ${value}`).toBeLessThanOrEqual(
      tolerance * Math.max(1, Math.abs(value)),
    );
  });
}
