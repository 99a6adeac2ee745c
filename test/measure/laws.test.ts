import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { RunMeasurements } from '../../shared/contract/measurement.ts';
import type { Reading } from '../../shared/contract/reading.ts';
import { measureRun } from '../../shared/measure/index.ts';
import { measured, scalar } from './expected.ts';
import { type Draft, evidenceOf, fullRun, readingsOf, sdrConditions } from './inventedUnit.ts';

const full = readingsOf(...fullRun());

function measure(readings: readonly Reading[], conditions = sdrConditions) {
  const { unit, run } = evidenceOf(readings, conditions);
  return measureRun(unit, run);
}

/** Values and u of everything, as plain data. */
function plain(found: RunMeasurements): unknown {
  return JSON.parse(JSON.stringify([...found]));
}

const everything = plain(measure(full));

test('the order of rows changes nothing, to the last digit', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(full, { minLength: full.length }), (shuffled) => {
      expect(plain(measure(shuffled))).toEqual(everything);
    }),
    { numRuns: 2 },
  );
});

test('rows that are left out are named in the same order, in whatever order they come', () => {
  const drafts: Draft[] = [
    { series: 'greyscale', stimulus: 100, x: 0.7, y: 0.5, Y: 200 },
    { series: 'greyscale', stimulus: 50, x: 0.31, y: 0.33, Y: -1 },
    { series: 'greyscale', stimulus: 20, x: 0.31, y: 0, Y: 9 },
    { series: 'greyscale', stimulus: 10, Y: -1 },
    { series: 'primaries', hue: 'red', x: 0.64, y: 0.33 },
  ];
  const rows = readingsOf(...drafts);
  expect(plain(measure([...rows].reverse()))).toEqual(plain(measure(rows)));
  expect(measured(measure(rows), 'white').notes).toEqual([
    'row 2 has no possible luminance and is left out',
    'row 4 has no possible luminance and is left out',
    'impossible chromaticity left out: row 1',
    'impossible chromaticity left out: row 3',
  ]);
});

test('a measurement survives a structured clone with its uncertainty', () => {
  const clone = structuredClone(measure(full));
  expect(plain(clone)).toEqual(everything);
});

test('no quantity is ever NaN or infinite, whatever the readings are', () => {
  const number = fc.oneof(
    fc.constantFrom(0, 1, 100, 1e-9, -1, 1e9),
    fc.double({ min: -10, max: 2000, noNaN: true }),
  );
  const chroma = fc.oneof(fc.constantFrom(null, 0, 1, 0.33), fc.double({ min: -0.1, max: 1.1, noNaN: true }));
  const draft = fc.record({
    series: fc.constantFrom(
      'greyscale',
      'primaries',
      'saturation',
      'chart',
      'window',
      'contrast',
      'uniformity',
      'angle',
    ),
    x: chroma,
    y: chroma,
    Y: fc.oneof(number, fc.constant(null)),
    stimulus: fc.constantFrom(undefined, 0, 5, 10, 50, 75, 90, 100, 109),
    hue: fc.constantFrom('red', 'green', 'blue', 'white', 'cyan', 'black'),
    saturation: fc.constantFrom(0, 25, 50, 100),
    patch: fc.constantFrom('1', '2', 'A'),
    referencexyY: fc.constantFrom([0.3, 0.3, 0.2], [0.64, 0.33, 0.2126], [0.3, 0, 0.5]),
    signal: fc.constantFrom(undefined, [100, 0, 0], [0, 0, 0], [50, 50, 50]),
    window: fc.constantFrom(undefined, 1, 10, 100),
    seconds: fc.constantFrom(undefined, 1, 130),
    pattern: fc.constantFrom('full-white', 'full-black', 'chequer-white', 'chequer-black'),
    position: fc.constantFrom('r1c1', 'r2c2', 'r3c3', 'r9c9', 'nonsense'),
    level: fc.constantFrom(undefined, 'white', 'black', 'grey50'),
    angle: fc.constantFrom(-45, 0, 30, 45),
    plane: fc.constantFrom(undefined, 'vertical'),
  });
  const targets = fc.constantFrom('BT.1886', 'PQ', 'HLG', 'sRGB', 'gamma 2.2');
  fc.assert(
    fc.property(fc.array(draft, { maxLength: 40 }), targets, (drafts, eotf) => {
      const conditions = {
        ...sdrConditions,
        signal: eotf === 'PQ' || eotf === 'HLG' ? 'HDR' : 'SDR',
        target: { ...sdrConditions.target, eotf },
      };
      for (const [id, quantity] of measure(readingsOf(...(drafts as unknown as Draft[])), conditions)) {
        if (quantity.state === 'undefined') {
          expect(quantity.undefined.length, id).toBeGreaterThan(0);
          continue;
        }
        if (quantity.state === 'over') {
          expect(Number.isFinite(quantity.over), id).toBe(true);
          continue;
        }
        const { average, max, min } = quantity;
        for (const estimate of [...quantity.values, average, max, min]) {
          if (!estimate) continue;
          expect(Number.isFinite(estimate.value), id).toBe(true);
          if (estimate.u !== null)
            expect(estimate.u >= 0 && Number.isFinite(estimate.u), `${id} u`).toBe(true);
        }
      }
    }),
    { numRuns: 25 },
  );
});

test('scaling every luminance leaves what is a ratio as it was', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 20, noNaN: true }), (factor) => {
      const scaled = full.map((reading) => ({
        ...reading,
        Y: reading.Y === null ? null : reading.Y * factor,
      }));
      const [one, other] = [measure(full), measure(scaled)];
      for (const id of [
        'contrast.native',
        'contrast.chequer',
        'uniformity.grey50',
        'gamma.average',
        'gamma.slope',
        'coverage.p3.uv',
      ])
        expect(scalar(other, id) / scalar(one, id), id).toBeCloseTo(1, 9);
      for (const id of ['angle.luminance', 'sweep.red.luminance', 'peak.hold', 'chart.de2000'])
        measured(other, id).values.forEach(({ value }, i) => {
          expect(value, id).toBeCloseTo(measured(one, id).values[i]!.value, 6);
        });
    }),
    { numRuns: 3 },
  );
});

test('a coverage is never above 100 % nor above the ratio of areas', () => {
  const corner = (cx: number, cy: number) =>
    fc
      .tuple(
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
        fc.double({ min: -0.05, max: 0.05, noNaN: true }),
      )
      .map(([dx, dy]): [number, number] => [cx + dx, cy + dy])
      // Beyond x + y = 1 there is no light, and no coverage is given.
      .filter(([x, y]) => x + y <= 1);
  fc.assert(
    fc.property(corner(0.62, 0.3), corner(0.22, 0.72), corner(0.15, 0.06), (red, green, blue) => {
      const hues = { red, green, blue };
      const found = measure(
        readingsOf(
          ...(['red', 'green', 'blue'] as const).map(
            (hue): Draft => ({ series: 'primaries', hue, x: hues[hue][0], y: hues[hue][1], Y: 50 }),
          ),
        ),
      );
      for (const diagram of ['xy', 'uv']) {
        const coverage = scalar(found, `coverage.p3.${diagram}`);
        expect(coverage).toBeLessThanOrEqual(100 + 1e-9);
        expect(coverage).toBeLessThanOrEqual(scalar(found, `area.p3.${diagram}`) + 1e-9);
      }
    }),
    { numRuns: 100 },
  );
});

test('equal addresses are averaged, and all of their rows are the evidence', () => {
  const found = measure(
    readingsOf(
      { series: 'greyscale', stimulus: 100, x: 0.31, y: 0.33, Y: 201 },
      { series: 'greyscale', stimulus: 50, x: 0.31, y: 0.33, Y: 40 },
      { series: 'greyscale', stimulus: 100, x: 0.312, y: 0.332, Y: 199 },
    ),
  );
  expect(measured(found, 'white').values[0]).toMatchObject({ value: 200, rows: [1, 3] });
  expect(measured(found, 'gamma').values[0]!.rows).toEqual([1, 2, 3]);
});

test('a y of 0.001 is the least that is taken for light', () => {
  const at = (y: number) =>
    measured(measure(readingsOf({ series: 'greyscale', stimulus: 100, x: 0.3, y, Y: 200 })), 'white').notes;
  expect(at(0.001)).toEqual([]);
  expect(at(0.000999)).toEqual(['impossible chromaticity left out: row 1']);
});

test('impossible chromaticities among repeats are left out and named', () => {
  const found = measure(
    readingsOf(
      { series: 'greyscale', stimulus: 100, x: 0.7, y: 0.5, Y: 200 },
      { series: 'greyscale', stimulus: 100, x: 0.31, y: 0.33, Y: 201 },
      { series: 'greyscale', stimulus: 100, x: 0.3, y: 0, Y: 199 },
      { series: 'greyscale', stimulus: 100, x: 0.32, y: 0.33, Y: 200 },
      { series: 'greyscale', stimulus: 100, Y: 200 },
    ),
  );
  const { values, notes } = measured(found, 'grey.tint.u');
  // u′ of the mean of the two possible ones, 0.315 and 0.33, less that of D65
  expect(values[0]!.value).toBeCloseTo((4 * 0.315) / 6.33 - (4 * 0.3127) / (3 + 12 * 0.329 - 2 * 0.3127), 9);
  expect(notes).toContain('impossible chromaticity left out: row 1, 3');
});

test('a negative or missing luminance is left out and noted, never taken as 0', () => {
  const found = measure(
    readingsOf(
      { series: 'greyscale', stimulus: 100, Y: 200 },
      { series: 'greyscale', stimulus: 50, Y: -3 },
      { series: 'greyscale', stimulus: 40 },
      { series: 'greyscale', stimulus: 30, Y: 10 },
    ),
  );
  const { values, notes } = measured(found, 'gamma');
  expect(values.map(({ axis }) => axis)).toEqual([30]);
  expect(notes).toContain('row 2 has no possible luminance and is left out');
});
