import { hueClasses } from '../measure/points.ts';
import { fillNormal, seededUniform } from './random.ts';

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
  /** Independent errors: stream n of draw d is `pool[(offset(n) + d) & mask]`. */
  pool: Float64Array;
  mask: number;
  offset(stream: number): number;
}

/**
 * Streams for a run. Those that many readings share get mean 0, standard deviation 1 and no correlation with each
 * other exactly (moment matching), so that 2,000 draws give u as well as many more would. The independent errors
 * carry a small part of u; each reading's stream is a window of its own into one pool, which costs no memory.
 */
export function streamsOf(digest: string, sKey: string): Streams {
  const s = sharedStream(sKey);
  const settled: Float64Array[] = [s];
  const uniform = seededUniform(`a|${digest}`);
  const draw = () => {
    const column = matched(fillNormal(uniform, new Float64Array(drawCount)), settled);
    settled.push(column);
    return column;
  };
  const pairs = hueClasses.map(() => [draw(), draw()] as const);
  const own = seededUniform(`r|${digest}`);
  const pool = matched(fillNormal(own, new Float64Array(poolSize)), []);
  const start = Math.floor(own() * poolSize);
  return {
    s,
    ax: pairs.map(([x]) => x),
    ay: pairs.map(([, y]) => y),
    pool,
    mask: poolSize - 1,
    // An odd stride visits every offset once before it repeats; this one is near the golden section, so that
    // windows of few streams lie far apart.
    offset: (stream) => (start + Math.imul(stream, 20251)) & (poolSize - 1),
  };
}

function sharedStream(key: string): Float64Array {
  return matched(fillNormal(seededUniform(key), new Float64Array(drawCount)), []);
}

/** Takes out the mean and what is common with earlier columns, then scales to a sample standard deviation of 1. */
function matched(column: Float64Array, earlier: readonly Float64Array[]): Float64Array {
  const n = column.length;
  centre(column);
  for (const other of earlier) {
    let product = 0;
    let square = 0;
    for (let i = 0; i < n; i += 1) {
      product += column[i]! * other[i]!;
      square += other[i]! * other[i]!;
    }
    const share = product / square;
    for (let i = 0; i < n; i += 1) column[i]! -= share * other[i]!;
  }
  let square = 0;
  for (const value of column) square += value * value;
  const scale = Math.sqrt((n - 1) / square);
  for (let i = 0; i < n; i += 1) column[i]! *= scale;
  return column;
}

function centre(column: Float64Array): void {
  let sum = 0;
  for (const value of column) sum += value;
  const mean = sum / column.length;
  for (let i = 0; i < column.length; i += 1) column[i]! -= mean;
}
