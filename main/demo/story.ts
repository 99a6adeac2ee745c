import type { Run } from '../../shared/contract/run.ts';
import type { Noise } from './noise.ts';
import type { Row } from './patterns.ts';

/** A run to be invented: its conditions, and its readings from the run's own noise. */
export interface RunStory {
  id: string;
  conditions: Run;
  readings(noise: Noise): Row[];
}

/** A set to be invented. Its `unit.json` and `observations.csv` are written by hand. */
export interface UnitStory {
  id: string;
  runs: readonly RunStory[];
}

export const bt709 = { gamut: 'BT.709', white: 'D65', eotf: 'BT.1886' } as const;
export const bt2020 = { gamut: 'BT.2020', white: 'D65', eotf: 'PQ', peak: 1000 } as const;
export const generator = { name: 'pattern generator', bits: 10, range: 'narrow', max_cll: 1000 } as const;

/** Expanded, k = 2: the magazine's reference instrument, and the colorimeter for short runs. */
export const spectroradiometer = {
  name: 'reference spectroradiometer',
  serial: '0007',
  calibrated: '2026-02-16',
  u_luminance_percent: 2,
  u_x: 0.0004,
  u_y: 0.0004,
  coverage_k: 2,
  floor_cdm2: 0.002,
  xy_from_cdm2: 0.1,
} as const;
export const colorimeter = {
  name: 'bench colorimeter',
  serial: '0001',
  calibrated: '2026-03-02',
  matched_to: 'reference spectroradiometer',
  u_luminance_percent: 2,
  u_x: 0.001,
  u_y: 0.001,
  coverage_k: 2,
  floor_cdm2: 0.002,
  xy_from_cdm2: 0.1,
} as const;

/** The levels of every greyscale; HDR has steps of five where tones are compressed. */
export const levels = [0, 5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100];
export const hdrLevels = [0, 5, 10, 20, 30, 40, 50, 60, 65, 70, 75, 80, 85, 90, 95, 100];
