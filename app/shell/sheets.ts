import { create } from 'zustand';

export type Sheet =
  | 'palette'
  | 'help'
  | 'new-article'
  | 'insert-value'
  | 'insert-photo'
  | 'link'
  | 'phrase'
  | 'name';

/** Which sheet lies over the window; one at a time. */
export const useSheet = create<{ sheet: Sheet | null }>(() => ({ sheet: null }));

export function openSheet(sheet: Sheet): void {
  useSheet.setState({ sheet });
}

export function closeSheet(): void {
  useSheet.setState({ sheet: null });
}
