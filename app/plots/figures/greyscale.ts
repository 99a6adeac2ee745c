import type { House } from '../../../shared/contract/house.ts';
import type { FigureLine, LevelsFigure, Subject } from '../figure.ts';
import { listText, numberText, thin, withUnit } from '../numberText.ts';
import { fixedAxis, linearAxis } from '../scale.ts';
import { decimalsOf, furthest, pointsOf, reach, seriesOf, whereOut } from './seriesPoints.ts';
import { noteText } from './subjectText.ts';

type Limits = House['limits'];
const stimulusTicks = [0, 20, 40, 60, 80, 100];
const stimulus = () => fixedAxis('stimulus', '%', stimulusTicks);

/** Where does the error of the greyscale become visible? */
export function greyscaleError(subjects: readonly Subject[], limits: Limits): LevelsFigure | null {
  const limit = limits.visibleDe2000;
  const lines = subjects.flatMap((subject, index): FigureLine[] => {
    const series = seriesOf(subject, 'grey.de2000');
    if (!series) return [];
    return [
      {
        label: subject.label,
        weight: index === 0 ? 'strong' : 'plain',
        mark: index === 0 ? 'disc' : 'ring',
        dash: subjects.length > 1 ? (index === 0 ? 'solid' : 'dashed') : 'none',
        points: pointsOf(subject, series, (value) => value > limit),
      },
    ];
  });
  if (lines.length === 0) return null;
  const y = linearAxis('colour error', 'ΔE2000', [...lines.flatMap((line) => reach(line.points)), limit], {
    fromZero: true,
  });
  return {
    form: 'levels',
    id: 'greyscale-error',
    valueDecimals: decimalsOf('grey.de2000'),
    question: 'Where does the error of the greyscale become visible?',
    title: lines.length > 1 ? comparedAverages(subjects) : errorFinding(lines[0]!.points, limit, 'grey'),
    ...noteText(`ΔE2000, colour only${hollowNote(lines)}`, subjects),
    x: stimulus(),
    y: { ...y, min: 0 },
    lines,
    limits: [{ value: limit, label: `visible, ${numberText(limit, limit % 1 ? 1 : 0)}` }],
  };
}

/** Levels that are drawn hollow need a word on why. */
function hollowNote(lines: readonly FigureLine[]): string {
  return lines.some((line) => line.points.some((point) => !point.counts))
    ? '; hollow levels do not count: too dark to measure or past the roll-off'
    : '';
}

/** One line on where an error is past its limit; `what` is one thing measured, such as a grey. */
export function errorFinding(
  points: LevelsFigure['lines'][number]['points'],
  limit: number,
  what: string,
): string {
  const out = whereOut(points);
  const worst = furthest(points, 0);
  if (!worst) return `No ${what} counts here`;
  const threshold = limit === 3 ? 'the visible threshold' : `the limit of ${numberText(limit, 1)}`;
  if (out.where === 'nowhere')
    return `No ${what} passes ${threshold}; the largest error is ${numberText(worst.y, 1)} at ${withUnit(worst.x, '%', 0)}`;
  if (out.where === 'everywhere')
    return `Every ${what} is past ${threshold}, the worst ${numberText(worst.y, 1)} at ${withUnit(worst.x, '%', 0)}`;
  if (out.where === 'from')
    return `Colour error passes ${threshold} from ${withUnit(out.levels[0]!, '%', 0)}`;
  return `Colour error is past ${threshold} at ${listText(out.levels.map((x) => numberText(x, 0)))}${thin}%`;
}

function comparedAverages(subjects: readonly Subject[]): string {
  const [first, second] = subjects;
  const a = first && seriesOf(first, 'grey.de2000')?.average;
  const b = second && seriesOf(second, 'grey.de2000')?.average;
  if (!a || !b) return 'Colour error of the greyscale, two runs';
  const sameUnit = first.unit.id === second.unit.id;
  if (sameUnit && first.run.conditions.stage === 'as-delivered' && second.run.conditions.stage === 'adjusted')
    return `Adjusting takes the average error from ${numberText(a.value, 1)} to ${numberText(b.value, 1)}`;
  return `Average error ${numberText(a.value, 1)} (${first.label}) against ${numberText(b.value, 1)} (${second.label})`;
}

const channels = [
  { hue: 'red', name: 'Red', mark: 'triangle' },
  { hue: 'green', name: 'Green', mark: 'square' },
  { hue: 'blue', name: 'Blue', mark: 'diamond' },
] as const;

/** Which channel pulls the greys off white? Of a second run, `layOver` brings what answers. */
export function channelBalance(subjects: readonly Subject[]): LevelsFigure | null {
  const subject = subjects[0];
  if (!subject) return null;
  const found = channels.flatMap((channel) => {
    const series = seriesOf(subject, `grey.balance.${channel.hue}`);
    return series ? [{ ...channel, points: pointsOf(subject, series) }] : [];
  });
  const worst = found
    .map((channel) => ({ channel, point: furthest(channel.points, 100) }))
    .filter((entry) => entry.point !== null)
    .sort((a, b) => Math.abs(b.point!.y - 100) - Math.abs(a.point!.y - 100))[0];
  if (!worst?.point) return null;
  const off = worst.point.y - 100;
  const lines: FigureLine[] = found.map((channel) => ({
    label: channel.name,
    weight: channel.hue === worst.channel.hue ? 'strong' : 'plain',
    mark: channel.mark,
    dash: channel.hue === worst.channel.hue ? 'solid' : channel.hue === 'red' ? 'dotted' : 'dashed',
    points: channel.points,
  }));
  return {
    form: 'levels',
    id: 'channel-balance',
    valueDecimals: decimalsOf('grey.balance.red'),
    question: 'Which channel pulls the greys off white?',
    title: `${worst.channel.name} is ${numberText(Math.abs(off), 0)}${thin}% ${off > 0 ? 'over' : 'under'} balance at ${withUnit(worst.point.x, '%', 0)}, the furthest of the three`,
    ...noteText('channel amplitude, target white = 100; luminance plays no part', [subject]),
    x: stimulus(),
    y: linearAxis(
      'amplitude',
      '%',
      lines.flatMap((line) => line.points.filter((point) => point.counts).map((point) => point.y)),
      { atLeast: [95, 105] },
    ),
    lines: lines.map((line) => ({ ...line, points: line.points.filter((point) => point.counts) })),
    limits: [],
    target: { value: 100, label: 'balance' },
  };
}
