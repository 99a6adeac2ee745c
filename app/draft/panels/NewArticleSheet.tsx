import { useState } from 'react';
import { faultLine } from '../../../shared/contract/fault.ts';
import { door } from '../../door/door.ts';
import { FormSheet } from '../../shell/FormSheet.tsx';
import { currentRoute, go } from '../../shell/route.ts';
import { closeSheet } from '../../shell/sheets.ts';
import { useArticle } from '../../stores/article.ts';
import { useEvidence } from '../../stores/evidence.ts';
import { unitName, useLibrary } from '../../stores/library.ts';
import { measurementsOf } from '../../stores/measurements.ts';
import { articleIdFor } from '../templates/articleId.ts';
import {
  articleOutlines,
  kindNames,
  kindOfSet,
  outlineMarkdown,
  sectionsFor,
} from '../templates/outlines.ts';
import { fillPlaceholders } from '../templates/placeholders.ts';

/** The set on the Bench, else that of the article in the Draft, else the first. */
function unitInHand(ids: readonly string[]): string {
  const { room, path } = currentRoute();
  const known = [room === 'bench' ? path[0] : undefined, useArticle.getState().meta?.unit, ids[0]];
  return known.find((id) => id !== undefined && ids.includes(id)) ?? '';
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
    const reply = await door.ask('article.create', {
      article: id,
      meta: { title, unit, state: 'draft', date, locale: 'en-GB' },
      markdown: outlineMarkdown(title, chosen, kind, (sentence, conditions) =>
        set && evidence
          ? fillPlaceholders(sentence, set, conditions, { evidence, measure: measurementsOf }, 'en-GB')
          : { markdown: sentence, missing: [], runs: [] },
      ),
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
