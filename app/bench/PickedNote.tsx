import { useEffect } from 'react';
import { verdictSeverity } from '../../shared/contract/claim.ts';
import { numberText, withUnit } from '../plots/numberText.ts';
import { hashOf } from '../shell/route.ts';
import type { Citation } from '../stores/articleFindings.ts';
import { citationKey, useCitations } from '../stores/citations.ts';
import { useEvidence } from '../stores/evidence.ts';
import { VerdictGlyph, verdictWord } from '../theme/VerdictGlyph.tsx';
import { usePicked } from './picked.ts';
import { readingAddress } from './ReadingTable.tsx';
import { runTitle } from './runText.ts';
import './picked.css';

const severity = (citation: Citation) =>
  citation.verdict === 'working' ? verdictSeverity.length : verdictSeverity.indexOf(citation.verdict);

/** One entry a sentence, with the worst verdict among its claims; the worst sentences first. */
function worstOfEach(citations: readonly Citation[]): Citation[] {
  const bySentence = new Map<string, Citation>();
  for (const citation of citations) {
    const key = `${citation.article} ${citation.sentence}`;
    const before = bySentence.get(key);
    if (!before || severity(citation) < severity(before)) bySentence.set(key, citation);
  }
  return [...bySentence.values()].sort((a, b) => severity(a) - severity(b));
}

/** What is picked, and which sentences rest on it, with the way back to each. */
export function PickedNote({ own }: { own: string }) {
  const { ref, clear } = usePicked();
  const unit = useEvidence((store) => (ref ? store.evidence?.units.get(ref.unit) : undefined));
  const citations = useCitations((state) => state.byEvidence);
  const state = useCitations((store) => store.state);
  useEffect(() => {
    if (ref) void useCitations.getState().gather(ref.unit);
  }, [ref]);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) clear();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [clear]);
  const run = unit?.runs.find((each) => each.id === ref?.run);
  if (!ref || !unit || !run) return null;
  const readings = run.readings.filter((reading) => ref.rows.includes(reading.row));
  const sentences = worstOfEach(
    ref.rows.flatMap((row) => citations.get(citationKey(unit.id, run.id, row)) ?? []),
  );
  return (
    <section className="picked" aria-label="Picked readings" aria-live="polite">
      <header>
        <b>
          {readings.length === 1 ? 'Reading' : 'Readings'} {ref.rows.join(', ')}
        </b>
        <button type="button" className="act" onClick={clear}>
          Close
        </button>
      </header>
      <p className="quiet">
        {unit.id === own ? '' : `${unit.unit.maker} ${unit.unit.model}, `}
        {runTitle(run)}
      </p>
      {readings.map((reading) => (
        <p key={reading.row}>
          {readingAddress(reading)}
          {reading.Y !== null &&
            `: ${withUnit(reading.Y, 'cd/m²', reading.Y >= 100 ? 1 : reading.Y >= 1 ? 2 : 4)}`}
          {reading.x !== null &&
            reading.y !== null &&
            `, x ${numberText(reading.x, 4)}, y ${numberText(reading.y, 4)}`}
          {reading.value !== undefined &&
            `: ${withUnit(reading.value, reading.unit ?? '', reading.value % 1 ? 1 : 0)}`}
        </p>
      ))}
      {sentences.length > 0 ? (
        <>
          <p className="picked-uses">
            {sentences.length === 1 ? 'One sentence rests' : `${sentences.length} sentences rest`} on this:
          </p>
          <ul>
            {sentences.map((citation) => (
              <li key={`${citation.article}#${citation.start}`} className={citation.verdict}>
                <span className="picked-verdict tone">
                  <VerdictGlyph verdict={citation.verdict} />
                  {verdictWord[citation.verdict]}
                </span>
                <a href={hashOf('draft', [citation.article], { at: String(citation.start) })}>
                  {citation.sentence}
                </a>
              </li>
            ))}
          </ul>
        </>
      ) : (
        <p className="quiet">
          {state === 'gathering' ? 'Looking through the articles …' : 'No sentence rests on this.'}
        </p>
      )}
    </section>
  );
}
