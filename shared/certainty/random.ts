/** A source of numbers from 0 to below 1. */
export interface Uniform {
  (): number;
  /** The next numbers, as many as fit: the same that calls would give, several times as fast */
  fill(out: Float64Array): void;
}

/**
 * xoshiro128** 1.1 (Blackman and Vigna 2018), seeded from a text. Equal texts give equal streams on every host:
 * only 32-bit integer arithmetic is used. A double is made of 53 bits of two outputs.
 */
export function seededUniform(seed: string): Uniform {
  let [a, b, c, d] = stateOf(seed);
  const fill = (out: Float64Array) => {
    // In variables of the loop, which the state of a closure is not.
    let [p, q, r, s] = [a, b, c, d];
    for (let i = 0; i < out.length; i += 1) {
      const high = Math.imul(rotate(Math.imul(q, 5), 7), 9) >>> 5;
      let shifted = q << 9;
      r ^= p;
      s ^= q;
      q ^= r;
      p ^= s;
      r ^= shifted;
      s = rotate(s, 11);
      const low = Math.imul(rotate(Math.imul(q, 5), 7), 9) >>> 6;
      shifted = q << 9;
      r ^= p;
      s ^= q;
      q ^= r;
      p ^= s;
      r ^= shifted;
      s = rotate(s, 11);
      out[i] = (high * 67108864 + low) / 9007199254740992;
    }
    [a, b, c, d] = [p, q, r, s];
  };
  const one = new Float64Array(1);
  const next = () => {
    fill(one);
    return one[0]!;
  };
  return Object.assign(next, { fill });
}

function rotate(value: number, by: number): number {
  return (value << by) | (value >>> (32 - by));
}

/** Four well mixed words of a text: FNV-1a over its code units, then the finaliser of MurmurHash3 a word. */
function stateOf(seed: string): [number, number, number, number] {
  let hash = 0x811c9dc5;
  for (let i = 0; i < seed.length; i += 1) hash = Math.imul(hash ^ seed.charCodeAt(i), 0x01000193);
  let other = 0x9e3779b9;
  for (let i = seed.length - 1; i >= 0; i -= 1) other = Math.imul(other ^ seed.charCodeAt(i), 0x85ebca6b) + i;
  return [mix(hash), mix(other), mix(hash + 0x9e3779b9), mix(other ^ 0x7f4a7c15) | 1];
}

function mix(word: number): number {
  let value = word | 0;
  value = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  value = Math.imul(value ^ (value >>> 13), 0xc2b2ae35);
  return value ^ (value >>> 16);
}

/** Pairs of uniform numbers that are made at once. */
const pairsAtOnce = 256;

/** Fills `out` with standard normal numbers by the polar method of Marsaglia. */
export function fillNormal(uniform: Uniform, out: Float64Array): Float64Array {
  const buffer = new Float64Array(2 * pairsAtOnce);
  for (let i = 0; i < out.length; ) {
    // Never more than is needed at least: the source stands where single calls would leave it.
    const pairs = Math.min(pairsAtOnce, Math.ceil((out.length - i) / 2));
    const numbers = pairs === pairsAtOnce ? buffer : buffer.subarray(0, 2 * pairs);
    uniform.fill(numbers);
    for (let k = 0; k < numbers.length; k += 2) {
      const v = 2 * numbers[k]! - 1;
      const w = 2 * numbers[k + 1]! - 1;
      const square = v * v + w * w;
      if (square >= 1 || square === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      out[i] = v * scale;
      if (i + 1 < out.length) out[i + 1] = w * scale;
      i += 2;
    }
  }
  return out;
}
