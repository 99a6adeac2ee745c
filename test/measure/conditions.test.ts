import { expect, test } from 'vitest';
import { runSchema } from '../../shared/contract/run.ts';
import { resolveConditions } from '../../shared/measure/conditions.ts';
import { sdrConditions } from './inventedUnit.ts';

const bare = { mode: 'Calm', stage: 'as-delivered' as const, signal: 'SDR', target: sdrConditions.target };

test('a run without instrument and source takes the house defaults and says so', () => {
  const resolved = resolveConditions(runSchema.parse(bare));
  expect(resolved.instrument).toEqual({
    uLuminance: 0.01,
    ux: 0.0005,
    uy: 0.0005,
    floor: 0.002,
    xyFrom: 0.1,
  });
  expect(resolved.dimming).toBe('as-set');
  expect(resolved.notes).toEqual([
    'no instrument is stated: its uncertainty is the house default',
    'the source states no bits and range: taken as 10 bit, narrow range',
  ]);
});

test('expanded uncertainties are divided by coverage_k, single missing fields are named', () => {
  const resolved = resolveConditions(
    runSchema.parse({
      ...bare,
      source: { bits: 8, range: 'full' },
      instrument: { u_luminance_percent: 3, coverage_k: 3, u_x: 0.003, u_y: 0.0015, floor_cdm2: 0.01 },
    }),
  );
  expect(resolved.instrument).toEqual({ uLuminance: 0.01, ux: 0.001, uy: 0.0005, floor: 0.01, xyFrom: 0.1 });
  expect(resolved.notes).toEqual(['the instrument states no xy_from_cdm2: house default used']);
});

test('a run that states everything carries no note', () => {
  expect(resolveConditions(sdrConditions).notes).toEqual([]);
});

test('a target white may be written as two numbers', () => {
  const resolved = resolveConditions({
    ...sdrConditions,
    target: { ...sdrConditions.target, white: '0.3127, 0.3290' },
  });
  expect(resolved.colours?.white).toEqual([0.3127, 0.329]);
});

test('a dynamic-metadata format is HDR', () => {
  const target = { ...sdrConditions.target, eotf: 'PQ', peak: 4000 };
  expect(resolveConditions({ ...sdrConditions, signal: 'Layered HDR', target })).toMatchObject({
    hdr: true,
    targetPeak: 4000,
  });
});
