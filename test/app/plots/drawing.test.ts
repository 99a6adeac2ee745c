import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { greyscaleError } from '../../../app/plots/figures/greyscale.ts';
import { figureCsv } from '../../../app/plots/figureTable.ts';
import { largeTraces } from '../../../app/plots/large/traces.ts';
import { plusMinus } from '../../../app/plots/numberText.ts';
import { spotsOf } from '../../../app/plots/pointText.ts';
import { linearAxis, position, roundTicks, tickDecimals } from '../../../app/plots/scale.ts';
import { spreadLabels } from '../../../app/plots/spreadLabels.ts';
import { defaultHouse } from '../../../shared/claims/house/defaults.ts';
import { series, subject } from './subjects.ts';

describe('axes', () => {
  it('enclose every value with evenly spaced round ticks', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
        fc.integer({ min: 1, max: 8 }),
        (low, span, count) => {
          const ticks = roundTicks(low, low + span, count);
          // Ticks are rounded to a billionth of a step and to twelve digits.
          const slack = 2e-9 * (ticks[1]! - ticks[0]!);
          expect(ticks[0]).toBeLessThanOrEqual(low + 1e-6 * Math.abs(low) + slack);
          expect(ticks.at(-1)).toBeGreaterThanOrEqual(low + span - 1e-6 * Math.abs(low + span) - slack);
          expect(ticks.length).toBeLessThanOrEqual(count + 3);
        },
      ),
    );
  });

  it('tell neighbouring ticks apart', () => {
    expect(tickDecimals([0, 2, 4])).toBe(0);
    expect(tickDecimals([0, 0.25, 0.5])).toBe(2);
    expect(tickDecimals([95, 97.5])).toBe(1);
  });

  it('place equal ratios at equal distances when logarithmic', () => {
    const axis = { ...linearAxis('of the screen', '%', [1, 100]), min: 1, max: 100, scale: 'log' as const };
    const at = [1, 10, 100].map((value) => position(axis, value, 0, 200));
    expect(at.map((x) => Number(x.toFixed(6)))).toEqual([0, 100, 200]);
  });
});

describe('direct labels', () => {
  it('keep their order and their distance whenever there is room', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 8 }),
        (wanted) => {
          const placed = spreadLabels(wanted, 13, 0, 200);
          const order = wanted.map((y, index) => ({ y, index })).sort((a, b) => a.y - b.y);
          for (let i = 1; i < order.length; i++) {
            expect(placed[order[i]!.index]! - placed[order[i - 1]!.index]!).toBeGreaterThanOrEqual(13 - 1e-9);
          }
          expect(Math.min(...placed)).toBeGreaterThanOrEqual(-1e-9);
          expect(Math.max(...placed)).toBeLessThanOrEqual(200 + 1e-9);
        },
      ),
    );
  });
});

describe('one figure, many forms', () => {
  const figure = greyscaleError(
    [
      subject([
        series('grey.de2000', 'ΔE2000', [
          [50, 2.1, 0.12],
          [60, 3.4, 0.15],
        ]),
      ]),
    ],
    defaultHouse.limits,
  )!;

  it('writes its numbers as CSV with the expanded uncertainty and the readings', () => {
    expect(figureCsv(figure)).toBe(
      'stimulus (%),colour error (ΔE2000),U = 2u,readings\n' +
        '50,2.1,0.24,calm-as-delivered#1\n' +
        '60,3.4,0.3,calm-as-delivered#2\n',
    );
  });

  it('says of each mark what it reads and which reading it stands on', () => {
    expect(spotsOf(figure).map((spot) => [spot.text.replaceAll(/\s/g, ' '), spot.ref?.rows])).toEqual([
      ['50 %: 2.1 ± 0.2', [1]],
      ['60 %: 3.4 ± 0.3', [2]],
    ]);
  });

  it('gives the large plot the same values, names and marks', () => {
    const ink = {
      paper: 'rgb(255,255,255)',
      ink: 'rgb(0,0,0)',
      quiet: 'rgb(90,90,90)',
      hair: 'rgb(200,200,200)',
      rule: 'rgb(120,120,120)',
      accent: 'rgb(0,0,200)',
      shade: 'rgb(200, 200, 200)',
      breaks: 'rgb(200,0,0)',
      sans: 'sans-serif',
    };
    const trace = largeTraces(figure, ink).data[0] as unknown as {
      x: number[];
      y: number[];
      customdata: string[];
      error_y: { array: number[] };
    };
    expect(trace.x).toEqual([50, 60]);
    expect(trace.y).toEqual([2.1, 3.4]);
    expect(trace.error_y.array).toEqual([0.24, 0.3]);
    expect(trace.customdata).toEqual(spotsOf(figure).map((spot) => spot.key));
  });

  it('shows at least one digit of an uncertainty that is smaller than the value’s last', () => {
    expect(plusMinus(99.95, 0.013, '%', 1).replaceAll(/\s/g, ' ')).toBe('99.95 ± 0.03 %');
    expect(plusMinus(742, 7.6, 'cd/m²', 0).replaceAll(/\s/g, ' ')).toBe('742 ± 15 cd/m²');
    expect(plusMinus(-3.2, null, '%', 1).replaceAll(/\s/g, ' ')).toBe('−3.2 %');
  });
});
