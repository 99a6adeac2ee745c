import { join } from 'node:path';
import { expect, test } from 'vitest';
import { exportDossier } from '../../main/dossier/exportDossier.ts';
import { importDossier } from '../../main/dossier/importDossier.ts';
import { checkArticles } from '../../main/hosts/cli/check.ts';
import { type EvidenceSource, readEvidenceSource } from '../../main/hosts/cli/evidenceSource.ts';
import { readReadings } from '../../main/intake/readReadings.ts';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { createChecker, describeAnchor, digestsOf, type JudgingBench } from '../../shared/claims/index.ts';
import type { Verdict } from '../../shared/contract/claim.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import { freshFolder, writeFiles } from './sampleDossier.ts';

const article = 'hearth-55';
const runFile = 'units/orrinvale-hearth-55/runs/sdr';
const files = {
  'dossier.json': '{"format":"nitproof-dossier","version":1}',
  'units/orrinvale-hearth-55/unit.json':
    '{"maker":"Orrinvale","model":"Hearth 55","facts":{"hdmi.count":{"value":4}}}',
  [`${runFile}.json`]:
    '{"mode":"Calm","stage":"as-delivered","signal":"SDR","dimming":"off","target":{"gamut":"BT.709","white":"D65","eotf":"BT.1886"}}',
  [`${runFile}.csv`]:
    'series,pattern,stimulus,x,y,Y\ncontrast,full-white,,0.3127,0.3290,326.0\ncontrast,full-black,,,,0.100\ngreyscale,,100,0.3127,0.3290,326.0\ngreyscale,,50,0.3127,0.3290,70.0\n',
  'articles/hearth-55.json':
    '{"title":"Hearth 55","unit":"orrinvale-hearth-55","state":"draft","date":"2026-10-02"}',
  'articles/hearth-55.md': 'The contrast is 3,260:1. There are four HDMI ports.\n',
};

function sourceOf(result: Awaited<ReturnType<typeof readEvidenceSource>>): EvidenceSource {
  if (!result.ok) throw new Error(result.faults[0]!.sentence);
  return result.value;
}

/** Every claim of the article accepted as it is judged now, as the window does it. */
function acceptAll({ evidence, articles, house, scoreSheet }: EvidenceSource): StoredClaim[] {
  const { meta, markdown } = articles.find(({ id }) => id === article)!;
  const text = plainTextOfMarkdown(markdown);
  const bench: JudgingBench = {
    evidence,
    article: { id: article, meta },
    house,
    scoreSheet,
    ...createMeasurer(),
  };
  return createChecker(bench)
    .check(text)
    .claims.map((claim, index) => ({
      id: `c${index}`,
      anchor: describeAnchor(text.text, claim),
      origin: 'accepted',
      check: claim.check,
      proof: {
        verdict: claim.judgement.verdict as Verdict,
        reason: claim.judgement.reason,
        found: claim.judgement.found,
        digests: digestsOf(claim, bench),
        by: 'editor',
        at: '2026-10-02T10:00:00Z',
      },
    }));
}

test('accepted proofs survive library and dossier unchanged, and turn stale when the run is measured anew', async () => {
  const folder = freshFolder();
  const dossier = writeFiles(join(folder, 'dossier'), files);
  const file = join(folder, 'library.sqlite');
  const opened = await openLibrary(file);
  if (!opened.ok) throw new Error('library');
  const library = opened.value;
  await importDossier(dossier, library);
  const before = sourceOf(await readEvidenceSource(dossier));
  const claims = acceptAll(before);
  const { meta, markdown } = before.articles[0]!;
  expect(checkArticles(before).totals).toMatchObject({ holds: 2, stale: 0 });
  await library.saveArticle(article, { meta, markdown, claims, revision: 1, by: 'editor' });

  const stored = checkArticles(sourceOf(await readEvidenceSource(file)));
  expect(stored.totals).toMatchObject({ holds: 2, stale: 0 });
  expect(
    stored.articles[0]!.sentences.flatMap((sentence) => sentence.claims.map(({ origin }) => origin)),
  ).toEqual(['accepted', 'accepted']);
  await exportDossier(library, join(folder, 'out'));
  expect(checkArticles(sourceOf(await readEvidenceSource(join(folder, 'out'))))).toEqual(stored);

  const anew = await readReadings(
    Buffer.from(files[`${runFile}.csv`]!.replaceAll('326.0', '299.0')),
    'anew.csv',
  );
  if (!anew.ok) throw new Error('readings');
  await library.saveReadings('orrinvale-hearth-55', 'sdr', undefined, anew.value);
  await library.close();
  const after = checkArticles(sourceOf(await readEvidenceSource(file)));
  expect(
    after.articles[0]!.sentences.flatMap((sentence) =>
      sentence.claims.map(({ verdict, now }) => [verdict, now]),
    ),
  ).toEqual([
    ['stale', 'breaks'],
    ['holds', undefined],
  ]);
});
