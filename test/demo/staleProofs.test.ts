import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { claimsCollectionSchema, claimsOf } from '../../main/dossier/claimsCollection.ts';
import { dossierEvidence } from '../../main/dossier/dossierEvidence.ts';
import { readDossier } from '../../main/dossier/readDossier.ts';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { defaultHouse } from '../../shared/claims/house/defaults.ts';
import { createChecker } from '../../shared/claims/index.ts';

const dossier = join(import.meta.dirname, '../../main/demo/dossier');
const id = 'hearth-55-first-look';

test('proofs accepted before firmware 3.2 are stale, and the one on red now breaks', async () => {
  const read = await readDossier(dossier);
  if (!read.ok) throw new Error('the demo does not read');
  const evidence = dossierEvidence(read.value.dossier);
  const article = evidence.articles.find((one) => one.id === id)!;
  const stored = claimsOf(
    claimsCollectionSchema.parse(
      JSON.parse(readFileSync(join(dossier, 'articles', `${id}.claims.jsonld`), 'utf8')),
    ),
  );
  const text = plainTextOfMarkdown(readFileSync(join(dossier, 'articles', `${id}.md`), 'utf8'));
  const { claims, lost } = createChecker({
    evidence,
    article,
    house: defaultHouse,
    ...createMeasurer(),
  }).check(text, stored);
  expect(lost).toEqual([]);
  expect(
    claims
      .filter(({ origin }) => origin === 'accepted')
      .map(({ judgement }) => [judgement.quantity, judgement.verdict, judgement.now]),
  ).toEqual([
    ['grey.de2000', 'stale', 'holds'],
    ['grey.tint', 'stale', 'holds'],
    ['sweep.red.saturation', 'stale', 'breaks'],
  ]);
});
