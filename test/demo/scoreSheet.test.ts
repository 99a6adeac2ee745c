import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { scoreSheetSchema } from '../../shared/contract/scoreSheet.ts';
import { scoreUnit } from '../../shared/score/index.ts';
import { evidenceOf } from '../corpus/judgeRows.ts';

const dossier = join(import.meta.dirname, '../../main/demo/dossier');

test('the score sheet gives every reviewed set the score and the award that its article records', async () => {
  const sheet = scoreSheetSchema.parse(JSON.parse(readFileSync(join(dossier, 'scoresheet.json'), 'utf8')));
  const evidence = await evidenceOf(dossier);
  const measurer = createMeasurer();
  const reviewed = evidence.articles.filter(({ meta }) => typeof meta.score === 'number');
  const scored = reviewed.map((article) => {
    const unit = evidence.units.get(article.meta.unit)!;
    const { total, award } = scoreUnit(sheet, unit, {
      article,
      measure: (run) => measurer.measure(unit, run),
    });
    return [article.id, total, award];
  });
  expect(scored).toEqual(reviewed.map(({ id, meta }) => [id, meta.score, meta.award]));
  expect(reviewed).toHaveLength(evidence.units.size);
});
