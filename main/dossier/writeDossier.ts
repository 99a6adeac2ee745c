import { mkdir, readdir, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fail, type Result, succeed } from '../../shared/contract/fault.ts';
import { type Dossier, runFileName } from './dossier.ts';
import { fileFault, readFolder } from './dossierFiles.ts';
import { formatCsv } from './formatCsv.ts';

/** Every file of a dossier by path, in the form that stays the same byte for byte when it comes back. */
export function dossierFiles(dossier: Dossier): Map<string, string | Uint8Array> {
  const files = new Map<string, string | Uint8Array>([['dossier.json', dossier.description.text]]);
  if (dossier.house !== null) files.set('house.json', dossier.house.text);
  if (dossier.scoreSheet !== null) files.set('scoresheet.json', dossier.scoreSheet.text);
  for (const [path, text] of dossier.documents) files.set(path, text);
  for (const unit of dossier.units) {
    const folder = `units/${unit.id}`;
    files.set(`${folder}/unit.json`, unit.document.text);
    if (unit.observations !== null)
      files.set(`${folder}/observations.csv`, formatCsv(unit.observations.table));
    for (const { name, bytes } of unit.photos) files.set(`${folder}/photos/${name}`, bytes);
    for (const run of unit.runs) {
      const path = `${folder}/runs/${runFileName(run)}`;
      files.set(`${path}.json`, run.document.text);
      if (run.table !== null) files.set(`${path}.csv`, formatCsv(run.table));
    }
  }
  for (const { id, document, markdown, claims, remarks } of dossier.articles) {
    files.set(`articles/${id}.md`, markdown);
    files.set(`articles/${id}.json`, document.text);
    if (claims !== null) files.set(`articles/${id}.claims.jsonld`, claims.text);
    if (remarks !== null) files.set(`articles/${id}.remarks.json`, remarks);
  }
  if (dossier.history.length > 0)
    files.set('history.jsonl', dossier.history.map((line) => `${line}\n`).join(''));
  for (const [path, bytes] of dossier.others) files.set(path, bytes);
  return files;
}

/**
 * Writes a dossier into a folder that is missing, empty or already a dossier; other folders are refused. A new folder
 * appears whole or not at all; in an existing dossier each file is replaced whole, and files that the library does
 * not have are left in place and named.
 */
export async function writeDossier(
  dossier: Dossier,
  folder: string,
  progress?: (done: number, total: number) => Promise<boolean>,
): Promise<Result<{ files: number; notes: string[] }>> {
  const files = dossierFiles(dossier);
  const existing = await existingFiles(folder);
  if (!existing.ok) return existing;
  const target = existing.value === null ? `${folder}.partial` : folder;
  try {
    if (existing.value === null) await rm(target, { recursive: true, force: true });
    let done = 0;
    for (const [path, content] of files) {
      if (progress && !(await progress(done, files.size))) {
        if (existing.value === null) await rm(target, { recursive: true, force: true });
        return fail({ code: 'cancelled', sentence: 'Cancelled.' });
      }
      const file = join(target, path);
      await mkdir(dirname(file), { recursive: true });
      await replaceFile(file, content);
      done += 1;
    }
    if (existing.value === null) {
      await rmdir(folder).catch(ignoreMissing);
      await rename(target, folder);
    }
  } catch (error) {
    if (existing.value === null) await rm(target, { recursive: true, force: true }).catch(() => undefined);
    return fail(fileFault(error, folder));
  }
  const left = [...(existing.value ?? [])].filter((path) => !files.has(path));
  return succeed({
    files: files.size,
    notes: left.map((path) => `${path} is not in the library and was left in place.`),
  });
}

/** Null: the folder is missing or empty. */
async function existingFiles(folder: string): Promise<Result<string[] | null>> {
  try {
    if ((await readdir(folder)).length === 0) return succeed(null);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return succeed(null);
    return fail(fileFault(error, folder));
  }
  const read = await readFolder(folder);
  if (!read.ok) return read;
  if (read.value.files.has('dossier.json')) return succeed([...read.value.files.keys()]);
  return fail({
    code: 'refused',
    sentence: `${folder} holds other files and no dossier.`,
    mend: 'Name a new or empty folder.',
    place: { file: folder },
  });
}

/** The file is the old one or the new one, never half of either. */
async function replaceFile(file: string, content: string | Uint8Array): Promise<void> {
  const writing = `${file}.writing`;
  try {
    await writeFile(writing, content);
    await rename(writing, file);
  } catch (error) {
    await rm(writing, { force: true }).catch(() => undefined);
    throw error;
  }
}

function ignoreMissing(error: NodeJS.ErrnoException): void {
  if (error.code !== 'ENOENT') throw error;
}
