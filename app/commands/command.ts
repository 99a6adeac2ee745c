/**
 * One thing that a person can do. The same object feeds the menu, the palette, the keys, the help sheet and
 * the tests, so that none of them can disagree.
 */
export interface Command {
  /** `draft.next-problem`: room or part, then verb; menus of the desktop host name commands by it. */
  id: string;
  /** As shown, in the imperative: "Go to the next problem" */
  name: string;
  /** Further words that find it */
  keywords?: string;
  /** `Mod+K`, `Shift+F8`: Mod is Command on a Mac, Control elsewhere. */
  key?: string;
  /** Heading in the help sheet */
  group: 'Go' | 'Draft' | 'Proofs' | 'Window' | 'Bench' | 'Shelf';
  /** Absent: always possible. */
  when?: () => boolean;
  perform: () => void | Promise<void>;
}
