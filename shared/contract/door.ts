import { z } from 'zod';
import { articleSchema } from './article.ts';
import type { ArticleRecord, UnitEvidence } from './evidence.ts';
import { type Fault, faultSchema } from './fault.ts';
import { houseSchema } from './house.ts';
import { observationSchema } from './observation.ts';
import { protocolReplySchema } from './protocol.ts';
import { seriesNames } from './reading.ts';
import { runSchema } from './run.ts';
import { scoreSheetSchema } from './scoreSheet.ts';
import { storedClaimSchema } from './storedClaim.ts';
import { dateSchema, idSchema, moneySchema, unitSchema } from './unit.ts';

/**
 * The only door between the window and the backend. A request's input is parsed here on its way in; a reply
 * is `Result`-shaped, so that an error crosses the door as a value. Hosts carry messages and add nothing.
 */

const nothing = z.object({}).strict();

export const unitSummarySchema = z.object({
  id: idSchema,
  maker: z.string(),
  model: z.string(),
  diagonalInches: z.number().nullable(),
  panel: z.string().nullable(),
  backlight: z.string().nullable(),
  price: moneySchema.nullable(),
  provenance: z.string().nullable(),
  dueBack: dateSchema.nullable(),
  returned: dateSchema.nullable(),
  firmware: z.string().nullable(),
  runs: z.number(),
  observations: z.number(),
  photos: z.number(),
  /** Time of the latest run, RFC 3339 */
  latestRun: z.string().nullable(),
});
export type UnitSummary = z.infer<typeof unitSummarySchema>;

export const articleSummarySchema = z.object({
  id: idSchema,
  title: z.string(),
  unit: z.string(),
  state: articleSchema.shape.state,
  date: dateSchema.nullable(),
  words: z.number(),
  revision: z.number(),
  savedAt: z.string().nullable(),
});
export type ArticleSummary = z.infer<typeof articleSummarySchema>;

export const articleDocumentSchema = z.object({
  id: idSchema,
  meta: articleSchema,
  markdown: z.string(),
  claims: z.array(storedClaimSchema),
  revision: z.number().int().nonnegative(),
  savedAt: z.string().nullable(),
});
export type ArticleDocument = z.infer<typeof articleDocumentSchema>;

export const photoSchema = z.object({ name: z.string(), mime: z.string(), bytes: z.number() });

export const historyEventSchema = z.looseObject({
  at: z.string(),
  by: z.string(),
  what: z.string(),
  of: z.string(),
});

/** Evidence is made by the backend from parsed input, so it is typed rather than parsed again. */
const evidenceReply = z.custom<{ units: UnitEvidence[]; articles: ArticleRecord[] }>(
  (value) => typeof value === 'object',
);
const unitReply = z.custom<UnitEvidence>((value) => typeof value === 'object');

export const door = {
  /** What a window begins with and reads again at each change: the library, a line a unit and a line an article. */
  'shelf.list': {
    input: nothing,
    output: z.object({
      library: z.object({
        name: z.string(),
        file: z.string(),
        demo: z.boolean(),
        units: z.number(),
        articles: z.number(),
        /** Grows with every change; events carry it too. */
        revision: z.number(),
        readOnly: z.boolean(),
      }),
      units: z.array(unitSummarySchema),
      articles: z.array(articleSummarySchema),
    }),
  },
  'evidence.read': { input: nothing, output: evidenceReply },
  'unit.read': { input: z.object({ unit: idSchema }), output: unitReply },
  'unit.save': {
    input: z.object({ unit: idSchema, content: unitSchema }),
    output: z.object({ revision: z.number() }),
  },
  'run.save': {
    input: z.object({ unit: idSchema, run: idSchema, conditions: runSchema }),
    output: z.object({ revision: z.number() }),
  },
  /** A readings file as text (CSV) brought into a run; creates the run when `conditions` are given. Reports progress as `job` events. */
  'readings.bring': {
    input: z.object({
      unit: idSchema,
      run: idSchema,
      conditions: runSchema.optional(),
      fileName: z.string(),
      base64: z.string(),
      /** For a file without a column `series` */
      series: z.enum(seriesNames).optional(),
      job: z.string(),
    }),
    output: z.object({ rows: z.number(), notes: z.array(z.string()), revision: z.number() }),
  },
  'job.cancel': { input: z.object({ job: z.string() }), output: z.object({ cancelled: z.boolean() }) },
  'observation.save': {
    input: z.object({ unit: idSchema, observation: observationSchema }),
    output: z.object({ revision: z.number() }),
  },
  'observation.remove': {
    input: z.object({ unit: idSchema, id: z.string() }),
    output: z.object({ revision: z.number() }),
  },
  'photo.list': { input: z.object({ unit: idSchema }), output: z.array(photoSchema) },
  'photo.add': {
    input: z.object({ unit: idSchema, name: z.string(), base64: z.string() }),
    output: z.object({ name: z.string(), revision: z.number() }),
  },
  'photo.read': {
    input: z.object({ unit: idSchema, name: z.string() }),
    output: z.object({ mime: z.string(), base64: z.string() }),
  },
  'article.read': { input: z.object({ article: idSchema }), output: articleDocumentSchema },
  'article.create': {
    input: z.object({
      article: idSchema,
      meta: articleSchema,
      markdown: z.string(),
      /** Proofs that the text begins with, such as those of an outline's sentences */
      claims: z.array(storedClaimSchema).optional(),
    }),
    output: z.object({ revision: z.number() }),
  },
  /** Fails with `stale-revision` when somebody else saved in between; nothing is overwritten. */
  'article.save': {
    input: z.object({
      article: idSchema,
      revision: z.number(),
      meta: articleSchema,
      markdown: z.string(),
      claims: z.array(storedClaimSchema),
      by: z.string(),
    }),
    output: z.object({ revision: z.number(), savedAt: z.string() }),
  },
  /** One writer an article: renewed by the holder every few seconds, free again when it lapses. */
  'article.lease': {
    input: z.object({ article: idSchema, client: z.string(), release: z.boolean().optional() }),
    output: z.object({ holder: z.boolean() }),
  },
  'house.read': {
    input: nothing,
    output: z.object({
      house: houseSchema,
      /** Null: the house has no score sheet; articles carry their own score. */
      scoreSheet: scoreSheetSchema.nullable(),
    }),
  },
  'house.save': { input: z.object({ house: houseSchema }), output: z.object({ revision: z.number() }) },
  'scoresheet.save': {
    input: z.object({ scoreSheet: scoreSheetSchema }),
    output: z.object({ revision: z.number() }),
  },
  'protocol.read': { input: z.object({ unit: idSchema }), output: protocolReplySchema },
  'history.list': { input: z.object({ of: z.string().optional() }), output: z.array(historyEventSchema) },
  'dossier.import': {
    input: z.object({ folder: z.string(), prefer: z.enum(['theirs', 'ours']).optional(), job: z.string() }),
    output: z.object({
      units: z.number(),
      articles: z.number(),
      notes: z.array(z.string()),
      revision: z.number(),
    }),
  },
  'dossier.export': {
    input: z.object({ folder: z.string(), job: z.string() }),
    output: z.object({ files: z.number() }),
  },
} as const;

export type Door = typeof door;
export type RequestName = keyof Door;
export type RequestInput<N extends RequestName> = z.input<Door[N]['input']>;
export type RequestReply<N extends RequestName> = z.output<Door[N]['output']>;

/** What a host carries back: the reply or the faults, never a thrown error. */
export type Reply<N extends RequestName> =
  | { ok: true; value: RequestReply<N> }
  | { ok: false; faults: Fault[] };

/** News from the backend to every window on the same library. */
export const eventSchema = z.discriminatedUnion('type', [
  z.object({
    type: z.literal('changed'),
    what: z.enum(['unit', 'article', 'house', 'library']),
    id: z.string(),
    revision: z.number(),
    /** Client that caused it, so that a window can ignore its own echo */
    by: z.string().optional(),
  }),
  z.object({
    type: z.literal('job'),
    job: z.string(),
    state: z.enum(['running', 'done', 'cancelled', 'failed']),
    done: z.number(),
    total: z.number(),
    sentence: z.string(),
    faults: z.array(faultSchema).optional(),
  }),
  z.object({ type: z.literal('menu'), action: z.string() }),
]);
export type DoorEvent = z.infer<typeof eventSchema>;

/** The backend's side of the door, as hosts see it. */
export interface Workbench {
  answer<N extends RequestName>(name: N, input: unknown): Promise<Reply<N>>;
  subscribe(listener: (event: DoorEvent) => void): () => void;
  close(): Promise<void>;
}

/** The window's side of the door; `window.nitproof` in Electron, fetch and server-sent events on the loopback host. */
export interface DoorClient {
  ask<N extends RequestName>(name: N, input: RequestInput<N>): Promise<Reply<N>>;
  subscribe(listener: (event: DoorEvent) => void): () => void;
}
