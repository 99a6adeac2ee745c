/**
 * SHA-256 of a text's UTF-8 bytes, synchronous, the same in a browser, in Node and in a reader's page.
 * The platform's digest is asynchronous in browsers, and verdicts are computed while typing; the function is
 * forty lines, so it stands here. Source: FIPS 180-4 sections 4.1.2, 5.1.1, 6.2 (from memory; checked against the
 * published example messages and against Node's own digest in the tests).
 */

function firstFractionBits(root: number): number {
  return ((root - Math.floor(root)) * 2 ** 32) | 0;
}

const primes: number[] = [];
for (let n = 2; primes.length < 64; n++) if (primes.every((prime) => n % prime !== 0)) primes.push(n);
const roundConstants = Int32Array.from(primes, (prime) => firstFractionBits(Math.cbrt(prime)));
const initialState = Int32Array.from(primes.slice(0, 8), (prime) => firstFractionBits(Math.sqrt(prime)));
const twoDigits = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, '0'));

const encoder = new TextEncoder();

function rotateRight(word: number, bits: number): number {
  return (word >>> bits) | (word << (32 - bits));
}

/** Hexadecimal SHA-256 (64 lower-case digits) of the UTF-8 bytes of `text`. */
export function sha256(text: string): string {
  const bytes = encoder.encode(text);
  const blocks = (bytes.length + 9 + 63) >> 6;
  const padded = new Uint8Array(blocks * 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, (bytes.length << 3) >>> 0);
  const state = initialState.slice();
  const schedule = new Int32Array(64);
  for (let block = 0; block < blocks; block++) {
    for (let t = 0; t < 16; t++) schedule[t] = view.getInt32(block * 64 + t * 4);
    for (let t = 16; t < 64; t++) {
      const w15 = schedule[t - 15]!;
      const w2 = schedule[t - 2]!;
      const s0 = rotateRight(w15, 7) ^ rotateRight(w15, 18) ^ (w15 >>> 3);
      const s1 = rotateRight(w2, 17) ^ rotateRight(w2, 19) ^ (w2 >>> 10);
      schedule[t] = (schedule[t - 16]! + s0 + schedule[t - 7]! + s1) | 0;
    }
    let a = state[0]!;
    let b = state[1]!;
    let c = state[2]!;
    let d = state[3]!;
    let e = state[4]!;
    let f = state[5]!;
    let g = state[6]!;
    let h = state[7]!;
    for (let t = 0; t < 64; t++) {
      const sum1 = rotateRight(e, 6) ^ rotateRight(e, 11) ^ rotateRight(e, 25);
      const t1 = (h + sum1 + ((e & f) ^ (~e & g)) + roundConstants[t]! + schedule[t]!) | 0;
      const sum0 = rotateRight(a, 2) ^ rotateRight(a, 13) ^ rotateRight(a, 22);
      const t2 = (sum0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + t1) | 0;
      d = c;
      c = b;
      b = a;
      a = (t1 + t2) | 0;
    }
    state[0]! += a;
    state[1]! += b;
    state[2]! += c;
    state[3]! += d;
    state[4]! += e;
    state[5]! += f;
    state[6]! += g;
    state[7]! += h;
  }
  let digest = '';
  for (const word of state)
    for (let shift = 24; shift >= 0; shift -= 8) digest += twoDigits[(word >>> shift) & 0xff]!;
  return digest;
}
