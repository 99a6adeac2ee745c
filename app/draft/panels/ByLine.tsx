import { createPortal } from 'react-dom';
import { formatNumber } from '../../../shared/article/formatNumber.ts';
import { useArticle } from '../../stores/article.ts';
import { useSession } from '../currentSession.ts';

const stateNames = {
  draft: 'Review draft',
  'with-editor': 'With the editor',
  returned: 'Returned by the editor',
  'signed-off': 'Signed off',
  released: 'Released',
  corrected: 'Corrected',
} as const;

/** Words a minute, silent reading of English non-fiction (Brysbaert 2019, from memory). */
const wordsPerMinute = 238;

/** State, date, words, reading time; and the unit. Stands under the title without being part of the text. */
export function ByLine() {
  const meta = useArticle((state) => state.meta);
  const words = useArticle((state) => state.words);
  const session = useSession((state) => state.session);
  if (!meta || !session) return null;
  const date = meta.date
    ? new Date(`${meta.date}T12:00:00Z`).toLocaleDateString('en-GB', {
        day: 'numeric',
        month: 'long',
        year: 'numeric',
      })
    : 'no date';
  const minutes = Math.max(1, Math.round(words / wordsPerMinute));
  return createPortal(
    `${stateNames[meta.state]}, ${date}, ${formatNumber(words, { decimals: 0 })} words, ${minutes}\u00a0min`,
    session.byLine,
  );
}
