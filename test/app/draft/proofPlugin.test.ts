import fc from 'fast-check';
import { EditorState, type Transaction } from 'prosemirror-state';
import { describe, expect, it } from 'vitest';
import { documentOfMarkdown } from '../../../app/draft/document/readMarkdown.ts';
import type { ProofItem } from '../../../app/draft/proofs/proofItem.ts';
import { proofKey, proofPlugin, proofsOf } from '../../../app/draft/proofs/proofPlugin.ts';

const text =
  '# A trial\n\nOne two three four five.\n\n- six seven\n- eight nine\n\nTen eleven twelve thirteen.\n';

function item(key: string, from: number, to: number, verdict = 'holds'): ProofItem {
  return { key, from, to, claim: { judgement: { verdict } }, disagreements: [] } as unknown as ProofItem;
}

const began = () =>
  EditorState.create({
    doc: documentOfMarkdown(text),
    plugins: [proofPlugin({ nodeType: 1 } as HTMLElement, () => undefined)],
  });

/** Key, place and class of every underline and tint. */
function drawn(state: EditorState): string[] {
  return proofsOf(state)
    .decorations.find()
    .filter(({ spec }) => spec.proof !== undefined || spec.tint !== undefined)
    .map(({ from, to, spec }) => `${spec.proof ?? `tint ${spec.tint}`} ${from} ${to}`)
    .sort();
}

function expected(state: EditorState): string[] {
  const { items, focus } = proofsOf(state);
  return items
    .flatMap((one) => {
      const line = `${one.key} ${one.from} ${one.to}`;
      const tint = `tint ${one.claim.judgement.verdict} ${one.from} ${one.to}`;
      return one.key === focus ? [line, tint] : [line];
    })
    .sort();
}

type Edit =
  | { kind: 'type'; at: number; words: string }
  | { kind: 'delete'; at: number; length: number }
  | { kind: 'split'; at: number }
  | { kind: 'check'; starts: number[]; verdict: string }
  | { kind: 'focus'; pick: number };

const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({ kind: fc.constant('type' as const), at: fc.nat(), words: fc.constantFrom('x', ' and more') }),
  fc.record({ kind: fc.constant('delete' as const), at: fc.nat(), length: fc.integer({ min: 1, max: 30 }) }),
  fc.record({ kind: fc.constant('split' as const), at: fc.nat() }),
  fc.record({
    kind: fc.constant('check' as const),
    starts: fc.array(fc.nat(), { maxLength: 6 }),
    verdict: fc.constantFrom('holds', 'breaks', 'close'),
  }),
  fc.record({ kind: fc.constant('focus' as const), pick: fc.nat() }),
);

let keys = 0;

function transactionOf(state: EditorState, edit: Edit): Transaction | null {
  const { doc, tr } = state;
  if (edit.kind === 'focus') {
    const { items } = proofsOf(state);
    return tr.setMeta(proofKey, { focus: items[edit.pick % (items.length + 1)]?.key ?? null });
  }
  if (edit.kind === 'check') {
    // What was known stays under its key where it still stands; some of it is judged otherwise, some of it is new.
    const known = proofsOf(state).items.map((one, index) =>
      index % 2 ? one : item(one.key, one.from, one.to, edit.verdict),
    );
    const fresh = edit.starts.flatMap((start) => {
      const $from = doc.resolve(start % doc.content.size);
      if (!$from.parent.isTextblock || $from.parentOffset === $from.parent.content.size) return [];
      const to = Math.min($from.pos + 7, $from.end());
      return [item(`new${++keys}`, $from.pos, to, edit.verdict)];
    });
    const items = [...known.slice(edit.starts.length % 3), ...fresh].sort((a, b) => a.from - b.from);
    return tr.setMeta(proofKey, { items });
  }
  const $at = doc.resolve(edit.at % doc.content.size);
  if (!$at.parent.isTextblock) return null;
  if (edit.kind === 'type') return tr.insertText(edit.words, $at.pos);
  if (edit.kind === 'split') return $at.depth === 1 ? tr.split($at.pos) : null;
  return tr.delete($at.pos, Math.min($at.pos + edit.length, doc.content.size - 1));
}

describe('underlines in the text', () => {
  it('stand where the claims stand and nowhere else, after any edits and checks', () => {
    fc.assert(
      fc.property(fc.array(edits, { minLength: 1, maxLength: 25 }), (list) => {
        let state = began();
        for (const edit of list) {
          const transaction = transactionOf(state, edit);
          if (transaction) state = state.apply(transaction);
          expect(drawn(state)).toEqual(expected(state));
        }
      }),
      { numRuns: 300, seed: 5 },
    );
  });

  it('are not drawn anew by a check that finds the same', () => {
    let state = began();
    const items = [item('a', 12, 18), item('b', 20, 24, 'breaks')];
    state = state.apply(state.tr.setMeta(proofKey, { items }));
    const before = proofsOf(state).decorations;
    state = state.apply(state.tr.setMeta(proofKey, { items: items.map((one) => ({ ...one })) }));
    expect(proofsOf(state).decorations).toBe(before);
  });
});
