import { z } from 'zod';
import { verdicts } from '../../shared/contract/claim.ts';
import { factsSchema } from '../../shared/contract/unit.ts';

const numberWithU = z.object({
  value: z.number(),
  /** Standard uncertainty; absent where the value carries none */
  u: z.number().optional(),
});

/** Over the levels that count; where none does, the reason. */
const statistic = z.union([numberWithU.strict(), z.strictObject({ undefined: z.string() })]);

/** `nitproof metrics --json` */
export const metricsReportSchema = z.object({
  format: z.literal('nitproof-metrics'),
  version: z.literal(1),
  unit: z.string(),
  runs: z.record(
    z.string(),
    z.record(
      z.string(),
      z.union([
        z.strictObject({ undefined: z.string() }),
        z.strictObject({ over: z.number() }),
        z.strictObject({
          unit: z.string(),
          values: z.array(
            numberWithU.extend({ axis: z.union([z.number(), z.string()]).optional() }).strict(),
          ),
          average: statistic.optional(),
          max: statistic.optional(),
        }),
      ]),
    ),
  ),
  facts: factsSchema,
});

const claimSchema = z.strictObject({
  text: z.string(),
  start: z.number().int(),
  end: z.number().int(),
  kind: z.string().nullable(),
  quantity: z.string().nullable(),
  origin: z.enum(['proposed', 'accepted', 'manual']),
  conditions: z.record(z.string(), z.unknown()),
  stated: z.record(z.string(), z.unknown()),
  found: z.record(z.string(), z.unknown()),
  probability: z.number().min(0).max(1).nullable(),
  verdict: z.enum(verdicts),
  now: z.enum(verdicts).optional(),
  reason: z.string(),
  evidence: z.array(z.string()),
});

/** `nitproof check --json` */
export const checkReportSchema = z.strictObject({
  format: z.literal('nitproof-check'),
  version: z.literal(1),
  articles: z.array(
    z.strictObject({
      article: z.string(),
      sentences: z.array(
        z.strictObject({
          index: z.number().int(),
          text: z.string(),
          start: z.number().int(),
          end: z.number().int(),
          claims: z.array(claimSchema),
        }),
      ),
      lost: z.array(claimSchema).optional(),
      agreement: z.array(
        z.strictObject({
          claims: z.tuple([z.tuple([z.number(), z.number()]), z.tuple([z.number(), z.number()])]),
          verdict: z.enum(['holds', 'breaks']),
          reason: z.string(),
        }),
      ),
      unsaid: z.array(z.strictObject({ quantity: z.string(), reason: z.string() })),
    }),
  ),
  totals: z.record(z.enum(verdicts), z.number().int()),
});
