import { describe, expect, it } from 'vitest';
import { wordsOf } from '../../../app/draft/proofs/checkLoop.ts';

describe('word count', () => {
  it('counts what stands between spaces and holds a letter or a digit', () => {
    expect(wordsOf('White reaches 118 cd/m² – no more.\n\n“Éclat” costs £1,039 …')).toBe(9);
    expect(wordsOf('742\u00a0cd/m²')).toBe(2);
    expect(wordsOf('')).toBe(0);
  });
});
