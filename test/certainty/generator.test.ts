import { expect, test } from 'vitest';
import { fillNormal, seededUniform } from '../../shared/certainty/random.ts';

/** The generator from its published description, in whole numbers of any size: shares no code with the program. */
const M = 0xffffffffn;

function xoshiro(state: [bigint, bigint, bigint, bigint]): () => bigint {
  const s = [...state] as typeof state;
  const rotl = (x: bigint, k: bigint) => ((x << k) | (x >> (32n - k))) & M;
  return () => {
    const result = (rotl((s[1] * 5n) & M, 7n) * 9n) & M;
    const t = (s[1] << 9n) & M;
    s[2] ^= s[0];
    s[3] ^= s[1];
    s[1] ^= s[2];
    s[0] ^= s[3];
    s[2] ^= t;
    s[3] = rotl(s[3], 11n);
    return result;
  };
}

/** FNV-1a over the code units, and the finaliser of MurmurHash3. */
const fnv = (text: string) =>
  [...text].reduce((hash, _, i) => ((hash ^ BigInt(text.charCodeAt(i))) * 0x01000193n) & M, 0x811c9dc5n);
function mix(word: bigint): bigint {
  let value = word & M;
  value = ((value ^ (value >> 16n)) * 0x85ebca6bn) & M;
  value = ((value ^ (value >> 13n)) * 0xc2b2ae35n) & M;
  return value ^ (value >> 16n);
}

test('the reference gives the published numbers of xoshiro128** for the state 1, 2, 3, 4', () => {
  // Known answer of the authors' code, as the crate rand_xoshiro prints it.
  const next = xoshiro([1n, 2n, 3n, 4n]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520n,
    0n,
    5927040n,
    70819200n,
    2031721883n,
    1637235492n,
    1287239034n,
    3734860849n,
    3729100597n,
    4258142804n,
  ]);
});

test('FNV-1a of the reference gives its published value', () => {
  // 32-bit FNV-1a of "a" and "foobar", from the authors' test vectors.
  expect([fnv('a'), fnv('foobar')]).toEqual([0xe40c292cn, 0xbf9cf968n]);
});

test.each(['', 'a', 'r|9f86d081884c7d65', 's|bench colorimeter|0001|lcd ips|direct led', 'ünïcode ′'])(
  'numbers seeded from "%s" are those of xoshiro128**, 53 bits of two outputs each',
  (seed) => {
    const hash = fnv(seed);
    let other = 0x9e3779b9n;
    for (let i = seed.length - 1; i >= 0; i -= 1)
      other = ((other ^ BigInt(seed.charCodeAt(i))) * 0x85ebca6bn + BigInt(i)) & M;
    const next = xoshiro([mix(hash), mix(other), mix(hash + 0x9e3779b9n), mix(other ^ 0x7f4a7c15n) | 1n]);
    const uniform = seededUniform(seed);
    for (let n = 0; n < 200; n += 1) {
      const [high, low] = [next() >> 5n, next() >> 6n];
      expect(uniform()).toBe(Number(high * 67108864n + low) / 2 ** 53);
    }
  },
);

test('normal numbers are made of the uniform ones by the polar method, pair by pair', () => {
  const uniform = seededUniform('polar');
  const expected: number[] = [];
  while (expected.length < 501) {
    const [v, w] = [2 * uniform() - 1, 2 * uniform() - 1];
    const square = v * v + w * w;
    if (square >= 1 || square === 0) continue;
    const scale = Math.sqrt((-2 * Math.log(square)) / square);
    expected.push(v * scale, w * scale);
  }
  for (const size of [0, 1, 2, 3, 500, 501]) {
    const found = fillNormal(seededUniform('polar'), new Float64Array(size));
    expect(found).toHaveLength(size);
    found.forEach((value, i) => {
      expect(value, `${i} of ${size}`).toBeCloseTo(expected[i]!, 12);
    });
  }
});
