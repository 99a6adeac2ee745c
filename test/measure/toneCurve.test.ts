import { expect, test } from 'vitest';
import { measureRun } from '../../shared/measure/index.ts';
import { referenceJson } from '../reference/read.ts';
import { bt1886, expectValues, measured, pairs, pq, reasonOf, scalar } from './expected.ts';
import { type Draft, evidenceOf, hdrConditions, readingsOf, sdrConditions } from './inventedUnit.ts';

type Row = { percent: number; cd_m2: number };
type Transfer = { bt1886: { cases: { Lw: number; Lb: number; rows: Row[] }[] } };

function measure(levels: [stimulus: number, Y: number][], conditions = sdrConditions) {
  const drafts = levels.map(
    ([stimulus, Y]): Draft => ({ series: 'greyscale', stimulus, x: 0.3127, y: 0.329, Y }),
  );
  const { unit, run } = evidenceOf(readingsOf(...drafts), conditions);
  return measureRun(unit, run);
}

test('gamma is ln(Y/Yw)/ln V with black not subtracted', () => {
  const found = measure([
    [0, 0.1],
    [50, 21.6049112],
    [100, 100],
  ]);
  // BT.1886 with 100 and 0.1 cd/m² is 2.21 at 50 %: a real black makes it no 2.4 power law.
  expectValues(pairs(found, 'gamma'), [[50, Math.log(0.216049112) / Math.log(0.5)]]);
  expect(pairs(found, 'gamma')[0]![1]).toBeCloseTo(2.210569, 6);
});

test('gamma.average is the plain mean from 10 to 90 %, gamma.slope the least squares over the same', () => {
  const levels: [number, number][] = [
    [0, 0],
    [5, 0.3],
    [10, 0.9],
    [40, 24],
    [90, 158],
    [95, 179],
    [100, 200],
  ];
  const found = measure(levels);
  const inside = levels.slice(2, 5).map(([s, Y]) => [Math.log(s / 100), Math.log(Y)] as const);
  const mean = inside.reduce((sum, [v, y]) => sum + (y - Math.log(200)) / v / 3, 0);
  expect(scalar(found, 'gamma.average')).toBeCloseTo(mean, 9);
  const [mv, my] = [0, 1].map((k) => inside.reduce((sum, pair) => sum + pair[k]! / 3, 0)) as [number, number];
  const slope =
    inside.reduce((sum, [v, y]) => sum + (v - mv) * (y - my), 0) /
    inside.reduce((sum, [v]) => sum + (v - mv) ** 2, 0);
  expect(scalar(found, 'gamma.slope')).toBeCloseTo(slope, 9);
});

test('EOTF error against BT.1886 is 0 on the published rows and in % beside them', () => {
  for (const { Lw, Lb, rows } of referenceJson<Transfer>('transfer.json').bt1886.cases) {
    const found = measure(rows.map(({ percent, cd_m2 }) => [percent, cd_m2]));
    for (const { axis, value } of measured(found, 'eotf.error').values)
      if (Number(axis) > 2) expect(Math.abs(value), `${Lw}/${Lb} at ${axis}`).toBeLessThan(1e-4);
  }
  const off = measure([
    [0, 0.05],
    [50, 1.1 * bt1886(0.5, 200, 0.05)],
    [100, 200],
  ]);
  expectValues(pairs(off, 'eotf.error'), [
    [0, 0],
    [50, 10],
    [100, 0],
  ]);
});

test('without a 0 % level black counts as 0, and the notes say so', () => {
  const { values, notes } = measured(
    measure([
      [50, 200 * 0.5 ** 2.4],
      [100, 200],
    ]),
    'eotf.error',
  );
  expect(values.map(({ value }) => value)).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
  expect(notes).toContain('no 0 % level: the target takes black as 0');
});

test('the signal that was sent defines the target, the stimulus names the level', () => {
  const row = (stimulus: number, sent: number, Y: number): Draft => ({
    series: 'greyscale',
    stimulus,
    signal: [sent, sent, sent],
    Y,
  });
  const { unit, run } = evidenceOf(
    readingsOf(row(0, 0, 0.1), row(50, 50.4, 30), row(75, 75, 70), row(100, 100, 100)),
  );
  expectValues(pairs(measureRun(unit, run), 'eotf.error').slice(1, 3), [
    [50, 100 * (30 / bt1886(0.504, 100, 0.1) - 1)],
    [75, 100 * (70 / bt1886(0.75, 100, 0.1) - 1)],
  ]);
});

test('power laws and sRGB are anchored at the measured white', () => {
  const power = { ...sdrConditions, target: { ...sdrConditions.target, eotf: 'gamma 2.2' } };
  expectValues(
    pairs(
      measure(
        [
          [50, 150 * 0.5 ** 2.2],
          [100, 150],
        ],
        power,
      ),
      'eotf.error',
    ),
    [
      [50, 0],
      [100, 0],
    ],
  );
  const srgb = { ...sdrConditions, target: { ...sdrConditions.target, eotf: 'sRGB' } };
  const half = ((0.5 + 0.055) / 1.055) ** 2.4;
  expectValues(
    pairs(
      measure(
        [
          [50, 0.8 * 150 * half],
          [100, 150],
        ],
        srgb,
      ),
      'eotf.error',
    ),
    [
      [50, -20],
      [100, 0],
    ],
  );
});

test('PQ is absolute and needs no white', () => {
  expectValues(
    pairs(
      measure(
        [
          [50, 0.95 * pq(0.5)],
          [60, 1.02 * pq(0.6)],
        ],
        hdrConditions,
      ),
      'eotf.error',
    ),
    [
      [50, -5],
      [60, 2],
    ],
  );
});

test('HLG takes peak and system gamma from the measured white (BT.2100)', () => {
  const conditions = { ...hdrConditions, signal: 'HLG', target: { ...hdrConditions.target, eotf: 'HLG' } };
  // 1000 cd/m²: γ 1.2; signal 0.5 is scene light 1/12; signal 0.75 is (e^((0.75−c)/a)+b)/12.
  const a = 0.17883277;
  const [b, c] = [1 - 4 * a, 0.5 - a * Math.log(4 * a)];
  const scene = (Math.exp((0.75 - c) / a) + b) / 12;
  const found = measure(
    [
      [50, 1000 * (1 / 12) ** 1.2],
      [75, 1.1 * 1000 * scene ** 1.2],
      [100, 1000],
    ],
    conditions,
  );
  expectValues(
    pairs(found, 'eotf.error'),
    [
      [50, 0],
      [75, 10],
      [100, 0],
    ],
    1e-5,
  );
  // BT.2408: 75 % HLG is 203 cd/m² on a 1000 cd/m² set.
  expect(1000 * scene ** 1.2).toBeCloseTo(203, 0);
});

const clipping: [number, number][] = [
  [50, pq(0.5)],
  [60, pq(0.6)],
  [75, 700],
  [80, 705],
  [90, 702],
  [100, 700],
];

test('the roll-off is the lowest level from which all are more than 10 % under target', () => {
  const found = measure(clipping, hdrConditions);
  expect(scalar(found, 'eotf.rolloff')).toBe(75);
  // All levels above are within 2 % of the maximum: it clips.
  expect(scalar(found, 'eotf.rolloff.spread')).toBeCloseTo(100 * (1 - 700 / 705), 9);
  expect(measured(found, 'eotf.rolloff').notes).toContain('the set clips there');
  const soft = measure(
    [
      [50, pq(0.5)],
      [70, 400],
      [80, 550],
      [100, 700],
    ],
    hdrConditions,
  );
  expect(scalar(soft, 'eotf.rolloff')).toBe(70);
  expect(measured(soft, 'eotf.rolloff').notes).toContain('the set rolls off from there');
});

test('a curve that comes back to its target has no roll-off', () => {
  const found = measure(
    [
      [50, 0.5 * pq(0.5)],
      [60, pq(0.6)],
    ],
    hdrConditions,
  );
  expect(reasonOf(found.get('eotf.rolloff'))).toMatch(/^no roll-off/);
});

test('above target.peak falling short is no error and does not count', () => {
  const conditions = { ...hdrConditions, target: { ...hdrConditions.target, peak: 600 } };
  const found = measure(
    [
      [50, pq(0.5)],
      [60, pq(0.6)],
      [70, 0.95 * pq(0.7)],
    ],
    conditions,
  );
  expect(measured(found, 'eotf.error').values.map(({ axis, counts }) => [axis, counts])).toEqual([
    [50, true],
    [60, true],
    [70, false],
  ]);
});

test('a roll-off that begins above target.peak says that it is no error', () => {
  const notes = (peak: number | undefined) =>
    measured(
      measure(
        [
          [50, pq(0.5)],
          [70, 300],
          [80, 310],
        ],
        peak === undefined ? hdrConditions : { ...hdrConditions, target: { ...hdrConditions.target, peak } },
      ),
      'eotf.rolloff',
    ).notes.filter((note) => note.includes('no error'));
  // 70 % of PQ is 621 cd/m².
  expect(notes(600)).toEqual(["it begins above the target's peak of 600 cd/m² and is no error"]);
  expect(notes(1000)).toEqual([]);
  expect(notes(undefined)).toEqual([]);
});

test('at target.peak itself falling short still counts', () => {
  const conditions = { ...hdrConditions, target: { ...hdrConditions.target, peak: 10_000 } };
  const found = measure(
    [
      [50, pq(0.5)],
      [100, 9500],
    ],
    conditions,
  );
  expect(measured(found, 'eotf.error').values.map(({ value, counts }) => [value, counts])).toEqual([
    [expect.closeTo(0, 6), true],
    [expect.closeTo(-5, 6), true],
  ]);
});

test('target.peak is a matter of PQ: in SDR a level over it still counts', () => {
  const conditions = { ...sdrConditions, target: { ...sdrConditions.target, peak: 50 } };
  const found = measure(
    [
      [20, 3],
      [80, 90],
      [100, 200],
    ],
    conditions,
  );
  expect(measured(found, 'eotf.error').values.map(({ axis, counts }) => [axis, counts])).toEqual([
    [20, true],
    [80, true],
    [100, true],
  ]);
});

test('a white under 1 cd/m² has a gamma all the same', () => {
  const found = measure([
    [50, 0.125],
    [100, 0.5],
  ]);
  expect(scalar(found, 'gamma.average')).toBeCloseTo(2, 9);
});

test('luminance counts from twice the instrument floor', () => {
  const found = measure([
    [0, 0.001],
    [5, 0.0039],
    [7, 0.004],
    [10, 0.5],
    [100, 200],
  ]);
  expect(measured(found, 'gamma').values.map(({ axis, counts }) => [axis, counts])).toEqual([
    [5, false],
    [7, true],
    [10, true],
  ]);
});

test('a level within 0.02 % of 0 or 100 %, as code values may leave it, is black or white', () => {
  expect(scalar(measure([[99.98, 203]]), 'white')).toBe(203);
  expect(reasonOf(measure([[99.97, 203]]).get('white'))).toBe('no 100 % level');
  expect(scalar(measure([[100.02, 203]]), 'white')).toBe(203);
  expect(
    scalar(
      measure([
        [0.02, 0.05],
        [50, 40],
      ]),
      'black',
    ),
  ).toBe(0.05);
  expect(
    reasonOf(
      measure([
        [0.03, 0.05],
        [50, 40],
      ]).get('black'),
    ),
  ).toBe('no full black pattern and no 0 % level');
});

test('a level that is no number is none', () => {
  const found = measure([
    [Number.NaN, 30],
    [Number.POSITIVE_INFINITY, 40],
    [50, 50],
    [100, 200],
  ]);
  expect(pairs(found, 'eotf.error').map(([axis]) => axis)).toEqual([50, 100]);
});

test('each impossible input gives its reason', () => {
  const reason = (levels: [number, number][], id: string) => reasonOf(measure(levels).get(id));
  expect(reason([[50, 40]], 'gamma')).toBe('no 100 % level');
  expect(reason([[50, 40]], 'eotf.error')).toBe('no 100 % level');
  expect(
    reason(
      [
        [50, 40],
        [100, 0],
      ],
      'gamma',
    ),
  ).toBe('the 100 % level has no luminance');
  expect(
    reason(
      [
        [0, 210],
        [50, 40],
        [100, 200],
      ],
      'eotf.error',
    ),
  ).toBe('the 0 % level is not darker than the 100 % level');
  expect(
    reason(
      [
        [50, 40],
        [100, 200],
      ],
      'gamma.slope',
    ),
  ).toBe('one level has no slope');
  expect(
    reason(
      [
        [50, 0],
        [100, 200],
      ],
      'gamma',
    ),
  ).toBe('no level between 0 and 100 % with a luminance above 0');
});

test('a black above a level is a large error, not an undefined one', () => {
  const found = measure([
    [0, 1],
    [5, 0.9],
    [50, 40],
    [100, 200],
  ]);
  const [, five] = pairs(found, 'eotf.error');
  expect(five![1]).toBeCloseTo(100 * (0.9 / bt1886(0.05, 200, 1) - 1), 6);
});

test('gamma is left out where the target is PQ or HLG', () => {
  expect(measure(clipping, hdrConditions).has('gamma')).toBe(false);
});
