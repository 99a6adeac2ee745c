import type { ProofFigure } from '../../../shared/contract/claim.ts';
import { figureWidth, linear, place } from './scale.ts';

type Tint = Extract<ProofFigure, { form: 'tint' }>;

const height = 138;
const radius = 52;
/** Directions of the u′v′ plane in degrees from +u′, towards which each name points (borders: `quantities.md`). */
const directions = [
  ['red', 14],
  ['yellow', 78],
  ['green', 133],
  ['cyan', 194],
  ['blue', 258],
  ['magenta', 313],
] as const;

/** Where the greys lie round the target white: direction is the tint, distance its size; rings at 0.002 and 0.004. */
export function TintFigure({ figure }: { figure: Tint }) {
  const lengths = figure.points.map(({ du, dv }) => Math.hypot(du, dv));
  const reach = Math.max(0.005, ...lengths, Math.hypot(...figure.average)) * 1.1;
  const centre = { x: figureWidth / 2, y: height / 2 };
  const scale = linear(0, reach, 0, radius);
  const [averageU, averageV] = figure.average;
  return (
    <svg className="proof-plot" viewBox={`0 0 ${figureWidth} ${height}`} role="img" aria-label={figure.title}>
      {[0.002, 0.004].map((ring) => (
        <circle
          key={ring}
          className="figure-limit"
          cx={centre.x}
          cy={centre.y}
          r={place(scale(ring))}
          fill="none"
        />
      ))}
      <text className="figure-ring" x={place(centre.x + scale(0.004) + 3)} y={centre.y - 2}>
        0.004
      </text>
      {directions.map(([name, degrees]) => {
        const angle = (degrees * Math.PI) / 180;
        const x = centre.x + Math.cos(angle) * (radius + 10);
        const y = centre.y - Math.sin(angle) * (radius + 10);
        return (
          <text
            key={name}
            x={place(x)}
            y={place(y + 3)}
            textAnchor={Math.cos(angle) < -0.3 ? 'end' : Math.cos(angle) > 0.3 ? 'start' : 'middle'}
          >
            {name}
          </text>
        );
      })}
      {figure.points.map((point) => (
        <circle
          key={point.axis}
          className="figure-in"
          cx={place(centre.x + scale(point.du))}
          cy={place(centre.y - scale(point.dv))}
          r="2.4"
        />
      ))}
      <g className="figure-out">
        <line
          x1={centre.x}
          y1={centre.y}
          x2={place(centre.x + scale(averageU))}
          y2={place(centre.y - scale(averageV))}
        />
        <circle cx={place(centre.x + scale(averageU))} cy={place(centre.y - scale(averageV))} r="3.6" />
      </g>
    </svg>
  );
}
