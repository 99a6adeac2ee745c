/** A source of numbers from 0 to below 1. */
export type Uniform = () => number;

/**
 * xoshiro128** 1.1 (Blackman and Vigna 2018), seeded from a text. Equal texts give equal streams on every host:
 * only 32-bit integer arithmetic is used. A double is made of 53 bits of two outputs.
 */
export function seededUniform(seed: string): Uniform {
  let [a, b, c, d] = stateOf(seed);
  const next = () => {
    const scrambled = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return scrambled;
  };
  return () => ((next() >>> 5) * 67108864 + (next() >>> 6)) / 9007199254740992;
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

/** Fills `out` with standard normal numbers by the polar method of Marsaglia. */
export function fillNormal(uniform: Uniform, out: Float64Array): Float64Array {
  for (let i = 0; i < out.length; i += 2) {
    let v: number;
    let w: number;
    let square: number;
    do {
      v = 2 * uniform() - 1;
      w = 2 * uniform() - 1;
      square = v * v + w * w;
    } while (square >= 1 || square === 0);
    const scale = Math.sqrt((-2 * Math.log(square)) / square);
    out[i] = v * scale;
    if (i + 1 < out.length) out[i + 1] = w * scale;
  }
  return out;
}
