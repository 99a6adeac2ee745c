import { EditorState } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { documentOfMarkdown } from '../../../../app/draft/document/readMarkdown.ts';
import { createCheckLoop } from '../../../../app/draft/proofs/checkLoop.ts';
import { proofPlugin, proofsOf } from '../../../../app/draft/proofs/proofPlugin.ts';
import { createChecker } from '../../../../shared/claims/index.ts';
import { benchOf } from '../../../fixtures/hearth/index.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** As much of an editor as the loop uses, and how often it was checked. */
function editor() {
  const view = {
    state: EditorState.create({
      doc: documentOfMarkdown('A 10% window reaches 742 nits.'),
      plugins: [proofPlugin({ nodeType: 1 } as HTMLElement, () => undefined)],
    }),
    isDestroyed: false,
    composing: false,
    dispatch(transaction: Parameters<EditorState['apply']>[0]) {
      view.state = view.state.apply(transaction);
    },
  };
  const checker = createChecker(benchOf());
  const check = vi.spyOn(checker, 'check');
  const loop = createCheckLoop(view as unknown as EditorView, () => checker);
  const type = (words: string) => {
    view.dispatch(view.state.tr.insertText(words, view.state.doc.content.size - 1));
    loop.typed();
  };
  return {
    loop,
    type,
    checks: () => check.mock.calls.length,
    shown: () => proofsOf(view.state).items.length,
  };
}

it('an opened article is checked at once, not after the rest that typing is given', () => {
  const { loop, checks, shown } = editor();
  loop.atOnce();
  vi.advanceTimersByTime(2);
  expect([checks(), shown()]).toEqual([1, 1]);
});

it('typing is checked once it rests, and draws that arrive meanwhile do not hasten it', () => {
  const { loop, type, checks } = editor();
  type(' So');
  vi.advanceTimersByTime(100);
  loop.soon();
  type(' be');
  vi.advanceTimersByTime(159);
  expect(checks()).toBe(0);
  vi.advanceTimersByTime(5);
  expect(checks()).toBe(1);
});

it('draws that keep arriving are shown as they come, many to a check', () => {
  const { loop, checks, shown } = editor();
  for (let batch = 0; batch < 40; batch += 1) {
    loop.soon();
    vi.advanceTimersByTime(10);
  }
  expect(checks()).toBeGreaterThanOrEqual(4);
  expect(checks()).toBeLessThanOrEqual(9);
  expect(shown()).toBe(1);
});

it('what arrives between judging and showing is checked as well', () => {
  const { loop, checks } = editor();
  loop.atOnce();
  vi.advanceTimersByTime(0);
  expect(checks()).toBe(1);
  loop.soon();
  vi.advanceTimersByTime(100);
  expect(checks()).toBe(2);
});
