import { z } from 'zod';
import { articleSchema } from '../../shared/contract/article.ts';
import { houseSchema } from '../../shared/contract/house.ts';
import { runSchema } from '../../shared/contract/run.ts';
import { scoreSheetSchema } from '../../shared/contract/scoreSheet.ts';
import { unitSchema } from '../../shared/contract/unit.ts';
import { claimsCollectionSchema } from '../dossier/claimsCollection.ts';
import { dossierSchema, protocolSchema, remarksSchema } from '../dossier/schemas.ts';
import { historyLineSchema } from '../library/sqlite/historyChain.ts';
import { checkReportSchema, metricsReportSchema } from './reports.ts';
import { observationRowSchema, readingRowSchema } from './rows.ts';

const ofZod = (schema: z.ZodType): Record<string, unknown> => {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, { unrepresentable: 'any' });
  return rest;
};

/** Every file of a dossier and every report: name of the schema, what it describes, the schema itself. */
const described: readonly (readonly [name: string, title: string, schema: Record<string, unknown>])[] = [
  ['dossier', 'dossier.json', ofZod(dossierSchema)],
  ['house', 'house.json: house words, levels, defaults', ofZod(houseSchema)],
  ['scoresheet', 'scoresheet.json: criteria, curves, weights, award rule', ofZod(scoreSheetSchema)],
  ['protocol', 'protocol.json: runs and patterns that a fair verdict needs', ofZod(protocolSchema)],
  ['unit', 'units/<unit>/unit.json: identity and facts', ofZod(unitSchema)],
  ['observation', 'one row of units/<unit>/observations.csv, cells typed', observationRowSchema()],
  ['run', 'units/<unit>/runs/<run>.json: conditions', ofZod(runSchema)],
  ['reading', 'one row of units/<unit>/runs/<run>.csv, cells typed', readingRowSchema()],
  ['article', 'articles/<article>.json', ofZod(articleSchema)],
  ['claims', 'articles/<article>.claims.jsonld: accepted proofs', ofZod(claimsCollectionSchema)],
  ['remarks', 'articles/<article>.remarks.json: the desk’s remarks', ofZod(remarksSchema)],
  ['history', 'one line of history.jsonl', ofZod(historyLineSchema)],
  ['check-report', 'nitproof check --json', ofZod(checkReportSchema)],
  ['metrics-report', 'nitproof metrics --json', ofZod(metricsReportSchema)],
];

/** File name → text of every JSON Schema (2020-12) of `docs/schema`, generated from what the program itself checks by. */
export function schemaFiles(): Map<string, string> {
  return new Map(
    described.map(([name, title, schema]) => [
      `${name}.schema.json`,
      `${JSON.stringify({ $schema: 'https://json-schema.org/draft/2020-12/schema', $id: `urn:nitproof:${name}`, title, ...schema }, null, 2)}\n`,
    ]),
  );
}
