import Color from 'colorjs.io';
import { expect, test } from 'vitest';
import { measureRun } from '../../shared/measure/index.ts';
import {
  bt1886,
  d65,
  de2000,
  expectValues,
  lab,
  measured,
  pairs,
  pq,
  reasonOf,
  uv,
  xyz,
} from './expected.ts';
import { type Draft, evidenceOf, hdrConditions, readingsOf, sdrConditions } from './inventedUnit.ts';

const greys: Draft[] = [
  [0, 0.29, 0.3, 0.05],
  [5, 0.318, 0.331, 0.35],
  [20, 0.3145, 0.3321, 4.6],
  [50, 0.3101, 0.3275, 41.2],
  [80, 0.3098, 0.3262, 118.3],
  [100, 0.3093, 0.3251, 198.7],
].map(([stimulus, x, y, Y]) => ({ series: 'greyscale', stimulus, x, y, Y }) as Draft);

function measure(drafts: Draft[], conditions = sdrConditions) {
  const { unit, run } = evidenceOf(readingsOf(...drafts), conditions);
  return measureRun(unit, run);
}

const white = xyz(...d65, 198.7);
const lit = greys.slice(1) as Required<Pick<Draft, 'stimulus' | 'x' | 'y' | 'Y'>>[];

test('the colour error compares each grey with the target white at its own luminance', () => {
  const expected = lit.map(({ stimulus, x, y, Y }) => [
    stimulus,
    de2000(lab(xyz(x!, y!, Y!), white), lab(xyz(...d65, Y!), white)),
  ]) as [number, number][];
  const found = measure(greys);
  expectValues(pairs(found, 'grey.de2000'), expected);
  const series = measured(found, 'grey.de2000');
  expect(series.average!.value).toBeCloseTo(
    expected.reduce((sum, [, value]) => sum + value / 5, 0),
    6,
  );
  expect(series.max).toMatchObject({ axis: 100, value: expect.closeTo(expected.at(-1)![1], 6) });
});

test('the total error adds the luminance that BT.1886 asks of this white and black', () => {
  const expected = lit.map(({ stimulus, x, y, Y }) => [
    stimulus,
    de2000(lab(xyz(x!, y!, Y!), white), lab(xyz(...d65, bt1886(stimulus / 100, 198.7, 0.05)), white)),
  ]) as [number, number][];
  expectValues(pairs(measure(greys), 'grey.de2000.total'), expected);
});

test('ΔE ITP is taken in absolute cd/m² (colorjs.io as the second opinion)', () => {
  const color = (value: [number, number, number]) => new Color('xyz-abs-d65', value);
  const expected = lit.map(({ stimulus, x, y, Y }) => [
    stimulus,
    color(xyz(x!, y!, Y!)).deltaE(
      color(xyz(...d65, Math.min(bt1886(stimulus / 100, 198.7, 0.05), 198.7))),
      'ITP',
    ),
  ]) as [number, number][];
  const found = pairs(measure(greys), 'grey.deitp');
  expect(found.map(([axis]) => axis)).toEqual(expected.map(([axis]) => axis));
  found.forEach(([, value], i) => {
    // colorjs.io rounds the D65 white in its ICtCp to other digits.
    expect(Math.abs(value - expected[i]![1])).toBeLessThan(0.02 + 0.002 * expected[i]![1]);
  });
});

test('balance is 100/100/100 on target, and M⁻¹ brings x/y, 1, z/y back to x and y', () => {
  const onTarget = measure([
    { series: 'greyscale', stimulus: 50, x: 0.3127, y: 0.329, Y: 40 },
    { series: 'greyscale', stimulus: 100, x: 0.3127, y: 0.329, Y: 200 },
  ]);
  for (const channel of ['red', 'green', 'blue'])
    expectValues(pairs(onTarget, `grey.balance.${channel}`), [
      [50, 100],
      [100, 100],
    ]);
  const found = measure(greys);
  // Primaries of BT.709 scaled to D65 (published matrix of IEC 61966-2-1, four digits).
  const M = [
    [0.4124, 0.3576, 0.1805],
    [0.2126, 0.7152, 0.0722],
    [0.0193, 0.1192, 0.9505],
  ];
  const [R, G, B] = ['red', 'green', 'blue'].map((channel) => pairs(found, `grey.balance.${channel}`));
  lit.forEach(({ x, y }, i) => {
    const rgb = [R![i]![1] / 100, G![i]![1] / 100, B![i]![1] / 100];
    const [X, Y, Z] = M.map((row) => row.reduce((sum, m, k) => sum + m * rgb[k]!, 0)) as [
      number,
      number,
      number,
    ];
    expect(Y).toBeCloseTo(1, 3);
    expect(X / (X + Y + Z)).toBeCloseTo(x!, 3);
    expect(Y / (X + Y + Z)).toBeCloseTo(y!, 3);
  });
});

test('tint is the distance in u′v′, with its components and direction beside it', () => {
  const found = measure(greys);
  const [u0, v0] = uv(...d65);
  lit.forEach(({ x, y }, i) => {
    const [u, v] = uv(x!, y!);
    expect(pairs(found, 'grey.tint')[i]![1]).toBeCloseTo(Math.hypot(u - u0, v - v0), 9);
    expect(pairs(found, 'grey.tint.u')[i]![1]).toBeCloseTo(u - u0, 9);
    expect(pairs(found, 'grey.tint.v')[i]![1]).toBeCloseTo(v - v0, 9);
    const angle = (Math.atan2(v - v0, u - u0) * 180) / Math.PI;
    expect(pairs(found, 'grey.tint.angle')[i]![1]).toBeCloseTo((angle + 360) % 360, 6);
  });
});

test('levels under 5 % are shown and do not count; levels under xy_from are not used', () => {
  const found = measure([
    { series: 'greyscale', stimulus: 1, x: 0.4, y: 0.4, Y: 0.12 },
    { series: 'greyscale', stimulus: 5, x: 0.4, y: 0.4, Y: 0.0999 },
    ...greys.slice(2),
  ]);
  const { values, max, notes } = measured(found, 'grey.de2000');
  expect(values.map(({ axis, counts }) => [axis, counts])).toEqual([
    [1, false],
    [20, true],
    [50, true],
    [80, true],
    [100, true],
  ]);
  expect(max!.axis).toBe(100);
  expect(notes.join()).toContain('1 level without usable chromaticity (under 0.1 cd/m²');
});

const hdrGreys: Draft[] = [
  ...[10, 30, 50, 60].map(
    (stimulus): Draft => ({
      series: 'greyscale',
      stimulus,
      x: 0.311,
      y: 0.328,
      Y: 0.97 * pq(stimulus / 100),
    }),
  ),
  { series: 'greyscale', stimulus: 70, x: 0.3, y: 0.31, Y: 480 },
  { series: 'greyscale', stimulus: 80, x: 0.3, y: 0.31, Y: 700 },
  { series: 'greyscale', stimulus: 100, x: 0.3, y: 0.31, Y: 705 },
];

test('in HDR the reference white is the highest grey, and levels from the roll-off up do not count', () => {
  const found = measure(hdrGreys, hdrConditions);
  const peakWhite = xyz(...d65, 705);
  const series = measured(found, 'grey.de2000');
  expectValues(
    series.values.map(({ axis, value }) => [axis, value]),
    hdrGreys
      .filter(({ Y }) => Y! >= 0.1)
      .map(({ stimulus, x, y, Y }) => [
        stimulus,
        de2000(lab(xyz(x!, y!, Y!), peakWhite), lab(xyz(...d65, Y!), peakWhite)),
      ]),
  );
  // PQ at 70 % is 623 cd/m² and at 80 % 1525: 480 is 23 % under, so the roll-off begins at 70 %.
  expect(series.values.filter(({ counts }) => counts).map(({ axis }) => axis)).toEqual([10, 30, 50, 60]);
  expect(series.notes.join()).toContain('3 levels from the roll-off at 70 % up left out');
});

test('ΔE ITP of PQ is held against the lower of PQ and the highest grey', () => {
  const onTarget = measure(
    [
      { series: 'greyscale', stimulus: 50, x: 0.3127, y: 0.329, Y: pq(0.5) },
      { series: 'greyscale', stimulus: 75, x: 0.3127, y: 0.329, Y: 700 },
      { series: 'greyscale', stimulus: 100, x: 0.3127, y: 0.329, Y: 700 },
    ],
    hdrConditions,
  );
  for (const [, value] of pairs(onTarget, 'grey.deitp')) expect(value).toBeLessThan(1e-3);
});

test('without a 100 % level an SDR run has no reference white', () => {
  const found = measure(greys.slice(0, -1));
  expect(reasonOf(found.get('grey.de2000'))).toBe('no 100 % level');
  expect(reasonOf(found.get('grey.de2000.total'))).toBe('no 100 % level');
  expect(found.get('grey.balance.red')?.state).toBe('measured');
});

test('an unknown target white makes colour undefined, not 0', () => {
  const found = measure(greys, { ...sdrConditions, target: { ...sdrConditions.target, white: 'D99' } });
  expect(reasonOf(found.get('grey.de2000'))).toBe('the target white "D99" is not known');
});

test('greys without chromaticity have luminance quantities only', () => {
  const found = measure(greys.map(({ x: _x, y: _y, ...rest }) => rest));
  expect(reasonOf(found.get('grey.de2000'))).toBe(
    'no grey has a chromaticity that can be used: not measured, or too dim',
  );
  expect(found.get('gamma')?.state).toBe('measured');
});

test('a grey on the target white has a tint of 0 and no direction of tint', () => {
  const found = measure([
    { series: 'greyscale', stimulus: 50, x: 0.3127, y: 0.329, Y: 40 },
    { series: 'greyscale', stimulus: 100, x: 0.3127, y: 0.335, Y: 200 },
  ]);
  expect(pairs(found, 'grey.tint')[0]).toEqual([50, 0]);
  expect(pairs(found, 'grey.tint.angle').map(([axis]) => axis)).toEqual([100]);
  expect(measured(found, 'grey.tint').average).toBeDefined();
  expect(measured(found, 'grey.tint.angle').average, 'directions go round').toBeUndefined();
});

test('of greys in several windows those of the window with most levels are used, of equally many the smallest', () => {
  const at = (window: number | undefined, ...levels: number[]): Draft[] =>
    levels.map((stimulus) => ({
      series: 'greyscale',
      stimulus,
      ...(window === undefined ? {} : { window }),
      x: 0.31,
      y: 0.33,
      Y: 2 * stimulus,
    }));
  const used = (...drafts: Draft[]) => {
    const { values, notes } = measured(measure(drafts), 'grey.tint');
    return [values.map(({ axis }) => axis), notes.find((note) => note.includes('window sizes'))];
  };
  expect(used(...at(100, 90, 100), ...at(10, 20, 40, 100))).toEqual([
    [20, 40, 100],
    'greys were measured in 2 window sizes: those of 10 % are used',
  ]);
  expect(used(...at(25, 30, 100), ...at(10, 20, 100), ...at(50, 100))[0]).toEqual([20, 100]);
  expect(used(...at(undefined, 30, 100), ...at(10, 20, 100))).toEqual([
    [30, 100],
    'greys were measured in 2 window sizes: those of no stated size are used',
  ]);
  expect(used(...at(undefined, 30, 100), ...at(0.5, 20, 100))[0]).toEqual([30, 100]);
});

test('a grey given by its sent signal stands at that level; a signal that is no grey is none', () => {
  const grey = (signal: [number, number, number], Y: number): Draft => ({
    series: 'greyscale',
    signal,
    x: 0.31,
    y: 0.33,
    Y,
  });
  const found = measure([grey([50, 50, 50], 50), grey([100, 100, 100], 200), grey([40, 50, 50], 45)]);
  expect(pairs(found, 'gamma')).toEqual([[50, expect.closeTo(2, 9)]]);
});
