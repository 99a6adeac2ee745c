import { describe, expect, it } from 'vitest';
import type { OnsetCheck } from '../../../shared/contract/check.ts';
import { benchWith, judged, quantity } from '../../fixtures/checks.ts';

type Levels = Readonly<Record<number, number>>;

/** An onset over 3 on a greyscale with hardly any uncertainty. */
function onset(levels: Levels, check: Partial<OnsetCheck>, id = 'grey.de2000') {
  const bench = benchWith({
    id,
    unit: 'ΔE2000',
    levels: Object.entries(levels).map(([axis, value]) => [Number(axis), value, 0.001] as const),
  });
  return judged(
    {
      kind: 'onset',
      operand: quantity(id, { stat: 'all' }, { signal: 'SDR' }),
      limit: 3,
      side: 'over',
      edge: 'included',
      ...check,
    },
    bench,
  );
}

const rising = { 10: 1, 20: 1, 30: 1.5, 40: 2, 50: 2.5, 60: 3.4, 70: 4, 80: 5, 90: 6, 100: 7 };

describe('onset', () => {
  it('holds where every level on the stated side is past the limit and no other is', () => {
    expect(onset(rising, { from: 60 })).toMatchObject({ verdict: 'holds', found: { onset: 60 } });
  });

  it('breaks a level too early and suggests where it begins', () => {
    expect(onset(rising, { from: 50 })).toMatchObject({
      verdict: 'breaks',
      suggestion: 'from 60\u202f% upwards',
    });
  });

  it('breaks a level too late', () => {
    expect(onset(rising, { from: 70 }).verdict).toBe('breaks');
  });

  it('excludes or frees the edge as the words say', () => {
    expect(onset(rising, { from: 50, edge: 'excluded' }).verdict).toBe('holds');
    expect(onset(rising, { from: 60, edge: 'excluded' }).verdict).toBe('breaks');
    expect(onset(rising, { from: 60, edge: 'free' }).verdict).toBe('holds');
    expect(onset(rising, { from: 50, edge: 'free' }).verdict).toBe('holds');
    expect(onset(rising, { from: 70, edge: 'free' }).verdict).toBe('breaks');
  });

  it('takes a place off the grid within 2.5 points of the interpolated onset', () => {
    // 2.5 at 50 % and 3.4 at 60 %: 3 lies at 55.6 %.
    expect(onset(rising, { from: 55 }).verdict).toBe('holds');
    expect(onset(rising, { from: 58 }).verdict).toBe('holds');
    expect(onset(rising, { from: 59 }).verdict).toBe('breaks');
  });

  it('is unproven where nothing was measured near the edge', () => {
    const { 50: _, ...gap } = rising;
    const judgement = onset(gap, { from: 60 });
    expect(judgement.verdict).toBe('unproven');
    expect(judgement.reason).toBe('Nothing was measured between 40 and 60\u202f%.');
  });

  it('is unproven where nothing below was measured at all', () => {
    expect(onset({ 40: 4, 50: 5 }, { from: 40 }).verdict).toBe('unproven');
  });

  it('breaks on several crossings, unless "mostly": one level in five may be out', () => {
    const twice = { ...rising, 80: 2 };
    expect(onset(twice, { from: 60 }).verdict).toBe('breaks');
    expect(onset(twice, { from: 60, mostly: true }).verdict).toBe('holds');
    expect(onset({ ...twice, 20: 4, 30: 5 }, { from: 60, mostly: true }).verdict).toBe('breaks');
  });

  it('reads downwards too', () => {
    const falling = Object.fromEntries(
      Object.entries(rising).map(([axis, value]) => [110 - Number(axis), value]),
    );
    expect(onset(falling, { to: 50 }).verdict).toBe('holds');
    expect(onset(falling, { to: 60 }).verdict).toBe('breaks');
  });

  it('measures distance by the axis: 25 points of saturation, 15°, neighbours in the row of windows', () => {
    expect(onset({ 25: 1, 50: 4, 75: 5, 100: 6 }, { from: 50 }, 'sweep.red.de2000').verdict).toBe('holds');
    expect(onset({ 0: 0, 30: 4, 45: 5, 60: 6 }, { from: 30 }, 'angle.de2000').verdict).toBe('unproven');
    expect(onset({ 0: 0, 15: 2, 30: 4, 45: 5 }, { from: 30 }, 'angle.de2000').verdict).toBe('holds');
    expect(onset({ 1: 1, 2: 1, 5: 1, 10: 4, 25: 4, 100: 4 }, { from: 10 }, 'peak.hold').verdict).toBe(
      'holds',
    );
    expect(onset({ 1: 1, 5: 1, 25: 4, 100: 4 }, { from: 25 }, 'peak.hold').verdict).toBe('unproven');
  });

  it('folds signed angles to the worse side', () => {
    const angles = { [-45]: 5, [-30]: 4, [-15]: 1, 0: 0, 15: 1, 30: 2.5, 45: 4 };
    expect(onset(angles, { from: 30 }, 'angle.de2000').verdict).toBe('holds');
  });

  it('counts a level on the limit for either side', () => {
    expect(onset({ ...rising, 60: 3 }, { from: 60 }).verdict).not.toBe('breaks');
    expect(onset({ ...rising, 50: 3 }, { from: 60 }).verdict).not.toBe('breaks');
  });
});
