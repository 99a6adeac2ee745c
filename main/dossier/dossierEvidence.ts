import { createHash } from 'node:crypto';
import { canonicalJson } from '../../shared/claims/canonical.ts';
import type { Evidence, RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Reading } from '../../shared/contract/reading.ts';
import type { Run } from '../../shared/contract/run.ts';
import type { Dossier, DossierUnit } from './dossier.ts';

/** Every member of a reading in a fixed order: part of the digest's definition. */
const readingKeys = [
  'row',
  'series',
  'x',
  'y',
  'Y',
  'stimulus',
  'signal',
  'hue',
  'saturation',
  'patch',
  'referenceLab',
  'referencexyY',
  'window',
  'seconds',
  'pattern',
  'position',
  'level',
  'angle',
  'plane',
  'quantity',
  'value',
  'unit',
] as const satisfies readonly (keyof Reading)[];

/**
 * SHA-256 (hex) of a run's conditions (keys sorted) and typed readings: two files that say the same give the same
 * digest, whatever their spaces and trailing zeros.
 */
function runDigest(conditions: Run, readings: readonly Reading[]): string {
  const hash = createHash('sha256').update(canonicalJson(conditions));
  for (const reading of readings)
    hash.update(`\n${JSON.stringify(readingKeys.map((key) => reading[key] ?? null))}`);
  return hash.digest('hex');
}

export function runEvidence(id: string, conditions: Run, readings: readonly Reading[]): RunEvidence {
  return { id, conditions, readings, digest: runDigest(conditions, readings) };
}

/** What verdicts are computed from; superseded versions are no evidence. */
export function dossierEvidence(dossier: Dossier): Evidence {
  return {
    units: new Map(dossier.units.map((unit) => [unit.id, unitEvidence(unit)])),
    articles: dossier.articles.map(({ id, document }) => ({ id, meta: document.value })),
  };
}

function unitEvidence({ id, document, runs, observations }: DossierUnit): UnitEvidence {
  return {
    id,
    unit: document.value,
    runs: runs
      .filter(({ version }) => version === 0)
      .map((run) => runEvidence(run.id, run.document.value, run.readings)),
    observations: observations?.observations ?? [],
  };
}
