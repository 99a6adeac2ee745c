import type { Result } from '../../shared/contract/fault.ts';
import type { Library } from '../library/library.ts';
import { writeDossier } from './writeDossier.ts';

/** Writes the whole library as a dossier folder; see {@link writeDossier} for what happens to existing files. */
export async function exportDossier(
  library: Library,
  folder: string,
  progress?: (done: number, total: number) => Promise<boolean>,
): Promise<Result<{ files: number; notes: string[] }>> {
  return writeDossier(await library.takeDossier(), folder, progress);
}
