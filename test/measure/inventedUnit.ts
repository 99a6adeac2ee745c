import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Reading } from '../../shared/contract/reading.ts';
import type { Run } from '../../shared/contract/run.ts';

export type Draft = Partial<Reading> & Pick<Reading, 'series'>;

/** Readings with rows numbered from 1; what a draft leaves out is null. */
export function readingsOf(...drafts: Draft[]): Reading[] {
  return drafts.map((draft, i) => ({ row: i + 1, x: null, y: null, Y: null, ...draft }));
}

export const sdrConditions: Run = {
  mode: 'Calm',
  stage: 'as-delivered',
  signal: 'SDR',
  target: { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' },
  dimming: 'off',
  source: { bits: 10, range: 'narrow' },
  instrument: {
    name: 'bench colorimeter',
    serial: '0001',
    u_luminance_percent: 2,
    u_x: 0.001,
    u_y: 0.001,
    coverage_k: 2,
    floor_cdm2: 0.002,
    xy_from_cdm2: 0.1,
  },
};

export const hdrConditions: Run = {
  ...sdrConditions,
  mode: 'HDR Calm',
  signal: 'HDR10',
  target: { gamut: 'P3-D65', white: 'D65', eotf: 'PQ' },
};

/** A run with its unit; the digest stands for the content. */
export function evidenceOf(
  readings: readonly Reading[],
  conditions: Run = sdrConditions,
  unit: Partial<UnitEvidence['unit']> = {},
): { unit: UnitEvidence; run: RunEvidence } {
  const run: RunEvidence = { id: 'run', conditions, readings, digest: 'a'.repeat(64) };
  return {
    run,
    unit: {
      id: 'orrinvale-hearth-55',
      unit: { maker: 'Orrinvale', model: 'Hearth 55', panel: 'LCD IPS', backlight: 'direct LED', ...unit },
      runs: [run],
      observations: [],
    },
  };
}

const hues = ['red', 'green', 'blue', 'cyan', 'magenta', 'yellow'] as const;
const primaries = {
  red: [0.642, 0.333, 42],
  green: [0.303, 0.604, 141],
  blue: [0.152, 0.061, 15],
  cyan: [0.226, 0.327, 157],
  magenta: [0.321, 0.156, 57],
  yellow: [0.42, 0.506, 184],
  white: [0.311, 0.327, 198],
  black: [0.28, 0.29, 0.06],
} as const;

/** About 145 readings that touch every series, as a reviewer takes them in one mode. */
export function fullRun(): Draft[] {
  const drafts: Draft[] = [];
  for (let s = 0; s <= 100; s += 5)
    drafts.push({
      series: 'greyscale',
      stimulus: s,
      x: 0.3127 - 0.00003 * s,
      y: 0.329 - 0.00002 * s,
      Y: 0.06 + 198 * (s / 100) ** 2.3,
    });
  for (const [hue, [x, y, Y]] of Object.entries(primaries))
    drafts.push({ series: 'primaries', hue: hue as keyof typeof primaries, x, y, Y });
  for (const hue of hues)
    for (const saturation of [20, 40, 60, 80, 100]) {
      const [x, y, Y] = primaries[hue];
      const share = saturation / 100;
      drafts.push({
        series: 'saturation',
        hue,
        saturation,
        x: 0.3127 + (x - 0.3127) * share,
        y: 0.329 + (y - 0.329) * share,
        Y: 198 + (Y - 198) * share,
      });
    }
  for (let patch = 1; patch <= 24; patch += 1) {
    const x = 0.31 + 0.06 * Math.cos(patch);
    const y = 0.33 + 0.06 * Math.sin(patch);
    drafts.push({
      series: 'chart',
      patch: String(patch).padStart(2, '0'),
      referencexyY: [x, y, 0.2],
      x: x + 0.002,
      y: y - 0.001,
      Y: 40.5,
    });
  }
  for (const window of [1, 2, 5, 10, 25, 50, 100]) {
    drafts.push({ series: 'window', window, seconds: 2, Y: 260 - window });
    drafts.push({ series: 'window', window, seconds: 180, Y: 240 - window });
  }
  drafts.push(
    { series: 'contrast', pattern: 'full-white', Y: 197 },
    { series: 'contrast', pattern: 'full-black', Y: 0.06 },
  );
  for (let field = 0; field < 16; field += 1) {
    const [row, column] = [Math.floor(field / 4) + 1, (field % 4) + 1];
    const white = (row + column) % 2 === 0;
    drafts.push({
      series: 'contrast',
      pattern: white ? 'chequer-white' : 'chequer-black',
      position: `r${row}c${column}`,
      Y: white ? 190 - field : 0.2 + 0.01 * field,
    });
  }
  for (let row = 1; row <= 5; row += 1)
    for (let column = 1; column <= 5; column += 1)
      drafts.push({
        series: 'uniformity',
        level: 'grey50',
        position: `r${row}c${column}`,
        x: 0.312 + 0.0004 * (row - 3),
        y: 0.329 + 0.0003 * (column - 3),
        Y: 42 - Math.abs(row - 3) - 0.5 * Math.abs(column - 3),
      });
  for (const angle of [-60, -45, -30, -15, 0, 15, 30, 45, 60]) {
    const kept = Math.cos((angle * Math.PI) / 180) ** 1.5;
    drafts.push({
      series: 'angle',
      angle,
      x: 0.312 + angle ** 2 * 2e-6,
      y: 0.329 + angle ** 2 * 2e-6,
      Y: 197 * kept,
    });
    drafts.push({ series: 'angle', angle, level: 'black', Y: 0.06 * (1 + Math.abs(angle) / 30) });
  }
  drafts.push({ series: 'single', quantity: 'lag', value: 14.2, unit: 'ms' });
  return drafts;
}

/** A unit of about `size` readings in as many runs as it takes. */
export function inventedUnit(size: number): UnitEvidence {
  const readings = readingsOf(...fullRun());
  const count = Math.max(1, Math.round(size / readings.length));
  const { unit } = evidenceOf(readings);
  const runs = Array.from({ length: count }, (_, i) => ({
    id: `run-${i}`,
    conditions: sdrConditions,
    readings,
    digest: `digest ${i}`,
  }));
  return { ...unit, runs };
}
