import { z } from 'zod';
import { seriesNames } from './reading.ts';

/** A step as the library answers it: what a fair verdict needs, why, its cautions in words, and where it is found. */
export const protocolStepSchema = z.looseObject({
  id: z.string(),
  title: z.string(),
  series: z.enum(seriesNames).optional(),
  quantity: z.string().optional(),
  topic: z.string().optional(),
  signal: z.string().optional(),
  why: z.string().optional(),
  cautions: z.array(z.string()),
  /** `run/<id>` or `observation/<id>` */
  foundIn: z.array(z.string()),
  done: z.boolean(),
});
export type ProtocolStepReply = z.infer<typeof protocolStepSchema>;

export const protocolReplySchema = z.looseObject({
  /** Minutes the set has to be on before the first reading */
  warmUpMinutes: z.number(),
  /** For the whole sitting */
  cautions: z.array(z.string()),
  steps: z.array(protocolStepSchema),
});
export type ProtocolReply = z.infer<typeof protocolReplySchema>;
