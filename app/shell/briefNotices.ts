import { create } from 'zustand';

export interface BriefNotice {
  sentence: string;
  kind: 'said' | 'fault';
}

/** Sentences that wait to be shown for a moment in the corner of the window. */
export const useBriefNotices = create<{ waiting: readonly BriefNotice[]; begun: boolean }>(() => ({
  waiting: [],
  begun: false,
}));

/** Shows a sentence for a moment, without moving the focus. What draws it is fetched with the first one. */
export function briefNotice(sentence: string, kind: BriefNotice['kind'] = 'said'): void {
  useBriefNotices.setState(({ waiting }) => ({ waiting: [...waiting, { sentence, kind }], begun: true }));
}
