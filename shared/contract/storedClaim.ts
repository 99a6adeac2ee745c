import { z } from 'zod';
import type { Check } from './check.ts';
import { verdicts } from './claim.ts';

/** Loosely checked here; `shared/claims/checking` refuses a check whose inner form it does not know. */
const checkSchema = z.custom<Check>(
  (value) =>
    typeof value === 'object' && value !== null && typeof (value as { kind?: unknown }).kind === 'string',
  'a check is an object with a kind',
);

export const anchorSchema = z.object({
  /** W3C Web Annotation TextQuoteSelector, 32 characters each side */
  exact: z.string().min(1),
  prefix: z.string(),
  suffix: z.string(),
  /** TextPositionSelector, UTF-16 code units of the plain text */
  start: z.number().int().nonnegative(),
  end: z.number().int().positive(),
});
export type StoredAnchor = z.infer<typeof anchorSchema>;

export const acceptedProofSchema = z.object({
  verdict: z.enum(verdicts),
  reason: z.string(),
  found: z.record(z.string(), z.unknown()).optional(),
  digests: z.object({ sentence: z.string(), check: z.string(), house: z.string(), evidence: z.string() }),
  by: z.string(),
  at: z.string(),
});

/** A claim that a person accepted, made by hand, or marked as opinion; proposals are never stored. */
export const storedClaimSchema = z.object({
  id: z.string().min(1),
  anchor: anchorSchema,
  origin: z.enum(['accepted', 'manual']),
  /** null with `opinion`: not checkable, says a person */
  check: checkSchema.nullable(),
  opinion: z.boolean().optional(),
  proof: acceptedProofSchema.optional(),
});
export type StoredClaim = z.infer<typeof storedClaimSchema>;
