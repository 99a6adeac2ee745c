import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { measurementsOf } from '../stores/measurements.ts';
import { headlineLabel, headlinesFor, headlineText, headlineValue } from './headlines.ts';

/** As delivered against adjusted: the same quantities in two columns, the one closer to its aim in ink. */
export function SideBySide({
  unit,
  delivered,
  adjusted,
}: {
  unit: UnitEvidence;
  delivered: RunEvidence;
  adjusted: RunEvidence;
}) {
  const before = measurementsOf(unit, delivered);
  const after = measurementsOf(unit, adjusted);
  const rows = headlinesFor(delivered.conditions.signal).flatMap((headline) => {
    const left = headlineValue(before, headline);
    const right = headlineValue(after, headline);
    return left && right ? [{ headline, left, right }] : [];
  });
  if (rows.length === 0) return null;
  return (
    <table className="side-by-side">
      <caption>As delivered and adjusted</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">Quantity</span>
          </th>
          <th scope="col">as delivered</th>
          <th scope="col">adjusted</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ headline, left, right }) => (
          <tr key={headline.id + headline.stat}>
            <th scope="row">{headlineLabel(headline)}</th>
            <td>{headlineText(headline, left)}</td>
            <td>{headlineText(headline, right)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
