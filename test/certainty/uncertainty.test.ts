import { expect, test } from 'vitest';
import { errorModelOf } from '../../shared/certainty/errorModel.ts';
import { createMeasurer, drawQuantity, expanded, probability } from '../../shared/certainty/index.ts';
import { deviationOf } from '../../shared/certainty/spread.ts';
import type { QuantityDraws } from '../../shared/contract/measurement.ts';
import type { Run } from '../../shared/contract/run.ts';
import { measureRun } from '../../shared/measure/index.ts';
import { prepareRun } from '../../shared/measure/prepare.ts';
import { measured } from '../measure/expected.ts';
import { type Draft, evidenceOf, fullRun, readingsOf, sdrConditions } from '../measure/inventedUnit.ts';
import { referenceJson } from '../reference/read.ts';

function evidence(drafts: Draft[], conditions: Run = sdrConditions, unit = {}, digest = 'a'.repeat(64)) {
  const made = evidenceOf(readingsOf(...drafts), conditions, unit);
  return { unit: made.unit, run: { ...made.run, digest } };
}
function measure(drafts: Draft[], conditions: Run = sdrConditions) {
  const { unit, run } = evidence(drafts, conditions);
  return measureRun(unit, run);
}
const single = (id: string, drafts: Draft[], conditions?: Run) =>
  measured(measure(drafts, conditions), id).values[0]!;
const window = (size: number, Y: number): Draft => ({ series: 'window', window: size, Y });
const black = (Y: number): Draft => ({ series: 'contrast', pattern: 'full-black', Y });
const white = (Y: number): Draft => ({ series: 'contrast', pattern: 'full-white', Y });

test('u of a luminance is √((relative·Y)² + floor²)', () => {
  expect(single('peak', [window(10, 742)]).u).toBeCloseTo(Math.hypot(0.01 * 742, 0.002), 9);
  expect(single('black', [black(0.05)]).u).toBeCloseTo(Math.hypot(0.01 * 0.05, 0.002), 9);
});

test('a ratio inside one unit loses s and keeps r (JCGM 100, 5.1.6)', () => {
  const found = single('contrast.native', [white(300), black(0.2)]);
  const relative = (Y: number) => Math.hypot(0.2 * 0.01 * Y, 0.002) / Y;
  expect(found.u! / found.value).toBeCloseTo(Math.hypot(relative(300), relative(0.2)), 5);
  const { rows } = referenceJson<{
    applied_ratio: { rows: { Lw: number; u_Lw: number; Lb: number; u_Lb: number; u: number }[] };
  }>('uncertainty.json').applied_ratio;
  // The published rule itself: with the floor as the only error of black and r of white, at first order.
  const [, , row] = rows;
  expect(row!.u / (row!.Lw / row!.Lb)).toBeCloseTo(Math.hypot(row!.u_Lw / row!.Lw, row!.u_Lb / row!.Lb), 5);
});

test('the average of luminances with a common error is not surer by √n', () => {
  const { average } = measured(measure([1, 2, 5, 10].map((size) => window(size, 500))), 'peak');
  // s stays whole, r is divided by √4.
  expect(average!.u).toBeCloseTo(Math.hypot(Math.sqrt(0.96) * 5, Math.hypot(0.2 * 5, 0.002) / 2), 6);
});

test('u of x and y carries a of its class: the average of greys keeps it', () => {
  const greys = [50, 60, 70, 80, 90, 100].map(
    (stimulus): Draft => ({ series: 'greyscale', stimulus, x: 0.3127, y: 0.329, Y: 2 * stimulus }),
  );
  const { values, average } = measured(measure(greys), 'grey.tint.u');
  const one = values[0]!.u!;
  expect(average!.u! / one).toBeCloseTo(Math.sqrt(0.96 + 0.04 / 6), 3);
});

test('repeats: r and e are the larger of 0.20·u and sd/√n', () => {
  const near = [500, 500.2, 499.8].map((Y) => window(10, Y));
  expect(single('peak', near).u).toBeCloseTo(Math.hypot(Math.sqrt(0.96) * 5, 1, 0.002), 6);
  const far = [480, 500, 520].map((Y) => window(10, Y));
  expect(single('peak', far).u).toBeCloseTo(Math.hypot(Math.sqrt(0.96) * 5, 20 / Math.sqrt(3), 0.002), 6);
});

test('mean and sd/√n of repeats agree with JCGM 100 4.4.3', () => {
  const { data_degC, mean, s_of_mean } = referenceJson<{
    type_a_gum_4_4_3: { data_degC: number[]; mean: number; s_of_mean: number };
  }>('uncertainty.json').type_a_gum_4_4_3;
  const { unit, run } = evidence(data_degC.map((Y) => window(10, Y)));
  const prepared = prepareRun(unit, run);
  expect(prepared.points.found.Y[0]).toBeCloseTo(mean, 3);
  expect(prepared.points.spread.Y[0]).toBeCloseTo(s_of_mean, 4);
});

test('in low light u of x and y grows as 10·xy_from/Y', () => {
  const grey = (stimulus: number, Y: number): Draft => ({
    series: 'greyscale',
    stimulus,
    x: 0.3127,
    y: 0.329,
    Y,
  });
  const { unit, run } = evidence([grey(5, 0.2), grey(10, 0.99), grey(20, 1), grey(100, 200)]);
  const prepared = prepareRun(unit, run);
  const model = errorModelOf(unit, run, prepared);
  const u = (stimulus: number) =>
    model.ux[prepared.greys.points[prepared.greys.stimulus.indexOf(stimulus)]!]!;
  expect(u(100)).toBeCloseTo(0.0005, 12);
  expect(u(20)).toBeCloseTo(0.0005, 12);
  expect(u(10)).toBeCloseTo(0.0005 / 0.99, 12);
  expect(u(5)).toBeCloseTo(0.0025, 12);
});

/** The straightforward way: every input perturbed by a plain normal error, everything computed anew. */
function plainMonteCarlo(
  drafts: Draft[],
  ids: readonly string[],
  count: number,
): Map<string, { values: number[][]; average: number[] }> {
  const gathered = new Map(ids.map((id) => [id, { values: [] as number[][], average: [] as number[] }]));
  let state = 12345;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  const common = Math.sqrt(0.96);
  const classOf = ({ hue }: Draft) =>
    hue === 'red' || hue === 'green' || hue === 'blue'
      ? hue
      : hue === undefined || hue === 'white' || hue === 'black'
        ? 'grey'
        : 'other';
  for (let n = 0; n < count; n += 1) {
    const s = common * 0.01 * normal();
    const a: Record<string, [number, number]> = {};
    const drawn = drafts.map((draft): Draft => {
      const group = draft.series === 'chart' ? 'other' : classOf(draft);
      a[group] ??= [normal(), normal()];
      const Y = draft.Y!;
      const low = Y < 1 ? 1 / Y : 1;
      const e = () => 0.2 * normal();
      return {
        ...draft,
        Y: Math.max(Y * (1 + s) + Math.hypot(0.2 * 0.01 * Y, 0.002) * normal(), 1e-6),
        ...(draft.x == null || draft.y == null
          ? {}
          : {
              x: draft.x + 0.0005 * low * (common * a[group]![0] + e()),
              y: draft.y + 0.0005 * low * (common * a[group]![1] + e()),
            }),
      };
    });
    const found = measure(drawn);
    for (const [id, { values, average }] of gathered) {
      const series = measured(found, id);
      values.push(series.values.map(({ value }) => value));
      if (series.average) average.push(series.average.value);
    }
  }
  return gathered;
}
const sd = (numbers: number[]) => deviationOf(Float64Array.from(numbers))!;

const small: Draft[] = [
  ...(
    [
      [0, 0.06],
      [5, 0.31],
      [20, 4.4],
      [50, 39],
      [80, 116],
      [100, 198],
    ] as const
  ).map(
    ([stimulus, Y], i): Draft => ({
      series: 'greyscale',
      stimulus,
      x: 0.3127 - 0.0006 * i,
      y: 0.329 - 0.0002 * i,
      Y,
    }),
  ),
  { series: 'primaries', hue: 'red', x: 0.639, y: 0.331, Y: 42 },
  { series: 'primaries', hue: 'green', x: 0.302, y: 0.599, Y: 141 },
  { series: 'primaries', hue: 'blue', x: 0.151, y: 0.061, Y: 15 },
  { series: 'saturation', hue: 'red', saturation: 50, x: 0.478, y: 0.3305, Y: 79 },
  { series: 'saturation', hue: 'red', saturation: 100, x: 0.645, y: 0.331, Y: 43 },
  { series: 'angle', angle: 0, x: 0.312, y: 0.328, Y: 197 },
  { series: 'angle', angle: 30, x: 0.3126, y: 0.3284, Y: 140 },
  { series: 'uniformity', level: 'white', position: 'r1c1', x: 0.3122, y: 0.3279, Y: 196 },
  { series: 'uniformity', level: 'white', position: 'r2c2', x: 0.3124, y: 0.3283, Y: 197 },
  { series: 'uniformity', level: 'white', position: 'r3c3', x: 0.3126, y: 0.3285, Y: 195.5 },
];

const compared = [
  'grey.de2000',
  'grey.de2000.total',
  'grey.deitp',
  'grey.tint',
  'grey.balance.blue',
  'white.cct',
  'white.distance',
  'gamma',
  'gamma.slope',
  'eotf.error',
  'coverage.bt709.xy',
  'area.p3.uv',
  'sweep.red.de2000',
  'sweep.red.saturation',
  'sweep.red.hue',
  'angle.de2000',
  'angle.luminance',
  'uniformity.white',
  'uniformity.white.colour',
];

test('every u agrees with a plain Monte Carlo that perturbs each reading and measures anew', () => {
  const plain = plainMonteCarlo(small, compared, 1600);
  const found = measure(small);
  for (const id of compared) {
    const { values, average } = plain.get(id)!;
    const series = measured(found, id);
    series.values.forEach(({ u, axis }, i) => {
      const expected = sd(values.map((row) => row[i]!));
      // The plain sd itself is known to 1/√3200 = 1.8 %; 8 % is more than four of those.
      expect(Math.abs(u! - expected), `${id} ${axis}: ${u} for ${expected}`).toBeLessThan(
        0.08 * expected + 1e-9,
      );
    });
    if (series.average)
      expect(Math.abs(series.average.u! - sd(average)), `${id} average`).toBeLessThan(
        0.13 * sd(average) + 1e-9,
      );
  }
});

const column = ({ values, axes, count }: QuantityDraws, i: number) =>
  Float64Array.from({ length: count }, (_, d) => values[d * axes.length + i]!);

function correlation(one: Float64Array, other: Float64Array): number {
  const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [m1, m2] = [mean(one), mean(other)];
  const product = one.reduce((sum, value, d) => sum + (value - m1) * (other[d]! - m2), 0) / (one.length - 1);
  return product / (deviationOf(one)! * deviationOf(other)!);
}

test('draws have the measurement’s order, u and found value', () => {
  const { unit, run } = evidence(fullRun());
  for (const [id, quantity] of measureRun(unit, run)) {
    const draws = drawQuantity(unit, run, id);
    if (quantity.state !== 'measured' || quantity.values[0]!.u === null) {
      expect(draws, id).toBeNull();
      continue;
    }
    expect(draws!.axes, id).toEqual(quantity.values.map(({ axis }) => axis));
    expect(draws!.counts, id).toEqual(quantity.values.map(({ counts }) => counts));
    quantity.values.forEach(({ u, value }, i) => {
      const spread = deviationOf(column(draws!, i))!;
      expect(Math.abs(spread - u!), `${id} ${i}`).toBeLessThan(
        0.05 * u! + 1e-9 * Math.max(1, Math.abs(value)),
      );
    });
  }
});

test('a draw is the same world for every quantity: u′ and v′ shifts make the tint', () => {
  const { unit, run } = evidence(fullRun());
  const [tint, du, dv] = ['grey.tint', 'grey.tint.u', 'grey.tint.v'].map(
    (id) => drawQuantity(unit, run, id)!,
  );
  for (let d = 0; d < 2000; d += 1) {
    const i = d * tint!.axes.length + 10;
    expect(tint!.values[i]!).toBeCloseTo(Math.hypot(du!.values[i]!, dv!.values[i]!), 5);
  }
});

const otherUnit = (panel: string, backlight?: string) => ({ panel, backlight });
function brightness(unit: object, conditions: Run, digest: string) {
  const made = evidence([window(10, 700)], conditions, unit, digest);
  return column(drawQuantity({ ...made.unit, id: `unit-${digest}` }, made.run, 'peak')!, 0);
}

test('a luminance 1.6 u over its limit is so with the probability of the normal distribution, whatever the seed', () => {
  for (const digest of ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight']) {
    const drawn = brightness({}, sdrConditions, digest);
    const limit = 700 - 1.6 * sd([...drawn]);
    const share = drawn.filter((value) => value > limit).length / drawn.length;
    // Φ(1.6) = 0.9452 (Abramowitz and Stegun 1964, table 26.1); too little to hold at 0.95.
    expect(Math.abs(share - 0.9452)).toBeLessThan(0.003);
  }
});

test('s is shared between units only with the same named instrument, panel and backlight', () => {
  const lcd = otherUnit('LCD IPS', 'direct LED');
  const one = brightness(lcd, sdrConditions, 'one');
  expect(correlation(one, brightness(lcd, sdrConditions, 'two'))).toBeGreaterThan(0.94);
  expect(
    Math.abs(correlation(one, brightness(otherUnit('LCD VA', 'direct LED'), sdrConditions, 'two'))),
  ).toBeLessThan(0.1);
  expect(Math.abs(correlation(one, brightness(otherUnit('LCD IPS'), sdrConditions, 'two')))).toBeLessThan(
    0.1,
  );
  const { name: _name, ...unnamed } = sdrConditions.instrument!;
  const nameless = { ...sdrConditions, instrument: unnamed };
  expect(
    Math.abs(correlation(brightness(lcd, nameless, 'one'), brightness(lcd, nameless, 'two'))),
  ).toBeLessThan(0.1);
});

test('two runs of one unit share s and not a', () => {
  const [one, other] = ['one', 'two'].map((digest) =>
    evidence(
      [window(10, 700), { series: 'greyscale', stimulus: 100, x: 0.31, y: 0.33, Y: 200 }],
      sdrConditions,
      {},
      digest,
    ),
  );
  const draws = (id: string, made: typeof one) => column(drawQuantity(made!.unit, made!.run, id)!, 0);
  expect(correlation(draws('peak', one), draws('peak', other))).toBeGreaterThan(0.94);
  expect(Math.abs(correlation(draws('grey.tint.u', one), draws('grey.tint.u', other)))).toBeLessThan(0.1);
});

test('errors that cannot be negative are drawn as vectors: on target the draws lie above 0', () => {
  const grey: Draft = { series: 'greyscale', stimulus: 100, x: 0.3127, y: 0.329, Y: 200 };
  const { unit, run } = evidence([grey]);
  const found = measured(measureRun(unit, run), 'grey.de2000').values[0]!;
  const draws = column(drawQuantity(unit, run, 'grey.de2000')!, 0);
  expect(found.value).toBeCloseTo(0, 9);
  expect(draws.every((value) => value >= 0)).toBe(true);
  const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
  expect(mean).toBeGreaterThan(found.u!);
});

test('single values carry no u and no draws, bounds and undefined quantities no draws', () => {
  const { unit, run } = evidence([
    { series: 'single', quantity: 'lag', value: 14.2, unit: 'ms' },
    white(300),
    black(0.001),
  ]);
  expect(measured(measureRun(unit, run), 'lag').values[0]!.u).toBeNull();
  for (const id of ['lag', 'contrast.native', 'nothing']) expect(drawQuantity(unit, run, id)).toBeNull();
});

test('the measurer makes measurements and draws once, and forgets the oldest draws past its limit', () => {
  const { unit, run } = evidence(fullRun());
  const measurer = createMeasurer();
  expect(measurer.measure(unit, run)).toBe(measurer.measure(unit, run));
  expect(measurer.draws(unit, run, 'peak')).toBe(measurer.draws(unit, run, 'peak'));
  expect(measurer.draws(unit, run, 'peak')!.values).toEqual(drawQuantity(unit, run, 'peak')!.values);
  expect(measurer.measure(unit, { ...run, digest: 'b'.repeat(64) })).not.toBe(measurer.measure(unit, run));
  const forgetful = createMeasurer(1);
  const first = forgetful.draws(unit, run, 'peak');
  forgetful.draws(unit, run, 'black');
  expect(forgetful.draws(unit, run, 'peak')).not.toBe(first);
});

test('probability is the share of worlds in which the statement holds; U is 2u', () => {
  expect(probability(2000, (draw) => draw % 4 === 0)).toBe(0.25);
  expect(expanded(15)).toBe(30);
});

test('the sd of a quotient near 0 falls back to the central 68.27 %', () => {
  const tail = Float64Array.from({ length: 2000 }, (_, i) => (i === 0 ? 1e9 : Math.sin(i)));
  expect(deviationOf(tail)).toBeLessThan(2);
  expect(deviationOf(new Float64Array(10).fill(Number.POSITIVE_INFINITY))).toBeNull();
});
