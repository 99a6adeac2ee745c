import { expect, test } from 'vitest';
import type { Run } from '../../shared/contract/run.ts';
import type { Unit } from '../../shared/contract/unit.ts';
import { measureRun, placeOf } from '../../shared/measure/index.ts';
import { referenceJson } from '../reference/read.ts';
import { measured, pairs, reasonOf, scalar } from './expected.ts';
import { type Draft, evidenceOf, hdrConditions, readingsOf, sdrConditions } from './inventedUnit.ts';

function measure(drafts: Draft[], conditions: Run = sdrConditions, unit: Partial<Unit> = {}) {
  const evidence = evidenceOf(readingsOf(...drafts), conditions, unit);
  return measureRun(evidence.unit, evidence.run);
}
const window = (
  size: number | undefined,
  seconds: number | undefined,
  Y: number,
  more: Partial<Draft> = {},
): Draft => ({
  series: 'window',
  ...(size === undefined ? {} : { window: size }),
  ...(seconds === undefined ? {} : { seconds }),
  Y,
  ...more,
});

test('peak is the highest reading within 10 s or without time, at full signal', () => {
  const found = measure(
    [
      window(10, 1, 700),
      window(10, 8, 742),
      window(10, 11, 800),
      window(10, 3, 900, { stimulus: 75 }),
      window(10, 4, 910, { signal: [75, 75, 75] }),
      window(10, 5, 920, { signal: [100, 0, 0] }),
      window(18, 5, 600, { signal: [100, 100, 100] }),
      window(2, undefined, 650),
      window(100, 30, 250),
    ],
    hdrConditions,
  );
  expect(pairs(found, 'peak')).toEqual([
    [2, 650],
    [10, 742],
    [18, 600],
  ]);
  expect(measured(found, 'peak').max).toMatchObject({ axis: 10, value: 742 });
});

test('sustained is the mean from 120 s on, held is its share of the peak', () => {
  const found = measure([
    window(10, 2, 800),
    window(10, 119, 500),
    window(10, 120, 640),
    window(10, 300, 600),
  ]);
  expect(pairs(found, 'peak.sustained')).toEqual([[10, 620]]);
  expect(pairs(found, 'peak.hold')).toEqual([[10, 77.5]]);
});

test('each window is also given against the brightest', () => {
  const found = measure([window(1, 1, 500), window(10, 1, 800), window(100, 1, 200)]);
  expect(pairs(found, 'peak.abl')).toEqual([
    [1, 62.5],
    [10, 100],
    [100, 25],
  ]);
});

test('late readings alone give no peak, and no time at all gives no sustained', () => {
  expect(reasonOf(measure([window(10, 60, 500)]).get('peak'))).toBe(
    'no full-signal window was read within 10 s',
  );
  expect(measure([window(10, undefined, 500)]).has('peak.sustained')).toBe(false);
});

const field = (pattern: Draft['pattern'], Y: number, position?: string): Draft => ({
  series: 'contrast',
  ...(pattern === undefined ? {} : { pattern }),
  ...(position === undefined ? {} : { position }),
  Y,
});

test('contrast.native is full white over full black', () => {
  const found = measure([field('full-white', 300), field('full-black', 0.05)]);
  expect(scalar(found, 'contrast.native')).toBeCloseTo(6000, 9);
  expect(scalar(found, 'contrast.sequential')).toBeCloseTo(6000, 9);
  expect(scalar(found, 'black')).toBe(0.05);
});

type Geometry = {
  definitions: {
    item: string;
    example: { white: number[]; black: number[]; CR: number; L: number[]; nonuniformity_percent: number };
  }[];
};
const definitions = referenceJson<Geometry>('geometry.json').definitions;
const example = (item: string) => definitions.find((definition) => definition.item.startsWith(item))!.example;

test('contrast.chequer is mean white over mean black (reference example)', () => {
  const { white, black, CR } = example('chequerboard');
  const found = measure([
    ...white.map((Y, i) => field('chequer-white', Y, `r${i}c1`)),
    ...black.map((Y, i) => field('chequer-black', Y, `r${i}c2`)),
  ]);
  expect(scalar(found, 'contrast.chequer')).toBeCloseTo(CR, 3);
  expect(found.has('contrast.native')).toBe(false);
});

test('native asks for dimming off or no zones', () => {
  const drafts = [field('full-white', 300), field('full-black', 0.05)];
  const native = (dimming: Run['dimming'], zones?: number) =>
    measure(drafts, { ...sdrConditions, dimming }, zones === undefined ? {} : { zones }).get(
      'contrast.native',
    );
  expect(native('off', 32)?.state).toBe('measured');
  expect(native('none', 32)?.state).toBe('measured');
  expect(native('high', 0)?.state).toBe('measured');
  expect(native('as-set')?.state).toBe('measured');
  expect(reasonOf(native('high', 32))).toBe('dimming was high, not off');
  expect(reasonOf(native(undefined, 32))).toBe('dimming was as set, not off');
  expect(reasonOf(native('medium'))).toBe('dimming was medium, not off');
  expect(
    measure(drafts, { ...sdrConditions, dimming: 'high' }, { zones: 32 }).get('contrast.sequential')?.state,
  ).toBe('measured');
});

test('a black under twice the floor gives a lower bound only', () => {
  const found = measure([field('full-white', 300), field('full-black', 0.0039)]);
  expect(found.get('contrast.native')).toMatchObject({ state: 'over', over: 75000, unit: ':1' });
  expect(measure([field('full-white', 300), field('full-black', 0)]).get('contrast.native')).toMatchObject({
    over: 75000,
  });
  expect(measure([field('full-white', 300), field('full-black', 0.004)]).get('contrast.native')?.state).toBe(
    'measured',
  );
});

test('half a contrast is undefined with its reason', () => {
  expect(reasonOf(measure([field('full-white', 300)]).get('contrast.native'))).toBe('no black pattern');
  expect(reasonOf(measure([field('full-black', 0.05)]).get('contrast.native'))).toBe('no white pattern');
  const { instrument } = sdrConditions;
  const noFloor = { ...sdrConditions, instrument: { ...instrument, floor_cdm2: 0 } };
  expect(
    reasonOf(measure([field('full-white', 300), field('full-black', 0)], noFloor).get('contrast.native')),
  ).toBe('black has no luminance and the instrument states no floor');
});

test('in SDR the 100 % grey is white, in HDR there is none', () => {
  const grey: Draft = { series: 'greyscale', stimulus: 100, Y: 203 };
  expect(scalar(measure([grey]), 'white')).toBe(203);
  expect(measure([grey], hdrConditions).has('white')).toBe(false);
});

const cells = (level: string, values: number[], colours: [number, number][] = []): Draft[] =>
  values.map((Y, i) => ({
    series: 'uniformity',
    level,
    position: `r${Math.floor(i / 3) + 1}c${(i % 3) + 1}`,
    Y,
    x: colours[i]?.[0] ?? 0.3127,
    y: colours[i]?.[1] ?? 0.329,
  }));

test('unevenness is 100·(Lmax − Lmin)/Lmax (reference example); the worst cell is named with its place', () => {
  const { L, nonuniformity_percent } = example('luminance non-uniformity');
  const found = measure(cells('white', L));
  expect(scalar(found, 'uniformity.white')).toBeCloseTo(nonuniformity_percent, 4);
  // The centre has 420, r3c3 376: 44 under.
  expect(measured(found, 'uniformity.white').notes).toContain('worst cell r3c3 (corner)');
  expect(pairs(found, 'uniformity.white.cell').at(-1)).toEqual([
    'r3c3',
    expect.closeTo(100 * (376 / 420 - 1), 9),
  ]);
});

test('a cell lies in a corner, on an edge, in the centre or between', () => {
  const words = (size: number) =>
    Array.from({ length: size }, (_, row) =>
      Array.from({ length: size }, (_, column) => placeOf({ row: row + 1, column: column + 1 }, size)),
    );
  expect(words(3)).toEqual([
    ['corner', 'edge', 'corner'],
    ['edge', 'centre', 'edge'],
    ['corner', 'edge', 'corner'],
  ]);
  expect(words(5)).toEqual([
    ['corner', 'edge', 'edge', 'edge', 'corner'],
    ['edge', 'inner field', 'inner field', 'inner field', 'edge'],
    ['edge', 'inner field', 'centre', 'inner field', 'edge'],
    ['edge', 'inner field', 'inner field', 'inner field', 'edge'],
    ['corner', 'edge', 'edge', 'edge', 'corner'],
  ]);
});

test('unevenness of colour is the greatest Δu′v′ from the centre', () => {
  const colours: [number, number][] = Array.from({ length: 9 }, () => [0.3127, 0.329]);
  colours[2] = [0.318, 0.333];
  colours[6] = [0.31, 0.327];
  const found = measure(cells('grey50', [40, 41, 42, 40, 41, 42, 40, 41, 42], colours));
  const uv = ([x, y]: [number, number]) => [(4 * x) / (-2 * x + 12 * y + 3), (9 * y) / (-2 * x + 12 * y + 3)];
  const [a, b] = [uv(colours[2]), uv([0.3127, 0.329])];
  expect(scalar(found, 'uniformity.grey50.colour')).toBeCloseTo(Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!), 9);
});

test('cells stand row by row whatever their order, also in a grid beyond nine; of equal cells the first is worst', () => {
  const cell = (position: string, Y: number): Draft => ({
    series: 'uniformity',
    level: 'white',
    position,
    Y,
  });
  const found = measure([
    cell('r11c11', 200),
    cell('r10c2', 190),
    cell('r2c10', 190),
    cell('r2c9', 195),
    cell('r6c6', 200),
  ]);
  expect(pairs(found, 'uniformity.white.cell').map(([axis]) => axis)).toEqual([
    'r2c9',
    'r2c10',
    'r6c6',
    'r10c2',
    'r11c11',
  ]);
  expect(measured(found, 'uniformity.white').notes).toEqual(
    expect.arrayContaining(['5 of 121 cells were measured', 'worst cell r2c10 (inner field)']),
  );
});

test('black cells under twice the floor are undefined', () => {
  const found = measure(cells('black', [0.05, 0.06, 0.05, 0.003, 0.05, 0.06, 0.05, 0.04, 0.05]));
  expect(reasonOf(found.get('uniformity.black'))).toBe("cells are under twice the instrument's floor");
  const faint = (Y: number) =>
    measure(cells('black', [0.008, 0.007, 0.006, 0.008, Y, 0.006, 0.008, 0.007, 0.006]));
  expect(scalar(faint(0.004), 'uniformity.black')).toBeCloseTo(50, 9);
  expect(reasonOf(faint(0.0039).get('uniformity.black'))).toBe(
    "cells are under twice the instrument's floor",
  );
  expect(reasonOf(measure(cells('white', [200])).get('uniformity.white'))).toBe('one cell has no evenness');
  const noCentre = cells('white', [200, 199, 198, 200, 0, 201, 200, 199, 190]).filter(({ Y }) => Y !== 0);
  expect(reasonOf(measure(noCentre).get('uniformity.white.cell'))).toBe('no centre cell');
  expect(scalar(measure(noCentre), 'uniformity.white')).toBeCloseTo((100 * 11) / 201, 9);
});

test('single values are taken as noted; a bare power is named with the mode', () => {
  const single = (quantity: string, value: number, unit: string): Draft => ({
    series: 'single',
    quantity,
    value,
    unit,
  });
  const found = measure([
    single('lag', 14.2, 'ms'),
    single('power', 92, 'W'),
    single('power.eco', 61, 'W'),
    single('noise', 24, 'dB(A)'),
  ]);
  expect(measured(found, 'lag')).toMatchObject({ unit: 'ms', values: [{ value: 14.2, u: null, rows: [1] }] });
  expect(scalar(found, 'power.calm')).toBe(92);
  expect(scalar(found, 'power.eco')).toBe(61);
  expect(scalar(found, 'noise')).toBe(24);
});
