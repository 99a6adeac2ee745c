import { expect, test } from 'vitest';
import { measureRun } from '../../shared/measure/index.ts';
import { referenceJson } from '../reference/read.ts';
import { measured, reasonOf, scalar } from './expected.ts';
import { type Draft, evidenceOf, readingsOf } from './inventedUnit.ts';

type Panel = {
  name: string;
  R: [number, number];
  G: [number, number];
  B: [number, number];
  results: {
    target: string;
    coverage_xy_percent: number;
    coverage_upvp_percent: number;
    ratio_xy_percent: number;
    ratio_upvp_percent: number;
  }[];
};
const panels = referenceJson<{ invented_panels: Panel[] }>('gamuts.json').invented_panels;
const ids: Record<string, string> = { 'BT.709': 'bt709', 'P3-D65': 'p3', 'BT.2020': 'bt2020' };

function primaries({ R, G, B }: Pick<Panel, 'R' | 'G' | 'B'>): Draft[] {
  return (['red', 'green', 'blue'] as const).map((hue, i) => ({
    series: 'primaries',
    hue,
    x: [R, G, B][i]![0],
    y: [R, G, B][i]![1],
    Y: 50,
  }));
}

function measure(drafts: Draft[]) {
  const { unit, run } = evidenceOf(readingsOf(...drafts));
  return measureRun(unit, run);
}

test.each(panels)('coverage and area of the $name agree with the reference polygons', (panel) => {
  const found = measure(primaries(panel));
  for (const result of panel.results) {
    const name = ids[result.target]!;
    expect(scalar(found, `coverage.${name}.xy`)).toBeCloseTo(result.coverage_xy_percent, 3);
    expect(scalar(found, `coverage.${name}.uv`)).toBeCloseTo(result.coverage_upvp_percent, 3);
    expect(scalar(found, `area.${name}.xy`)).toBeCloseTo(result.ratio_xy_percent, 3);
    expect(scalar(found, `area.${name}.uv`)).toBeCloseTo(result.ratio_upvp_percent, 3);
  }
});

test('P3 is 71.74 % of BT.2020 by area in xy, covers 71.73 % of it, and 72.85 % in u′v′', () => {
  const found = measure(primaries({ R: [0.68, 0.32], G: [0.265, 0.69], B: [0.15, 0.06] }));
  expect(scalar(found, 'area.bt2020.xy')).toBeCloseTo(71.74, 2);
  expect(scalar(found, 'coverage.bt2020.xy')).toBeCloseTo(71.73, 2);
  expect(scalar(found, 'coverage.bt2020.uv')).toBeCloseTo(72.85, 2);
});

test('only full-amplitude primaries are used', () => {
  const [panel] = panels;
  const dim: Draft[] = primaries({ R: [0.5, 0.33], G: [0.3, 0.5], B: [0.2, 0.1] }).map((draft) => ({
    ...draft,
    stimulus: 50,
  }));
  const alone = measure(primaries(panel!));
  expect(scalar(measure([...dim, ...primaries(panel!)]), 'coverage.p3.xy')).toBe(
    scalar(alone, 'coverage.p3.xy'),
  );
  expect(reasonOf(measure(dim).get('coverage.p3.xy'))).toBe('no chromaticity of full red, green, blue');
});

test('a missing primary makes coverage undefined and names it', () => {
  const found = measure(primaries(panels[0]!).slice(0, 2));
  expect(reasonOf(found.get('coverage.bt709.uv'))).toBe('no chromaticity of full blue');
});

test('a set on the reference has a colour volume of 100 %', () => {
  const M = { red: [0.64, 0.33, 0.2126], green: [0.3, 0.6, 0.7152], blue: [0.15, 0.06, 0.0722] };
  const mix = (hue: Draft['hue'], ...parts: (keyof typeof M)[]): Draft => {
    const sum = [0, 0, 0];
    for (const part of parts) {
      const [x, y, Y] = M[part] as [number, number, number];
      sum[0]! += (x * Y) / y;
      sum[1]! += Y;
      sum[2]! += ((1 - x - y) * Y) / y;
    }
    const [X, Y, Z] = sum as [number, number, number];
    return { series: 'primaries', hue, x: X / (X + Y + Z), y: Y / (X + Y + Z), Y: 200 * Y };
  };
  const found = measure([
    mix('red', 'red'),
    mix('green', 'green'),
    mix('blue', 'blue'),
    mix('yellow', 'red', 'green'),
    mix('cyan', 'green', 'blue'),
    mix('magenta', 'red', 'blue'),
    mix('white', 'red', 'green', 'blue'),
    { series: 'primaries', hue: 'black', Y: 0 },
  ]);
  // Luminance weights rounded to four digits leave a trace.
  expect(scalar(found, 'volume.bt709')).toBeCloseTo(100, 1);
  expect(scalar(found, 'volume.bt2020')).toBeLessThan(scalar(found, 'volume.p3'));
  expect(measured(found, 'volume.bt709').notes.join()).toContain('eight corners');
});
