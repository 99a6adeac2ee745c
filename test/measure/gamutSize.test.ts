import { expect, test } from 'vitest';
import { measureRun } from '../../shared/measure/index.ts';
import { referenceJson } from '../reference/read.ts';
import { d65, lab, measured, reasonOf, scalar, type Triple, xyz } from './expected.ts';
import { type Draft, evidenceOf, readingsOf } from './inventedUnit.ts';
import { bt709, mix, p3, xyOf } from './mixture.ts';

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

test('a stated amplitude or a sent signal below full is no primary of the gamut', () => {
  const [panel] = panels;
  const full = measure(primaries(panel!));
  const sent = (scale: number, { R, G, B }: Pick<Panel, 'R' | 'G' | 'B'>): Draft[] =>
    primaries({ R, G, B }).map((draft, i) => ({
      ...draft,
      signal: [0, 1, 2].map((channel) => (channel === i ? scale : 0)) as [number, number, number],
    }));
  const dim = { R: [0.5, 0.33], G: [0.3, 0.5], B: [0.2, 0.1] } as Pick<Panel, 'R' | 'G' | 'B'>;
  const both = measure([...sent(75, dim), ...sent(100, panel!)]);
  expect(scalar(both, 'coverage.p3.xy')).toBe(scalar(full, 'coverage.p3.xy'));
  expect(reasonOf(measure(sent(75, dim)).get('coverage.p3.xy'))).toBe(
    'no chromaticity of full red, green, blue',
  );
});

const cube = {
  black: [0, 0, 0],
  red: [1, 0, 0],
  yellow: [1, 1, 0],
  green: [0, 1, 0],
  cyan: [0, 1, 1],
  blue: [0, 0, 1],
  magenta: [1, 0, 1],
  white: [1, 1, 1],
} as const;
type Corner = keyof typeof cube;
const around = ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'] as const;

/** The eight corners of a set of these primaries, white 200 cd/m². */
function cornersOf(columns: Triple[]): Draft[] {
  return (Object.keys(cube) as Corner[]).map((hue): Draft => {
    if (hue === 'black') return { series: 'primaries', hue, Y: 0 };
    const light = mix(columns, [...cube[hue]] as Triple);
    const [x, y] = xyOf(light);
    return { series: 'primaries', hue, x, y, Y: 200 * light[1] };
  });
}

/** The body as six tetrahedra around the line from black to white, by determinants. */
function volume(columns: Triple[], scale: (hue: Corner) => number = () => 1, black = 0): number {
  const labOf = (light: Triple) => lab(light, xyz(...d65, 1));
  const [L, a, b] = labOf(xyz(...d65, black));
  const from = (hue: Corner): Triple => {
    const light = mix(columns, [...cube[hue]] as Triple).map((value) => value * scale(hue)) as Triple;
    const [Lc, ac, bc] = labOf(light);
    return [Lc - L, ac - a, bc - b];
  };
  const [w, rim] = [from('white'), around.map(from)];
  return rim.reduce((sum, p, i) => {
    const q = rim[(i + 1) % 6]!;
    const determinant =
      w[0] * (p[1] * q[2] - p[2] * q[1]) +
      w[1] * (p[2] * q[0] - p[0] * q[2]) +
      w[2] * (p[0] * q[1] - p[1] * q[0]);
    return sum + Math.abs(determinant) / 6;
  }, 0);
}

test('colour volume is that of six tetrahedra around the neutral axis, in % of the reference’s', () => {
  const corners = cornersOf(p3);
  const found = measure(corners);
  expect(scalar(found, 'volume.bt709')).toBeCloseTo((100 * volume(p3)) / volume(bt709), 6);
  expect(scalar(found, 'volume.p3')).toBeCloseTo(100, 6);
  expect(scalar(found, 'volume.bt2020')).toBeLessThan(100);
  expect(measured(found, 'volume.bt709').notes.join()).toContain('eight corners');
  // Secondaries dimmer than their parts, as of a set with a white sub-pixel: the faces bend inwards.
  const dim = (hue: Corner) => (hue === 'yellow' || hue === 'cyan' || hue === 'magenta' ? 0.6 : 1);
  const bent = corners.map((draft) => ({ ...draft, Y: draft.Y! * dim(draft.hue as Corner) }));
  expect(scalar(measure(bent), 'volume.p3')).toBeCloseTo((100 * volume(p3, dim)) / volume(p3), 6);
});

test('a measured black lifts the body’s foot, and each missing corner is named', () => {
  const corners = cornersOf(bt709);
  const lifted = corners.map((draft) => (draft.hue === 'black' ? { ...draft, Y: 2 } : draft));
  expect(scalar(measure(lifted), 'volume.p3')).toBeCloseTo(
    (100 * volume(bt709, undefined, 0.01)) / volume(p3),
    6,
  );
  for (const hue of Object.keys(cube)) {
    const without = measure(corners.filter((draft) => draft.hue !== hue));
    expect(reasonOf(without.get('volume.p3'))).toBe(`no full-amplitude reading of ${hue}`);
    if (hue === 'black') continue;
    const dimmed = measure(corners.map((draft) => (draft.hue === hue ? { ...draft, Y: 0.05 } : draft)));
    expect(reasonOf(dimmed.get('volume.p3'))).toBe(`no full-amplitude reading of ${hue}`);
    const partly = measure(corners.map((draft) => (draft.hue === hue ? { ...draft, stimulus: 75 } : draft)));
    expect(reasonOf(partly.get('volume.p3'))).toBe(`no full-amplitude reading of ${hue}`);
  }
});
