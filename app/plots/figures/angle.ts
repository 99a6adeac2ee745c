import type { House } from '../../../shared/contract/house.ts';
import type { FigureLine, FigurePoint, LevelsFigure, Subject } from '../figure.ts';
import { numberText, thin, withUnit } from '../numberText.ts';
import { fixedAxis, linearAxis } from '../scale.ts';
import { decimalsOf, pointsOf, reach, seriesOf } from './seriesPoints.ts';
import { noteText } from './subjectText.ts';

const angles = (points: readonly FigurePoint[]) => {
  const widest = Math.max(30, ...points.map((point) => Math.abs(point.x)));
  const end = Math.ceil(widest / 15) * 15;
  const step = end > 60 ? 30 : 15;
  const first = Math.min(0, ...points.map((point) => point.x)) < 0 ? -Math.ceil(end / step) * step : 0;
  const count = Math.round((Math.ceil(end / step) * step - first) / step);
  return fixedAxis(
    'off the perpendicular',
    '°',
    Array.from({ length: count + 1 }, (_, i) => first + i * step),
  );
};

function linesOf(
  subjects: readonly Subject[],
  quantity: string,
  isOut: (value: number) => boolean,
): FigureLine[] {
  return subjects.flatMap((subject, index): FigureLine[] => {
    const series = seriesOf(subject, quantity);
    const points = series ? pointsOf(subject, series, isOut) : [];
    return points.length > 1
      ? [
          {
            label: subject.label,
            weight: index === 0 ? 'strong' : 'plain',
            mark: index === 0 ? 'disc' : 'ring',
            dash: index === 0 ? 'solid' : 'dashed',
            points,
          },
        ]
      : [];
  });
}

/** From which seat is half of the light gone? */
export function angleLuminance(subjects: readonly Subject[]): LevelsFigure | null {
  const lines = linesOf(subjects, 'angle.luminance', (value) => value < 50);
  const first = lines[0];
  if (!first) return null;
  const half = nearest(first.points.filter((point) => point.y < 50));
  const widest = first.points.reduce((far, point) =>
    Math.abs(point.x) > Math.abs(far.x) || (Math.abs(point.x) === Math.abs(far.x) && point.y < far.y)
      ? point
      : far,
  );
  return {
    form: 'levels',
    id: 'angle-luminance',
    valueDecimals: decimalsOf('angle.luminance'),
    question: 'From which seat is half of the light gone?',
    title: half
      ? `More than half of the luminance is gone at ${angleText(half.x)}`
      : `Keeps ${withUnit(widest.y, '%', 0)} of its luminance at ${angleText(widest.x)}`,
    ...noteText('white, luminance of the 0° reading = 100', subjects),
    x: angles(first.points),
    y: linearAxis(
      'luminance kept',
      '%',
      lines.flatMap((line) => reach(line.points)),
      { atLeast: [0, 100] },
    ),
    lines,
    limits: [{ value: 50, label: `half` }],
  };
}

/** From which seat does white shift visibly? */
export function angleError(subjects: readonly Subject[], limits: House['limits']): LevelsFigure | null {
  const limit = limits.visibleDe2000;
  const lines = linesOf(subjects, 'angle.de2000', (value) => value > limit);
  const first = lines[0];
  if (!first) return null;
  const out = nearest(first.points.filter((point) => point.out));
  const worst = first.points.reduce((far, point) => (point.y > far.y ? point : far));
  return {
    form: 'levels',
    id: 'angle-error',
    valueDecimals: decimalsOf('angle.de2000'),
    question: 'From which seat does white shift visibly?',
    title: out
      ? `White shifts visibly at ${angleText(out.x)}`
      : `White stays under the visible threshold; most ${numberText(worst.y, 1)} at ${angleText(worst.x)}`,
    ...noteText('ΔE2000 to the 0° reading, equal luminance', subjects),
    x: angles(first.points),
    y: linearAxis('shift', 'ΔE2000', [...lines.flatMap((line) => reach(line.points)), limit], {
      fromZero: true,
    }),
    lines,
    limits: [{ value: limit, label: `visible, ${numberText(limit, limit % 1 ? 1 : 0)}` }],
  };
}

function nearest(points: readonly FigurePoint[]): FigurePoint | null {
  return points.reduce<FigurePoint | null>(
    (near, point) => (near === null || Math.abs(point.x) < Math.abs(near.x) ? point : near),
    null,
  );
}

/** `30° left`; the sides are the viewer's: right positive. */
function angleText(angle: number): string {
  if (angle === 0) return `0°`;
  return `${numberText(Math.abs(angle), 0)}°${thin}${angle < 0 ? 'left' : 'right'}`;
}
