import { z } from 'zod';
import { seriesNames } from '../../shared/contract/reading.ts';
import { stageSchema } from '../../shared/contract/run.ts';

export const dossierVersion = 1;

/** `dossier.json` */
export const dossierSchema = z.looseObject({
  format: z.literal('nitproof-dossier', 'format is "nitproof-dossier"'),
  version: z.number(),
});

/** `articles/<article>.remarks.json`: the desk's remarks, each tied to a quotation or to the whole article. */
export const remarksSchema = z.looseObject({
  remarks: z.array(
    z.looseObject({
      id: z.string().min(1),
      by: z.string(),
      at: z.string(),
      text: z.string(),
      quote: z.string().optional(),
      state: z.enum(['open', 'resolved']),
    }),
  ),
});

/** One run or pattern of a protocol. */
const protocolStepSchema = z.looseObject({
  id: z.string().min(1),
  title: z.string(),
  /** A run with this series, or (with `topic`) an observation */
  series: z.enum(seriesNames).optional(),
  /** For the series `single` */
  quantity: z.string().optional(),
  topic: z.string().optional(),
  /** `SDR`, `HDR` (any of its formats) or a format's name */
  signal: z.string().optional(),
  stage: stageSchema.optional(),
  /** Why a fair verdict needs it, one sentence */
  why: z.string().optional(),
  /** Ids in `main/workbench/protocol/cautions.ts`, or sentences */
  cautions: z.array(z.string()).optional(),
});
export type ProtocolStep = z.infer<typeof protocolStepSchema>;

const protocolListSchema = z.looseObject({
  id: z.string().min(1),
  title: z.string(),
  /** Words of panel or backlight, or `zones` for sets that dim in zones; absent: every set */
  for: z.array(z.string()).optional(),
  warm_up_min: z.number().nonnegative().optional(),
  steps: z.array(protocolStepSchema),
});
export type ProtocolList = z.infer<typeof protocolListSchema>;

/** `protocol.json`: lists of runs and patterns by kind of set. */
export const protocolSchema = z.looseObject({
  version: z.number().int().positive(),
  lists: z.array(protocolListSchema),
});
