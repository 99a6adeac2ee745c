import { describe, expect, test } from 'vitest';
import { areaRatio, coverage } from '../../shared/colour/gamutCoverage.ts';
import { type GamutName, gamut } from '../../shared/colour/gamuts.ts';
import type { Primaries } from '../../shared/colour/rgb.ts';
import type { Xy } from '../../shared/colour/xyz.ts';
import { referenceJson } from '../reference/read.ts';
import { expectClose } from './closeness.ts';

type Figures = {
  target: string;
  ratio_xy_percent: number;
  coverage_xy_percent: number;
  ratio_upvp_percent: number;
  coverage_upvp_percent: number;
};
const reference = referenceJson<{
  ratios: (Figures & { measured: string })[];
  invented_panels: { R: Xy; G: Xy; B: Xy; results: Figures[] }[];
}>('gamuts.json');

const primaries = (name: string): Primaries => gamut(name as GamutName).primaries;

function expectFigures(measured: Primaries, expected: Figures): void {
  const target = primaries(expected.target);
  expectClose(
    [
      coverage(measured, target, 'xy'),
      coverage(measured, target, 'uv'),
      areaRatio(measured, target, 'xy'),
      areaRatio(measured, target, 'uv'),
    ],
    [
      expected.coverage_xy_percent,
      expected.coverage_upvp_percent,
      expected.ratio_xy_percent,
      expected.ratio_upvp_percent,
    ],
    6e-5,
  );
}

describe('coverage and ratio of areas', () => {
  test('among the standard gamuts', () => {
    expect(reference.ratios).toHaveLength(20);
    for (const row of reference.ratios) expectFigures(primaries(row.measured), row);
  });

  test('of invented panels', () => {
    for (const { R: red, G: green, B: blue, results } of reference.invented_panels)
      for (const row of results) expectFigures({ red, green, blue }, row);
  });

  test('primaries on one line cover nothing; such a reference throws', () => {
    const line: Primaries = { red: [0.5, 0.25], green: [0.375, 0.25], blue: [0.25, 0.25] };
    expect([coverage(line, primaries('BT.709'), 'xy'), areaRatio(line, primaries('BT.709'), 'xy')]).toEqual([
      0, 0,
    ]);
    expect(() => coverage(primaries('BT.709'), line, 'xy')).toThrow(
      'the reference primaries lie on one line',
    );
    expect(() => areaRatio(primaries('BT.709'), line, 'xy')).toThrow(RangeError);
  });

  test('numbers that are not finite throw', () => {
    for (const green of [
      [Number.NaN, 0.6],
      [0.3, Number.NaN],
    ] as const)
      for (const diagram of ['xy', 'uv'] as const)
        expect(() => coverage({ ...primaries('BT.709'), green }, primaries('BT.709'), diagram)).toThrow(
          RangeError,
        );
  });
});
