import type { ProofFigure } from '../../../shared/contract/claim.ts';
import { extent, figureWidth, label, linear, place } from './scale.ts';

type Ranking = Extract<ProofFigure, { form: 'ranking' }>;

const shown = 6;
const rowHeight = 17;

/** Own set among the others, one row each, on one scale; the own one is set in the strong hue and in bold. */
export function RankingFigure({ figure }: { figure: Ranking }) {
  const own = figure.members.findIndex((member) => member.own);
  const start = Math.max(0, Math.min(own - 2, figure.members.length - shown));
  const members = figure.members.slice(start, start + shown);
  const [least, most] = extent(figure.members);
  const x = linear(Math.min(least, most * 0.8), most, 140, figureWidth - 46);
  const height = members.length * rowHeight + 4;
  return (
    <svg className="proof-plot" viewBox={`0 0 ${figureWidth} ${height}`} role="img" aria-label={figure.title}>
      {members.map((member, index) => {
        const y = index * rowHeight + 10;
        return (
          <g key={member.label} className={member.own ? 'figure-out' : 'figure-in'}>
            <text x="0" y={y + 3.5} className={member.own ? 'figure-own' : undefined}>
              {member.label.length > 22 ? `${member.label.slice(0, 21)}…` : member.label}
            </text>
            {member.u ? (
              <line
                x1={place(x(member.value - 2 * member.u))}
                x2={place(x(member.value + 2 * member.u))}
                y1={y}
                y2={y}
              />
            ) : null}
            <circle cx={place(x(member.value))} cy={y} r={member.own ? 3.6 : 3} />
            <text
              x={figureWidth}
              y={y + 3.5}
              textAnchor="end"
              className={member.own ? 'figure-own' : undefined}
            >
              {label(member.value, 4)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
