import { closeHistory } from 'prosemirror-history';
import { useMemo, useState } from 'react';
import { toast } from 'sonner';
import { person } from '../../door/door.ts';
import { checkerOf } from '../../evidence/articleChecker.ts';
import { announce } from '../../shell/announce.ts';
import { SheetFrame } from '../../shell/SheetFrame.tsx';
import { closeSheet } from '../../shell/sheets.ts';
import { type Standing, VerdictGlyph, verdictWord } from '../../theme/VerdictGlyph.tsx';
import { currentSession } from '../currentSession.ts';
import { housePhrases } from '../templates/housePhrases.ts';
import { conditionsText, fillPlaceholders } from '../templates/placeholders.ts';
import { blankText, type FilledPhrase, insertProvenPhrase, readAlone } from '../templates/provenPhrase.ts';

interface Choice extends FilledPhrase {
  text: string;
  where: string;
  standing: Standing;
}

/** Sentences as the house says them, filled from what was measured, each with the verdict its check would come to. */
export function PhraseSheet() {
  const [sought, setSought] = useState('');
  const choices = useMemo(choicesOf, []);
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const matching = choices.filter(({ text }) => words.every((word) => text.toLowerCase().includes(word)));

  function insert(choice: Choice) {
    closeSheet();
    const session = currentSession();
    const bench = session?.bench();
    if (!session || !bench) return;
    const { view } = session;
    const signature = { by: person.name(), at: new Date().toISOString() };
    view.dispatch(closeHistory(insertProvenPhrase(view.state, choice, bench, signature)));
    session.checkNow();
    if (choice.missing.length > 0) {
      const left = blankText(choice.missing, choice.where);
      toast(left);
      announce(left);
    }
    setTimeout(() => view.focus(), 0);
  }

  return (
    <SheetFrame label="House phrases">
      <div className="sheet-body">
        <h2>House phrases</h2>
        <input
          data-first
          value={sought}
          aria-label="Which phrase"
          placeholder="greyscale, window, contrast …"
          style={{ width: '100%' }}
          onChange={(event) => setSought(event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || !matching[0]) return;
            event.preventDefault();
            insert(matching[0]);
          }}
        />
        <ul className="read-as">
          {matching.map((choice) => (
            <li key={choice.markdown + choice.where}>
              <button type="button" onClick={() => insert(choice)}>
                <span className={`${choice.standing} tone`}>
                  <VerdictGlyph verdict={choice.standing} />
                  <span className="unseen">{verdictWord[choice.standing]}</span>
                </span>
                <span>
                  {choice.text}{' '}
                  <span className="q">
                    {choice.missing.length > 0 ? `Not measured yet: ${choice.missing.join('; ')}. ` : ''}
                    {choice.where}
                  </span>
                </span>
              </button>
            </li>
          ))}
        </ul>
        {matching.length === 0 ? <p className="quiet">No phrase by those words.</p> : null}
      </div>
    </SheetFrame>
  );
}

/** Those that can be filled first. */
function choicesOf(): Choice[] {
  const session = currentSession();
  const bench = session?.bench();
  const unit = bench?.evidence.units.get(session!.meta().unit);
  if (!bench || !unit) return [];
  const { conditions, locale = 'en-GB' } = session!.meta();
  const checker = checkerOf(bench);
  return housePhrases
    .map((phrase): Choice => {
      const mode = conditions?.[phrase.signal]?.mode;
      const filled = fillPlaceholders(phrase.words, unit, phrase, bench, locale, mode);
      const { text, claims } = readAlone(filled.markdown, phrase, checker);
      const standing = filled.missing.length > 0 ? undefined : claims.at(-1)?.judgement.verdict;
      return {
        ...filled,
        conditions: phrase,
        text,
        where: conditionsText(phrase),
        standing: standing ?? 'unproven',
      };
    })
    .sort((a, b) => a.missing.length - b.missing.length);
}
