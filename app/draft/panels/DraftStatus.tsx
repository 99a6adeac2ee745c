import { performCommand } from '../../commands/registry.ts';
import { InStatusLine } from '../../shell/Slots.tsx';
import { type SaveState, useArticle } from '../../stores/article.ts';
import { type Standing, VerdictGlyph } from '../../theme/VerdictGlyph.tsx';
import { standingOf } from '../proofs/proofItem.ts';
import { useProofs } from '../proofs/proofStore.ts';

const words: Record<Standing, [one: string, many: string]> = {
  holds: ['holds', 'hold'],
  breaks: ['breaks', 'break'],
  close: ['close', 'close'],
  unproven: ['unproven', 'unproven'],
  stale: ['stale', 'stale'],
  opinion: ['opinion', 'opinions'],
  working: ['working', 'working'],
};

function saveWord(save: SaveState, following: boolean): string {
  if (following) return 'Following another window';
  switch (save.kind) {
    case 'saved':
      return 'Saved';
    case 'unsaved':
    case 'saving':
      return 'Saving…';
    case 'refused':
      return 'Not saved';
    case 'overtaken':
      return 'Saved elsewhere meanwhile';
  }
}

/** Counts by verdict, the way to the next problem, and whether the library has the text. */
export function DraftStatus() {
  const items = useProofs((state) => state.items);
  const save = useArticle((state) => state.save);
  const following = useArticle((state) => state.following);
  const counts = new Map<Standing, number>();
  for (const item of items) counts.set(standingOf(item), (counts.get(standingOf(item)) ?? 0) + 1);
  const shown = (Object.keys(words) as Standing[]).filter((standing) => counts.get(standing));
  const problems = ['breaks', 'close', 'unproven', 'stale'].some((standing) =>
    counts.get(standing as Standing),
  );
  return (
    <InStatusLine>
      {shown.map((standing) => (
        <span key={standing} className={`${standing} tone`}>
          <VerdictGlyph verdict={standing} />
          {counts.get(standing)} {words[standing][counts.get(standing) === 1 ? 0 : 1]}
        </span>
      ))}
      <span className="right">
        {problems ? (
          <button type="button" onClick={() => performCommand('draft.next-problem')}>
            Next problem <kbd>F8</kbd>
          </button>
        ) : null}
      </span>
      <span title={save.kind === 'refused' ? save.sentence : undefined}>{saveWord(save, following)}</span>
    </InStatusLine>
  );
}
