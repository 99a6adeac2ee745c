import { useState } from 'react';
import { hashOf } from '../shell/route.ts';
import { useCitations } from '../stores/citations.ts';

/** While a loan is here: the sentences that nothing proves yet and only this set can settle. */
export function OpenSentences({ article }: { article: string }) {
  const unproven = useCitations((state) => state.byArticle.get(article)?.unproven);
  const [open, setOpen] = useState(false);
  const sentences = [...new Map((unproven ?? []).map((each) => [each.sentence, each])).values()];
  if (sentences.length === 0) return null;
  return (
    <div className="open-sentences">
      <button type="button" className="act" aria-expanded={open} onClick={() => setOpen(!open)}>
        {sentences.length === 1
          ? 'One sentence that only this set can settle'
          : `${sentences.length} sentences that only this set can settle`}
      </button>
      {open && (
        <ul>
          {sentences.map((each) => (
            <li key={each.start}>
              <a href={hashOf('draft', [article], { at: String(each.start) })}>{each.sentence}</a>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
