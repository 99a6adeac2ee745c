import { expect, test } from 'vitest';
import type { Run } from '../../shared/contract/run.ts';
import { measureRun } from '../../shared/measure/index.ts';
import {
  d65,
  de2000,
  expectValues,
  lab,
  measured,
  pairs,
  pq,
  reasonOf,
  scalar,
  type Triple,
  uv,
  xyz,
} from './expected.ts';
import { type Draft, evidenceOf, hdrConditions, readingsOf, sdrConditions } from './inventedUnit.ts';
import { bt709, fullRgb, mix, p3, xyOf } from './mixture.ts';

function measure(drafts: Draft[], conditions: Run = sdrConditions) {
  const { unit, run } = evidenceOf(readingsOf(...drafts), conditions);
  return measureRun(unit, run);
}

const white: Draft = { series: 'primaries', hue: 'white', x: 0.31, y: 0.326, Y: 203 };
const step = (saturation: number, x: number, y: number, Y: number, more: Partial<Draft> = {}): Draft => ({
  series: 'saturation',
  hue: 'red',
  saturation,
  x,
  y,
  Y,
  ...more,
});
const sweep = [
  step(25, 0.39, 0.331, 120),
  step(50, 0.47, 0.332, 75),
  step(75, 0.56, 0.333, 56),
  step(100, 0.645, 0.334, 44),
];

const chroma = ([, a, b]: Triple) => Math.hypot(a, b);
const hueOf = ([, a, b]: Triple) => (Math.atan2(b, a) * 180) / Math.PI;
const D65w = (Y: number) => xyz(...d65, Y);

test('the xy law runs straight from the target white to the hue, as bright as its largest channel allows', () => {
  const found = measure([...sweep, white]);
  const expected = sweep.map(({ saturation, x, y, Y }) => {
    const s = saturation! / 100;
    const [xt, yt] = [0.3127 + s * (0.64 - 0.3127), 0.329 + s * (0.33 - 0.329)];
    const Yt = 203 * mix(bt709, fullRgb(bt709, xt, yt))[1];
    const reading = lab(xyz(x!, y!, Y!), D65w(203));
    const target = lab(xyz(xt, yt, Yt), D65w(203));
    const equal = lab(xyz(xt, yt, Y!), D65w(203));
    return { s: saturation!, Y: Y!, Yt, reading, target, equal };
  });
  expectValues(
    pairs(found, 'sweep.red.luminance'),
    expected.map(({ s, Y, Yt }) => [s, 100 * (Y / Yt - 1)]),
  );
  expectValues(
    pairs(found, 'sweep.red.de2000'),
    expected.map(({ s, reading, target }) => [s, de2000(reading, target)]),
  );
  expectValues(
    pairs(found, 'sweep.red.de2000.colour'),
    expected.map(({ s, reading, equal }) => [s, de2000(reading, equal)]),
  );
  expectValues(
    pairs(found, 'sweep.red.saturation'),
    expected.map(({ s, reading, target }) => [s, 100 * (chroma(reading) / chroma(target) - 1)]),
  );
  expectValues(
    pairs(found, 'sweep.red.hue'),
    expected.map(({ s, reading, target }) => [s, hueOf(reading) - hueOf(target)]),
  );
});

test('the total error of a sweep is what its lightness, chroma and hue parts add up to (no rotation in red)', () => {
  const found = measure([...sweep, white]);
  const part = (name: string) => pairs(found, `sweep.red.de2000.${name}`).map(([, value]) => value);
  const [L, C, H] = [part('L'), part('C'), part('H')];
  pairs(found, 'sweep.red.de2000').forEach(([, total], i) => {
    expect(Math.hypot(L![i]!, C![i]!, H![i]!)).toBeCloseTo(total, 6);
  });
});

test('the uv law runs straight in u′v′', () => {
  const conditions = { ...sdrConditions, target: { ...sdrConditions.target, saturation_law: 'uv' as const } };
  const [u0, v0] = uv(...d65);
  const [u1, v1] = uv(0.64, 0.33);
  const [u, v] = [(u0 + u1) / 2, (v0 + v1) / 2];
  const d = 6 * u - 16 * v + 12;
  const [xt, yt] = [(9 * u) / d, (4 * v) / d];
  const Yt = 203 * mix(bt709, fullRgb(bt709, xt, yt))[1];
  const found = measure([step(50, xt, yt, Yt), white], conditions);
  expectValues(pairs(found, 'sweep.red.de2000'), [[50, 0]], 1e-5);
});

test('the signal law lowers the other channels of the non-linear signal', () => {
  const conditions = {
    ...sdrConditions,
    target: { ...sdrConditions.target, saturation_law: 'signal' as const },
  };
  const target = mix(bt709, [1, 0.5 ** 2.4, 0.5 ** 2.4]);
  const found = measure([step(50, ...xyOf(target), 203 * target[1]), white], conditions);
  expectValues(pairs(found, 'sweep.red.de2000'), [[50, 0]], 1e-5);
});

test('a sent signal defines the target whatever the law says', () => {
  const target = mix(bt709, [0.8 ** 2.4, 0.3 ** 2.4, 0.3 ** 2.4]);
  const found = measure([step(60, ...xyOf(target), 203 * target[1], { signal: [80, 30, 30] }), white]);
  expectValues(pairs(found, 'sweep.red.de2000'), [[60, 0]], 1e-5);
});

test('a stimulus under 100 % dims the target by the EOTF', () => {
  const Yt = 203 * 0.75 ** 2.4 * mix(bt709, [1, 0, 0])[1];
  const found = measure([step(100, 0.64, 0.33, Yt, { stimulus: 75 }), white]);
  expectValues(pairs(found, 'sweep.red.luminance'), [[100, 0]]);
});

test('of several amplitudes the one with most steps is used, of equally many the largest', () => {
  const at = (stimulus: number, ...saturations: number[]) =>
    saturations.map((saturation) => step(saturation, 0.4 + saturation / 500, 0.33, 40, { stimulus }));
  const used = (...drafts: Draft[]) => {
    const found = measured(measure([...drafts, white]), 'sweep.red.de2000');
    return [found.values.map(({ axis }) => axis), found.notes.find((note) => note.includes('amplitudes'))];
  };
  expect(used(...at(100, 20, 40), ...at(75, 50, 60, 70), ...at(90, 80))).toEqual([
    [50, 60, 70],
    'measured at 3 amplitudes: steps of 75 % stimulus are used',
  ]);
  expect(used(...at(75, 20, 40), ...at(90, 50, 60), ...at(50, 70, 80))).toEqual([
    [50, 60],
    'measured at 3 amplitudes: steps of 90 % stimulus are used',
  ]);
});

test('in PQ the target is absolute and L* is scaled by the highest grey', () => {
  const Yt = pq(0.5) * mix(p3, [1, 0, 0])[1];
  const found = measure(
    [
      step(100, 0.675, 0.322, 0.9 * Yt, { stimulus: 50 }),
      { series: 'greyscale', stimulus: 60, x: 0.3127, y: 0.329, Y: 240 },
      white,
    ],
    hdrConditions,
  );
  expectValues(pairs(found, 'sweep.red.luminance'), [[100, -10]]);
  expectValues(pairs(found, 'sweep.red.de2000'), [
    [100, de2000(lab(xyz(0.675, 0.322, 0.9 * Yt), D65w(240)), lab(xyz(0.68, 0.32, Yt), D65w(240)))],
  ]);
});

test('a full HLG red shows Ys^γ of white, as the OOTF makes it (BT.2100)', () => {
  const conditions = {
    ...hdrConditions,
    signal: 'HLG',
    target: { gamut: 'BT.2020' as const, white: 'D65', eotf: 'HLG' },
  };
  const Ys = 0.2627;
  const found = measure([step(100, 0.708, 0.292, 1000 * Ys ** 1.2), { ...white, Y: 1000 }], conditions);
  // The weight 0.2627 is printed with four digits.
  expect(Math.abs(pairs(found, 'sweep.red.luminance')[0]![1])).toBeLessThan(0.01);
});

test('Yw comes from the white of the primaries, else the 100 % grey, else a 0 % saturation row', () => {
  const at = (...more: Draft[]) => pairs(measure([sweep[3]!, ...more]), 'sweep.red.luminance').at(-1)![1];
  const grey: Draft = { series: 'greyscale', stimulus: 100, x: 0.31, y: 0.33, Y: 190 };
  const unsaturated = step(0, 0.31, 0.33, 180);
  const red = mix(bt709, [1, 0, 0])[1];
  const error = (Yw: number) => 100 * (44 / (Yw * red) - 1);
  expect(at(unsaturated, grey, white)).toBeCloseTo(error(203), 6);
  expect(at(unsaturated, grey)).toBeCloseTo(error(190), 6);
  expect(at(unsaturated)).toBeCloseTo(error(180), 6);
  const dim = { ...white, signal: [75, 75, 75] as const, Y: 90 };
  const dimmer = step(0, 0.31, 0.33, 80, { signal: [75, 75, 75] });
  expect(at(unsaturated, dim, dimmer)).toBeCloseTo(error(180), 6);
});

test('without any white luminance and total are undefined, chroma and hue are taken at L* 50', () => {
  const found = measure(sweep);
  expect(reasonOf(found.get('sweep.red.luminance'))).toBe('no white in this run');
  expect(reasonOf(found.get('sweep.red.de2000'))).toBe('no white in this run');
  const { x, y } = sweep[3]!;
  const Yn = 1 / (66 / 116) ** 3;
  const reading = lab(xyz(x!, y!, 1), D65w(Yn));
  const target = lab(xyz(0.64, 0.33, 1), D65w(Yn));
  expect(reading[0]).toBeCloseTo(50, 9);
  expect(pairs(found, 'sweep.red.saturation').at(-1)![1]).toBeCloseTo(
    100 * (chroma(reading) / chroma(target) - 1),
    6,
  );
  // Ratios of chroma do not depend on L*, the difference does.
  expect(pairs(found, 'sweep.red.de2000.colour').at(-1)![1]).toBeCloseTo(de2000(reading, target), 5);
  expect(measured(found, 'sweep.red.hue').notes.join()).toContain('L* 50');
});

test('a white pattern of another series scales L* where no white anchors the target', () => {
  const found = measure([...sweep, { series: 'window', window: 10, Y: 260 }]);
  const { x, y, Y } = sweep[3]!;
  const reading = lab(xyz(x!, y!, Y!), D65w(260));
  const target = lab(xyz(0.64, 0.33, Y!), D65w(260));
  expect(pairs(found, 'sweep.red.saturation').at(-1)![1]).toBeCloseTo(
    100 * (chroma(reading) / chroma(target) - 1),
    6,
  );
  expect(measured(found, 'sweep.red.saturation').notes.join()).toContain('highest white');
});

test('any white pattern scales L*, the brightest of them; no other pattern does', () => {
  const whites: Draft[] = [
    { series: 'greyscale', stimulus: 75, Y: 260 },
    { series: 'primaries', hue: 'white', stimulus: 90, x: 0.31, y: 0.33, Y: 260 },
    step(0, 0.31, 0.33, 260, { stimulus: 90 }),
    { series: 'window', window: 10, Y: 260 },
    { series: 'contrast', pattern: 'full-white', Y: 260 },
    { series: 'uniformity', level: 'white', position: 'r1c1', Y: 260 },
    { series: 'uniformity', position: 'r1c1', Y: 260 },
    { series: 'angle', angle: 30, Y: 260 },
  ];
  const others: Draft[] = [
    { series: 'primaries', hue: 'green', x: 0.3, y: 0.6, Y: 260 },
    step(20, 0.36, 0.33, 260, { hue: 'blue' }),
    { series: 'contrast', pattern: 'chequer-white', position: 'r1c1', Y: 260 },
    { series: 'contrast', pattern: 'full-black', Y: 260 },
    { series: 'uniformity', level: 'grey50', position: 'r1c1', Y: 260 },
    { series: 'angle', angle: 0, level: 'grey50', Y: 260 },
    { series: 'chart', patch: '1', x: 0.3, y: 0.3, Y: 260 },
  ];
  const dimmer: Draft[] = [
    { series: 'greyscale', stimulus: 70, Y: 100 },
    { series: 'angle', angle: 45, Y: 90 },
  ];
  const { x, y, Y } = sweep[3]!;
  const expected = (Yn: number) => de2000(lab(xyz(x!, y!, Y!), D65w(Yn)), lab(xyz(0.64, 0.33, Y!), D65w(Yn)));
  for (const white of whites) {
    const found = measure([sweep[3]!, white, ...dimmer]);
    expect(measured(found, 'sweep.red.saturation').notes.join(), JSON.stringify(white)).toContain(
      'highest white',
    );
    expect(pairs(found, 'sweep.red.de2000.colour').at(-1)![1]).toBeCloseTo(expected(260), 5);
  }
  for (const other of others)
    expect(
      measured(measure([sweep[3]!, other]), 'sweep.red.saturation').notes.join(),
      JSON.stringify(other),
    ).toContain('L* 50');
});

test('hue is undefined under 5 C*, saturation where the target has no chroma', () => {
  const found = measure([step(0, 0.3127, 0.329, 203), step(1, 0.3145, 0.329, 200), sweep[3]!, white]);
  expect(pairs(found, 'sweep.red.hue').map(([axis]) => axis)).toEqual([100]);
  expect(pairs(found, 'sweep.red.saturation').map(([axis]) => axis)).toEqual([1, 100]);
});

test('hue differences go the shorter way round', () => {
  const magenta = mix(bt709, [1, 0, 1]);
  const found = measure([{ ...step(100, ...xyOf(magenta), 203 * magenta[1]), hue: 'magenta' }, white]);
  expect(Math.abs(scalar(found, 'sweep.magenta.hue'))).toBeLessThan(1e-6);
});
