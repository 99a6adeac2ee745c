import { drawCount } from './streams.ts';

/** Who has columns on loan; told when they are taken back. */
export interface Borrower {
  forget(): void;
}

/**
 * Columns of one number a draw, lent to one run at a time and used again: making and clearing a fresh column costs
 * more than filling it, and a thousand of them would not stay in the processor's cache.
 */
export interface Workspace {
  /** Before a piece of work: columns of another borrower, or too many of this one, are taken back. */
  begin(borrower: Borrower): void;
  /** A column, not cleared; valid until the next `begin`, or longer where that takes nothing back */
  take(): Float64Array;
}

/** Columns that may be out when a piece of work begins: 6 MB. */
const mostKept = 384;

/** @param most columns that one borrower may have out before `begin` takes them back; 384 are 6 MB */
export function createWorkspace(most = mostKept): Workspace {
  const columns: Float64Array[] = [];
  let lent = 0;
  let holder: Borrower | undefined;
  return {
    begin(borrower) {
      if (borrower === holder && lent <= most) return;
      holder?.forget();
      holder = borrower;
      lent = 0;
      // One work may need any number; not all of them are kept for ever.
      if (columns.length > 2 * most) columns.length = most;
    },
    take() {
      columns[lent] ??= new Float64Array(drawCount);
      lent += 1;
      return columns[lent - 1]!;
    },
  };
}
