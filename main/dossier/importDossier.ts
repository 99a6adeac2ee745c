import { fail, type Result, succeed } from '../../shared/contract/fault.ts';
import type { Library, MergeReport } from '../library/library.ts';
import { type ReadDossierOptions, readDossier } from './readDossier.ts';
import { missingUnits } from './references.ts';

export interface ImportOptions extends ReadDossierOptions {
  prefer?: 'theirs' | 'ours';
}

/**
 * Brings a dossier folder into a library: all of it or nothing. Errors: every finding in every file, units that
 * articles name and nobody has, and conflicts with what the library holds.
 */
export async function importDossier(
  folder: string,
  library: Library,
  options: ImportOptions = {},
): Promise<Result<MergeReport>> {
  const read = await readDossier(folder, options);
  if (!read.ok) return read;
  const { dossier, notes } = read.value;
  const { units } = await library.listShelf();
  const missing = missingUnits(dossier, folder, new Set(units.map(({ id }) => id)));
  if (missing.length > 0) return fail(...missing);
  const merged = await library.mergeDossier(dossier, options.prefer);
  if (!merged.ok) return merged;
  return succeed({ ...merged.value, notes: [...notes, ...merged.value.notes] });
}
