import { z } from 'zod';

/** One row of `observations.csv`; severity 0 not seen, 1 trained eye only, 2 visible, 3 distracting, 4 unusable. */
export const observationSchema = z.looseObject({
  id: z.string().min(1),
  topic: z.string().min(1),
  severity: z.number().int().min(0).max(4),
  pattern: z.string().optional(),
  mode: z.string().optional(),
  stage: z.string().optional(),
  signal: z.string().optional(),
  dimming: z.string().optional(),
  /** Degrees; several values are several rows */
  angle: z.number().optional(),
  room_lux: z.number().optional(),
  content: z.string().optional(),
  timecode: z.string().optional(),
  source: z.string().optional(),
  by: z.string().optional(),
  note: z.string().optional(),
  photo: z.string().optional(),
  seen: z.string().optional(),
});
export type Observation = z.infer<typeof observationSchema>;
