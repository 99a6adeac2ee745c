/*
 * Measures whether the tests would notice a slip: changes one token at a time in a copy of the tree and runs the
 * tests that belong to it.
 *
 *   node test/mutation/sample.ts shared/colour shared/measure --count 30 --seed 1
 *
 * Survivors that change nothing anyone could see are argued in equivalents.md. Exit status 1 when another survives.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { seeded } from '../colour/seeded.ts';
import { type Mutation, mutationsOf } from './tokens.ts';

type Mutant = Mutation & { readonly file: string; readonly source: string };

const root = fileURLToPath(new URL('../../', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { count: { type: 'string', default: '30' }, seed: { type: 'string', default: '1' } },
});
const folders =
  positionals.length > 0 ? positionals : ['shared/colour', 'shared/measure', 'shared/certainty'];
const [count, seed] = [Number(values.count), Number(values.seed)];
if (!Number.isInteger(count) || count < 1 || !Number.isInteger(seed)) {
  console.error('--count takes a whole number from 1, --seed a whole number');
  process.exit(2);
}

const equivalents = readFileSync(new URL('./equivalents.md', import.meta.url), 'utf8');
const mutants = sample(folders.flatMap(mutantsOf), count, seeded(seed));
const copy = copyOfTree();
try {
  for (const folder of new Set(mutants.map((mutant) => folderOf(mutant.file))))
    if (!testsPass(folder)) throw new Error(`test/${folder} fails without any change; nothing can be said`);
  const survivors: string[] = [];
  const totals = { killed: 0, equivalent: 0, survived: 0 };
  for (const mutant of mutants) {
    const verdict = judge(mutant);
    totals[verdict] += 1;
    console.log(`${verdict.padEnd(10)} ${describe(mutant)}`);
    if (verdict === 'survived') survivors.push(describe(mutant));
  }
  console.log(
    `${totals.killed} killed, ${totals.equivalent} equivalent, ${totals.survived} survived; seed ${seed}`,
  );
  process.exitCode = survivors.length > 0 ? 1 : 0;
} finally {
  rmSync(copy, { recursive: true, force: true });
}

function mutantsOf(folder: string): Mutant[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .flatMap((name) => {
      const file = `${folder}/${name}`;
      const source = readFileSync(join(root, file), 'utf8');
      return mutationsOf(source).map((mutation) => ({ ...mutation, file, source }));
    });
}

/** `size` of the items without repeats, in order of the draw. */
function sample<T>(items: T[], size: number, random: () => number): T[] {
  const left = [...items];
  return Array.from({ length: Math.min(size, left.length) }, () => {
    const [drawn] = left.splice(Math.floor(random() * left.length), 1);
    return drawn!;
  });
}

function copyOfTree(): string {
  const copy = mkdtempSync(join(tmpdir(), 'nitproof-mutants-'));
  for (const name of ['shared', 'main', 'test', 'package.json', 'tsconfig.json'])
    cpSync(join(root, name), join(copy, name), {
      recursive: true,
      filter: (path) => !path.includes('node_modules'),
    });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  return copy;
}

function mutated({ source, start, before, after }: Mutant): string {
  return source.slice(0, start) + after + source.slice(start + before.length);
}

function judge(mutant: Mutant): 'killed' | 'equivalent' | 'survived' {
  const path = join(copy, mutant.file);
  writeFileSync(path, mutated(mutant));
  const passed = testsPass(folderOf(mutant.file), mutant.file);
  writeFileSync(path, mutant.source);
  if (!passed) return 'killed';
  return isArgued(mutant) ? 'equivalent' : 'survived';
}

/** Name of the folder under test/ whose tests have to notice a change in `file`. */
function folderOf(file: string): string {
  return file.split('/')[1]!;
}

/** Runs the tests of a folder, or those of them that reach `file`; a run that hangs for minutes fails. */
function testsPass(folder: string, file?: string): boolean {
  const config = join(copy, `mutants.${folder}.config.ts`);
  writeFileSync(
    config,
    `export default { test: { include: ['test/${folder}/**/*.test.ts'], testTimeout: 60_000 } };`,
  );
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  const which = file === undefined ? ['run'] : ['related', file, '--run', '--bail', '1'];
  const run = spawnSync(process.execPath, [vitest, ...which, '--config', config], {
    cwd: copy,
    stdio: 'pipe',
    timeout: file === undefined ? 300_000 : 90_000,
  });
  return run.status === 0;
}

/** An argued survivor stands in equivalents.md by its file and its line after the change. */
function isArgued(mutant: Mutant): boolean {
  const entry = `\`${mutant.file}\` \`${lineOf(mutated(mutant), mutant.start)}\``;
  return equivalents.includes(entry);
}

function lineOf(source: string, place: number): string {
  return source
    .slice(source.lastIndexOf('\n', place - 1) + 1)
    .split('\n', 1)[0]!
    .trim();
}

function describe(mutant: Mutant): string {
  const line = mutant.source.slice(0, mutant.start).split('\n').length;
  return `${mutant.file}:${line} ${mutant.before} → ${mutant.after}   ${lineOf(mutated(mutant), mutant.start)}`;
}
