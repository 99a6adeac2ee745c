import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Note, stackNotes } from '../../../app/draft/margin/stackNotes.ts';

const notes = fc
  .array(
    fc.record({
      ideal: fc.integer({ min: 0, max: 3000 }),
      height: fc.integer({ min: 10, max: 300 }),
      gap: fc.integer({ min: 0, max: 20 }),
      weight: fc.constantFrom(0.2, 1, 3),
    }),
    { minLength: 1, maxLength: 40 },
  )
  .map((list) => list.sort((a, b) => a.ideal - b.ideal));

const footOf = (note: Note, top: number) => top + note.height + note.gap;
/** Height of all that stands above a note at the least */
const above = (list: readonly Note[], pin: number) =>
  list.slice(0, pin).reduce((sum, note) => footOf(note, sum), 0);

/**
 * How fast the sum of weighted squares changes when a run of touching notes moves by one px (half the derivative).
 * At the least sum no run that can move makes it smaller; for a convex sum over these bounds that is also enough.
 */
function slopes(list: readonly Note[], tops: readonly number[], pin: number): number[] {
  const touches = (index: number) =>
    index >= 0 && index < list.length - 1 && tops[index + 1]! - footOf(list[index]!, tops[index]!) < 1e-6;
  const pull = (index: number) => list[index]!.weight * (tops[index]! - list[index]!.ideal);
  const found: number[] = [];
  for (let index = 0; index < list.length; index += 1) {
    // Down: this note and all that touch each other below it.
    let down = 0;
    let last = index;
    let free = index !== pin;
    for (down = pull(index); touches(last); down += pull(last)) {
      last += 1;
      if (last === pin) free = false;
    }
    if (free) found.push(down);
    // Up: this note and all that touch each other above it, unless they stand at the column's top.
    let up = 0;
    let first = index;
    free = index !== pin;
    for (up = -pull(index); touches(first - 1); up -= pull(first)) {
      first -= 1;
      if (first === pin) free = false;
    }
    if (free && tops[first]! > 1e-6) found.push(up);
  }
  return found;
}

describe('notes in a column', () => {
  it('stand at their ideals where these leave room', () => {
    const list = [0, 100, 300].map((ideal) => ({ ideal, height: 80, gap: 10, weight: 1 }));
    expect(stackNotes(list)).toEqual([0, 100, 300]);
  });

  it('share what is missing, the weightier giving way less', () => {
    const note = (weight: number) => ({ ideal: 100, height: 50, gap: 0, weight });
    expect(stackNotes([note(1), note(1)])).toEqual([75, 125]);
    expect(stackNotes([note(1), note(4)])).toEqual([60, 110]);
  });

  it('give way to the pinned one, up and down', () => {
    const list = [190, 200, 210].map((ideal) => ({ ideal, height: 50, gap: 10, weight: 1 }));
    expect(stackNotes(list, 1)).toEqual([140, 200, 260]);
  });

  it('never overlap, keep their order and begin at 0 or below, at any length', () => {
    fc.assert(
      fc.property(notes, fc.integer({ min: -1, max: 39 }), (list, pick) => {
        const tops = stackNotes(list, pick < list.length ? pick : -1);
        expect(tops.length).toBe(list.length);
        expect(tops[0]!).toBeGreaterThanOrEqual(0);
        for (let index = 1; index < tops.length; index += 1)
          expect(tops[index]!).toBeGreaterThanOrEqual(footOf(list[index - 1]!, tops[index - 1]!) - 1e-9);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  it('leave the pinned one exactly at its ideal wherever all above it fit', () => {
    fc.assert(
      fc.property(notes, fc.nat(39), (list, pick) => {
        const pin = pick % list.length;
        const tops = stackNotes(list, pin);
        expect(tops[pin]).toBeCloseTo(Math.max(list[pin]!.ideal, above(list, pin)), 9);
      }),
      { numRuns: 500, seed: 4 },
    );
  });

  it('move no farther than they must: no run of them could move and lessen the weighted squares', () => {
    fc.assert(
      fc.property(notes, fc.integer({ min: -1, max: 39 }), (list, pick) => {
        const pin = pick < list.length ? pick : -1;
        const tops = stackNotes(list, pin);
        for (const slope of slopes(list, tops, pin)) expect(slope).toBeGreaterThanOrEqual(-1e-6);
      }),
      { numRuns: 500, seed: 5 },
    );
  });
});
