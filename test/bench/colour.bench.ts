/*
 * Colour differences over a million pairs, side by side: ours, two open libraries and plain C at -O2.
 * All take turns in every round, so that a busy machine slows all alike; medians of the rounds are compared.
 * Run: node test/bench/colour.bench.ts
 */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { type ColorSpace, deltaE2000 as colorjsDeltaE2000, Lab as colorjsLab } from 'colorjs.io/fn';
import { differenceCiede2000, differenceItp, type Lab65, type Xyz65 } from 'culori';
import { deltaE2000Array } from '../../shared/colour/deltaE2000.ts';
import { deltaEItpArray } from '../../shared/colour/ictcp.ts';
import { seeded } from '../colour/seeded.ts';

const count = 1_000_000;
const rounds = 9;

/** One pass over all pairs; gives its milliseconds. */
type Contender = { readonly name: string; readonly pass: () => number | Promise<number> };

function timed(pass: () => void): () => number {
  return () => {
    const start = performance.now();
    pass();
    return performance.now() - start;
  };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** Rounds in turns, the first two thrown away as warm-up; prints medians and how they stand to the first. */
async function compare(title: string, contenders: readonly Contender[]): Promise<void> {
  const times = contenders.map((): number[] => []);
  for (let round = 0; round < rounds + 2; round += 1)
    for (const [k, contender] of contenders.entries()) {
      const milliseconds = await contender.pass();
      if (round >= 2) times[k]!.push(milliseconds);
    }
  console.log(`${title}, ${count} pairs, medians of ${rounds} rounds`);
  const own = median(times[0]!);
  for (const [k, { name }] of contenders.entries()) {
    const middle = median(times[k]!);
    const speed = (count / middle / 1000).toFixed(2).padStart(6);
    console.log(
      `  ${name.padEnd(34)}${middle.toFixed(0).padStart(6)} ms ${speed} million pairs/s  ${(middle / own).toFixed(2).padStart(6)} × our time`,
    );
  }
}

function checkSums(title: string, sums: readonly number[], tolerance: number): void {
  const spread = (Math.max(...sums) - Math.min(...sums)) / sums[0]!;
  if (!(spread < tolerance)) throw new Error(`${title}: the contenders disagree by ${spread}`);
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);

/** The C program on our data, or why there is none. */
function plainC(
  columns: readonly Float64Array[],
): (Contender & { sum: () => number; end: () => void }) | string {
  const folder = mkdtempSync(join(tmpdir(), 'nitproof-bench-'));
  const program = join(folder, 'deltaE2000');
  const source = fileURLToPath(new URL('./deltaE2000.c', import.meta.url));
  const compiled = spawnSync('gcc', ['-O2', '-o', program, source, '-lm'], { stdio: 'pipe' });
  if (compiled.status !== 0) {
    rmSync(folder, { recursive: true });
    return compiled.error ? 'no gcc on this machine' : `gcc failed: ${compiled.stderr}`;
  }
  const child = spawn(program, { stdio: ['pipe', 'pipe', 'inherit'] });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  for (const data of [Float64Array.of(count), ...columns])
    child.stdin.write(Buffer.from(data.buffer, data.byteOffset, data.byteLength));
  let total = 0;
  return {
    name: 'plain C, gcc -O2, as printed',
    pass: async () => {
      child.stdin.write('\n');
      const [milliseconds, found] = String((await lines.next()).value)
        .split(' ')
        .map(Number);
      total = found!;
      return milliseconds!;
    },
    sum: () => total,
    end: () => {
      child.stdin.end();
      rmSync(folder, { recursive: true });
    },
  };
}

async function ciede2000(): Promise<void> {
  const random = seeded(2000);
  const column = (scale: number, offset: number) =>
    Float64Array.from({ length: count }, () => scale * random() + offset);
  const columns = [0, 1].flatMap(() => [column(100, 0), column(200, -100), column(200, -100)]);
  const [L1, a1, b1, L2, a2, b2] = columns as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const [ours, culori, colorjs] = [0, 1, 2].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  // The libraries take objects; those are made beforehand and their making is not counted.
  const objects = <T>(make: (L: number, a: number, b: number) => T) =>
    [columns.slice(0, 3), columns.slice(3)].map(([L, a, b]) =>
      Array.from({ length: count }, (_, i) => make(L![i]!, a![i]!, b![i]!)),
    ) as [T[], T[]];

  const [culoriOne, culoriOther] = objects((l, a, b): Lab65 => ({ mode: 'lab65', l, a, b }));
  const [colorjsOne, colorjsOther] = objects((L, a, b) => ({
    space: colorjsLab as unknown as ColorSpace,
    coords: [L, a, b] as [number, number, number],
    alpha: 1,
  }));
  const culoriDifference = differenceCiede2000();
  const c = plainC(columns);
  await compare('CIEDE2000', [
    { name: 'ours, typed arrays', pass: timed(() => deltaE2000Array(L1, a1, b1, L2, a2, b2, ours)) },
    {
      name: 'culori',
      pass: timed(() => {
        for (let i = 0; i < count; i += 1) culori[i] = culoriDifference(culoriOne[i]!, culoriOther[i]!);
      }),
    },
    {
      name: 'colorjs.io, functional',
      pass: timed(() => {
        for (let i = 0; i < count; i += 1) colorjs[i] = colorjsDeltaE2000(colorjsOne[i]!, colorjsOther[i]!);
      }),
    },
    ...(typeof c === 'string' ? [] : [c]),
  ]);
  const sums = [ours, culori, colorjs].map(sum);
  if (typeof c === 'string') console.log(`  plain C left out: ${c}`);
  else {
    sums.push(c.sum());
    c.end();
  }
  checkSums('CIEDE2000', sums, 1e-11);
}

async function deltaEItp(): Promise<void> {
  const random = seeded(2124);
  const column = () => Float64Array.from({ length: count }, () => 1 + 300 * random());
  const colours = () => ({ X: column(), Y: column(), Z: column() });
  const [one, other] = [colours(), colours()];
  // Relative to 203 cd/m², which that library takes for white.
  const toCulori = ({ X, Y, Z }: typeof one) =>
    Array.from(
      { length: count },
      (_, i): Xyz65 => ({ mode: 'xyz65', x: X[i]! / 203, y: Y[i]! / 203, z: Z[i]! / 203 }),
    );
  const [culoriOne, culoriOther] = [toCulori(one), toCulori(other)];
  const difference = differenceItp();
  const [ours, culori] = [new Float64Array(count), new Float64Array(count)];
  await compare('ΔE_ITP from X, Y, Z', [
    { name: 'ours, typed arrays', pass: timed(() => deltaEItpArray(one, other, ours)) },
    {
      name: 'culori',
      pass: timed(() => {
        for (let i = 0; i < count; i += 1) culori[i] = difference(culoriOne[i]!, culoriOther[i]!);
      }),
    },
  ]);
  checkSums('ΔE_ITP', [sum(ours), sum(culori)], 1e-4);
}

await ciede2000();
await deltaEItp();
