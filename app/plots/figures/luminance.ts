import type { FigureLine, FigurePoint, GridCell, GridFigure, LevelsFigure, Subject } from '../figure.ts';
import { numberText, thin, withUnit } from '../numberText.ts';
import { fixedAxis, linearAxis } from '../scale.ts';
import { decimalsOf, ownRows, pointsOf, reach, refOf, scalarOf, seriesOf } from './seriesPoints.ts';
import { noteText } from './subjectText.ts';

/** Does it dim as more of the screen is lit? */
export function peakByWindow(subjects: readonly Subject[]): LevelsFigure | null {
  const lines = subjects.flatMap((subject, index): FigureLine[] => {
    const series = seriesOf(subject, 'peak');
    const points = series ? pointsOf(subject, series) : [];
    return points.length > 0
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
  const first = lines[0];
  if (!first) return null;
  const brightest = first.points.reduce((best, point) => (point.y > best.y ? point : best));
  const full = first.points.find((point) => point.x === 100);
  return {
    form: 'levels',
    id: 'peak-by-window',
    valueDecimals: decimalsOf('peak'),
    question: 'Does it dim as more of the screen is lit?',
    title: `${withUnit(brightest.y, 'cd/m²', 0)} in a ${withUnit(brightest.x, '%', 0)} window${
      full && full !== brightest ? `, ${numberText(full.y, 0)} with the whole screen lit` : ''
    }`,
    ...noteText('peak luminance, black surround', subjects),
    x: fixedAxis('of the screen', '%', [1, 2, 5, 10, 25, 50, 100], 'log'),
    y: linearAxis(
      'luminance',
      'cd/m²',
      lines.flatMap((line) => reach(line.points)),
      { fromZero: true },
    ),
    lines,
    limits: [],
  };
}

/** Does the peak last? One line for each window that was held. */
export function peakOverTime(subjects: readonly Subject[]): LevelsFigure | null {
  const subject = subjects[0];
  if (!subject) return null;
  const timed = subject.run.readings.filter(
    (reading) => reading.series === 'window' && reading.seconds !== undefined && reading.Y !== null,
  );
  const windows = [...new Set(timed.map((reading) => reading.window ?? 100))].sort((a, b) => a - b);
  const held = windows.flatMap((window): { window: number; points: FigurePoint[] }[] => {
    const points = timed
      .filter((reading) => (reading.window ?? 100) === window)
      .map(
        (reading): FigurePoint => ({
          x: reading.seconds!,
          y: reading.Y!,
          u: null,
          counts: true,
          out: false,
          ref: refOf(subject, [reading.row]),
        }),
      )
      .sort((a, b) => a.x - b.x);
    return points.length < 2 ? [] : [{ window, points }];
  });
  const lines = held.map(
    ({ window, points }, index): FigureLine => ({
      label: `${withUnit(window, '%', 0)} window`,
      weight: index === 0 ? 'strong' : 'plain',
      mark: index === 0 ? 'disc' : 'ring',
      dash: index === 0 ? 'solid' : 'dashed',
      points,
    }),
  );
  if (lines.length === 0) return null;
  const hold = scalarOf(subject, 'peak.hold');
  const longest = Math.max(...lines.flatMap((line) => line.points.map((point) => point.x)));
  return {
    form: 'levels',
    id: 'peak-over-time',
    valueDecimals: decimalsOf('peak'),
    question: 'Does the peak last?',
    title: hold
      ? `Keeps ${withUnit(hold.value, '%', 0)} of its peak from two minutes on`
      : `Watched for ${withUnit(longest, 's', 0)}, too short to say whether the peak lasts`,
    ...noteText('luminance since the pattern came up', [subject]),
    x: linearAxis(
      'since the pattern came up',
      's',
      lines.flatMap((line) => line.points.map((p) => p.x)),
      {
        fromZero: true,
      },
    ),
    y: linearAxis(
      'luminance',
      'cd/m²',
      lines.flatMap((line) => line.points.map((p) => p.y)),
      { fromZero: true },
    ),
    lines,
    limits: [],
  };
}

/** `r3c1` of a 3 × 3 grid → "bottom left corner". */
export function placeName(row: number, column: number, rows: number, columns: number): string {
  const vertical = row === 1 ? 'top' : row === rows ? 'bottom' : '';
  const horizontal = column === 1 ? 'left' : column === columns ? 'right' : '';
  if (vertical && horizontal) return `${vertical} ${horizontal} corner`;
  if (vertical || horizontal) return `${vertical || horizontal} edge`;
  return row === (rows + 1) / 2 && column === (columns + 1) / 2 ? 'centre' : `row ${row}, column ${column}`;
}

/** "Bottom left corner" on white, "On black, the bottom left corner" elsewhere. */
function where(level: string, name: string): string {
  if (level === 'white') return name.charAt(0).toUpperCase() + name.slice(1);
  const grey = /^grey(\d+)$/.exec(level)?.[1];
  return `On ${grey ? `${grey}\u00a0% grey` : level}, the ${name}`;
}

/** Which part of the screen is darker? */
export function uniformityMap(subjects: readonly Subject[], level = 'white'): GridFigure | null {
  const subject = subjects[0];
  const series = subject && seriesOf(subject, `uniformity.${level}.cell`);
  if (!subject || !series) return null;
  const own = ownRows(series);
  const placed = series.values.flatMap((value, index) => {
    const place = /^r(\d+)c(\d+)$/.exec(String(value.axis ?? ''));
    return place ? [{ value, rows: own[index]!, row: Number(place[1]), column: Number(place[2]) }] : [];
  });
  if (placed.length === 0) return null;
  const rows = Math.max(...placed.map((cell) => cell.row));
  const columns = Math.max(...placed.map((cell) => cell.column));
  const worst = placed.reduce((far, cell) =>
    Math.abs(cell.value.value) > Math.abs(far.value.value) ? cell : far,
  );
  const name = placeName(worst.row, worst.column, rows, columns);
  const size = numberText(Math.abs(worst.value.value), 0);
  return {
    form: 'grid',
    id: `uniformity-${level}`,
    question: 'Which part of the screen is darker or brighter?',
    title: `${where(level, name)} is ${size}${thin}% ${worst.value.value < 0 ? 'darker' : 'brighter'} than the centre`,
    ...noteText(`${level}, luminance against the centre`, [subject]),
    unit: '%',
    decimals: 0,
    rows,
    columns,
    cells: placed.map(
      (cell): GridCell => ({
        row: cell.row,
        column: cell.column,
        value: cell.value.value,
        u: cell.value.u,
        worst: cell === worst,
        ref: refOf(subject, cell.rows),
      }),
    ),
  };
}
