import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createMeasurer } from '../../shared/certainty/index.ts';
import { defaultHouse } from '../../shared/claims/house/defaults.ts';
import { createChecker, describeAnchor, digestsOf } from '../../shared/claims/index.ts';
import type { JudgedClaim } from '../../shared/contract/claim.ts';
import type { Evidence } from '../../shared/contract/evidence.ts';
import type { StoredClaim } from '../../shared/contract/storedClaim.ts';
import { claimsText } from '../dossier/claimsCollection.ts';
import { dossierEvidence } from '../dossier/dossierEvidence.ts';
import { readDossier } from '../dossier/readDossier.ts';

/**
 * Accepts the proofs of the Hearth's first look as the reviewer did on the day it was released: before the run with
 * firmware 3.2. Today they are stale, and one of them breaks. Run it again when the form of checks changes.
 */
const dossier = join(import.meta.dirname, 'dossier');
const articleId = 'hearth-55-first-look';
const later = 'sdr-calm-delivered-firmware-3-2';
const accepted = new Set(['grey.de2000', 'grey.tint', 'sweep.red.saturation']);

function before(evidence: Evidence): Evidence {
  return {
    ...evidence,
    units: new Map(
      [...evidence.units].map(([id, unit]) => [
        id,
        { ...unit, runs: unit.runs.filter((run) => run.id !== later) },
      ]),
    ),
  };
}

const read = await readDossier(dossier);
if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join('\n'));
const evidence = before(dossierEvidence(read.value.dossier));
const article = evidence.articles.find(({ id }) => id === articleId)!;
const text = plainTextOfMarkdown(readFileSync(join(dossier, 'articles', `${articleId}.md`), 'utf8'));
const bench = { evidence, article, house: defaultHouse, ...createMeasurer() };

function proven(claim: JudgedClaim): StoredClaim {
  const { verdict, reason, found, quantity } = claim.judgement;
  if (verdict !== 'holds') throw new Error(`“${claim.text}” did not hold then: ${verdict}, ${reason}`);
  return {
    id: `first-look-${quantity!.replaceAll('.', '-')}`,
    anchor: describeAnchor(text.text, { start: claim.start, end: claim.end }),
    origin: 'accepted',
    check: claim.check,
    proof: {
      verdict,
      reason,
      found: { ...found },
      digests: digestsOf(claim, bench),
      by: 'reviewer',
      at: '2026-09-19T17:20:00+01:00',
    },
  };
}

const claims = createChecker(bench)
  .check(text)
  .claims.filter(({ judgement }) => accepted.has(judgement.quantity ?? ''))
  .map(proven);
writeFileSync(join(dossier, 'articles', `${articleId}.claims.jsonld`), claimsText(articleId, claims, null));
console.log(`${claims.length} proofs accepted`);
