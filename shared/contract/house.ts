import { z } from 'zod';

/** `house.json`: the editable lexicon and the house's levels. The shipped defaults stand in `shared/claims/house`. */
export const houseSchema = z.looseObject({
  /** Raised by every edit; stands in each verdict's digest. */
  version: z.number().int().nonnegative(),
  /** JCGM 106: probability from which a reported holds is certain (breaks: 1 − level). */
  level: z.number().gt(0.5).lt(1),
  limits: z.object({
    visibleDe2000: z.number(),
    visibleDeItp: z.number(),
    imperceptibleDe2000: z.number(),
    referenceAverage: z.number(),
    referenceMaximum: z.number(),
    closeToReferenceAverage: z.number(),
    accurateAverage: z.number(),
    /** Δu′v′ */
    tint: z.number(),
    saturationPercent: z.number(),
    hueDegrees: z.number(),
    eotfPercent: z.number(),
    gamma: z.number(),
    cctKelvin: z.number(),
  }),
  /** Δu′v′ from which a tint is slight, mild, obvious */
  tintSizes: z.object({ slight: z.number(), mild: z.number(), obvious: z.number() }),
  /** Phrase (lower case) → severity range of an observation */
  severities: z.record(z.string(), z.tuple([z.number(), z.number()])),
  /** Phrase → intensity */
  intensities: z.record(z.string(), z.enum(['slight', 'mild', 'obvious'])),
  /** Topic id → phrases that name it */
  topics: z.record(z.string(), z.array(z.string())),
  /** Adjective → meaning, added by the house; those without an entry are opinion candidates and feed drift. */
  adjectives: z.record(
    z.string(),
    z.object({
      quantity: z.string(),
      op: z.enum(['<', '<=', '>', '>=']),
      x: z.number(),
      signal: z.string().optional(),
    }),
  ),
});
export type House = z.infer<typeof houseSchema>;
