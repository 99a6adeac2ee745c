import { describe, expect, test } from 'vitest';
import { errorModelOf } from '../../shared/certainty/errorModel.ts';
import {
  aComponent,
  averageU,
  componentCount,
  coordinateOf,
  differenceU,
  type Gradient,
  gradientsOf,
  ownComponent,
  sComponent,
} from '../../shared/certainty/gradient.ts';
import type { Law, Plan } from '../../shared/measure/plan.ts';
import type { World } from '../../shared/measure/points.ts';
import { prepareRun } from '../../shared/measure/prepare.ts';
import { evidenceOf, readingsOf } from '../measure/inventedUnit.ts';

const { unit, run } = evidenceOf(
  readingsOf(
    { series: 'greyscale', stimulus: 100, x: 0.312, y: 0.33, Y: 200 },
    { series: 'greyscale', stimulus: 50, x: 0.31, y: 0.326, Y: 45 },
    { series: 'primaries', hue: 'red', x: 0.64, y: 0.33, Y: 42 },
  ),
);
const prepared = prepareRun(unit, run);
const model = errorModelOf(unit, run, prepared);
const { found } = prepared.points;
const [full, half, red] = [200, 45, 42].map((Y) => found.Y.indexOf(Y)) as [number, number, number];
const uY = (point: number) => Math.hypot(model.s * found.Y[point]!, model.r[point]!);

function gradientOf(
  law: Law,
  uses: Plan['uses'],
  value: (w: World) => number,
  inputs: number[],
  lights: number[] = [],
): Gradient {
  const plan: Plan = {
    state: 'plan',
    id: 'invented',
    value,
    found: Float64Array.of(value(found)),
    axes: [undefined],
    counts: [true],
    inputs: [inputs],
    lights: [lights],
    uses,
    law,
    isSeries: false,
    notes: [],
  };
  return gradientsOf(prepared, model, plan)[0]!;
}
const z = (w: World) => (w.Y[full]! - found.Y[full]!) / uY(full);

describe('first order is trusted', () => {
  const isLinear = (law: Law, value: (w: World) => number) =>
    gradientOf(law, 'luminance', value, [full]).linear;

  test('where the value bends by less than a tenth of its u within one u', () => {
    const bent = (bend: number) => (w: World) => 7 + z(w) + bend * z(w) ** 2;
    expect([0.099, -0.099].map((bend) => isLinear('smooth', bent(bend)))).toEqual([true, true]);
    expect([0.101, -0.101].map((bend) => isLinear('smooth', bent(bend)))).toEqual([false, false]);
  });

  test('for a quantity with corners, where it is straight as far as two u', () => {
    const corner = (at: number) => (w: World) => 7 + z(w) + Math.max(z(w) - at, 0);
    expect(isLinear('smooth', corner(1.5))).toBe(true);
    expect(isLinear('edged', corner(1.5))).toBe(false);
    expect(isLinear('edged', corner(2.5))).toBe(true);
  });

  test('for a magnitude, from five u off 0', () => {
    const off = (centre: number) => (w: World) => centre + z(w);
    expect([isLinear('magnitude', off(5.01)), isLinear('magnitude', off(4.99))]).toEqual([true, false]);
    expect(isLinear('smooth', off(4.99))).toBe(true);
  });

  test('not where a step leads to no value', () => {
    const lost = gradientOf('smooth', 'luminance', (w) => (z(w) > 0.5 ? Number.NaN : z(w)), [full]);
    expect(lost.linear).toBe(false);
  });

  test('for what does not change, with a u of 0', () => {
    expect(gradientOf('smooth', 'luminance', () => 42, [full])).toMatchObject({ u: 0, linear: true });
    expect(gradientOf('smooth', 'luminance', (w) => 42 + 1e-12 * z(w), [full]).u).toBe(0);
  });
});

describe('the propagated u (JCGM 100, 5.1 and 5.2)', () => {
  const { s, r, ax, ex, ay, ey } = model;

  test('adds what readings share before it is squared, and each one’s own after', () => {
    const sum = gradientOf('smooth', 'luminance', (w) => 2 * w.Y[full]! - 3 * w.Y[half]!, [full, half]);
    expect(sum.u).toBeCloseTo(Math.hypot(s * (2 * 200 - 3 * 45), 2 * r[full]!, 3 * r[half]!), 9);
    const x = gradientOf('smooth', 'chromaticity', (w) => w.x[full]! - 2 * w.x[half]!, [full, half]);
    expect(x.u).toBeCloseTo(Math.hypot(ax[full]! - 2 * ax[half]!, ex[full]!, 2 * ex[half]!), 9);
    const apart = gradientOf('smooth', 'chromaticity', (w) => w.x[full]! - 2 * w.x[red]!, [full, red]);
    expect(apart.u).toBeCloseTo(Math.hypot(ax[full]!, 2 * ax[red]!, ex[full]!, 2 * ex[red]!), 9);
    const both = gradientOf('smooth', 'chromaticity', (w) => w.x[full]! + w.y[full]!, [full]);
    expect(both.u).toBeCloseTo(Math.hypot(ax[full]!, ay[full]!, ex[full]!, ey[full]!), 9);
  });

  test('takes of a light its luminance only, of inputs what is used', () => {
    const value = (w: World) => w.x[full]! * 100 + w.Y[full]! + w.x[half]! * 100 + w.Y[half]!;
    const lit = gradientOf('smooth', 'both', value, [full], [half]);
    expect(lit.u).toBeCloseTo(Math.hypot(s * 245, r[full]!, r[half]!, 100 * ax[full]!, 100 * ex[full]!), 9);
    expect(gradientOf('smooth', 'chromaticity', value, [full]).u).toBeCloseTo(
      Math.hypot(100 * ax[full]!, 100 * ex[full]!),
      9,
    );
    expect(gradientOf('smooth', 'luminance', value, [full]).u).toBeCloseTo(Math.hypot(s * 200, r[full]!), 9);
  });

  test('of a difference and of a mean keeps the signs of what is shared', () => {
    const one = gradientOf('smooth', 'luminance', (w) => 3 * w.Y[full]!, [full]);
    const other = gradientOf('smooth', 'luminance', (w) => w.Y[full]! + 2 * w.Y[half]!, [full, half]);
    expect(differenceU(one, other)).toBeCloseTo(
      Math.hypot(s * (2 * 200 - 2 * 45), 2 * r[full]!, 2 * r[half]!),
      9,
    );
    expect(differenceU(one, one)).toBe(0);
    const count = prepared.points.count;
    expect(averageU([one, other], [true, true], count)).toBeCloseTo(
      Math.hypot(s * (4 * 200 + 2 * 45), 4 * r[full]!, 2 * r[half]!) / 2,
      9,
    );
    expect(averageU([one, other], [false, true], count)).toBeCloseTo(other.u, 12);
  });
});

describe('numbers of error components', () => {
  test('are each component’s own', () => {
    const numbers = [
      sComponent,
      ...[0, 1, 2, 3, 4].flatMap((group) => [aComponent(group, 0), aComponent(group, 1)]),
      ...[0, 1, 2].flatMap((point) => ([0, 1, 2] as const).map((part) => ownComponent(point, part))),
    ];
    expect(new Set(numbers).size).toBe(numbers.length);
    expect(Math.max(...numbers)).toBe(componentCount(3) - 1);
  });

  test('lead to the coordinate that carries them: e to all of x, r and s to themselves, a to none', () => {
    expect(coordinateOf(model, sComponent, 2)).toEqual({ coordinate: { kind: 's', of: -1 }, step: 2 });
    expect(coordinateOf(model, aComponent(4, 1), 2)).toBeUndefined();
    expect(coordinateOf(model, ownComponent(2, 0), 3)).toEqual({ coordinate: { kind: 'r', of: 2 }, step: 3 });
    // e is a fifth of u.
    expect(coordinateOf(model, ownComponent(1, 1), 0.2)).toEqual({
      coordinate: { kind: 'x', of: 1 },
      step: expect.closeTo(1, 9),
    });
    expect(coordinateOf(model, ownComponent(1, 2), 0.2)).toEqual({
      coordinate: { kind: 'y', of: 1 },
      step: expect.closeTo(1, 9),
    });
  });
});
