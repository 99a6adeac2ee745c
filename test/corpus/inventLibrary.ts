import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { readingsFile } from '../../main/demo/csv.ts';
import { seededNoise } from '../../main/demo/noise.ts';
import { corpusStories } from './libraryStories.ts';

/** Run conditions and readings of the corpus library by path; facts and observations are written by hand. */
export function inventLibrary(): Map<string, string> {
  const files = new Map<string, string>();
  for (const unit of corpusStories)
    for (const run of unit.runs) {
      const path = `units/${unit.id}/runs/${run.id}`;
      files.set(`${path}.json`, `${JSON.stringify(run.conditions, null, 2)}\n`);
      files.set(`${path}.csv`, readingsFile(run.readings(seededNoise(`corpus/${unit.id}/${run.id}`))));
    }
  return files;
}

if (import.meta.main)
  for (const [path, content] of inventLibrary()) {
    const file = join(import.meta.dirname, 'library', path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
