import { create } from 'zustand';

export interface Notice {
  sentence: string;
  kind: 'said' | 'fault';
}

/** Sentences that wait to be shown for a moment in the corner of the window. */
export const useNotices = create<{ waiting: readonly Notice[]; begun: boolean }>(() => ({
  waiting: [],
  begun: false,
}));

/** Shows a sentence for a moment, without moving the focus. What draws it is fetched with the first one. */
export function notice(sentence: string, kind: Notice['kind'] = 'said'): void {
  useNotices.setState(({ waiting }) => ({ waiting: [...waiting, { sentence, kind }], begun: true }));
}
