import { expect, test } from 'vitest';
import { measureRun } from '../../shared/measure/index.ts';
import { crossingOf } from '../../shared/measure/monotoneCurve.ts';
import { d65, de2000, expectValues, lab, measured, pairs, reasonOf, xyz } from './expected.ts';
import { type Draft, evidenceOf, readingsOf } from './inventedUnit.ts';

function measure(...drafts: Draft[]) {
  const { unit, run } = evidenceOf(readingsOf(...drafts));
  return measureRun(unit, run);
}
const at = (angle: number, Y: number, x = 0.3127, y = 0.329, more: Partial<Draft> = {}): Draft => ({
  series: 'angle',
  angle,
  x,
  y,
  Y,
  ...more,
});

test('luminance is the share of the 0° reading, by signed angle', () => {
  const found = measure(at(45, 88), at(-45, 76), at(0, 200), at(30, 130));
  expectValues(pairs(found, 'angle.luminance'), [
    [-45, 38],
    [0, 100],
    [30, 65],
    [45, 44],
  ]);
});

test('colour shift is taken at the 0° luminance, the total is not scaled', () => {
  const W = xyz(...d65, 200);
  const found = measure(at(0, 200, 0.31, 0.327), at(45, 110, 0.319, 0.335));
  const axis = lab(xyz(0.31, 0.327, 200), W);
  expectValues(pairs(found, 'angle.de2000'), [
    [0, 0],
    [45, de2000(lab(xyz(0.319, 0.335, 200), W), axis)],
  ]);
  expectValues(pairs(found, 'angle.de2000.total'), [
    [0, 0],
    [45, de2000(lab(xyz(0.319, 0.335, 110), W), axis)],
  ]);
});

test('a level whose other directions are too dark for colour has no colour shift, not one of 0', () => {
  const black = { level: 'black' };
  const found = measure(at(0, 0.2, 0.31, 0.327, black), at(45, 0.04, 0.33, 0.31, black), at(0, 200));
  expect(reasonOf(found.get('angle.black.de2000'))).toBe('no other direction has a usable chromaticity');
});

test('other levels are held against their own 0° reading, with L* from white', () => {
  const W = xyz(...d65, 200);
  const grey = { level: 'grey50' };
  const found = measure(at(0, 200), at(0, 42, 0.31, 0.327, grey), at(45, 30, 0.32, 0.335, grey));
  expectValues(pairs(found, 'angle.grey50.luminance'), [
    [0, 100],
    [45, (100 * 30) / 42],
  ]);
  expectValues(pairs(found, 'angle.grey50.de2000'), [
    [0, 0],
    [45, de2000(lab(xyz(0.32, 0.335, 42), W), lab(xyz(0.31, 0.327, 42), W))],
  ]);
});

test('a greyscale 100 % level of the same run is the reference white', () => {
  const W = xyz(...d65, 240);
  const found = measure(
    { series: 'greyscale', stimulus: 100, x: 0.3127, y: 0.329, Y: 240 },
    at(0, 200),
    at(45, 110, 0.32, 0.335),
  );
  expectValues(pairs(found, 'angle.de2000'), [
    [0, 0],
    [45, de2000(lab(xyz(0.32, 0.335, 200), W), lab(xyz(...d65, 200), W))],
  ]);
});

test('a reference white without luminance leaves no colour shift, and says so', () => {
  const found = measure(at(0, 200), at(30, 150), { series: 'greyscale', stimulus: 100, Y: 0 });
  expect(reasonOf(found.get('angle.de2000'))).toBe('the reference white has no luminance');
  expect(reasonOf(found.get('angle.de2000.total'))).toBe('the reference white has no luminance');
  expect(reasonOf(found.get('angle.de2000.at3'))).toBe('the reference white has no luminance');
  expectValues(pairs(found, 'angle.luminance'), [
    [0, 100],
    [30, 75],
  ]);
  const black = measure(at(0, 0.2, 0.3, 0.3, { level: 'black' }), at(30, 0.3, 0.3, 0.3, { level: 'black' }));
  expect(reasonOf(black.get('angle.black.de2000'))).toBe('no 100 % level');
});

test('the vertical plane has its own name and may share the 0° reading', () => {
  const vertical = { plane: 'vertical' as const };
  const found = measure(at(0, 200), at(20, 150, 0.3127, 0.329, vertical));
  expectValues(pairs(found, 'angle.vertical.luminance'), [
    [0, 100],
    [20, 75],
  ]);
  // Half is lost before the first direction that was measured, not nowhere.
  const steep = measure(at(0, 200), at(-30, 40, 0.3127, 0.329, vertical), at(30, 0, 0.3127, 0.329, vertical));
  const [down, up] = measured(steep, 'angle.vertical.luminance.at50').values;
  expect([down!.axis, up!.axis]).toEqual(['down', 'up']);
  expect(down!.value).toBeGreaterThan(0);
  expect(down!.value).toBeLessThan(30);
  // Straight from 100 to 0 %
  expect(up!.value).toBeCloseTo(15, 5);
});

test('contrast is white over black at each angle, where black is above twice the floor', () => {
  const black = { level: 'black' };
  const found = measure(
    at(0, 200),
    at(30, 150),
    at(45, 100),
    at(0, 0.1, 0.3, 0.3, black),
    at(30, 0.25, 0.3, 0.3, black),
    at(45, 0.003, 0.3, 0.3, black),
  );
  expectValues(pairs(found, 'angle.contrast'), [
    [0, 2000],
    [30, 600],
  ]);
});

test('where black is under twice the floor in every direction, contrast is over the least that all exceed', () => {
  const black = { level: 'black' };
  const found = measure(
    at(0, 200),
    at(30, 150),
    at(60, 10),
    at(0, 0.003, 0.3, 0.3, black),
    at(30, 0, 0.3, 0.3, black),
  );
  // 150/(2·0.002); there is no black at 60°.
  expect(found.get('angle.contrast')).toMatchObject({
    state: 'over',
    unit: ':1',
    over: 37500,
    rows: [1, 2, 4, 5],
  });
  expect(reasonOf(measure(at(30, 0.2, 0.3, 0.3, black)).get('angle.contrast'))).toBe(
    'white and black share no direction',
  );
});

test('without a reading at 0° everything off axis is undefined', () => {
  expect(reasonOf(measure(at(45, 100)).get('angle.luminance'))).toBe('no reading at 0°');
});

test('the angle at half luminance is interpolated on each side', () => {
  const found = measure(at(-60, 90), at(-30, 170), at(0, 200), at(30, 150), at(60, 50));
  const half = Object.fromEntries(pairs(found, 'angle.luminance.at50'));
  expect(half.right).toBeGreaterThan(40);
  expect(half.right).toBeLessThan(50);
  expect(half.left).toBeGreaterThan(50);
  expect(reasonOf(measure(at(0, 200), at(30, 150)).get('angle.luminance.at50'))).toBe(
    '50 % is not passed within 30°',
  );
});

test('a side is not looked at beyond its last direction, nor the other one’s', () => {
  const found = measure(at(-45, 120), at(0, 200), at(30, 150), at(60, 90));
  // On the left 60 % are left at 45°: nothing is said of that side.
  expect(measured(found, 'angle.luminance.at50').values.map(({ axis }) => axis)).toEqual(['right']);
  const right = measured(found, 'angle.luminance.at50').values[0]!;
  expect(right.value).toBeGreaterThan(30);
  expect(right.value).toBeLessThan(60);
  expect(right.rows).toEqual([2, 3, 4]);
  expect(measured(found, 'angle.luminance.at50').notes).toContain(
    'interpolated between the measured directions (monotone cubic)',
  );
  expect(reasonOf(measure(at(-45, 120), at(0, 200), at(30, 150)).get('angle.luminance.at50'))).toBe(
    '50 % is not passed within 45°',
  );
  expect(reasonOf(measure(at(0, 200), at(30, 150)).get('angle.de2000.at3'))).toBe(
    '3 is not passed within 30°',
  );
});

test('a monotone crossing is exact on a straight line and stays between its points', () => {
  expect(crossingOf([0, 10, 30], [100, 90, 70], 80)).toBeCloseTo(20, 6);
  expect(crossingOf([0, 10, 20], [100, 100, 0], 100)).toBe(0);
  expect(crossingOf([0, 10], [100, 90], 50)).toBeUndefined();
});

test('between points the curve is the cubic of Fritsch and Carlson, its slopes held within the circle of radius 3', () => {
  const x = [0, 1, 2, 4];
  const y = [0, 0.1, 3, 3.2];
  // Secants 0.1, 2.9, 0.1; slopes first their means, then each interval in turn held to 3·secant.
  const secants = [0.1, 2.9, 0.1];
  const slopes = [0.1, (0.1 + 2.9) / 2, (2.9 + 0.1) / 2, 0.1];
  secants.forEach((secant, i) => {
    const size = Math.hypot(slopes[i]!, slopes[i + 1]!) / secant;
    if (size <= 3) return;
    slopes[i]! *= 3 / size;
    slopes[i + 1]! *= 3 / size;
  });
  for (const i of [0, 1, 2]) {
    const width = x[i + 1]! - x[i]!;
    // Hermite's cubic at a third of the way, its four weights by hand.
    const third = (20 * y[i]! + 7 * y[i + 1]! + width * (4 * slopes[i]! - 2 * slopes[i + 1]!)) / 27;
    expect(crossingOf(x, y, third)).toBeCloseTo(x[i]! + width / 3, 6);
  }
  expect(crossingOf(x, y, 0.1)).toBe(1);
  expect(crossingOf([0, 1, 2], [0, 1, 2], 0.25)).toBeCloseTo(0.25, 9);
  expect(crossingOf(x, y, 3.3)).toBeUndefined();
  // A flat piece stays flat, and the crossing after it is not pulled before it.
  expect(crossingOf([0, 1, 2], [1, 1, 0], 0.5)).toBeGreaterThan(1);
});
