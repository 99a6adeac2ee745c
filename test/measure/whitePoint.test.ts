import { expect, test } from 'vitest';
import { measureRun } from '../../shared/measure/index.ts';
import { referenceJson } from '../reference/read.ts';
import { d65, reasonOf, scalar, uv } from './expected.ts';
import { type Draft, evidenceOf, readingsOf } from './inventedUnit.ts';

function measure(...drafts: Draft[]) {
  const { unit, run } = evidenceOf(readingsOf(...drafts));
  return measureRun(unit, run);
}
const grey = (stimulus: number, x: number, y: number): Draft => ({
  series: 'greyscale',
  stimulus,
  x,
  y,
  Y: 2 * stimulus,
});

type Rows = {
  white_points: { name: string; xy: [number, number]; cct_exact: number | null; duv_exact: number | null }[];
  off_locus_cases: { T: number; duv: number; xy: [number, number] }[];
};

test('colour temperature and Duv of 100 % agree with the exact nearest point of the Planckian locus', () => {
  const { white_points, off_locus_cases } = referenceJson<Rows>('whitepoints.json');
  const rows = [
    ...white_points.map(({ name, xy, cct_exact, duv_exact }) => ({
      name,
      xy,
      cct: cct_exact,
      duv: duv_exact,
    })),
    ...off_locus_cases.map(({ T, duv, xy }) => ({ name: `${T} K ${duv}`, xy, cct: T, duv })),
  ].filter(({ duv }) => duv !== null && Math.abs(duv) < 0.05);
  expect(rows.length).toBeGreaterThan(10);
  for (const { name, xy, cct, duv } of rows) {
    const found = measure(grey(50, 0.3, 0.3), grey(100, ...xy));
    // Chromaticities are printed with six digits at most.
    expect(Math.abs(scalar(found, 'white.cct') / cct! - 1), name).toBeLessThan(2e-4);
    expect(Math.abs(scalar(found, 'white.duv') - duv!), name).toBeLessThan(1e-5);
  }
});

test('distance from the target white is Δu′v′', () => {
  const [u0, v0] = uv(...d65);
  const [u, v] = uv(0.305, 0.32);
  expect(scalar(measure(grey(100, 0.305, 0.32)), 'white.distance')).toBeCloseTo(
    Math.hypot(u - u0, v - v0),
    9,
  );
});

test('without a 100 % level, or far from the locus, the reason is given', () => {
  expect(reasonOf(measure(grey(90, 0.31, 0.33)).get('white.cct'))).toBe('no 100 % level');
  expect(reasonOf(measure(grey(100, 0.3, 0.6)).get('white.cct'))).toBe(
    'more than 0.05 from the Planckian locus',
  );
  expect(measure(grey(100, 0.3, 0.6)).get('white.distance')?.state).toBe('measured');
});

test('a run of primaries only takes their white and says so', () => {
  const found = measure({ series: 'primaries', hue: 'white', x: 0.3127, y: 0.329, Y: 200 });
  expect(scalar(found, 'white.cct')).toBeCloseTo(6504, 0);
  const cct = found.get('white.cct');
  expect(cct?.state === 'measured' && cct.notes.join()).toContain('white of the primaries');
});
