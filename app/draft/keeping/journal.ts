import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';

/** Text that has not reached the library yet, kept in the window's own storage against crash and power loss. */
export interface JournalEntry {
  markdown: string;
  claims: StoredClaim[];
  /** RFC 3339 time of the last change in it */
  at: string;
  /** Revision of the article that the text was typed upon */
  revision: number;
}

export interface Journal {
  read(): JournalEntry | null;
  write(entry: JournalEntry): void;
  clear(): void;
}

/** One journal an article and library; a storage that refuses (full, private window) loses only this safety. */
export function openJournal(storage: Storage, library: string, article: string): Journal {
  const key = `nitproof.journal.${library}.${article}`;
  return {
    read() {
      try {
        const entry = JSON.parse(storage.getItem(key) ?? 'null') as JournalEntry | null;
        return entry && typeof entry.markdown === 'string' && Array.isArray(entry.claims) ? entry : null;
      } catch {
        return null;
      }
    },
    write(entry) {
      try {
        storage.setItem(key, JSON.stringify(entry));
      } catch {
        // Autosave still carries the text; only the net under it is missing.
      }
    },
    clear() {
      storage.removeItem(key);
    },
  };
}
