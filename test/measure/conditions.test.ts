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

test('each missing field of instrument and source is named, several of them together', () => {
  const notes = (more: object) => resolveConditions(runSchema.parse({ ...bare, ...more })).notes;
  const { name: _name, serial: _serial, floor_cdm2: _floor, u_x: _u, ...rest } = sdrConditions.instrument!;
  expect(notes({ instrument: rest, source: { bits: 12 } })).toEqual([
    'the instrument states no u_x, floor_cdm2: house default used',
    'the source states no range: taken as narrow range',
  ]);
  expect(notes({ instrument: sdrConditions.instrument, source: { range: 'full' } })).toEqual([
    'the source states no bits: taken as 10 bit',
  ]);
});

test('a white that is neither a name nor two numbers between 0 and 1 is not known', () => {
  const colours = (white: string) =>
    resolveConditions({ ...sdrConditions, target: { ...sdrConditions.target, white } }).colours;
  for (const white of [
    '',
    '0.3',
    '0.3127 0.329 0.3583',
    '0.3127, 1',
    '0, 0.329',
    '0.3127; 0',
    'tea',
    '1, 0.3',
  ])
    expect(colours(white), white).toBeUndefined();
  const exact = colours(' 0.25; 0.5 ')!;
  expect(exact.white).toEqual([0.25, 0.5]);
  // X and Z of the white where Y = 1: x/y and (1 − x − y)/y
  expect([exact.whiteX, exact.whiteZ]).toEqual([0.5, 0.5]);
});

test('PQ and HLG are HDR whatever the signal is called, a power law in SDR is not', () => {
  const hdr = (signal: string, eotf: string) =>
    resolveConditions({ ...sdrConditions, signal, target: { ...sdrConditions.target, eotf } });
  expect(hdr('SDR', 'PQ').hdr).toBe(true);
  expect(hdr('SDR', 'HLG').hdr).toBe(true);
  expect(hdr('HLG', 'BT.1886').hdr).toBe(true);
  expect(hdr('SDR', 'gamma 2.35')).toMatchObject({ hdr: false, eotf: { kind: 'power', gamma: 2.35 } });
  expect(hdr('SDR', 'sRGB')).toMatchObject({ hdr: false, eotf: { kind: 'sRGB' } });
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
