import { useMemo } from 'react';
import { judge } from '../../../shared/claims/index.ts';
import { useArticle } from '../../stores/article.ts';
import { VerdictGlyph, verdictWord } from '../../theme/VerdictGlyph.tsx';
import { currentSession } from '../currentSession.ts';
import { alternativesOf } from '../proofs/alternatives.ts';
import type { ProofItem } from '../proofs/proofItem.ts';
import { relinkTo } from './proofActions.ts';

/** The other readings that the words allow and the other runs they may mean, each with what it would come to. */
export function ReadItAs({ item, done }: { item: ProofItem; done: () => void }) {
  const bench = currentSession()?.bench() ?? null;
  // Draws that arrive while the list is open settle what was still working.
  const verdicts = useArticle((state) => state.verdicts);
  // biome-ignore lint/correctness/useExhaustiveDependencies: judged again with the verdicts
  const choices = useMemo(
    () =>
      bench
        ? alternativesOf(item.claim, bench).map((choice) => ({
            ...choice,
            judgement: judge(
              {
                ...item.claim,
                check: choice.check,
                asks: undefined,
                accepted: undefined,
              } as typeof item.claim,
              bench,
            ),
          }))
        : [],
    [item, bench, verdicts],
  );
  return (
    <ul className="read-as">
      {choices.map(({ name, check, judgement }) => (
        <li key={name}>
          <button
            type="button"
            onClick={() => {
              done();
              relinkTo(item.key, check);
            }}
          >
            <span className={`${judgement.verdict} tone`}>
              <VerdictGlyph verdict={judgement.verdict} />
              <span className="unseen">{verdictWord[judgement.verdict]}</span>
            </span>
            <span>
              {name} <span className="q">{judgement.reason}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
