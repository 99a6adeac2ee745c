import { formatWithUncertainty } from '../../../shared/article/formatNumber.ts';
import type { ProofFigure } from '../../../shared/contract/claim.ts';
import { figureWidth, label, linear, place } from './scale.ts';

type Interval = Extract<ProofFigure, { form: 'interval' }>;

/** What was written as a band, what was found as a point with its uncertainty, on one scale. */
export function IntervalFigure({ figure }: { figure: Interval }) {
  const { stated, found, u, other } = figure;
  const bounded = stated.filter(Number.isFinite);
  const values = [
    ...bounded,
    found - 2 * (u ?? 0),
    found + 2 * (u ?? 0),
    ...(other ? [other.value - 2 * (other.u ?? 0), other.value + 2 * (other.u ?? 0)] : []),
  ];
  const least = Math.min(...values);
  const most = Math.max(...values);
  const margin = (most - least || Math.abs(most) || 1) * 0.12;
  const x = linear(least - margin, most + margin, 6, figureWidth - 6);
  const from = Number.isFinite(stated[0]) ? x(stated[0]) : 0;
  const to = Number.isFinite(stated[1]) ? x(stated[1]) : figureWidth;
  const height = other ? 74 : 52;
  const row = (value: number, spread: number | null, y: number, name: string, strong: boolean) => {
    const middle = place(x(value));
    const rightHalf = middle > figureWidth * 0.6;
    return (
      <g className={strong ? 'figure-out' : 'figure-in'}>
        {spread ? (
          <line x1={place(x(value - 2 * spread))} x2={place(x(value + 2 * spread))} y1={y} y2={y} />
        ) : null}
        <circle cx={middle} cy={y} r={strong ? 3.6 : 3} />
        <text x={middle + (rightHalf ? -8 : 8)} y={y + 13} textAnchor={rightHalf ? 'end' : 'start'}>
          {name}
        </text>
      </g>
    );
  };
  const width = Math.max(to - from, 2);
  const labelAt = Math.min(Math.max(from + width / 2, 34), figureWidth - 34);
  return (
    <svg className="proof-plot" viewBox={`0 0 ${figureWidth} ${height}`} role="img" aria-label={figure.title}>
      <rect className="figure-stated" x={place(from)} y="14" width={place(width)} height={height - 16} />
      <text x={place(labelAt)} y="10" textAnchor="middle">
        written {writtenText(bounded)}
      </text>
      {row(
        found,
        u,
        26,
        formatWithUncertainty(found, u, figure.unit.startsWith('Δ') ? {} : { unit: figure.unit }),
        true,
      )}
      {other ? row(other.value, other.u, 52, `${other.label} ${label(other.value, 4)}`, false) : null}
    </svg>
  );
}

function writtenText(ends: readonly number[]): string {
  const [from, to] = ends;
  if (from === undefined) return '';
  return to === undefined || to === from ? label(from, 5) : `${label(from, 5)} to ${label(to, 5)}`;
}
