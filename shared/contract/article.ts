import { z } from 'zod';
import { dateSchema } from './unit.ts';

export const articleStates = [
  'draft',
  'with-editor',
  'returned',
  'signed-off',
  'released',
  'corrected',
] as const;

/** Conditions that an article states once for a signal; a sentence may override each. */
export const articleConditionsSchema = z.looseObject({
  mode: z.string().optional(),
  stage: z.string().optional(),
  dimming: z.string().optional(),
  sample: z.string().optional(),
});

/** `articles/<article>.json`. `date` is the article's today: nothing reads the clock. */
export const articleSchema = z.looseObject({
  title: z.string(),
  unit: z.string(),
  state: z.enum(articleStates),
  against: z.array(z.string()).optional(),
  date: dateSchema.nullish(),
  locale: z.string().optional(),
  embargo: z.string().nullish(),
  conditions: z.record(z.string(), articleConditionsSchema).optional(),
  score: z.number().nullish(),
  score_max: z.number().nullish(),
  award: z.union([z.string(), z.boolean()]).nullish(),
  /** The text is a script as it is said: no punctuation needed, numbers and letters as words. */
  spoken: z.boolean().optional(),
});
export type Article = z.infer<typeof articleSchema>;
