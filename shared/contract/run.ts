import { z } from 'zod';

export const targetSchema = z.looseObject({
  gamut: z.enum(['BT.709', 'BT.601-625', 'BT.601-525', 'P3-D65', 'BT.2020']),
  white: z.string(),
  /** `BT.1886`, `PQ`, `HLG`, `sRGB` or `gamma 2.2` (any number). */
  eotf: z
    .string()
    .regex(/^(BT\.1886|PQ|HLG|sRGB|gamma \d+(\.\d+)?)$/, 'eotf is BT.1886, PQ, HLG, sRGB or "gamma 2.2"'),
  saturation_law: z.enum(['xy', 'uv', 'signal']).optional(),
  /** cd/m², the luminance up to which a PQ signal is meant to be followed. */
  peak: z.number().positive().optional(),
});
export type Target = z.infer<typeof targetSchema>;

/** Expanded uncertainties with `coverage_k`; `floor_cdm2` is a standard uncertainty. */
export const instrumentSchema = z.looseObject({
  name: z.string().optional(),
  serial: z.string().optional(),
  calibrated: z.string().optional(),
  matched_to: z.string().optional(),
  /** What a second look at a reference said, in words: "0.3 % over the sitting" */
  drift_check: z.string().optional(),
  u_luminance_percent: z.number().nonnegative().optional(),
  u_x: z.number().nonnegative().optional(),
  u_y: z.number().nonnegative().optional(),
  coverage_k: z.number().positive().optional(),
  floor_cdm2: z.number().nonnegative().optional(),
  xy_from_cdm2: z.number().nonnegative().optional(),
});
export type Instrument = z.infer<typeof instrumentSchema>;

export const sourceSchema = z.looseObject({
  name: z.string().optional(),
  bits: z.union([z.literal(8), z.literal(10), z.literal(12)]).optional(),
  range: z.enum(['narrow', 'full']).optional(),
  max_cll: z.number().nonnegative().optional(),
});
export type Source = z.infer<typeof sourceSchema>;

export const dimmingSchema = z.enum(['off', 'low', 'medium', 'high', 'none', 'as-set']);
export type Dimming = z.infer<typeof dimmingSchema>;

export const stageSchema = z.enum(['as-delivered', 'adjusted']);

/** `units/<unit>/runs/<run>.json`: the conditions under which readings were taken. */
export const runSchema = z.looseObject({
  taken: z.string().optional(),
  firmware: z.string().optional(),
  sample: z.string().optional(),
  mode: z.string(),
  stage: stageSchema,
  /** `SDR`, `HDR10`, `HLG` or another format's name (those follow PQ up to `target.peak`). */
  signal: z.string().min(1),
  settings: z.record(z.string(), z.unknown()).optional(),
  target: targetSchema,
  dimming: dimmingSchema.optional(),
  room_lux: z.number().nonnegative().nullish(),
  warm_up_min: z.number().nonnegative().nullish(),
  source: sourceSchema.optional(),
  instrument: instrumentSchema.optional(),
  supersedes: z.string().nullish(),
});
export type Run = z.infer<typeof runSchema>;

export { defaultInstrument, defaultSource } from './runDefaults.ts';
