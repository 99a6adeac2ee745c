import { expect, test } from 'vitest';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { evidenceOf, fullRun, readingsOf } from '../measure/inventedUnit.ts';

const { unit, run } = evidenceOf(readingsOf(...fullRun()));
/** Seven windows, 2,000 draws, eight bytes a number */
const bytesOfWindows = 7 * 2000 * 8;

test('the draws used longest ago are forgotten, and only as many as must be', () => {
  const measurer = createMeasurer(2 * bytesOfWindows);
  const peak = measurer.draws(unit, run, 'peak');
  const sustained = measurer.draws(unit, run, 'peak.sustained');
  expect([peak!.values.byteLength, sustained!.values.byteLength]).toEqual([bytesOfWindows, bytesOfWindows]);
  // Used again, the peak is the younger of the two.
  expect(measurer.draws(unit, run, 'peak')).toBe(peak);
  measurer.draws(unit, run, 'peak.hold');
  expect(measurer.draws(unit, run, 'peak')).toBe(peak);
  expect(measurer.draws(unit, run, 'peak.sustained')).not.toBe(sustained);
});

test('draws that fit are all kept, and the last is kept however large', () => {
  const roomy = createMeasurer(3 * bytesOfWindows);
  const kept = ['peak', 'peak.sustained', 'peak.hold'].map((id) => roomy.draws(unit, run, id));
  expect(['peak', 'peak.sustained', 'peak.hold'].map((id) => roomy.draws(unit, run, id))).toEqual(kept);
  kept.forEach((draws, i) => {
    expect(roomy.draws(unit, run, ['peak', 'peak.sustained', 'peak.hold'][i]!)).toBe(draws);
  });
  const tight = createMeasurer(bytesOfWindows - 1);
  const last = tight.draws(unit, run, 'peak');
  expect(tight.draws(unit, run, 'peak')).toBe(last);
});

test('what a quantity reads of the unit tells measurements apart, and nothing else does', () => {
  const measurer = createMeasurer();
  const first = measurer.measure(unit, run);
  const other = (changes: object) => ({ ...unit, unit: { ...unit.unit, ...changes } });
  expect(measurer.measure(other({ firmware: '9', price: { amount: 1, currency: 'GBP' } }), run)).toBe(first);
  for (const changes of [{ panel: 'OLED' }, { backlight: 'edge LED' }, { zones: 12 }])
    expect(measurer.measure(other(changes), run), JSON.stringify(changes)).not.toBe(first);
  expect(measurer.measure({ ...unit, id: 'another' }, run)).not.toBe(first);
  expect(measurer.measure(unit, { ...run, id: 'another' })).not.toBe(first);
  expect(measurer.measure(unit, { ...run, digest: 'c'.repeat(64) })).not.toBe(first);
});

test('a quantity without draws is answered with null each time', () => {
  const measurer = createMeasurer(1);
  for (const id of ['lag', 'nothing', 'lag', 'nothing']) expect(measurer.draws(unit, run, id)).toBeNull();
});
