import { expect, test } from 'vitest';
import { catalogue, catalogueEntry, measureRun } from '../../shared/measure/index.ts';
import { evidenceOf, fullRun, hdrConditions, readingsOf, sdrConditions } from './inventedUnit.ts';

test('every quantity that a run gives stands in the catalogue, with the unit it is measured in', () => {
  for (const conditions of [sdrConditions, hdrConditions]) {
    const { unit, run } = evidenceOf(readingsOf(...fullRun()), conditions);
    for (const [id, quantity] of measureRun(unit, run)) {
      const entry = catalogueEntry(id);
      expect(entry, id).toBeDefined();
      if (quantity.state === 'measured') {
        expect(quantity.unit, id).toBe(entry!.unit);
        expect(quantity.values[0]!.axis === undefined, id).toBe(entry!.axisUnit === undefined);
      }
    }
  }
});

test('ids with parts are found under their own row and read as words', () => {
  expect(catalogueEntry('angle.vertical.luminance')).toMatchObject({ pattern: 'angle.vertical.luminance' });
  expect(catalogueEntry('angle.vertical.grey50.de2000')).toMatchObject({
    pattern: 'angle.vertical.<level>.de2000',
  });
  expect(catalogueEntry('angle.luminance.at50')).toMatchObject({
    pattern: 'angle.luminance.at50',
    unit: '°',
  });
  expect(catalogueEntry('uniformity.grey50.colour')?.label).toBe('Unevenness of colour on 50 % grey');
  expect(catalogueEntry('coverage.p3.uv')?.label).toBe('Coverage of P3 in CIE 1976 u′v′');
  expect(catalogueEntry('sweep.red.saturation')?.label).toBe('Saturation error of red');
  expect(catalogueEntry('power.hdr-calm')?.label).toBe('Power drawn in hdr calm');
  expect(catalogueEntry('power.sdr')?.label).toBe('Power drawn in SDR');
  expect(catalogueEntry('nothing.of.the.kind')).toBeUndefined();
});

/** Decimals as reviews print them; common practice, no source. */
const printedDecimals: readonly (readonly [RegExp, number])[] = [
  [/^(coverage|area)\./, 1],
  [/^volume\./, 0],
  [/^grey\.balance\./, 1],
  [/(de2000|de76|de94|deitp|\.colour|\.[LCH])$/, 1],
  [/^sweep\..*\.hue$/, 1],
  [/^(white\.(duv|distance)|grey\.tint(\.[uv])?|uniformity\..*\.colour)$/, 4],
  [/^gamma/, 2],
  [/^black$/, 3],
  [/^eotf\.rolloff\.spread$/, 1],
  [/^(lag|response|standby)/, 1],
];

test('decimals are those of print: ΔE one, chromaticity four, gamma two, black three, luminance and % none', () => {
  for (const { pattern, decimals } of catalogue) {
    // The last that fits: a colour unevenness is a chromaticity.
    const expected = printedDecimals.findLast(([which]) => which.test(pattern))?.[1] ?? 0;
    const isAngle = pattern.endsWith('.at3') || pattern.endsWith('.total');
    expect([pattern, decimals]).toEqual([pattern, isAngle ? (pattern.endsWith('.at3') ? 0 : 1) : expected]);
  }
});

test('a pattern stands once, and its numbers make sense', () => {
  expect(new Set(catalogue.map(({ pattern }) => pattern)).size).toBe(catalogue.length);
  for (const { pattern, decimals, importance, label, short } of catalogue) {
    expect(decimals, pattern).toBeGreaterThanOrEqual(0);
    expect(importance, pattern).toBeGreaterThanOrEqual(0);
    expect(importance, pattern).toBeLessThanOrEqual(1);
    expect(label.length * short.length, pattern).toBeGreaterThan(0);
  }
});
