import { closeHistory } from 'prosemirror-history';
import { useMemo } from 'react';
import { person } from '../../door/door.ts';
import { checkerOf } from '../../evidence/articleChecker.ts';
import { briefNotice } from '../../shell/briefNotices.ts';
import { SearchSheet } from '../../shell/SearchSheet.tsx';
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
  const choices = useMemo(choicesOf, []);

  function insert(choice: Choice) {
    closeSheet();
    const session = currentSession();
    const bench = session?.bench();
    if (!session || !bench) return;
    const { view } = session;
    const signature = { by: person.name(), at: new Date().toISOString() };
    view.dispatch(closeHistory(insertProvenPhrase(view.state, choice, bench, signature)));
    session.checkNow();
    // A notice is spoken as well as shown.
    if (choice.missing.length > 0) briefNotice(blankText(choice.missing, choice.where));
    setTimeout(() => view.focus(), 0);
  }

  return (
    <SearchSheet
      title="House phrases"
      asks="Which phrase"
      placeholder="greyscale, window, contrast …"
      choices={choices}
      textOf={({ text }) => text}
      keyOf={({ markdown, where }) => markdown + where}
      choose={insert}
      none="No phrase by those words."
      show={({ standing, text, missing, where }) => (
        <>
          <span className={`${standing} tone`}>
            <VerdictGlyph verdict={standing} />
            <span className="unseen">{verdictWord[standing]}</span>
          </span>
          <span>
            {text}{' '}
            <span className="q">
              {missing.length > 0 ? `Not measured yet: ${missing.join('; ')}. ` : ''}
              {where}
            </span>
          </span>
        </>
      )}
    />
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
