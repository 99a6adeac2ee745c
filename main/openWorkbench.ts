import { existsSync, mkdirSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { type Result, succeed, type Workbench } from '../shared/contract/index.ts';
import { importDossier } from './dossier/importDossier.ts';
import { openLibrary } from './library/openLibrary.ts';
import { createWorkbench } from './workbench.ts';

export interface OpenOptions {
  /** SQLite file; created when missing */
  library: string;
  /** Dossier that a new `demo.sqlite` is filled from */
  demoDossier: string;
}

/**
 * Opens a library behind the door. A library that does not exist yet is created; one named `demo.sqlite` is
 * filled with the demo world, so that a first start shows the whole job.
 */
export async function openWorkbench({ library, demoDossier }: OpenOptions): Promise<Result<Workbench>> {
  const isNew = !existsSync(library);
  mkdirSync(dirname(library), { recursive: true });
  const opened = await openLibrary(library);
  if (!opened.ok) return opened;
  if (isNew && basename(library) === 'demo.sqlite') {
    const filled = await importDossier(demoDossier, opened.value);
    if (!filled.ok) {
      await opened.value.close();
      return filled;
    }
  }
  return succeed(createWorkbench(opened.value));
}
