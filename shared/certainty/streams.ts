import { hueClasses } from '../measure/points.ts';
import { fillNormal, seededUniform } from './random.ts';
import { fillStrata } from './strata.ts';

/** Draws of every quantity: imagined worlds, each with its own error of every reading. */
export const drawCount = 2000;

/** Values in a run's pool; a power of two. */
const poolSize = 1 << 15;

/** Standard normal errors of one run, the same for all of its quantities. */
export interface Streams {
  /** One value a draw; shared by every run whose model has the same key */
  s: Float64Array;
  /** By hue class: x and y */
  ax: readonly Float64Array[];
  ay: readonly Float64Array[];
  /** Independent errors: stream n of draw d is `pool[offset(n) + d]`, before it is brought to mean 0 and deviation 1. */
  pool: Float64Array;
  offset(stream: number): number;
  /** What brings a stream to mean 0 and deviation 1: (value − mean)·scale */
  matching(stream: number): { mean: number; scale: number };
}

/**
 * Streams for a run. Those that many readings share get mean 0, standard deviation 1 and no correlation with each
 * other exactly (moment matching), and one value out of each stratum, so that 2,000 draws give u and the probability
 * of a limit as well as many more would. The independent errors
 * carry a small part of u; each reading's stream is a window of its own into one pool, which costs no memory.
 */
export function streamsOf(digest: string, sKey: string): Streams {
  const s = sharedStream(sKey);
  const settled: Float64Array[] = [s];
  const uniform = seededUniform(`a|${digest}`);
  const draw = () => {
    const column = matched(fillStrata(uniform, new Float64Array(drawCount)), settled);
    settled.push(column);
    return column;
  };
  const pairs = hueClasses.map(() => [draw(), draw()] as const);
  const own = seededUniform(`r|${digest}`);
  // The first draws stand again behind the last, so that no window has to turn round.
  const pool = new Float64Array(poolSize + drawCount);
  matched(fillNormal(own, pool.subarray(0, poolSize)), []);
  pool.copyWithin(poolSize, 0, drawCount);
  const start = Math.floor(own() * poolSize);
  // An odd stride visits every offset once before it repeats; this one is near the golden section, so that windows
  // of few streams lie far apart.
  const offset = (stream: number) => (start + Math.imul(stream, 20251)) & (poolSize - 1);
  const { sums, squares } = runningSums(pool);
  return {
    s,
    ax: pairs.map(([x]) => x),
    ay: pairs.map(([, y]) => y),
    pool,
    offset,
    matching(stream) {
      const from = offset(stream);
      const mean = (sums[from + drawCount]! - sums[from]!) / drawCount;
      const square = squares[from + drawCount]! - squares[from]!;
      return { mean, scale: Math.sqrt((drawCount - 1) / (square - drawCount * mean * mean)) };
    },
  };
}

/** Sums of the values and of their squares before each place: a window's mean without walking through it. */
function runningSums(values: Float64Array): { sums: Float64Array; squares: Float64Array } {
  const sums = new Float64Array(values.length + 1);
  const squares = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i += 1) {
    sums[i + 1] = sums[i]! + values[i]!;
    squares[i + 1] = squares[i]! + values[i]! * values[i]!;
  }
  return { sums, squares };
}

function sharedStream(key: string): Float64Array {
  return matched(fillStrata(seededUniform(key), new Float64Array(drawCount)), []);
}

/** Takes out the mean and what is common with earlier columns, then scales to a sample standard deviation of 1. */
function matched(column: Float64Array, earlier: readonly Float64Array[]): Float64Array {
  const n = column.length;
  add(column, -sumOf(column) / n);
  // Earlier columns have a sum of squares of n − 1.
  for (const other of earlier) addShare(column, other, -productOf(column, other) / (n - 1));
  const scale = Math.sqrt((n - 1) / productOf(column, column));
  for (let i = 0; i < n; i += 1) column[i]! *= scale;
  return column;
}

// Small loops by index: they run over 50,000 numbers for each run.

function sumOf(column: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < column.length; i += 1) sum += column[i]!;
  return sum;
}

/** Four sums at once: a single one waits for its own last addition. */
function productOf(one: Float64Array, other: Float64Array): number {
  let [p, q, r, s] = [0, 0, 0, 0];
  const whole = one.length & ~3;
  for (let i = 0; i < whole; i += 4) {
    p += one[i]! * other[i]!;
    q += one[i + 1]! * other[i + 1]!;
    r += one[i + 2]! * other[i + 2]!;
    s += one[i + 3]! * other[i + 3]!;
  }
  for (let i = whole; i < one.length; i += 1) p += one[i]! * other[i]!;
  return p + q + (r + s);
}

function add(column: Float64Array, amount: number): void {
  for (let i = 0; i < column.length; i += 1) column[i]! += amount;
}

function addShare(column: Float64Array, other: Float64Array, share: number): void {
  for (let i = 0; i < column.length; i += 1) column[i]! += share * other[i]!;
}
