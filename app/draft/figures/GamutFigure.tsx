import type { ProofFigure } from '../../../shared/contract/claim.ts';
import { figureWidth, linear, place } from './scale.ts';

type Gamut = Extract<ProofFigure, { form: 'gamut' }>;

const height = 130;

/** The measured triangle, filled, over the reference, dashed; corners named by hue. */
export function GamutFigure({ figure }: { figure: Gamut }) {
  const all = [...figure.measured, ...figure.reference];
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  const span = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) || 1;
  const size = height - 24;
  const x = linear(Math.min(...xs), Math.min(...xs) + span, 60, 60 + size);
  const y = linear(Math.min(...ys), Math.min(...ys) + span, height - 12, height - 12 - size);
  const path = (corners: readonly (readonly [number, number])[]) =>
    `${corners.map(([u, v], index) => `${index === 0 ? 'M' : 'L'}${place(x(u))} ${place(y(v))}`).join('')}Z`;
  const right = Math.max(...figure.reference.map(([u]) => x(u)));
  return (
    <svg className="proof-plot" viewBox={`0 0 ${figureWidth} ${height}`} role="img" aria-label={figure.title}>
      <path className="figure-stated" d={path(figure.measured)} />
      <path className="figure-outline" d={path(figure.measured)} />
      <path className="figure-limit" d={path(figure.reference)} fill="none" />
      {['red', 'green', 'blue'].map((hue, index) => {
        const corner = figure.reference[index];
        if (!corner) return null;
        const [u, v] = corner;
        const left = hue !== 'red';
        return (
          <text
            key={hue}
            x={place(x(u) + (left ? -6 : 6))}
            y={place(y(v) + 3)}
            textAnchor={left ? 'end' : 'start'}
          >
            {hue}
          </text>
        );
      })}
      <text x={place(Math.max(right + 40, 190))} y={height - 30}>
        — measured
      </text>
      <text x={place(Math.max(right + 40, 190))} y={height - 14}>
        ┄ reference
      </text>
    </svg>
  );
}
