import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { codeToStimulus, stimulusToCode } from '../../../shared/colour/transfer/codeValue.ts';
import { pqEotf } from '../../../shared/colour/transfer/pq.ts';
import { referenceJson } from '../../reference/read.ts';
import { expectClose, expectRelative } from '../closeness.ts';

type Codes = Record<`code${8 | 10 | 12}_${'narrow' | 'full'}`, number>;
const { pq, hlg } = referenceJson<{
  pq: {
    luminance_to_signal: ({ cd_m2: number; signal: number } & Codes)[];
    code10_narrow_to_luminance: { code10_narrow: number; cd_m2: number }[];
    code8_narrow_to_luminance: { code8_narrow: number; cd_m2: number }[];
  };
  hlg: { inverse_oetf_and_display: { signal: number; code10_narrow: number }[] };
}>('transfer.json');

describe('code values', () => {
  test('of reference signals in all bits and ranges', () => {
    for (const row of pq.luminance_to_signal)
      for (const bits of [8, 10, 12] as const)
        for (const range of ['narrow', 'full'] as const)
          expect(stimulusToCode(100 * row.signal, bits, range)).toBe(row[`code${bits}_${range}`]);
    for (const { signal, code10_narrow: code } of hlg.inverse_oetf_and_display)
      expect(stimulusToCode(100 * signal, 10, 'narrow')).toBe(code);
  });

  test('to luminance through PQ', () => {
    for (const { code10_narrow: code, cd_m2 } of pq.code10_narrow_to_luminance)
      expectRelative(pqEotf(codeToStimulus(code, 10, 'narrow') / 100), cd_m2, 2e-9);
    for (const { code8_narrow: code, cd_m2 } of pq.code8_narrow_to_luminance)
      expectRelative(pqEotf(codeToStimulus(code, 8, 'narrow') / 100), cd_m2, 2e-9);
  });

  test('10-bit narrow code is 64 + 8.76 · stimulus', () => {
    for (const stimulus of [0, 25, 50, 75, 100])
      expectClose([codeToStimulus(64 + 8.76 * stimulus, 10, 'narrow')], [stimulus], 1e-12);
  });

  test('every code goes there and back', () => {
    for (const range of ['narrow', 'full'] as const)
      for (const bits of [8, 10] as const)
        for (let code = 0; code < 2 ** bits; code += 1)
          expect(stimulusToCode(codeToStimulus(code, bits, range), bits, range)).toBe(code);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4095 }), (code) => {
        expect(stimulusToCode(codeToStimulus(code, 12, 'narrow'), 12, 'narrow')).toBe(code);
      }),
    );
  });

  test('what the bits cannot hold throws', () => {
    expect(() => codeToStimulus(256, 8, 'full')).toThrow('code 256 does not fit 8 bits');
    expect(() => codeToStimulus(-1, 8, 'full')).toThrow(RangeError);
    expect(() => codeToStimulus(Number.NaN, 8, 'full')).toThrow(RangeError);
    expect(codeToStimulus(255, 8, 'full')).toBe(100);
    expect(() => stimulusToCode(100.3, 8, 'full')).toThrow('a stimulus of 100.3 % does not fit 8 bits');
    expect(() => stimulusToCode(-0.3, 8, 'full')).toThrow(RangeError);
    expect(() => stimulusToCode(Number.NaN, 8, 'full')).toThrow(RangeError);
    expect([stimulusToCode(100.1, 8, 'full'), stimulusToCode(109, 10, 'narrow')]).toEqual([255, 1019]);
  });
});
