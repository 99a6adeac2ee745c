import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Color from 'colorjs.io';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { lanternwickChart } from '../../main/demo/chart.ts';

/** The numbers that the articles are written around, computed with colorjs.io instead of our own colour folder. */
const dossier = join(import.meta.dirname, '../../main/demo/dossier');

type Row = Record<string, string>;
function rows(unit: string, run: string, series: string): Row[] {
  const csv = readFileSync(join(dossier, 'units', unit, 'runs', `${run}.csv`), 'utf8');
  return Papa.parse<Row>(csv, { header: true, skipEmptyLines: true }).data.filter(
    (row) => row.series === series,
  );
}

const d65 = [0.3127, 0.329] as const;
function xyz(x: number, y: number, Y: number): [number, number, number] {
  return [(x / y) * Y, Y, ((1 - x - y) / y) * Y];
}

/** CIELAB by ISO/CIE 11664-4, written here once more so that nothing of shared/colour is in the check. */
function lab(patch: readonly number[], white: readonly number[]): Color {
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const [fx, fy, fz] = patch.map((value, i) => f(value / white[i]!)) as [number, number, number];
  return new Color('lab', [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)]);
}

/** Colour-only error of each grey from 5 % on: target white at the measured luminance. */
function greyErrors(unit: string, run: string): Map<number, number> {
  const greys = rows(unit, run, 'greyscale').map((row) => ({
    level: Number(row.stimulus),
    x: Number(row.x),
    y: Number(row.y),
    Y: Number(row.Y),
  }));
  const white = xyz(...d65, greys.at(-1)!.Y);
  return new Map(
    greys
      .filter(({ level }) => level >= 5)
      .map(({ level, x, y, Y }) => [
        level,
        lab(xyz(x, y, Y), white).deltaE(lab(xyz(...d65, Y), white), '2000'),
      ]),
  );
}

const average = (values: Iterable<number>) => {
  const list = [...values];
  return list.reduce((sum, value) => sum + value, 0) / list.length;
};
const tenths = (value: number) => Math.round(value * 10) / 10;

test('the Hearth as delivered averages 2.4, with 2.1 at 50 % and 3.4 at 60 %, and stays over 3 from there', () => {
  for (const run of ['sdr-calm-delivered', 'sdr-calm-delivered-firmware-3-2']) {
    const errors = greyErrors('orrinvale-hearth-55', run);
    expect([average(errors.values()), errors.get(50)!, errors.get(60)!].map(tenths)).toEqual([2.4, 2.1, 3.4]);
    expect([...errors].filter(([, error]) => error > 3).map(([level]) => level)).toEqual([
      60, 70, 80, 90, 100,
    ]);
  }
});

test('its other modes carry the other sample sentences: 2.9 with 6.8 and 2.8 in Day, 4.1 to 0.6 in Natural', () => {
  const day = greyErrors('orrinvale-hearth-55', 'sdr-day-delivered');
  const before = greyErrors('orrinvale-hearth-55', 'sdr-natural-delivered');
  const after = greyErrors('orrinvale-hearth-55', 'sdr-natural-adjusted');
  expect([average(day.values()), day.get(100)!, day.get(50)!].map(tenths)).toEqual([2.9, 6.8, 2.8]);
  expect([average(before.values()), average(after.values())].map(tenths)).toEqual([4.1, 0.6]);
});

test('the Vane passes 3 at 50 %, not at 40 %, and averages 2.7', () => {
  const errors = greyErrors('kasulind-vane-50', 'sdr-studio-delivered');
  expect([errors.get(40)!, errors.get(50)!, errors.get(100)!, average(errors.values())].map(tenths)).toEqual([
    1.9, 3.5, 4.9, 2.7,
  ]);
});

test('10 % windows read 742, 731, 571, 412 and 846 cd/m²', () => {
  const peak = (unit: string, run: string) =>
    Math.round(
      Number(rows(unit, run, 'window').find((row) => row.window === '10' && row.seconds === '2')!.Y),
    );
  expect([
    peak('orrinvale-hearth-55', 'hdr-calm-delivered'),
    peak('kasulind-vane-50', 'hdr-studio-delivered'),
    peak('tamarick-linden-50', 'hdr-theatre-delivered'),
    peak('veltrane-plain-50', 'hdr-film-delivered'),
    peak('nocthale-gloam-48', 'hdr-still-delivered'),
  ]).toEqual([742, 731, 571, 412, 846]);
});

test('the native contrast of the Hearth is 1.89 times that of the Vane', () => {
  const native = (unit: string, run: string) => {
    const field = (pattern: string) =>
      Number(rows(unit, run, 'contrast').find((row) => row.pattern === pattern)!.Y);
    return field('full-white') / field('full-black');
  };
  const ratio =
    native('orrinvale-hearth-55', 'sdr-calm-delivered') / native('kasulind-vane-50', 'sdr-studio-delivered');
  expect(ratio).toBeCloseTo(1.89, 2);
});

test('45 degrees off, 38 % of the luminance is left on one side and 44 % on the other', () => {
  const white = rows('orrinvale-hearth-55', 'sdr-calm-delivered-firmware-3-2', 'angle').filter(
    (row) => row.level === 'white' && !row.plane,
  );
  const at = (angle: string) => Number(white.find((row) => row.angle === angle)!.Y);
  expect([at('-45'), at('45')].map((Y) => Math.round((100 * Y) / at('0')))).toEqual([38, 44]);
});

test('each of the 24 chart colours lies inside BT.709', () => {
  for (const { patch, Lab } of lanternwickChart()) {
    const srgb = new Color('lab', [...Lab]).to('srgb-linear');
    expect(srgb.inGamut('srgb-linear', { epsilon: 0.002 }), patch).toBe(true);
  }
});
