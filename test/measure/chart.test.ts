import { expect, test } from 'vitest';
import { comparePatches } from '../../shared/measure/chart.ts';
import { measureRun } from '../../shared/measure/index.ts';
import { referenceCsv } from '../reference/read.ts';
import { d65, de2000, expectValues, lab, measured, pairs, reasonOf, type Triple, xyz } from './expected.ts';
import { type Draft, evidenceOf, hdrConditions, readingsOf, sdrConditions } from './inventedUnit.ts';

function measure(drafts: Draft[], conditions = sdrConditions) {
  const { unit, run } = evidenceOf(readingsOf(...drafts), conditions);
  return measureRun(unit, run);
}
const white: Draft = { series: 'primaries', hue: 'white', x: 0.3127, y: 0.329, Y: 190 };
const W = xyz(...d65, 190);

test('a reference under the target white stands as it is, times Yw', () => {
  const found = measure([
    { series: 'chart', patch: '02', referencexyY: [0.38, 0.36, 0.35], x: 0.384, y: 0.358, Y: 64 },
    { series: 'chart', patch: '01', referencexyY: [0.25, 0.26, 0.2], x: 0.25, y: 0.26, Y: 38 },
    white,
  ]);
  expectValues(
    pairs(found, 'chart.de2000'),
    [
      ['01', 0],
      ['02', de2000(lab(xyz(0.384, 0.358, 64), W), lab(xyz(0.38, 0.36, 0.35 * 190), W))],
    ],
    1e-5,
  );
  expect(measured(found, 'chart.de2000').max!.axis).toBe('02');
});

test('an object colour under D50 is adapted to the target white by Bradford', () => {
  // Published Bradford D50 → D65 matrix (ICC, B. Lindbloom's digits, recalled) for whites of five digits.
  const bradford = [
    [0.9555766, -0.0230393, 0.0631636],
    [-0.0282895, 1.0099416, 0.0210077],
    [0.0122982, -0.020483, 1.3299098],
  ];
  const rows = referenceCsv('chart24.csv').map((row) => ({
    patch: row.patch!,
    Lab: ['L', 'a', 'b'].map((c) => Number(row[`Lab_D50_${c}_older`])) as Triple,
  }));
  const D50 = xyz(0.3457, 0.3585, 1);
  const targets = rows.map(({ Lab: [L, a, b] }) => {
    const fy = (L + 16) / 116;
    const cube = (f: number) => (f > 6 / 29 ? f ** 3 : (108 / 841) * (f - 4 / 29));
    const object = [D50[0] * cube(fy + a / 500), cube(fy), D50[2] * cube(fy - b / 200)];
    return bradford.map((row) => row.reduce((sum, m, k) => sum + m * object[k]!, 0)) as Triple;
  });
  const drafts = rows.map(({ patch, Lab }, i): Draft => {
    const [X, Y, Z] = targets[i]!;
    return { series: 'chart', patch, referenceLab: Lab, x: X / (X + Y + Z), y: Y / (X + Y + Z), Y: 190 * Y };
  });
  const { values, notes } = measured(measure([...drafts, white]), 'chart.de2000');
  for (const { axis, value } of values) expect(value, `patch ${axis}`).toBeLessThan(0.1);
  // Cyan of the published table lies outside BT.709 and has no sent signal here.
  expect(values.map(({ axis }) => axis)).not.toContain('18');
  expect(notes.join()).toMatch(/patch 18 outside the target gamut, left out/);
});

test('the sent signal, clipped or not, defines the target', () => {
  const red = { x: 0.64, y: 0.33, Y: 190 * 0.2126 };
  const found = measure([
    { series: 'chart', patch: '1', referencexyY: [0.7, 0.29, 0.2], signal: [100, 0, 0], ...red },
    { series: 'chart', patch: '2', referencexyY: [0.7, 0.29, 0.2], ...red },
    white,
  ]);
  const { values, notes } = measured(found, 'chart.de2000');
  expect(values.map(({ axis }) => axis)).toEqual(['1']);
  expect(values[0]!.value).toBeLessThan(0.01);
  expect(notes).toContain('patch 2 outside the target gamut, left out');
});

test('patches stand in the order of their numbers', () => {
  expect(['10', '9', 'B', '1', 'A'].sort(comparePatches)).toEqual(['1', '9', '10', 'A', 'B']);
  expect([comparePatches('A', 'A'), comparePatches('7', '7')]).toEqual([0, 0]);
  expect([comparePatches('01', '1'), comparePatches('1', '01')]).toEqual([-1, 1]);
});

test('without a white the chart is undefined; PQ signals need only a scale for L*', () => {
  const patch: Draft = { series: 'chart', patch: '1', signal: [50, 30, 30], x: 0.5, y: 0.33, Y: 30 };
  expect(reasonOf(measure([patch]).get('chart.de2000'))).toBe('no white in this run');
  const grey: Draft = { series: 'greyscale', stimulus: 70, x: 0.3127, y: 0.329, Y: 600 };
  expect(measure([patch, grey], hdrConditions).get('chart.de2000')?.state).toBe('measured');
});

test('a patch without reference or chromaticity is left out and named', () => {
  const found = measure([
    { series: 'chart', patch: '1', x: 0.3, y: 0.3, Y: 30 },
    { series: 'chart', patch: '2', referencexyY: [0.3, 0.3, 0.2], Y: 30 },
    { series: 'chart', patch: '3', referencexyY: [0.3, 0.3, 0.2], x: 0.3, y: 0.3, Y: 38 },
    { series: 'chart', patch: '4', referencexyY: [0.3, 0, 0.2], x: 0.3, y: 0.3, Y: 38 },
    { series: 'chart', patch: '5', referencexyY: [0.3, 0.3, 0], x: 0.3, y: 0.3, Y: 38 },
    white,
  ]);
  const { values, notes } = measured(found, 'chart.de2000');
  expect(values.map(({ axis }) => axis)).toEqual(['3']);
  expect(notes).toEqual(
    expect.arrayContaining([
      'patches 1, 4, 5 without a reference, left out',
      'patch 2 without usable chromaticity, left out',
    ]),
  );
});

test('patches without a name are told apart by their references and named by their rows', () => {
  const found = measure([
    { series: 'chart', referencexyY: [0.25, 0.26, 0.2], x: 0.25, y: 0.26, Y: 38 },
    { series: 'chart', referencexyY: [0.38, 0.36, 0.35], x: 0.38, y: 0.36, Y: 66.5 },
    { series: 'chart', referencexyY: [0.25, 0.26, 0.2], x: 0.25, y: 0.26, Y: 38 },
    white,
  ]);
  expectValues(
    pairs(found, 'chart.de2000'),
    [
      ['row 1', 0],
      ['row 2', 0],
    ],
    1e-5,
  );
  expect(measured(found, 'chart.de2000').values[0]!.rows).toEqual([1, 3, 4]);
});

test('at equal luminance only colour is compared; the older formulas compare luminance too', () => {
  const found = measure([
    { series: 'chart', patch: '1', referencexyY: [0.38, 0.36, 0.35], x: 0.384, y: 0.358, Y: 80 },
    { series: 'chart', patch: '2', referencexyY: [0.38, 0.36, 0.35], x: 0.38, y: 0.36, Y: 80 },
    white,
  ]);
  const reading = lab(xyz(0.384, 0.358, 80), W);
  const equal = lab(xyz(0.38, 0.36, 80), W);
  const target = lab(xyz(0.38, 0.36, 0.35 * 190), W);
  expectValues(
    pairs(found, 'chart.de2000.colour'),
    [
      ['1', de2000(reading, equal)],
      ['2', 0],
    ],
    1e-5,
  );
  expect(pairs(found, 'chart.de2000')[0]![1]).toBeCloseTo(de2000(reading, target), 4);
  expect(pairs(found, 'chart.de76')[0]![1]).toBeCloseTo(
    Math.hypot(...reading.map((value, i) => value - target[i]!)),
    6,
  );
});

test('a reference brighter than white is outside the target gamut, but for a printed digit', () => {
  const patch = (name: string, Y: number): Draft => ({
    series: 'chart',
    patch: name,
    referencexyY: [0.3127, 0.329, Y],
    x: 0.3127,
    y: 0.329,
    Y: 190,
  });
  const { values, notes } = measured(
    measure([patch('1', 1.0005), patch('2', 1.002), patch('3', 1.5), white]),
    'chart.de2000',
  );
  expect(values.map(({ axis }) => axis)).toEqual(['1']);
  expect(notes).toContain('patches 2, 3 outside the target gamut, left out');
});
