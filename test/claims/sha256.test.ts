import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sha256 } from '../../shared/claims/sha256.ts';

it('gives the published digests of the example messages (FIPS 180-4 examples, from memory)', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(sha256('')).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
});

it('equals the platform digest for any text and length around the block borders', () => {
  const platform = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
  for (let length = 50; length < 135; length++) {
    const text = 'ü'.repeat(length);
    expect(sha256(text)).toBe(platform(text));
  }
  fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => sha256(text) === platform(text)));
});
