import { TextSelection } from 'prosemirror-state';
import { InNav } from '../../shell/Slots.tsx';
import { useArticle } from '../../stores/article.ts';
import { unitName, useLibrary } from '../../stores/library.ts';
import { verdictWord } from '../../theme/VerdictGlyph.tsx';
import { currentSession } from '../currentSession.ts';
import { revealPosition } from '../margin/proofPlaces.ts';
import { ArticleSwitcher } from './ArticleSwitcher.tsx';
import { UnsaidList } from './UnsaidList.tsx';

/** Goes to a heading; headings are looked up anew, since typing moves them. */
function goToHeading(index: number): void {
  const view = currentSession()?.view;
  if (!view) return;
  const positions: number[] = [];
  view.state.doc.forEach((node, position) => {
    if (node.type.name === 'heading' && node.attrs.level > 1) positions.push(position);
  });
  const position = positions[index];
  if (position === undefined) return;
  view.dispatch(view.state.tr.setSelection(TextSelection.near(view.state.doc.resolve(position + 1))));
  view.focus();
  revealPosition(position + 1);
}

/** The article's outline with its problems, and what the readings say that the article does not. */
export function DraftNav() {
  const outline = useArticle((state) => state.outline);
  const found = useArticle((state) => state.verdicts?.unsaid);
  const unitId = useArticle((state) => state.meta?.unit);
  const unit = useLibrary((state) => state.units.find((one) => one.id === unitId));
  const unsaid = found ?? [];
  return (
    <InNav>
      <section aria-label="Outline">
        <h2>{unit ? unitName(unit) : 'Outline'}</h2>
        <ul>
          {outline.map((entry, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two headings may be worded alike; their order names them
            <li key={index}>
              <button
                type="button"
                className="nav-link"
                style={entry.level > 2 ? { paddingLeft: `${(entry.level - 2) * 0.75 + 0.5}rem` } : undefined}
                onClick={() => goToHeading(index)}
              >
                {entry.text || 'Untitled'}
                <span className="counts">
                  {entry.problems.map(({ standing, count }) => (
                    <span key={standing} className={`${standing} tone`}>
                      {count}
                      <span className="unseen"> {verdictWord[standing]} </span>
                    </span>
                  ))}
                </span>
              </button>
            </li>
          ))}
        </ul>
        {outline.length === 0 ? (
          <p className="quiet">A line that begins with ## is a heading; headings make the outline.</p>
        ) : null}
      </section>
      {unsaid.length > 0 ? <UnsaidList findings={unsaid} /> : null}
      <ArticleSwitcher />
    </InNav>
  );
}
