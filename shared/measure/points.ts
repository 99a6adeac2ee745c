import { chromaticityFault } from '../colour/xyz.ts';
import type { Reading, SeriesName } from '../contract/reading.ts';

/** Readings of one class share their chromaticity error within a run. */
export const hueClasses = ['grey', 'red', 'green', 'blue', 'other'] as const;
export type HueClass = (typeof hueClasses)[number];

/** The values that a quantity is computed from: one x, y and Y a point. Found and drawn worlds have this shape. */
export interface World {
  x: Float64Array;
  y: Float64Array;
  /** cd/m² */
  Y: Float64Array;
}

/**
 * The addresses of a run with the averages of their repeats, in an order that does not depend on the order of
 * rows. Where a point has no chromaticity its x and y are 0 and `hasXy` says so. Where primaries or saturations were
 * read without a luminance, Y is NaN: their chromaticity can be used all the same.
 */
export interface Points {
  count: number;
  found: World;
  /** A reading at each address: gives stimulus, hue, patch … */
  at: readonly Reading[];
  rows: readonly (readonly number[])[];
  repeats: readonly number[];
  /** Standard deviation of the repeats over √n; 0 for a single reading. */
  spread: World;
  hueClass: readonly HueClass[];
  /** 1 where chromaticity was measured and is possible */
  hasXy: Uint8Array;
  bySeries: ReadonlyMap<SeriesName, readonly number[]>;
  notes: ReadonlyMap<SeriesName, readonly string[]>;
}

/** Where a reading stands in its series; equal addresses are repeats. */
function addressOf(reading: Reading): string {
  const { signal } = reading;
  switch (reading.series) {
    case 'greyscale':
      return `${reading.stimulus ?? signal?.join('/')}|${reading.window ?? ''}`;
    case 'primaries':
      return `${reading.hue}|${reading.stimulus ?? signal?.join('/') ?? 100}`;
    case 'saturation':
      return `${reading.hue ?? ''}|${reading.saturation ?? ''}|${reading.stimulus ?? ''}|${signal?.join('/') ?? ''}`;
    case 'chart':
      return (
        reading.patch ?? `|${[reading.referenceLab, reading.referencexyY, signal].map(String).join('|')}`
      );
    case 'window':
      return `${reading.window ?? ''}|${reading.seconds ?? ''}|${reading.stimulus ?? signal?.join('/') ?? 100}`;
    case 'contrast':
      return `${reading.pattern}|${reading.position ?? ''}`;
    case 'uniformity':
      return `${reading.level ?? 'white'}|${reading.position}`;
    case 'angle':
      return `${reading.level ?? 'white'}|${reading.plane ?? 'horizontal'}|${reading.angle}`;
    case 'single':
      return `${reading.quantity}|${reading.unit ?? ''}`;
  }
}

function hueClassOf(reading: Reading): HueClass {
  if (reading.series === 'chart') return 'other';
  if (reading.series === 'uniformity' || reading.series === 'angle') {
    const level = reading.level ?? 'white';
    if (level === 'red' || level === 'green' || level === 'blue') return level;
    return level === 'cyan' || level === 'magenta' || level === 'yellow' ? 'other' : 'grey';
  }
  if (reading.series !== 'primaries' && reading.series !== 'saturation') return 'grey';
  if (reading.saturation === 0) return 'grey';
  switch (reading.hue) {
    case 'red':
    case 'green':
    case 'blue':
      return reading.hue;
    case 'white':
    case 'black':
    case undefined:
      return 'grey';
    default:
      return 'other';
  }
}

type Group = { key: string; readings: Reading[] };

/** Series whose chromaticity says something without a luminance. */
const colourAlone: readonly SeriesName[] = ['primaries', 'saturation'];

/** Groups readings by address and averages repeats. Impossible luminances are left out and noted. */
export function pointsOf(readings: readonly Reading[]): Points {
  const groups = new Map<string, Group>();
  const notes = new Map<SeriesName, string[]>();
  const note = (series: SeriesName, text: string) => notes.set(series, [...(notes.get(series) ?? []), text]);
  // Notes and what stands for repeats follow the rows' numbers, in whatever order they come.
  for (const reading of [...readings].sort((one, other) => one.row - other.row)) {
    if (reading.Y === null && reading.x !== null && colourAlone.includes(reading.series))
      note(reading.series, `row ${reading.row} has no luminance, only its chromaticity is used`);
    else if (
      reading.series !== 'single' &&
      !(reading.Y !== null && reading.Y >= 0 && Number.isFinite(reading.Y))
    ) {
      note(reading.series, `row ${reading.row} has no possible luminance and is left out`);
      continue;
    }
    const key = `${reading.series}|${addressOf(reading)}`;
    const group = groups.get(key);
    if (group) group.readings.push(reading);
    else groups.set(key, { key, readings: [reading] });
  }
  const sorted = [...groups.values()].sort((one, other) => (one.key < other.key ? -1 : 1));
  const count = sorted.length;
  const room = new Float64Array(6 * count);
  const column = (n: number) => room.subarray(n * count, (n + 1) * count);
  const world = (from: number): World => ({ x: column(from), y: column(from + 1), Y: column(from + 2) });
  const found = world(0);
  const spread = world(3);
  const hasXy = new Uint8Array(count);
  const bySeries = new Map<SeriesName, number[]>();
  sorted.forEach(({ readings: repeats }, index) => {
    const first = repeats[0]!;
    const members = bySeries.get(first.series);
    if (members) members.push(index);
    else bySeries.set(first.series, [index]);
    if (repeats.length === 1 && first.series !== 'single' && first.Y !== null) {
      found.Y[index] = first.Y;
      if (first.x === null || first.y === null) return;
      if (isPossible(first.x, first.y)) {
        hasXy[index] = 1;
        found.x[index] = first.x;
        found.y[index] = first.y;
      } else note(first.series, `impossible chromaticity left out: row ${first.row}`);
      return;
    }
    const luminance =
      first.series === 'single'
        ? repeats.map((r) => r.value ?? Number.NaN)
        : repeats.flatMap((r) => (r.Y === null ? [] : [r.Y]));
    [found.Y[index], spread.Y[index]] = meanAndSpread(luminance);
    const coloured = repeats.filter((r) => r.x !== null && r.y !== null);
    const possible = coloured.filter((r) => isPossible(r.x!, r.y!));
    const impossible = coloured.filter((r) => !possible.includes(r)).map((r) => r.row);
    if (impossible.length > 0)
      note(first.series, `impossible chromaticity left out: row ${impossible.join(', ')}`);
    if (possible.length === 0) return;
    hasXy[index] = 1;
    [found.x[index], spread.x[index]] = meanAndSpread(possible.map((r) => r.x!));
    [found.y[index], spread.y[index]] = meanAndSpread(possible.map((r) => r.y!));
  });
  return {
    count,
    found,
    spread,
    hasXy,
    at: sorted.map((group) => group.readings[0]!),
    rows: sorted.map((group) => group.readings.map((r) => r.row).sort((a, b) => a - b)),
    repeats: sorted.map((group) => group.readings.length),
    hueClass: sorted.map((group) => hueClassOf(group.readings[0]!)),
    bySeries,
    notes,
  };
}

/** No light has a lower y: the spectrum's violet end has 0.005. Quotients by y stay within bounds. */
const leastY = 0.001;

function isPossible(x: number, y: number): boolean {
  return y >= leastY && chromaticityFault(x, y) === undefined;
}

/** Mean and sd/√n; summed in order of size, so that the order of rows cannot show in the last digit. */
function meanAndSpread(values: number[]): [mean: number, spread: number] {
  const n = values.length;
  if (n === 0) return [Number.NaN, 0];
  if (n === 1) return [values[0]!, 0];
  const sorted = values.sort((a, b) => a - b);
  const mean = sorted.reduce((sum, value) => sum + value, 0) / n;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return [mean, Math.sqrt(squares / (n - 1) / n)];
}
