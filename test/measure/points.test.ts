import { expect, test } from 'vitest';
import { pointsOf } from '../../shared/measure/points.ts';
import { type Draft, readingsOf } from './inventedUnit.ts';

const light = { x: 0.31, y: 0.33, Y: 100 };

test('readings of a colour share its class, whatever their series; greys are one class, all others another', () => {
  const classOf = (draft: Draft) => pointsOf(readingsOf({ ...light, ...draft })).hueClass[0];
  const levels = (series: 'uniformity' | 'angle', level: string | undefined): Draft => ({
    series,
    position: 'r1c1',
    angle: 30,
    ...(level === undefined ? {} : { level }),
  });
  for (const hue of ['red', 'green', 'blue'] as const) {
    expect(classOf({ series: 'primaries', hue })).toBe(hue);
    expect(classOf({ series: 'saturation', hue, saturation: 50 })).toBe(hue);
    expect(classOf({ series: 'saturation', hue, saturation: 0 })).toBe('grey');
    expect(classOf(levels('uniformity', hue))).toBe(hue);
    expect(classOf(levels('angle', hue))).toBe(hue);
  }
  for (const hue of ['cyan', 'magenta', 'yellow'] as const) {
    expect(classOf({ series: 'primaries', hue })).toBe('other');
    expect(classOf({ series: 'saturation', hue, saturation: 50 })).toBe('other');
    expect(classOf(levels('uniformity', hue))).toBe('other');
    expect(classOf(levels('angle', hue))).toBe('other');
  }
  for (const hue of ['white', 'black'] as const) expect(classOf({ series: 'primaries', hue })).toBe('grey');
  for (const level of ['white', 'grey50', 'black', undefined]) {
    expect(classOf(levels('uniformity', level))).toBe('grey');
    expect(classOf(levels('angle', level))).toBe('grey');
  }
  expect(classOf({ series: 'greyscale', stimulus: 50 })).toBe('grey');
  expect(classOf({ series: 'window', window: 10 })).toBe('grey');
  expect(classOf({ series: 'contrast', pattern: 'full-white' })).toBe('grey');
  expect(classOf({ series: 'chart', patch: '1' })).toBe('other');
});

test('readings are repeats where every part of their address is equal, and only there', () => {
  const sizes = (...drafts: Draft[]) => [
    ...pointsOf(readingsOf(...drafts.map((draft) => ({ ...light, ...draft })))).repeats,
  ];
  const apart: [Draft, Draft][] = [
    [
      { series: 'greyscale', stimulus: 50 },
      { series: 'greyscale', stimulus: 51 },
    ],
    [
      { series: 'greyscale', stimulus: 50, window: 10 },
      { series: 'greyscale', stimulus: 50 },
    ],
    [
      { series: 'greyscale', signal: [50, 50, 50] },
      { series: 'greyscale', signal: [51, 51, 51] },
    ],
    [
      { series: 'primaries', hue: 'red' },
      { series: 'primaries', hue: 'red', stimulus: 75 },
    ],
    [
      { series: 'primaries', hue: 'red', signal: [100, 0, 0] },
      { series: 'primaries', hue: 'red', signal: [75, 0, 0] },
    ],
    [
      { series: 'saturation', hue: 'red', saturation: 50 },
      { series: 'saturation', hue: 'green', saturation: 50 },
    ],
    [
      { series: 'saturation', hue: 'red', saturation: 50, stimulus: 75 },
      { series: 'saturation', hue: 'red', saturation: 50 },
    ],
    [
      { series: 'chart', patch: '1' },
      { series: 'chart', patch: '2' },
    ],
    [
      { series: 'window', window: 10, seconds: 2 },
      { series: 'window', window: 10, seconds: 3 },
    ],
    [
      { series: 'window', window: 10 },
      { series: 'window', window: 10, stimulus: 90 },
    ],
    [
      { series: 'contrast', pattern: 'chequer-white', position: 'r1c1' },
      { series: 'contrast', pattern: 'chequer-white', position: 'r1c2' },
    ],
    [
      { series: 'uniformity', level: 'white', position: 'r1c1' },
      { series: 'uniformity', level: 'grey50', position: 'r1c1' },
    ],
    [
      { series: 'angle', angle: 30 },
      { series: 'angle', angle: 30, plane: 'vertical' },
    ],
    [
      { series: 'single', quantity: 'lag', value: 1, unit: 'ms' },
      { series: 'single', quantity: 'lag', value: 1, unit: 'frames' },
    ],
  ];
  for (const [one, other] of apart) {
    expect(sizes(one, other), JSON.stringify([one, other])).toEqual([1, 1]);
    expect(sizes(one, one, other).sort(), JSON.stringify(one)).toEqual([1, 2]);
  }
  // What goes without saying is the same as said.
  expect(
    sizes({ series: 'primaries', hue: 'red' }, { series: 'primaries', hue: 'red', stimulus: 100 }),
  ).toEqual([2]);
  expect(sizes({ series: 'window', window: 10 }, { series: 'window', window: 10, stimulus: 100 })).toEqual([
    2,
  ]);
  expect(
    sizes({ series: 'angle', angle: 0 }, { series: 'angle', angle: 0, plane: 'horizontal', level: 'white' }),
  ).toEqual([2]);
  expect(
    sizes(
      { series: 'uniformity', position: 'r1c1' },
      { series: 'uniformity', position: 'r1c1', level: 'white' },
    ),
  ).toEqual([2]);
});
