import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Placeable, placeProofs } from '../../../app/draft/margin/placeProofs.ts';

const gap = { notes: 14, lines: 5 };
const heights = { open: 190, full: 150, brief: 60, line: 20 };
const proof = (key: string, ideal: number, calm = false): Placeable => ({ key, ideal, calm, heights });

describe('proofs in the margin', () => {
  it('stand beside their sentences when there is room', () => {
    const placed = placeProofs([proof('a', 10), proof('b', 400)], null, gap);
    expect(placed).toEqual([
      { key: 'a', top: 10, form: 'open' },
      { key: 'b', top: 400, form: 'open' },
    ]);
  });

  it('shrink when calm before a problem gives anything up', () => {
    const placed = placeProofs([proof('a', 100), proof('b', 110, true), proof('c', 330)], null, gap);
    expect(placed.map(({ form }) => form)).toEqual(['open', 'line', 'open']);
  });

  it('keep the sentences of crowded problems, without their figures', () => {
    const placed = placeProofs(
      [0, 20, 40, 60, 80].map((ideal) => proof(String(ideal), ideal)),
      null,
      gap,
    );
    expect(placed.map(({ form }) => form)).toEqual(['brief', 'brief', 'brief', 'brief', 'brief']);
  });

  it('above the focus become lines where they would push it off its sentence', () => {
    const proofs = [
      proof('a', 60),
      proof('b', 70, true),
      proof('c', 80),
      proof('d', 90),
      proof('focus', 130),
      proof('e', 140),
    ];
    const placed = placeProofs(proofs, 'focus', gap);
    expect(placed[4]).toEqual({ key: 'focus', top: 130, form: 'open' });
    expect(placed.slice(0, 4).map(({ form }) => form)).toEqual(['line', 'line', 'line', 'line']);
    expect(placed[5]!.top).toBe(130 + heights.open + gap.notes);
  });

  it('never overlap, keep their order and leave the focus at its sentence, at any length', () => {
    const some = fc.array(
      fc.record({
        ideal: fc.integer({ min: 0, max: 5000 }),
        calm: fc.boolean(),
        full: fc.integer({ min: 60, max: 260 }),
      }),
      { minLength: 1, maxLength: 60 },
    );
    fc.assert(
      fc.property(some, fc.nat(), fc.boolean(), (list, pick, hasFocus) => {
        const proofs = [...list]
          .sort((a, b) => a.ideal - b.ideal)
          .map(({ ideal, calm, full }, index) => ({
            key: String(index),
            ideal,
            calm,
            heights: { open: full + 50, full, brief: 55, line: 20 },
          }));
        const at = pick % proofs.length;
        const placed = placeProofs(proofs, hasFocus ? String(at) : null, gap);
        for (let index = 0; index < placed.length; index += 1) {
          expect(placed[index]!.key).toBe(String(index));
          const next = placed[index + 1];
          const foot = placed[index]!.top + proofs[index]!.heights[placed[index]!.form];
          if (next) expect(next.top).toBeGreaterThanOrEqual(foot + gap.lines - 1e-6);
        }
        expect(placed[0]!.top).toBeGreaterThanOrEqual(0);
        if (!hasFocus) return;
        const above = placed.slice(0, at).reduce((sum, one, index) => {
          const bothLines = one.form === 'line' && placed[index + 1]!.form === 'line';
          return sum + proofs[index]!.heights[one.form] + (bothLines ? gap.lines : gap.notes);
        }, 0);
        expect(placed[at]!.top).toBeCloseTo(Math.max(proofs[at]!.ideal, above), 6);
        expect(placed[at]!.form).toBe('open');
      }),
      { numRuns: 300, seed: 11 },
    );
  });
});
