import { z } from 'zod';

/** Where in the outside world a fault lies: a file, and if known its line and column (both from 1). */
export const placeSchema = z.object({
  file: z.string().optional(),
  line: z.number().int().positive().optional(),
  column: z.number().int().positive().optional(),
});
export type Place = z.infer<typeof placeSchema>;

/** Codes are for programs; `sentence` is for people and `mend` says what would put it right. */
export const faultSchema = z.object({
  code: z.enum([
    'bad-input',
    'conflict',
    'not-found',
    'newer-library',
    'unreadable',
    'refused',
    'stale-revision',
    'cancelled',
    'internal',
  ]),
  sentence: z.string(),
  mend: z.string().optional(),
  place: placeSchema.optional(),
});
export type Fault = z.infer<typeof faultSchema>;

/** Errors are values: everything that outside input can cause is returned, not thrown. */
export type Result<T> = { ok: true; value: T } | { ok: false; faults: Fault[] };

export function succeed<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function fail<T = never>(...faults: Fault[]): Result<T> {
  return { ok: false, faults };
}

export { faultLine } from './faultLine.ts';
