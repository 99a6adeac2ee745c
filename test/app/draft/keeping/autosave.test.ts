import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createAutosave } from '../../../../app/draft/keeping/autosave.ts';
import type { JournalEntry } from '../../../../app/draft/keeping/journal.ts';
import type { SaveState } from '../../../../app/stores/article.ts';
import type { DoorClient } from '../../../../shared/contract/door.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** An autosave over a library in memory that can be told to refuse or to have moved on. */
function keeping() {
  const library = { revision: 4, markdown: 'old', refuses: false, saves: 0 };
  const states: SaveState['kind'][] = [];
  let journal: JournalEntry | null = null;
  let text = 'old';
  let allowed = true;
  const ask = (async (_name: string, input: { revision: number; markdown: string }) => {
    library.saves += 1;
    if (library.refuses)
      return { ok: false, faults: [{ code: 'unreadable', sentence: 'The disk is full.' }] };
    if (input.revision !== library.revision) {
      return { ok: false, faults: [{ code: 'stale-revision', sentence: 'Saved by somebody else.' }] };
    }
    library.revision += 1;
    library.markdown = input.markdown;
    return { ok: true, value: { revision: library.revision, savedAt: '2026-10-02T10:00:00Z' } };
  }) as unknown as DoorClient['ask'];
  const saving = createAutosave({
    ask,
    article: 'a',
    revision: 4,
    read: () => ({ meta: { title: 't', unit: 'u', state: 'draft' }, markdown: text, claims: [] }),
    by: () => 'reviewer',
    now: () => '2026-10-02T09:59:00Z',
    allowed: () => allowed,
    journal: {
      read: () => journal,
      write: (entry) => {
        journal = entry;
      },
      clear: () => {
        journal = null;
      },
    },
    report: ({ kind }) => states.push(kind),
  });
  return {
    library,
    states,
    saving,
    journal: () => journal,
    type(next: string) {
      text = next;
      saving.touch();
    },
    allow(value: boolean) {
      allowed = value;
    },
  };
}

describe('autosave', () => {
  it('saves once, 400 ms after the last of many changes', async () => {
    const kept = keeping();
    for (const text of ['a', 'ab', 'abc']) {
      kept.type(text);
      await vi.advanceTimersByTimeAsync(300);
    }
    expect(kept.library.saves).toBe(0);
    await vi.advanceTimersByTimeAsync(100);
    expect([kept.library.saves, kept.library.markdown, kept.states.at(-1)]).toEqual([1, 'abc', 'saved']);
    expect(kept.journal()).toBeNull();
  });

  it('keeps what the library refuses in the journal and tries again', async () => {
    const kept = keeping();
    kept.library.refuses = true;
    kept.type('precious');
    await vi.advanceTimersByTimeAsync(400);
    expect([kept.states.at(-1), kept.journal()?.markdown]).toEqual(['refused', 'precious']);
    kept.library.refuses = false;
    await vi.advanceTimersByTimeAsync(5000);
    expect([kept.states.at(-1), kept.library.markdown, kept.journal()]).toEqual(['saved', 'precious', null]);
  });

  it('overwrites nothing that somebody else saved, until a person chooses to', async () => {
    const kept = keeping();
    kept.library.revision = 9;
    kept.library.markdown = 'theirs';
    kept.type('mine');
    await vi.advanceTimersByTimeAsync(400);
    expect([kept.states.at(-1), kept.library.markdown]).toEqual(['overtaken', 'theirs']);
    kept.type('mine, longer');
    await vi.advanceTimersByTimeAsync(10_000);
    expect(kept.library.markdown).toBe('theirs');
    await kept.saving.saveOver(9);
    expect([kept.states.at(-1), kept.library.markdown]).toEqual(['saved', 'mine, longer']);
  });

  it('waits while another window writes', async () => {
    const kept = keeping();
    kept.allow(false);
    kept.type('brought back');
    await vi.advanceTimersByTimeAsync(1000);
    expect([kept.library.saves, kept.saving.dirty]).toEqual([0, true]);
    kept.allow(true);
    await kept.saving.flush();
    expect(kept.library.markdown).toBe('brought back');
  });
});
