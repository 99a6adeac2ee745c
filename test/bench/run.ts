import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';

/**
 * `npm run bench [name …] [part …]`: every benchmark in this folder, each in a process of its own. Words that begin no
 * file's name are parts of a benchmark, and handed on to it.
 */
const all = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.bench.ts'))
  .sort();
const words = process.argv.slice(2);
const wanted = words.filter((name) => all.some((file) => file.startsWith(name)));
const parts = words.filter((name) => !wanted.includes(name));
const files = all.filter((file) => wanted.length === 0 || wanted.some((name) => file.startsWith(name)));
console.log(`${cpus().length} cores, ${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}`);
let status = 0;
for (const file of files) {
  console.log(`\n${file}`);
  const run = spawnSync(process.execPath, ['--expose-gc', join(import.meta.dirname, file), ...parts], {
    stdio: 'inherit',
  });
  if (run.status !== 0) status = 1;
}
process.exit(status);
