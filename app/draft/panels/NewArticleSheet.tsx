import { useState } from 'react';
import type { Article } from '../../../shared/contract/article.ts';
import { faultLine } from '../../../shared/contract/fault.ts';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';
import { door, person } from '../../door/door.ts';
import { FormSheet } from '../../shell/FormSheet.tsx';
import { currentRoute, go } from '../../shell/route.ts';
import { closeSheet } from '../../shell/sheets.ts';
import { useArticle } from '../../stores/article.ts';
import { useEvidence } from '../../stores/evidence.ts';
import { unitName, useLibrary } from '../../stores/library.ts';
import { drawsOf, measurementsOf } from '../../stores/measurements.ts';
import { articleIdFor } from '../templates/articleId.ts';
import {
  articleOutlines,
  kindNames,
  kindOfSet,
  outlineMarkdown,
  sectionsFor,
} from '../templates/outlines.ts';
import { fillPlaceholders } from '../templates/placeholders.ts';
import type { FilledPhrase } from '../templates/provenPhrase.ts';

/** The set on the Bench, else that of the article in the Draft, else the first. */
function unitInHand(ids: readonly string[]): string {
  const { room, path } = currentRoute();
  const known = [room === 'bench' ? path[0] : undefined, useArticle.getState().meta?.unit, ids[0]];
  return known.find((id) => id !== undefined && ids.includes(id)) ?? '';
}

/** The outline's sentences with their proofs; what reads and judges them is fetched only now. */
async function claimsOf(
  id: string,
  meta: Article,
  markdown: string,
  phrases: readonly FilledPhrase[],
): Promise<StoredClaim[]> {
  const { evidence, house, scoreSheet } = useEvidence.getState();
  if (!evidence || !house || phrases.length === 0) return [];
  const { provenClaimsOf } = await import('../templates/provenPhrase.ts');
  const bench = {
    evidence,
    article: { id, meta },
    house,
    scoreSheet,
    measure: measurementsOf,
    draws: drawsOf,
  };
  return provenClaimsOf(markdown, phrases, bench, { by: person.name(), at: new Date().toISOString() });
}

/** Title, set and outline: all that an article needs to begin. */
export function NewArticleSheet() {
  const units = useLibrary((state) => state.units);
  const articles = useLibrary((state) => state.articles);
  const [title, setTitle] = useState('');
  const [unit, setUnit] = useState(() => unitInHand(units.map(({ id }) => id)));
  const [outline, setOutline] = useState(articleOutlines[0]!.id);
  const [date, setDate] = useState(() => new Date().toISOString().slice(0, 10));
  const [trouble, setTrouble] = useState('');
  const evidence = useEvidence((state) => state.evidence);
  const set = evidence?.units.get(unit);
  const kind = set ? kindOfSet(set.unit) : 'plain';

  async function begin() {
    const id = articleIdFor(title, new Set(articles.map((article) => article.id)));
    const chosen = articleOutlines.find((one) => one.id === outline)!;
    const meta: Article = { title, unit, state: 'draft', date, locale: 'en-GB' };
    const phrases: FilledPhrase[] = [];
    const markdown = outlineMarkdown(title, chosen, kind, (sentence, conditions) => {
      if (!set || !evidence) return { markdown: sentence, missing: [], runs: [] };
      const bench = { evidence, measure: measurementsOf };
      const filled = fillPlaceholders(sentence, set, conditions, bench, 'en-GB');
      if (filled.missing.length === 0) phrases.push({ ...filled, conditions });
      return filled;
    });
    const reply = await door.ask('article.create', {
      article: id,
      meta,
      markdown,
      claims: await claimsOf(id, meta, markdown, phrases),
    });
    if (!reply.ok) return setTrouble(reply.faults.map(faultLine).join(' '));
    await useLibrary.getState().load();
    closeSheet();
    go('draft', [id]);
  }

  return (
    <FormSheet
      title="New article"
      done="Begin"
      disabled={!title.trim() || !unit}
      trouble={trouble}
      submit={() => void begin()}
    >
      <label>
        <span>Title</span>
        <input value={title} required data-first onChange={(event) => setTitle(event.target.value)} />
      </label>
      <label>
        <span>Set under review</span>
        <select value={unit} required onChange={(event) => setUnit(event.target.value)}>
          {units.map((one) => (
            <option key={one.id} value={one.id}>
              {unitName(one)}
            </option>
          ))}
        </select>
      </label>
      {units.length === 0 ? (
        <p className="quiet">The library has no set yet. Log one on the Bench first.</p>
      ) : null}
      <label>
        <span>Outline</span>
        <select value={outline} onChange={(event) => setOutline(event.target.value)}>
          {articleOutlines.map((one) => (
            <option key={one.id} value={one.id}>
              {one.sections.length > 0 ? `${one.name} of ${kindNames[kind]}` : one.name}
            </option>
          ))}
        </select>
        <span>
          {sectionsFor(articleOutlines.find((one) => one.id === outline)!, kind)
            .map(({ heading }) => heading)
            .join(', ')}
        </span>
      </label>
      <label>
        <span>Date of the article, its “today” in comparisons</span>
        <input type="date" value={date} required onChange={(event) => setDate(event.target.value)} />
      </label>
    </FormSheet>
  );
}
