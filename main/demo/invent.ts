import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { readingsFile } from './csv.ts';
import { seededNoise } from './noise.ts';
import { paintings, paintPng } from './picture.ts';
import { stories } from './stories/index.ts';

/** Photos of the demo: unit, file name, pattern. */
const photos = [
  ['orrinvale-hearth-55', 'blooming-on-axis.png', 'blooming'],
  ['orrinvale-hearth-55', 'clouding-black.png', 'clouding'],
  ['orrinvale-hearth-55', 'dirty-screen-grey50.png', 'dirtyScreen'],
  ['kasulind-vane-50', 'banding-ramp.png', 'banding'],
  ['kasulind-vane-50', 'clouding-black.png', 'clouding'],
] as const;

/**
 * Every computed file of the demo dossier by its path inside it: run conditions, readings and photos. The same on
 * every machine; the rest (facts, observations, articles) is written by hand.
 */
export function inventDemo(): Map<string, Buffer> {
  const files = new Map<string, Buffer>();
  for (const unit of stories)
    for (const run of unit.runs) {
      const path = `units/${unit.id}/runs/${run.id}`;
      const rows = run.readings(seededNoise(`lanternwick/${unit.id}/${run.id}`));
      files.set(`${path}.json`, Buffer.from(`${JSON.stringify(run.conditions, null, 2)}\n`));
      files.set(`${path}.csv`, Buffer.from(readingsFile(rows)));
    }
  for (const [unit, name, pattern] of photos)
    files.set(`units/${unit}/photos/${name}`, paintPng(paintings[pattern]));
  return files;
}

if (import.meta.main) {
  const dossier = join(import.meta.dirname, 'dossier');
  const files = inventDemo();
  for (const [path, content] of files) {
    mkdirSync(dirname(join(dossier, path)), { recursive: true });
    writeFileSync(join(dossier, path), content);
  }
  console.log(`${files.size} files of the demo dossier written`);
}
