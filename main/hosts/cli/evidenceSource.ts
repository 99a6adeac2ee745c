import { statSync } from 'node:fs';
import { defaultHouse } from '../../../shared/claims/house/defaults.ts';
import type { ArticleDocument } from '../../../shared/contract/door.ts';
import type { Evidence } from '../../../shared/contract/evidence.ts';
import { fail, type Result, succeed } from '../../../shared/contract/fault.ts';
import type { House } from '../../../shared/contract/house.ts';
import type { ScoreSheet } from '../../../shared/contract/scoreSheet.ts';
import { dossierEvidence } from '../../dossier/dossierEvidence.ts';
import { fileFault } from '../../dossier/dossierFiles.ts';
import { readDossier } from '../../dossier/readDossier.ts';
import { missingUnits } from '../../dossier/references.ts';
import { openLibrary } from '../../library/openLibrary.ts';

/** What `check` and `metrics` compute from, whichever form it is kept in. */
export interface EvidenceSource {
  evidence: Evidence;
  articles: ArticleDocument[];
  house: House;
  scoreSheet: ScoreSheet | null;
}

/** Reads a dossier folder or a library file. A library is opened read only. */
export async function readEvidenceSource(path: string): Promise<Result<EvidenceSource>> {
  let isFolder: boolean;
  try {
    isFolder = statSync(path).isDirectory();
  } catch (error) {
    return fail(fileFault(error, path));
  }
  return isFolder ? fromDossier(path) : fromLibrary(path);
}

async function fromDossier(folder: string): Promise<Result<EvidenceSource>> {
  const read = await readDossier(folder);
  if (!read.ok) return read;
  const { dossier } = read.value;
  const missing = missingUnits(dossier, folder, new Set());
  if (missing.length > 0) return fail(...missing);
  return succeed({
    evidence: dossierEvidence(dossier),
    articles: dossier.articles.map(({ id, document, markdown, claims }) => ({
      id,
      meta: document.value,
      markdown,
      claims: claims?.claims ?? [],
      revision: 0,
      savedAt: null,
    })),
    house: dossier.house?.value ?? defaultHouse,
    scoreSheet: dossier.scoreSheet?.value ?? null,
  });
}

async function fromLibrary(file: string): Promise<Result<EvidenceSource>> {
  const opened = await openLibrary(file, { create: false, readOnly: true });
  if (!opened.ok) return opened;
  const library = opened.value;
  try {
    const evidence = await library.readEvidence();
    const articles: ArticleDocument[] = [];
    for (const { id } of evidence.articles) {
      const article = await library.readArticle(id);
      if (!article.ok) return article;
      articles.push(article.value);
    }
    return succeed({
      evidence,
      articles,
      house: (await library.readHouse()) ?? defaultHouse,
      scoreSheet: await library.readScoreSheet(),
    });
  } finally {
    await library.close();
  }
}
