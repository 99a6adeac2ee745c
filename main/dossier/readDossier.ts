import { join } from 'node:path';
import { z } from 'zod';
import { articleSchema } from '../../shared/contract/article.ts';
import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';
import { houseSchema } from '../../shared/contract/house.ts';
import { runSchema } from '../../shared/contract/run.ts';
import { scoreSheetSchema } from '../../shared/contract/scoreSheet.ts';
import { unitSchema } from '../../shared/contract/unit.ts';
import { decodeUtf8 } from '../intake/decodeText.ts';
import { readObservations } from '../intake/observations.ts';
import { cancelled, readReadings } from '../intake/readReadings.ts';
import { checkTime } from '../intake/timeText.ts';
import { claimsCollectionSchema, claimsOf } from './claimsCollection.ts';
import type { Dossier, DossierArticle, DossierRun, DossierUnit } from './dossier.ts';
import { readFolder } from './dossierFiles.ts';
import { type KnownFile, recogniseFile } from './dossierPaths.ts';
import { placeOfPath } from './jsonNode.ts';
import { type Document, parseDocument } from './parseDocument.ts';
import { dossierSchema, dossierVersion, protocolSchema, remarksSchema } from './schemas.ts';

export interface ReadDossierOptions {
  /** Told how many of how many files are read; a false answer cancels. */
  progress?: (done: number, total: number) => Promise<boolean>;
}

/**
 * Reads and checks a dossier folder as `formats.md` defines it. Nothing is dropped in silence: files that are not
 * known are kept and named in the notes. Errors: every finding in every file, each with its place.
 */
export async function readDossier(
  folder: string,
  options: ReadDossierOptions = {},
): Promise<Result<{ dossier: Dossier; notes: string[] }>> {
  const read = await readFolder(folder);
  if (!read.ok) return read;
  const { files, notes } = read.value;
  if (!files.has('dossier.json'))
    return fail({
      code: 'bad-input',
      sentence: 'This folder is no dossier: it has no dossier.json.',
      mend: 'Name the folder that holds dossier.json.',
      place: { file: folder },
    });
  const assembly = new Assembly(folder, notes);
  const paths = [...files.keys()];
  for (const [index, path] of paths.entries()) {
    if (options.progress && !(await options.progress(index, paths.length))) return fail(cancelled);
    await assembly.take(path, files.get(path)!);
  }
  return assembly.finish();
}

class Assembly {
  readonly folder: string;
  readonly notes: string[];
  readonly faults: Fault[] = [];
  readonly documents = new Map<string, string>();
  readonly others = new Map<string, Uint8Array>();
  readonly units = new Map<
    string,
    Partial<DossierUnit> & { runs: DossierRun[]; photos: DossierUnit['photos'] }
  >();
  readonly runDocuments = new Map<string, DossierRun['document']>();
  readonly runTables = new Map<
    string,
    { path: string; bytes: Uint8Array; unit: string; run: string; version: number }
  >();
  readonly articles = new Map<string, Partial<DossierArticle>>();
  history: string[] = [];
  description: Document<unknown> | null = null;
  house: Dossier['house'] = null;
  scoreSheet: Dossier['scoreSheet'] = null;

  constructor(folder: string, notes: string[]) {
    this.folder = folder;
    this.notes = notes;
  }

  place(path: string): string {
    return join(this.folder, path);
  }

  async take(path: string, bytes: Uint8Array): Promise<void> {
    const known = recogniseFile(path);
    if (known !== null && 'badId' in known) {
      this.miss(path, `"${known.badId}" is not an id.`, 'Use 1 to 80 of a-z, 0-9 and -.');
      return;
    }
    if (known === null) {
      this.others.set(path, bytes);
      this.notes.push(`${path} is not part of the format and is kept as it is.`);
      return;
    }
    if (known.kind === 'photo') {
      this.unit(known.unit).photos.push({ name: known.name, bytes });
      return;
    }
    if (known.kind === 'readings') {
      this.runTables.set(`${known.unit}/${known.run}@${known.version}`, { ...known, path, bytes });
      return;
    }
    const text = this.accept(decodeUtf8(bytes, this.place(path)));
    if (text !== null) this.takeText(known, path, text);
  }

  takeText(known: KnownFile, path: string, text: string): void {
    const parse = <T>(schema: z.ZodType<T>): Document<T> | null =>
      this.accept(parseDocument(text, this.place(path), schema));
    switch (known.kind) {
      case 'dossier':
        this.takeDescription(parse(dossierSchema), path, text);
        return;
      case 'house':
        this.house = parse(houseSchema);
        return;
      case 'scoresheet':
        this.scoreSheet = parse(scoreSheetSchema);
        return;
      case 'protocol':
        this.keepDocument(path, parse(protocolSchema));
        return;
      case 'recipe':
        this.keepDocument(path, parse(z.looseObject({})));
        return;
      case 'history':
        this.history = text.split('\n').filter((line) => line !== '');
        return;
      case 'unit': {
        const document = parse(unitSchema);
        if (document !== null) this.unit(known.unit).document = document;
        return;
      }
      case 'observations': {
        const observations = this.accept(readObservations(text, this.place(path)));
        if (observations !== null) this.unit(known.unit).observations = observations;
        return;
      }
      case 'run': {
        const document = parse(runSchema);
        if (document === null) return;
        this.runDocuments.set(`${known.unit}/${known.run}@${known.version}`, document);
        const time = document.value.taken === undefined ? null : checkTime(document.value.taken);
        const timePlace = placeOfPath(document.node, ['taken'], text, this.place(path));
        if (time !== null && 'fault' in time)
          this.faults.push({
            code: 'bad-input',
            sentence: `"taken": ${time.fault}.`,
            mend: 'Write it like 2026-09-15T10:20:00+01:00.',
            place: timePlace,
          });
        else if (time !== null) this.notes.push(`${path}: ${time.note}.`);
        return;
      }
      case 'article': {
        const document = parse(articleSchema);
        if (document !== null) this.article(known.article).document = document;
        return;
      }
      case 'markdown':
        if (text.includes('\r')) this.notes.push(`${path}: the line ends became LF.`);
        this.article(known.article).markdown = text.replace(/\r\n?/g, '\n');
        return;
      case 'claims': {
        const document = parse(claimsCollectionSchema);
        if (document !== null)
          this.article(known.article).claims = { text: document.text, claims: claimsOf(document.value) };
        return;
      }
      case 'remarks': {
        const document = parse(remarksSchema);
        if (document !== null) this.article(known.article).remarks = document.text;
        return;
      }
      case 'photo':
      case 'readings':
        return;
    }
  }

  takeDescription(document: Document<{ version: number }> | null, path: string, text: string): void {
    if (document === null) return;
    this.description = document;
    if (document.value.version !== dossierVersion)
      this.faults.push({
        code: 'bad-input',
        sentence: `This dossier has the format version ${document.value.version}; this Nitproof reads version ${dossierVersion}.`,
        mend: 'Open it with a newer Nitproof, or export it again.',
        place: placeOfPath(document.node, ['version'], text, this.place(path)),
      });
  }

  async finish(): Promise<Result<{ dossier: Dossier; notes: string[] }>> {
    for (const [key, document] of this.runDocuments) {
      const [unit, run, version] = keyParts(key);
      const found: DossierRun = { id: run, version, document, table: null, readings: [] };
      const file = this.runTables.get(key);
      if (file !== undefined) {
        const read = this.accept(
          await readReadings(file.bytes, this.place(file.path), {
            source: document.value.source,
            delimiter: ',',
          }),
        );
        if (read !== null) {
          this.faults.push(...read.faults);
          this.notes.push(...read.notes.map((note) => `${file.path}: ${note}`));
          found.table = read.table;
          found.readings = read.readings;
        }
      }
      this.unit(unit).runs.push(found);
    }
    for (const [key, { path }] of this.runTables)
      if (
        !this.runDocuments.has(key) &&
        !this.faults.some(({ place }) => place?.file === this.place(path.replace(/\.csv$/, '.json')))
      )
        this.miss(path, 'These readings have no conditions.', `Add ${path.replace(/\.csv$/, '.json')}.`);
    for (const [id, unit] of this.units)
      if (unit.document === undefined && !this.faultsIn(`units/${id}/unit.json`))
        this.miss(`units/${id}`, 'This unit has no unit.json.', `Add units/${id}/unit.json.`);
    for (const [id, article] of this.articles) {
      if (article.document === undefined && !this.faultsIn(`articles/${id}.json`))
        this.miss(
          `articles/${id}.md`,
          'This article has no JSON file beside it.',
          `Add articles/${id}.json.`,
        );
      if (article.markdown === undefined && !this.faultsIn(`articles/${id}.md`))
        this.miss(`articles/${id}.json`, 'This article has no text.', `Add articles/${id}.md.`);
    }
    if (this.faults.length > 0 || this.description === null) return fail(...this.faults);
    const dossier: Dossier = {
      description: this.description,
      units: [...this.units].map(([id, unit]) => ({
        id,
        document: unit.document!,
        runs: unit.runs.sort((one, other) => compare(one.id, other.id) || one.version - other.version),
        observations: unit.observations ?? null,
        photos: unit.photos,
      })),
      articles: [...this.articles].map(([id, article]) => ({
        id,
        document: article.document!,
        markdown: article.markdown!,
        claims: article.claims ?? null,
        remarks: article.remarks ?? null,
      })),
      house: this.house,
      scoreSheet: this.scoreSheet,
      documents: this.documents,
      others: this.others,
      history: this.history,
    };
    this.noteDangling(dossier);
    dossier.units.sort((one, other) => compare(one.id, other.id));
    dossier.articles.sort((one, other) => compare(one.id, other.id));
    return succeed({ dossier, notes: this.notes });
  }

  /** What refers to something that is not there and yet can stand: said, not refused. */
  noteDangling(dossier: Dossier): void {
    for (const { id, runs, observations, photos } of dossier.units) {
      const known = new Set(runs.map((run) => run.id));
      for (const run of runs) {
        const { supersedes } = run.document.value;
        if (supersedes && !known.has(supersedes))
          this.notes.push(`units/${id}/runs/${run.id}.json supersedes "${supersedes}", which is not there.`);
      }
      const names = new Set(photos.map(({ name }) => name));
      for (const { id: observation, photo } of observations?.observations ?? [])
        if (photo !== undefined && !names.has(photo.replace(/^photos\//, '')))
          this.notes.push(
            `The observation ${observation} of ${id} shows the photo "${photo}", which is not there.`,
          );
    }
  }

  unit(id: string): Partial<DossierUnit> & { runs: DossierRun[]; photos: DossierUnit['photos'] } {
    const unit = this.units.get(id) ?? { runs: [], photos: [] };
    this.units.set(id, unit);
    return unit;
  }

  article(id: string): Partial<DossierArticle> {
    const article = this.articles.get(id) ?? {};
    this.articles.set(id, article);
    return article;
  }

  keepDocument(path: string, document: Document<unknown> | null): void {
    if (document !== null) this.documents.set(path, document.text);
  }

  accept<T>(result: Result<T>): T | null {
    if (result.ok) return result.value;
    this.faults.push(...result.faults);
    return null;
  }

  faultsIn(path: string): boolean {
    return this.faults.some(({ place }) => place?.file === this.place(path));
  }

  miss(path: string, sentence: string, mend: string): void {
    this.faults.push({ code: 'bad-input', sentence, mend, place: { file: this.place(path) } });
  }
}

function keyParts(key: string): [unit: string, run: string, version: number] {
  const [unit, run, version] = key.split(/[/@]/);
  return [unit!, run!, Number(version)];
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
