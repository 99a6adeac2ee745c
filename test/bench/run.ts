import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';

/** `npm run bench [name …]`: every benchmark in this folder, each in a process of its own. */
const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => wanted.length === 0 || wanted.some((name) => file.startsWith(name)))
  .sort();
console.log(`${cpus().length} cores, ${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}`);
let status = 0;
for (const file of files) {
  console.log(`\n${file}`);
  const run = spawnSync(process.execPath, ['--expose-gc', join(import.meta.dirname, file)], {
    stdio: 'inherit',
  });
  if (run.status !== 0) status = 1;
}
process.exit(status);
