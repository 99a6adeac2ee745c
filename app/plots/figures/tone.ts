import type { House } from '../../../shared/contract/house.ts';
import type { FigureLine, LevelsFigure, Subject } from '../figure.ts';
import { numberText, plusMinus, thin, withUnit } from '../numberText.ts';
import { fixedAxis, linearAxis } from '../scale.ts';
import { decimalsOf, furthest, pointsOf, reach, scalarOf, seriesOf } from './seriesPoints.ts';
import { noteText } from './subjectText.ts';

type Limits = House['limits'];
const stimulus = () => fixedAxis('stimulus', '%', [0, 20, 40, 60, 80, 100]);

function lineOf(
  subjects: readonly Subject[],
  quantity: string,
  isOut?: (value: number) => boolean,
): FigureLine[] {
  return subjects.flatMap((subject, index): FigureLine[] => {
    const series = seriesOf(subject, quantity);
    return series
      ? [
          {
            label: subject.label,
            weight: index === 0 ? 'strong' : 'plain',
            mark: index === 0 ? 'disc' : 'ring',
            dash: index === 0 ? 'solid' : 'dashed',
            points: pointsOf(subject, series, isOut).filter((point) => point.counts),
            band: true,
          },
        ]
      : [];
  });
}

/** How steep is the tone curve, and does it stay so? */
export function gammaByLevel(subjects: readonly Subject[], limits: Limits): LevelsFigure | null {
  const lines = lineOf(subjects, 'gamma').filter((line) => line.points.length > 0);
  const first = lines[0];
  if (!first) return null;
  const values = first.points.map((point) => point.y);
  const spread = `from ${numberText(Math.min(...values), 2)} to ${numberText(Math.max(...values), 2)}`;
  const average = subjects[0] ? scalarOf(subjects[0], 'gamma.average') : null;
  const eotf = subjects[0]?.run.conditions.target.eotf ?? '';
  const power = /^gamma (\d+(?:\.\d+)?)$/.exec(eotf)?.[1];
  return {
    form: 'levels',
    id: 'gamma',
    valueDecimals: decimalsOf('gamma'),
    question: 'How steep is the tone curve, and does it stay so?',
    title: average
      ? `Gamma averages ${plusMinus(average.value, average.u, '', 2)}, ${spread}`
      : `Gamma runs ${spread}`,
    ...noteText('ln(Y/Yw)/ln V, black not subtracted', subjects),
    x: stimulus(),
    y: linearAxis(
      'gamma',
      '',
      lines.flatMap((line) => reach(line.points)),
      {
        atLeast: power ? [Number(power) - limits.gamma, Number(power) + limits.gamma] : [2.1, 2.5],
      },
    ),
    lines,
    limits: [],
    ...(power ? { target: { value: Number(power), label: `target ${power}` } } : {}),
  };
}

/** Which greys are darker or brighter than the target? */
export function eotfError(subjects: readonly Subject[], limits: Limits): LevelsFigure | null {
  const limit = limits.eotfPercent;
  const lines = lineOf(subjects, 'eotf.error', (value) => Math.abs(value) > limit).filter(
    (line) => line.points.length > 0,
  );
  const first = lines[0];
  const subject = subjects[0];
  if (!first || !subject) return null;
  const target = subject.run.conditions.target.eotf;
  const rolloff = scalarOf(subject, 'eotf.rolloff');
  const considered = rolloff ? first.points.filter((point) => point.x < rolloff.value) : first.points;
  const worst = furthest(considered, 0);
  return {
    form: 'levels',
    id: 'eotf-error',
    valueDecimals: decimalsOf('eotf.error'),
    question: 'Which greys are darker or brighter than they should be?',
    title: toneFinding(worst, limit, target, rolloff?.value ?? null),
    ...noteText(`luminance against ${target}`, subjects),
    x: stimulus(),
    y: linearAxis(
      'off target',
      '%',
      lines.flatMap((line) => reach(line.points)),
      { atLeast: [-limit, limit] },
    ),
    lines,
    limits: [
      { value: limit, label: '' },
      { value: -limit, label: '' },
    ],
    target: { value: 0, label: 'on target' },
  };
}

function toneFinding(
  worst: { x: number; y: number } | null,
  limit: number,
  target: string,
  rolloff: number | null,
): string {
  const end = rolloff === null ? '' : `, then falls away from ${withUnit(rolloff, '%', 0)}`;
  if (!worst) return `Luminance falls away from ${target} at once`;
  const side = worst.y < 0 ? 'under' : 'over';
  const size = `${numberText(Math.abs(worst.y), 0)}${thin}%`;
  if (Math.abs(worst.y) <= limit)
    return `Follows ${target} within ${size}${end || `, furthest at ${withUnit(worst.x, '%', 0)}`}`;
  return `Luminance is ${size} ${side} ${target} at ${withUnit(worst.x, '%', 0)}${end}`;
}
