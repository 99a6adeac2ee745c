import { memo, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { go } from '../../shell/route.ts';
import { useArticle } from '../../stores/article.ts';
import { useEvidence } from '../../stores/evidence.ts';
import { VerdictGlyph, verdictWord } from '../../theme/VerdictGlyph.tsx';
import { currentSession } from '../currentSession.ts';
import { ProofFigure } from '../figures/ProofFigure.tsx';
import { alternativesOf } from '../proofs/alternatives.ts';
import { definitionLine, readingPlaces } from '../proofs/evidencePlaces.ts';
import { foundInShort } from '../proofs/foundInShort.ts';
import { type ProofItem, standingOf } from '../proofs/proofItem.ts';
import { inWritersUnit, replacementFor } from '../proofs/suggestion.ts';
import { type ProofAction, performOn } from './proofActions.ts';
import { ReadItAs } from './ReadItAs.tsx';

interface Props {
  item: ProofItem;
  focused: boolean;
  /** Takes part in the order of Tab: one proof at a time does. */
  reachable: boolean;
  onContent?: (proof: HTMLElement) => void;
  /** Where no margin measures and places it: how much is shown */
  form?: 'open' | 'brief' | 'unmeasured';
}

/** A sidenote: verdict, one sentence with the numbers, the picture, what was looked at, and what one can do. */
export const Proof = memo(function Proof({
  item,
  focused,
  reachable,
  onContent,
  form = 'unmeasured',
}: Props) {
  const standing = standingOf(item);
  const { judgement } = item.claim;
  const evidence = useEvidence((state) => state.evidence);
  const own = useArticle((state) => state.meta?.unit ?? '');
  const following = useArticle((state) => state.following);
  const [choosing, setChoosing] = useState(false);
  const whole = useRef<HTMLDivElement>(null);
  // The first clause carries the numbers; what a reader must know besides follows in quiet type.
  const [clause = '', ...quiet] = judgement.reason.replace(/\.$/, '').split('; ');
  // Where two sentences contradict each other that is the finding; what was measured stands below it.
  const disagree = item.disagreements.length > 0;
  const reason = disagree ? item.disagreements.join(' ') : sentence(clause);
  const besides = disagree ? [clause, ...quiet] : quiet;
  const short = item.disagreements.length === 0 ? foundInShort(judgement) : null;
  const places = readingPlaces(judgement.evidence, own);
  const first = places[0];
  const act = (action: ProofAction) => () => performOn(item.key, action);
  const canAccept =
    !item.claim.accepted &&
    item.claim.check !== null &&
    ['holds', 'close', 'breaks'].includes(judgement.verdict);
  const suggested = judgement.suggestion && inWritersUnit(item.claim.text, judgement.suggestion);
  const suggestion = suggested ? (replacementFor(item.claim.text, suggested)?.text ?? null) : null;

  // Nothing is offered where there is nothing to choose from; only the proof in focus offers it at all.
  const isChoice = useMemo(() => {
    const bench = focused ? currentSession()?.bench() : null;
    return bench ? alternativesOf(item.claim, bench).length > 0 : false;
  }, [item, focused]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: these change what is measured
  useLayoutEffect(() => {
    if (whole.current) onContent?.(whole.current);
  }, [judgement, focused, choosing, isChoice, reason, following, evidence]);

  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for forms; a section with a name would be a landmark
    <div
      role="group"
      ref={whole}
      className={`proof ${standing}${focused ? ' focused' : ''}`}
      data-key={item.key}
      data-form={form}
      aria-label={`${verdictWord[standing]}: ${item.claim.text}`}
    >
      <div className="proof-main">
        <button
          type="button"
          className="proof-head tone"
          aria-expanded={focused}
          tabIndex={reachable ? 0 : -1}
          onClick={act('show')}
        >
          <VerdictGlyph verdict={standing} />
          <span>{verdictWord[standing]}</span>
        </button>
        <p className="proof-reason">{reason}</p>
        {short ? <p className="proof-short">{short}</p> : null}
        {judgement.now ? (
          <p className="proof-now">
            Now: <b className={`${judgement.now} tone`}>{verdictWord[judgement.now].toLowerCase()}</b>
          </p>
        ) : null}
      </div>
      {judgement.figure ? (
        <div className="proof-figure">
          <ProofFigure figure={judgement.figure} />
        </div>
      ) : null}
      <div className="proof-more">
        {besides.length > 0 ? <p className="q">{sentence(besides.join('; '))}</p> : null}
        <p className="q">{definitionLine(judgement, own, evidence)}</p>
        <div className="do">
          {suggestion && !following ? (
            <button type="button" className="act" onClick={act('suggest')}>
              Write “{suggestion}”
            </button>
          ) : null}
          {standing === 'stale' && !following ? (
            <button type="button" className="act" onClick={act('again')}>
              Read again
            </button>
          ) : null}
          {canAccept && !following ? (
            <button type="button" className="act besides" onClick={act('accept')}>
              Accept
            </button>
          ) : null}
          {first ? (
            <button
              type="button"
              className="act"
              onClick={() => go('bench', [first.unit, first.run], { row: String(first.rows[0]) })}
            >
              Readings
            </button>
          ) : null}
          {isChoice && !following ? (
            <button
              type="button"
              className="act besides"
              aria-expanded={choosing}
              onClick={() => setChoosing(!choosing)}
            >
              Read as…
            </button>
          ) : null}
          {standing !== 'opinion' && !following ? (
            <button type="button" className="act besides" onClick={act('opinion')}>
              Opinion
            </button>
          ) : null}
          {item.claim.origin !== 'proposed' && !following ? (
            <button type="button" className="act besides" onClick={act('let-go')}>
              Let go
            </button>
          ) : null}
        </div>
        {choosing && isChoice ? <ReadItAs item={item} done={() => setChoosing(false)} /> : null}
        {item.claim.accepted ? (
          <p className="q">
            Accepted by {item.claim.accepted.by}, {item.claim.accepted.at.slice(0, 10)}
          </p>
        ) : null}
      </div>
    </div>
  );
});

/** A clause as a sentence of its own. */
function sentence(clause: string): string {
  const whole = clause.charAt(0).toUpperCase() + clause.slice(1);
  return /[.!?…”]$/.test(whole) || whole === '' ? whole : `${whole}.`;
}
