import { describe, expect, test } from 'vitest';
import type { Coordinate } from '../../shared/certainty/coordinates.ts';
import { drawnWorldsOf } from '../../shared/certainty/drawnWorlds.ts';
import { columnOf, type Drawing, quantityDraws } from '../../shared/certainty/draws.ts';
import { errorModelOf } from '../../shared/certainty/errorModel.ts';
import { expandedColumn, expansionOf } from '../../shared/certainty/expansion.ts';
import { gradientsOf } from '../../shared/certainty/gradient.ts';
import { drawCount, streamsOf } from '../../shared/certainty/streams.ts';
import type { Law, Plan } from '../../shared/measure/plan.ts';
import { hueClasses, type World } from '../../shared/measure/points.ts';
import { prepareRun } from '../../shared/measure/prepare.ts';
import { evidenceOf, readingsOf } from '../measure/inventedUnit.ts';

/** Two greys, one of them repeated, a red, and a white of which only the luminance was read. */
const { unit, run } = evidenceOf(
  readingsOf(
    { series: 'greyscale', stimulus: 100, x: 0.312, y: 0.33, Y: 200 },
    { series: 'greyscale', stimulus: 50, x: 0.309, y: 0.326, Y: 44 },
    { series: 'greyscale', stimulus: 50, x: 0.311, y: 0.327, Y: 46 },
    { series: 'primaries', hue: 'red', x: 0.64, y: 0.33, Y: 0.4 },
    { series: 'window', window: 10, Y: 600 },
  ),
);
const prepared = prepareRun(unit, run);
const model = errorModelOf(unit, run, prepared);
const streams = streamsOf(run.digest, model.sKey);
const { found } = prepared.points;
const pointOf = (Y: number) => found.Y.indexOf(Y);
const [full, half, red, window] = [pointOf(200), pointOf(45), pointOf(0.4), pointOf(600)];
const all = [full, half, red, window];
const groupOf = (point: number) => hueClasses.indexOf(prepared.points.hueClass[point]!);

function drawing(): Drawing & { taken: number } {
  const state = { taken: 0 };
  const take = () => {
    state.taken += 1;
    return new Float64Array(drawCount);
  };
  return {
    run: prepared,
    model,
    worlds: drawnWorldsOf(prepared, model, streams, take),
    world: { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() },
    take,
    get taken() {
      return state.taken;
    },
  };
}

/** A reading's own stream, brought to mean 0 and sample deviation 1 by the textbook. */
function ownStream(n: number): number[] {
  const values = Array.from({ length: drawCount }, (_, d) => streams.pool[streams.offset(n) + d]!);
  const mean = values.reduce((sum, value) => sum + value, 0) / drawCount;
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (drawCount - 1));
  return values.map((value) => (value - mean) / sd);
}

/** Y = Ytrue·(1 + s) + r, x = xtrue + a + e, y alike: the worlds of the definitions, written out. */
const written = new Map(
  all.map((point) => {
    const [r, ex, ey] = [0, 1, 2].map((part) => ownStream(3 * point + part)) as [
      number[],
      number[],
      number[],
    ];
    const coloured = point !== window;
    return [
      point,
      {
        Y: r.map((z, d) => found.Y[point]! * (1 + model.s * streams.s[d]!) + model.r[point]! * z),
        x: ex.map((z, d) =>
          coloured
            ? found.x[point]! + model.ax[point]! * streams.ax[groupOf(point)]![d]! + model.ex[point]! * z
            : 0,
        ),
        y: ey.map((z, d) =>
          coloured
            ? found.y[point]! + model.ay[point]! * streams.ay[groupOf(point)]![d]! + model.ey[point]! * z
            : 0,
        ),
      },
    ] as const;
  }),
);
const worldAt = (d: number): World => {
  const world = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
  for (const [point, { x, y, Y }] of written) {
    world.x[point] = x[d]!;
    world.y[point] = y[d]!;
    world.Y[point] = Y[d]!;
  }
  return world;
};

function expectNear(column: ArrayLike<number>, expected: ArrayLike<number>, relative: number): void {
  const n = expected.length;
  const values = Array.from(expected);
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / n);
  const off = Math.sqrt(values.reduce((sum, value, d) => sum + (column[d]! - value) ** 2, 0) / n);
  expect(off).toBeLessThanOrEqual(relative * sd + 1e-12);
}

describe('drawn worlds', () => {
  test('are the found world with every error added as the definitions write it', () => {
    const { worlds } = drawing();
    for (const point of all) {
      const world = worlds.at(point, 'xyY');
      const expected = written.get(point)!;
      for (const key of ['x', 'y', 'Y'] as const) expectNear(world[key], expected[key], 1e-9);
    }
  });

  test('read what is asked for and nothing else', () => {
    const { worlds } = drawing();
    expect([worlds.at(full, 'Y').x, worlds.at(full, 'Y').y].map(({ length }) => length)).toEqual([0, 0]);
    expect(worlds.at(full, 'xy').Y).toHaveLength(0);
    expect(worlds.at(full, 'xy').x).toHaveLength(drawCount);
  });

  test('can be looked at one by one, before their columns are made and after', () => {
    const made = drawing();
    const place = (reads: 'Y' | 'xy' | 'xyY', point: number, d: number) => {
      const world = { x: found.x.slice(), y: found.y.slice(), Y: found.Y.slice() };
      made.worlds.place(world, point, reads, d);
      return [world.x[point]!, world.y[point]!, world.Y[point]!];
    };
    for (const round of ['before', 'after'])
      for (const point of all) {
        for (const d of [0, 1, 777, 1999]) {
          const { x, y, Y } = written.get(point)!;
          const near = (value: number) => expect.closeTo(value, 10);
          expect(place('xyY', point, d), round).toEqual([near(x[d]!), near(y[d]!), near(Y[d]!)]);
          expect(place('Y', point, d)).toEqual([found.x[point], found.y[point], near(Y[d]!)]);
          expect(place('xy', point, d)).toEqual([near(x[d]!), near(y[d]!), found.Y[point]]);
        }
        if (round === 'before') made.worlds.at(point, 'xyY');
      }
  });

  test('give the error along each coordinate in standard deviations', () => {
    const { worlds } = drawing();
    const grey = groupOf(full);
    const along = (kind: Coordinate['kind'], of: number) => worlds.along({ kind, of });
    expect(along('s', -1)).toBe(streams.s);
    expect([along('ax', grey), along('ay', grey)]).toEqual([streams.ax[grey], streams.ay[grey]]);
    expectNear(along('r', half), ownStream(3 * half), 1e-9);
    expectNear(along('ex', half), ownStream(3 * half + 1), 1e-9);
    expectNear(along('ey', half), ownStream(3 * half + 2), 1e-9);
    const { x, y } = written.get(half)!;
    expectNear(
      along('x', half),
      x.map((value) => (value - found.x[half]!) / model.ux[half]!),
      1e-9,
    );
    expectNear(
      along('y', half),
      y.map((value) => (value - found.y[half]!) / model.uy[half]!),
      1e-9,
    );
  });

  test('keep their columns until they are told to forget', () => {
    const made = drawing();
    const before = made.worlds.at(red, 'xyY');
    const { taken } = made;
    expect(made.worlds.at(red, 'xyY').Y).toBe(before.Y);
    expect(made.taken).toBe(taken);
    made.worlds.forget();
    expect(made.worlds.at(red, 'xyY').Y).not.toBe(before.Y);
  });
});

function planOf(law: Law, uses: Plan['uses'], value: (w: World) => number, lights: number[] = []): Plan {
  const inputs = uses === 'luminance' ? [full, window] : [full, half, red];
  return {
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
}

/** The plan's value computed anew in every written world; points that it does not read stay as found. */
function anew(plan: Plan): number[] {
  return Array.from({ length: drawCount }, (_, d) => {
    const world = worldAt(d);
    if (plan.uses === 'chromaticity') for (const point of all) world.Y[point] = found.Y[point]!;
    if (plan.uses === 'chromaticity')
      for (const point of plan.lights[0]!) world.Y[point] = written.get(point)!.Y[d]!;
    return plan.value(world, 0);
  });
}

function columnFor(plan: Plan): Float64Array {
  const made = drawing();
  const [gradient] = plan.law === 'drawn' ? [] : gradientsOf(prepared, model, plan);
  const column = columnOf(made, plan, gradient, 0, () => () => new Float64Array(0));
  // The world that was moved stands where it was found.
  expect([made.world.x, made.world.y, made.world.Y]).toEqual([found.x, found.y, found.Y]);
  return column;
}

/** In standard deviations of each number, so that no term is lost in another's size. */
const z = (w: World, key: 'x' | 'y' | 'Y', point: number) => {
  const u = {
    x: model.ux,
    y: model.uy,
    Y: Float64Array.from(found.Y, (Y, i) => Math.hypot(model.s * Y, model.r[i]!)),
  };
  return (w[key][point]! - found[key][point]!) / u[key][point]!;
};
const linear = (w: World) =>
  5 + 2 * z(w, 'Y', full) - z(w, 'Y', half) + 1.5 * z(w, 'x', full) - z(w, 'x', half) + z(w, 'y', red) / 2;
const bent = (w: World) =>
  linear(w) +
  0.6 * z(w, 'Y', full) ** 2 -
  0.5 * z(w, 'x', full) * z(w, 'x', half) +
  0.4 * z(w, 'y', red) * z(w, 'x', half) +
  0.3 * z(w, 'Y', half) * z(w, 'y', red) +
  0.2 * z(w, 'x', red) ** 2;

describe('one value in every world', () => {
  test('is exact at first order where the value is linear', () => {
    const plan = planOf('smooth', 'both', linear);
    expect(gradientsOf(prepared, model, plan)[0]!.linear).toBe(true);
    expectNear(columnFor(plan), anew(plan), 1e-6);
  });

  test('is exact at second order where the value bends evenly, but for what is left out as negligible', () => {
    const plan = planOf('smooth', 'both', bent);
    expect(gradientsOf(prepared, model, plan)[0]!.linear).toBe(false);
    expectNear(columnFor(plan), anew(plan), 0.01);
    let asked = 0;
    const counted = planOf('smooth', 'both', (w) => {
      asked += 1;
      return bent(w);
    });
    columnFor(counted);
    expect(asked, 'an expansion that agrees is enough').toBeLessThan(drawCount / 2);
    const expansion = expansionOf(prepared, model, plan, 0, drawing().world);
    expect(expansion.centre).toBe(5);
    expect(expansion.squared).toBe(false);
    const { worlds } = drawing();
    expectNear(expandedColumn(expansion, worlds.along, new Float64Array(drawCount)), anew(plan), 0.01);
  });

  test('of a vector’s length is the length of the drawn vector', () => {
    const length = (w: World) => Math.hypot(z(w, 'x', full) + 0.5, z(w, 'y', full));
    const plan = planOf('magnitude', 'chromaticity', length);
    const expansion = expansionOf(prepared, model, plan, 0, drawing().world);
    expect(expansion.squared).toBe(true);
    expect(expansion.centre).toBeCloseTo(0.25, 12);
    expectNear(columnFor(plan), anew(plan), 1e-6);
    expect(columnFor(plan).every((value) => value >= 0)).toBe(true);
  });

  test.each(['smooth', 'edged', 'drawn'] as const)(
    'with a corner is computed anew in every world (%s)',
    (law) => {
      const plan = planOf(law, 'both', (w) => Math.max(linear(w), 5) + Math.abs(z(w, 'y', full)));
      expectNear(columnFor(plan), anew(plan), 1e-9);
    },
  );

  test('reads luminance only, or chromaticity with a white’s luminance', () => {
    const contrast = planOf('drawn', 'luminance', (w) => w.Y[window]! / w.Y[full]!);
    expectNear(columnFor(contrast), anew(contrast), 1e-9);
    const lit = planOf('drawn', 'chromaticity', (w) => w.x[full]! * w.Y[window]! + w.Y[full]!, [window]);
    expectNear(columnFor(lit), anew(lit), 1e-9);
  });

  test('that follows from another’s is made of the other’s draws', () => {
    const members = [
      Float64Array.from({ length: drawCount }, (_, d) => d),
      new Float64Array(drawCount).fill(3),
    ];
    const other = planOf('drawn', 'both', linear);
    const plan: Plan = {
      ...other,
      from: { plan: other, members: () => [1, 0], combine: ([a, b], i) => a! * 10 + b! + i },
    };
    const column = columnOf(drawing(), plan, undefined, 0, () => (i) => members[i]!);
    expect([column[0], column[7], column[1999]]).toEqual([30, 37, 2029]);
  });

  test('columns stand side by side, draw by draw', () => {
    const plan: Plan = {
      ...planOf('drawn', 'both', linear),
      axes: [10, 20, 30],
      counts: [true, false, true],
    };
    const draws = quantityDraws(plan, (i) =>
      Float64Array.from({ length: drawCount }, (_, d) => 10_000 * i + d),
    );
    expect(draws).toMatchObject({ count: drawCount, axes: [10, 20, 30], counts: [true, false, true] });
    expect(draws.values).toHaveLength(3 * drawCount);
    expect([...draws.values.subarray(3 * 1234, 3 * 1234 + 3)]).toEqual([1234, 11_234, 21_234]);
  });
});

describe('an expansion in columns', () => {
  const errors = Array.from({ length: 7 }, (_, k) =>
    Float64Array.from({ length: 50 }, (_, d) => Math.sin(d * (k + 1) + k + 1) * 2),
  );
  const slopes = [1, -2, 0.5, 3, -0.7, 0.2, 1.1];
  const bends = slopes.map((_, i) => slopes.slice(0, i + 1).map((_, j) => 0.3 * i - 0.2 * j + 0.1));

  test.each([0, 1, 2, 3, 4, 5, 6, 7])('of %i coordinates is the polynomial written out', (n) => {
    const coordinates = errors.slice(0, n).map((_, of): Coordinate => ({ kind: 'r', of }));
    const written = Array.from({ length: 50 }, (_, d) => {
      let sum = 20;
      for (let i = 0; i < n; i += 1) {
        sum += slopes[i]! * errors[i]![d]!;
        for (let j = 0; j <= i; j += 1) sum += bends[i]![j]! * errors[i]![d]! * errors[j]![d]!;
      }
      return sum;
    });
    for (const squared of [false, true]) {
      const column = expandedColumn(
        { coordinates, centre: 20, slopes: slopes.slice(0, n), bends: bends.slice(0, n), squared },
        ({ of }) => errors[of]!,
        new Float64Array(50),
      );
      column.forEach((value, d) => {
        expect(value).toBeCloseTo(squared ? Math.sqrt(Math.max(written[d]!, 0)) : written[d]!, 9);
      });
    }
  });

  test('leaves out a coordinate that moves the value by less than 3 % of all, and none that moves it by more', () => {
    const kept = (share: number) => {
      const plan = planOf('smooth', 'luminance', (w) => z(w, 'Y', full) + share * z(w, 'Y', window));
      return expansionOf(prepared, model, plan, 0, drawing().world).coordinates.filter(
        ({ kind, of }) => kind === 'r' && of === window,
      ).length;
    };
    // r is a fifth of a luminance's u.
    expect([kept(0.1), kept(0.2)]).toEqual([0, 1]);
    const constant = planOf('smooth', 'luminance', () => 3);
    expect(expansionOf(prepared, model, constant, 0, drawing().world).coordinates).toEqual([]);
  });
});
