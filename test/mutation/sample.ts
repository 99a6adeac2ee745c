/*
 * Measures whether the tests would notice a slip: changes one token at a time in a copy of the tree and runs the
 * tests that reach it by their imports, the nearest first, until one fails.
 *
 *   node test/mutation/sample.ts shared/colour shared/measure --count 30 --seed 1
 *   node test/mutation/sample.ts --count 100 --skip 40 --for 200
 *   node test/mutation/sample.ts --only contrast.ts
 *
 * Survivors that change nothing anyone could see are argued in equivalents.md. Exit status 1 when another survives.
 */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { seeded } from '../colour/seeded.ts';
import { arguedNames, lineAfter, lineNumberOf, type Mutant, mutated, nameOf } from './arguments.ts';
import { reachOf } from './reach.ts';
import { mutationsOf } from './tokens.ts';

/** Exit status of a test run that was ended for its length; that of `timeout` */
const ranTooLong = 124;
/** Tests that compare with the outside world; a kill by a demo or a picture would prove nothing. */
const testFolders = ['test/colour', 'test/measure', 'test/certainty', 'test/reference'];

/** How much a reader would miss a quantity: a judgement, of which a hundredth more or less is neither right nor wrong */
const houseWeight = /\bimportance: /;

const root = fileURLToPath(new URL('../../', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    count: { type: 'string', default: '30' },
    seed: { type: 'string', default: '1' },
    /** Instead of a sample: every mutant whose file and line after the change hold one of these texts */
    only: { type: 'string', multiple: true },
    /** Begins later in the sample, and ends after so many seconds: a long sample in several sittings */
    skip: { type: 'string', default: '0' },
    for: { type: 'string', default: '86400' },
  },
});
const folders =
  positionals.length > 0 ? positionals : ['shared/colour', 'shared/measure', 'shared/certainty'];
const [count, seed, skip, seconds] = [values.count, values.seed, values.skip, values.for].map(Number) as [
  number,
  number,
  number,
  number,
];
if (![count, seed, skip, seconds].every(Number.isInteger) || count < 1 || skip < 0) {
  console.error('--count takes a whole number from 1, --seed, --skip and --for take whole numbers');
  process.exit(2);
}

type Verdict = 'killed' | 'timed out' | 'equivalent' | 'survived';
type TestRun = 'passed' | 'failed' | 'timed out';

const argued = arguedNames(readFileSync(new URL('./equivalents.md', import.meta.url), 'utf8'));
const all = folders.flatMap(mutantsOf);
reportLostArguments();
const { only } = values;
const mutants =
  only === undefined
    ? sample(all, count, seeded(seed)).slice(skip)
    : all.filter((mutant) => only.some((text) => nameOf(mutant).includes(text)));
const end = Date.now() + 1000 * seconds;
const copy = copyOfTree();
const reach = reachOf(copy, testFolders);
try {
  const usual = baseline();
  const totals: Record<Verdict, number> = { killed: 0, 'timed out': 0, equivalent: 0, survived: 0 };
  for (const [i, mutant] of mutants.entries()) {
    if (Date.now() > end) {
      console.log(`stopped; go on with --skip ${skip + i}`);
      break;
    }
    const verdict = judge(mutant, usual);
    totals[verdict] += 1;
    console.log(`${verdict.padEnd(10)} ${describe(mutant)}`);
  }
  const counted = Object.entries(totals).map(([verdict, n]) => `${n} ${verdict}`);
  console.log(`${counted.join(', ')}; of ${all.length}, ${only === undefined ? `seed ${seed}` : 'chosen'}`);
  process.exitCode = totals.survived > 0 ? 1 : 0;
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
      return mutationsOf(source)
        .map((mutation) => ({ ...mutation, file, source }))
        .filter((mutant) => !houseWeight.test(lineAfter(mutant)));
    });
}

/** An argument whose mutant is gone excuses nothing, but it should go too. */
function reportLostArguments(): void {
  const names = new Set(all.map(nameOf));
  for (const name of argued)
    if (folders.some((folder) => name.startsWith(`\`${folder}/`)) && !names.has(name))
      console.error(`equivalents.md argues a mutant that does not exist: ${name}`);
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
  const copy = realpathSync(mkdtempSync(join(tmpdir(), 'nitproof-mutants-')));
  for (const name of ['shared', 'main', 'test', 'package.json', 'tsconfig.json'])
    cpSync(join(root, name), join(copy, name), {
      recursive: true,
      filter: (path) => !path.includes('node_modules'),
    });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  return copy;
}

/** Runs every test once without a change: all must pass. Seconds that each test file takes. */
function baseline(): ReadonlyMap<string, number> {
  const tests = reach.tests.filter((test) => mutants.some(({ file }) => reach.distance(test, file)));
  const report = join(copy, 'baseline.json');
  const run = runTests(tests, 300, ['--reporter=json', `--outputFile=${report}`]);
  if (run !== 'passed') throw new Error(`the tests ${run} without any change; nothing can be said`);
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as {
    testResults: { name: string; startTime: number; endTime: number }[];
  };
  return new Map(
    testResults.map(({ name, startTime, endTime }) => [relative(copy, name), (endTime - startTime) / 1000]),
  );
}

function judge(mutant: Mutant, seconds: ReadonlyMap<string, number>): Verdict {
  const { file } = mutant;
  const order = (test: string) =>
    (basename(test).startsWith(`${basename(file, '.ts')}.`) ? 0 : 100) +
    reach.distance(test, file)! +
    seconds.get(test)!;
  const tests = reach.tests
    .filter((test) => reach.distance(test, file) !== undefined)
    .sort((one, other) => order(one) - order(other));
  const usual = tests.reduce((sum, test) => sum + seconds.get(test)!, 0);
  const path = join(copy, file);
  writeFileSync(path, mutated(mutant));
  // Starting takes its time as well, and others may use the machine: this long is a loop without end.
  const run = tests.length === 0 ? 'passed' : runTests(tests, 45 + 3 * usual, ['--bail', '1']);
  writeFileSync(path, mutant.source);
  if (run !== 'passed') return run === 'failed' ? 'killed' : run;
  return argued.has(nameOf(mutant)) ? 'equivalent' : 'survived';
}

/** One worker takes the files in the given order, so that the first failure comes soon. */
function runTests(tests: readonly string[], seconds: number, more: readonly string[]): TestRun {
  const config = join(copy, 'mutants.config.ts');
  writeFileSync(
    config,
    `import { BaseSequencer } from 'vitest/node';
const tests = ${JSON.stringify(tests)};
const place = ({ moduleId }) => tests.findIndex((test) => moduleId.endsWith(test));
class InOrder extends BaseSequencer {
  async sort(files) { return [...files].sort((one, other) => place(one) - place(other)); }
}
// Workers are threads, so that this thread is free to end a loop that does not.
setTimeout(() => process.exit(${ranTooLong}), ${Math.ceil(seconds * 1000)}).unref();
export default {
  test: {
    include: tests, pool: 'threads', isolate: false, fileParallelism: false,
    // What is transformed once is kept for the next mutant, by its content.
    experimental: { fsModuleCache: true, fsModuleCachePath: ${JSON.stringify(join(copy, 'modules'))} },
    sequence: { sequencer: InOrder }, testTimeout: 60_000, hookTimeout: 60_000,
  },
};`,
  );
  const args = [join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--config', config, ...more];
  const { status } = spawnSync(process.execPath, args, { cwd: copy, stdio: 'pipe' });
  return status === 0 ? 'passed' : status === ranTooLong ? 'timed out' : 'failed';
}

function describe(mutant: Mutant): string {
  return `${mutant.file}:${lineNumberOf(mutant)} ${mutant.before} → ${mutant.after}   ${lineAfter(mutant)}`;
}
