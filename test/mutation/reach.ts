import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

/** Which tests see a change: every file below the given folders with what it imports, directly or through others. */
export interface Reach {
  /** Steps of import from a test file to `file`; undefined where it does not get there */
  distance(test: string, file: string): number | undefined;
  tests: readonly string[];
}

/** Paths are relative to `root`, with slashes. Reads relative imports with their ending, as this project writes them. */
export function reachOf(root: string, testFolders: readonly string[]): Reach {
  const known = new Map<string, readonly string[]>();
  const importsOf = (file: string): readonly string[] => {
    let found = known.get(file);
    if (!found) {
      found = relativeImports(readFileSync(join(root, file), 'utf8'))
        .map((path) => normalize(join(dirname(file), path)))
        .filter((path) => existsSync(join(root, path)));
      known.set(file, found);
    }
    return found;
  };
  const distances = new Map<string, ReadonlyMap<string, number>>();
  const distancesFrom = (test: string): ReadonlyMap<string, number> => {
    let found = distances.get(test);
    if (!found) {
      const steps = new Map([[test, 0]]);
      // A map lists what is added while it is walked: breadth first.
      for (const [file, distance] of steps)
        for (const next of importsOf(file)) if (!steps.has(next)) steps.set(next, distance + 1);
      found = steps;
      distances.set(test, found);
    }
    return found;
  };
  return {
    tests: testFolders.flatMap((folder) => testFilesBelow(root, folder)),
    distance: (test, file) => distancesFrom(test).get(file),
  };
}

/** The relative paths that a source imports or re-exports; types alone are erased and change nothing. */
export function relativeImports(source: string): string[] {
  const statements = source.matchAll(
    /(?:^|\n)\s*(?:import|export)\b(?!\s+type\b)[^;'"]*?['"](\.{1,2}\/[^'"]+\.tsx?)['"]/g,
  );
  return [...statements].map((match) => match[1]!);
}

function testFilesBelow(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => `${folder}/${name}`)
    .sort();
}
