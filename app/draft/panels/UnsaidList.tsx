import type { ArticleVerdicts } from '../../../shared/claims/index.ts';
import { unsaidLines } from './unsaidText.ts';

const shown = 3;

type Findings = ArticleVerdicts['unsaid'];

/** What the readings say and the article does not, the weightiest first. */
export function UnsaidList({ findings }: { findings: Findings }) {
  return (
    <section aria-label="Unsaid">
      <h2>Unsaid</h2>
      <Lines findings={findings.slice(0, shown)} />
      {findings.length > shown ? (
        <details>
          <summary>{findings.length - shown} more</summary>
          <Lines findings={findings.slice(shown)} />
        </details>
      ) : null}
    </section>
  );
}

function Lines({ findings }: { findings: Findings }) {
  return (
    <ul className="unsaid">
      {findings.map((unsaid) => {
        const { finding, conditions } = unsaidLines(unsaid);
        return (
          <li key={`${unsaid.run} ${unsaid.quantity}`} title={unsaid.reason}>
            {finding}
            {conditions ? <small>{conditions}</small> : null}
          </li>
        );
      })}
    </ul>
  );
}
