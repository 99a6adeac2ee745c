import { describe, expect, test } from 'vitest';
import { cie1931, firstWavelengthNm } from '../../shared/colour/cie1931.ts';
import { daylightXy, planckianXy } from '../../shared/colour/planckian.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose, expectRelative } from './closeness.ts';

const { daylight_formula: daylight } = referenceJson<{ daylight_formula: { T: number; xy: number[] }[] }>(
  'whitepoints.json',
);

describe('CIE 1931 functions', () => {
  test('every digit of the table, by its sums and first moments', () => {
    // Summed in decimal arithmetic from the table of the colour-science repository.
    const functions = [cie1931.xBar, cie1931.yBar, cie1931.zBar];
    const sums = [106.865469489595, 106.856917101172, 106.892251278636];
    const moments = [61100.7990144893, 59860.37595662152, 48535.92364831668];
    functions.forEach((values, k) => {
      expect(values).toHaveLength(471);
      expectClose([values.reduce((sum, value) => sum + value, 0)], [sums[k]!], 2e-13);
      const moment = values.reduce((sum, value, i) => sum + value * (firstWavelengthNm + i), 0);
      expectRelative(moment, moments[k]!, 1e-14);
    });
  });

  test('ȳ peaks with 1 at 555 nm', () => {
    expect(Math.max(...cie1931.yBar)).toBe(cie1931.yBar[555 - firstWavelengthNm]);
    expect(cie1931.yBar[555 - firstWavelengthNm]).toBe(1);
  });
});

describe('daylight', () => {
  test('locus of CIE 15', () => {
    for (const { T, xy } of daylight) expectClose(daylightXy(T), xy, 6e-7);
    // 4000 and 25 000 K are the published ends, (0.3823, 0.3838) and (0.2499, 0.2548).
    expectClose([...daylightXy(4000), ...daylightXy(25000)], [0.3823, 0.3838, 0.2499, 0.2548], 6e-5);
    expectClose(daylightXy(7000), daylightXy(7000.0001), 2e-6);
    expectClose(daylightXy(7000), [0.3053946, 0.3216393], 5e-5);
  });

  test('is not defined outside', () => {
    for (const kelvin of [3999, 25001, Number.NaN])
      expect(() => daylightXy(kelvin)).toThrow(`daylight is defined from 4000 to 25 000 K, not at ${kelvin}`);
  });
});

test('black bodies need a temperature of 100 K or more', () => {
  expect(() => planckianXy(99.9)).toThrow(RangeError);
  expect(() => planckianXy(Number.NaN)).toThrow(RangeError);
  expect(() => planckianXy(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  const [x, y] = planckianXy(100);
  expectClose([x, y, x + y], [0.7347, 0.2653, 1], 2e-4);
});
