/** House defaults for a missing instrument and source; a verdict that relies on them says so. */
export const defaultInstrument = {
  u_luminance_percent: 2,
  u_x: 0.001,
  u_y: 0.001,
  coverage_k: 2,
  floor_cdm2: 0.002,
  xy_from_cdm2: 0.1,
} as const;
export const defaultSource = { bits: 10, range: 'narrow' } as const;
