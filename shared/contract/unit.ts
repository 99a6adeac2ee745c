import { z } from 'zod';

/** Ids of units, runs and articles are folder names in a dossier. */
export const idSchema = z.string().regex(/^[a-z0-9-]{1,80}$/, 'an id has 1 to 80 of a-z, 0-9 and -');

/** A calendar date without time, `2026-09-14`. */
export const dateSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a date is written 2026-09-14');

export const moneySchema = z.looseObject({
  amount: z.number().nonnegative(),
  currency: z.string().regex(/^[A-Z]{3}$/, 'a currency is an ISO 4217 code such as GBP'),
  on: dateSchema.optional(),
});

/** A typed statement about the unit that no reading proves: from the box, a menu, the maker … */
export const factStatementSchema = z.looseObject({
  value: z.union([z.number(), z.string(), z.boolean(), z.array(z.union([z.string(), z.number()]))]),
  unit: z.string().optional(),
  by: z.string().optional(),
  on: z.string().optional(),
  note: z.string().optional(),
});
export type FactStatement = z.infer<typeof factStatementSchema>;

export const factsSchema = z.record(z.string(), z.union([factStatementSchema, z.array(factStatementSchema)]));
export type Facts = z.infer<typeof factsSchema>;

export const sizeSchema = z.looseObject({ diagonal_in: z.number().positive() });

/** Another size of the same model; its facts are its own, measurements never transfer to it. */
export const variantSchema = z.looseObject({
  size: sizeSchema,
  model: z.string().optional(),
  price: moneySchema.nullish(),
  facts: factsSchema.optional(),
});

/** `units/<unit>/unit.json`: identity and facts of one set. */
export const unitSchema = z.looseObject({
  maker: z.string().min(1),
  model: z.string().min(1),
  size: sizeSchema.optional(),
  panel: z.string().optional(),
  backlight: z.string().optional(),
  zones: z.number().int().nonnegative().nullish(),
  price: moneySchema.nullish(),
  provenance: z.string().optional(),
  due_back: dateSchema.nullish(),
  returned: dateSchema.nullish(),
  firmware: z.string().optional(),
  received: dateSchema.nullish(),
  facts: factsSchema.optional(),
  variants: z.array(variantSchema).optional(),
});
export type Unit = z.infer<typeof unitSchema>;
