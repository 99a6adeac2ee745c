import type { Article } from '../../../shared/contract/article.ts';
import type { DoorClient } from '../../../shared/contract/door.ts';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';
import type { SaveState } from '../../stores/article.ts';
import type { Journal } from './journal.ts';

interface Kept {
  meta: Article;
  markdown: string;
  claims: StoredClaim[];
}

export interface AutosaveOptions {
  ask: DoorClient['ask'];
  article: string;
  revision: number;
  /** The text as it is now */
  read: () => Kept;
  by: () => string;
  now: () => string;
  /** False while another window writes */
  allowed: () => boolean;
  journal: Journal;
  report: (state: SaveState) => void;
}

export interface Autosave {
  /** The text changed. */
  touch(): void;
  /** Save now what is not saved; resolves when the library has it or has refused it. */
  flush(): Promise<void>;
  /** Save over a newer revision, after the person chose to. */
  saveOver(revision: number): Promise<void>;
  /** The text was replaced by what the library holds at this revision. */
  rebase(revision: number): void;
  readonly dirty: boolean;
  readonly revision: number;
  stop(): void;
}

const rest = 400;

/**
 * Saves 400 ms after the last change and when asked to; one save at a time. Every change goes into the journal
 * first, and leaves it when the library has it. A save that somebody else overtook changes nothing.
 */
export function createAutosave(options: AutosaveOptions): Autosave {
  let { revision } = options;
  let changes = 0;
  let saved = 0;
  let overtaken = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | null = null;

  async function save(): Promise<void> {
    while (saved < changes && !overtaken && options.allowed()) {
      const at = changes;
      const kept = options.read();
      options.journal.write({ markdown: kept.markdown, claims: kept.claims, at: options.now(), revision });
      options.report({ kind: 'saving' });
      const reply = await options.ask('article.save', {
        article: options.article,
        revision,
        ...kept,
        by: options.by(),
      });
      if (reply.ok) {
        revision = reply.value.revision;
        saved = at;
        if (saved === changes) {
          options.journal.clear();
          options.report({ kind: 'saved', at: reply.value.savedAt });
        }
        continue;
      }
      if (reply.faults.some((fault) => fault.code === 'stale-revision')) {
        overtaken = true;
        options.report({ kind: 'overtaken' });
        return;
      }
      options.report({
        kind: 'refused',
        sentence: reply.faults[0]?.sentence ?? 'The library refused to save.',
      });
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), 5000);
      return;
    }
  }

  function flush(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    running ??= save().finally(() => {
      running = null;
    });
    return running;
  }

  return {
    touch() {
      changes += 1;
      if (overtaken) return;
      // Said once, not at every key.
      if (changes === saved + 1 || !timer) options.report({ kind: 'unsaved' });
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), rest);
    },
    flush,
    saveOver(over) {
      revision = over;
      overtaken = false;
      changes += 1;
      return flush();
    },
    rebase(at) {
      clearTimeout(timer);
      revision = at;
      overtaken = false;
      saved = changes;
    },
    get dirty() {
      return saved < changes;
    },
    get revision() {
      return revision;
    },
    stop() {
      clearTimeout(timer);
    },
  };
}
