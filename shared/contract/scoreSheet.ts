import { z } from 'zod';

/** A corner of a curve: the measured value and the points it earns; straight between corners, flat outside. */
export const curvePointSchema = z.tuple([z.number(), z.number()]);

export const criterionSchema = z.looseObject({
  id: z.string().regex(/^[a-z0-9][a-z0-9.-]{0,79}$/, 'a criterion id has a-z, 0-9, dots and hyphens'),
  label: z.string().min(1),
  weight: z.number().nonnegative(),
  /** Catalogue id that feeds the curve; absent: points are given by hand. */
  quantity: z.string().optional(),
  stat: z.enum(['scalar', 'average', 'max', 'min']).optional(),
  /** Signal of the run that feeds it; absent: the quantity's usual one. */
  signal: z.string().optional(),
  /** Corners with rising measured value */
  curve: z.array(curvePointSchema).min(1).optional(),
  /** Decimals that a criterion's points are rounded to before weighting; absent: none. */
  decimals: z.number().int().min(0).max(6).optional(),
});
export type Criterion = z.infer<typeof criterionSchema>;

/** An award is given when the total reaches `from` and every named criterion its own minimum. */
export const awardRuleSchema = z.looseObject({
  name: z.string().min(1),
  from: z.number(),
  minimums: z.record(z.string(), z.number()).optional(),
});
export type AwardRule = z.infer<typeof awardRuleSchema>;

/** `scoresheet.json`: criteria, curves, weights and award rule. */
export const scoreSheetSchema = z.looseObject({
  version: z.number().int().nonnegative(),
  /** Points of a perfect set */
  max: z.number().positive(),
  /** Decimals of the printed total */
  decimals: z.number().int().min(0).max(6),
  criteria: z.array(criterionSchema).min(1),
  awards: z.array(awardRuleSchema).optional(),
  /** Points given by hand: unit id → criterion id → points */
  given: z.record(z.string(), z.record(z.string(), z.number())).optional(),
});
export type ScoreSheet = z.infer<typeof scoreSheetSchema>;
