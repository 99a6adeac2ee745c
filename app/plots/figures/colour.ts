import { type GamutName, gamut, isGamutName } from '../../../shared/colour/gamuts.ts';
import { whiteXy } from '../../../shared/colour/whites.ts';
import { xyToUv } from '../../../shared/colour/xyz.ts';
import type { House } from '../../../shared/contract/house.ts';
import type { Hue } from '../../../shared/contract/reading.ts';
import type {
  FigureLine,
  LevelsFigure,
  Mark,
  Patch,
  PatchesFigure,
  PlaneFigure,
  PlanePoint,
  Subject,
} from '../figure.ts';
import { numberText, thin, withUnit } from '../numberText.ts';
import { fixedAxis, linearAxis } from '../scale.ts';
import { decimalsOf, furthest, ownRows, pointsOf, reach, refOf, scalarOf, seriesOf } from './seriesPoints.ts';
import { noteText } from './subjectText.ts';

type Limits = House['limits'];

const hues: readonly { hue: Hue; name: string; mark: Mark; dash: FigureLine['dash'] }[] = [
  { hue: 'red', name: 'Red', mark: 'triangle', dash: 'solid' },
  { hue: 'green', name: 'Green', mark: 'square', dash: 'dashed' },
  { hue: 'blue', name: 'Blue', mark: 'diamond', dash: 'dotted' },
  { hue: 'cyan', name: 'Cyan', mark: 'cross', dash: 'dotted' },
  { hue: 'magenta', name: 'Magenta', mark: 'ring', dash: 'solid' },
  { hue: 'yellow', name: 'Yellow', mark: 'disc', dash: 'dashed' },
];

/** Are colours over- or undersaturated on the way to full? */
export function saturationSweep(subjects: readonly Subject[], limits: Limits): LevelsFigure | null {
  const subject = subjects[0];
  if (!subject) return null;
  const found = hues.flatMap((hue) => {
    const series = seriesOf(subject, `sweep.${hue.hue}.saturation`);
    const points = series
      ? pointsOf(subject, series, (value) => Math.abs(value) > limits.saturationPercent).filter(
          (p) => p.counts,
        )
      : [];
    return points.length > 0 ? [{ ...hue, points }] : [];
  });
  const worst = found
    .map((hue) => ({ hue, point: furthest(hue.points, 0)! }))
    .sort((a, b) => Math.abs(b.point.y) - Math.abs(a.point.y))[0];
  if (!worst) return null;
  const { y, x } = worst.point;
  const inside = Math.abs(y) <= limits.saturationPercent;
  return {
    form: 'levels',
    id: 'saturation-sweep',
    valueDecimals: decimalsOf('sweep.red.saturation'),
    question: 'Are colours too strong or too weak on the way to full?',
    title: inside
      ? `Every colour is within ${numberText(limits.saturationPercent, 0)}${thin}% of its saturation target`
      : `${worst.hue.name} is ${numberText(Math.abs(y), 0)}${thin}% ${y < 0 ? 'short of' : 'over'} its saturation target at ${withUnit(x, '%', 0)}`,
    ...noteText('chroma C*ab against target', [subject]),
    x: fixedAxis('saturation', '%', [0, 25, 50, 75, 100]),
    y: linearAxis(
      'off target',
      '%',
      found.flatMap((hue) => hue.points.map((p) => p.y)),
      {
        atLeast: [-limits.saturationPercent, limits.saturationPercent],
      },
    ),
    lines: found.map((hue) => ({
      label: hue.name,
      weight: hue.hue === worst.hue.hue ? 'strong' : 'plain',
      mark: hue.mark,
      dash: hue.dash,
      points: hue.points,
    })),
    limits: [],
    target: { value: 0, label: 'on target' },
  };
}

const coverageNames: Partial<Record<GamutName, { id: string; name: string }>> = {
  'BT.709': { id: 'bt709', name: 'BT.709' },
  'P3-D65': { id: 'p3', name: 'P3' },
  'BT.2020': { id: 'bt2020', name: 'BT.2020' },
};

/** How much of the target gamut can it show? In xy or u′v′: the two differ, so the title names its diagram. */
export function gamutReach(
  subjects: readonly Subject[],
  diagram: 'xy' | 'uv',
  against?: GamutName,
): PlaneFigure | null {
  const subject = subjects[0];
  if (!subject) return null;
  const name = against ?? subject.run.conditions.target.gamut;
  const reference = isGamutName(name) ? gamut(name) : null;
  const covered = coverageNames[name as GamutName];
  const areas = subjects.flatMap((each, index) => {
    const corners = primariesOf(each, diagram);
    return corners
      ? [
          {
            label: each.label || 'measured',
            weight: index === 0 ? ('strong' as const) : ('plain' as const),
            dash: index === 0 ? ('solid' as const) : ('dashed' as const),
            corners,
          },
        ]
      : [];
  });
  if (!reference || areas.length === 0) return null;
  const place = ([x, y]: readonly [number, number]) => (diagram === 'xy' ? ([x, y] as const) : xyToUv(x, y));
  const { red, green, blue } = reference.primaries;
  const corners = [
    { label: '', at: place(red) },
    { label: '', at: place(green) },
    { label: '', at: place(blue) },
  ].map(({ label, at }): PlanePoint => ({ label, x: at[0], y: at[1], ref: null }));
  const coverage = covered ? scalarOf(subject, `coverage.${covered.id}.${diagram}`) : null;
  const diagramName = diagram === 'xy' ? 'xy' : 'u′v′';
  return {
    form: 'plane',
    id: `gamut-${diagram}`,
    diagram,
    question: `How much of ${covered?.name ?? name} can it show?`,
    title: coverage
      ? `Covers ${withUnit(coverage.value, '%', 1)} of ${covered?.name ?? name} in ${diagramName}`
      : `Primaries against ${covered?.name ?? name} in ${diagramName}`,
    ...noteText(diagram === 'xy' ? 'CIE 1931 xy, full amplitude' : 'CIE 1976 u′v′, full amplitude', subjects),
    areas: [{ label: covered?.name ?? name, weight: 'calm', dash: 'dashed', corners }, ...areas],
    marks: [{ label: 'white', at: place(whiteXy('D65')) }],
  };
}

function primariesOf(subject: Subject, diagram: 'xy' | 'uv'): PlanePoint[] | null {
  const corners = (['red', 'green', 'blue'] as const).flatMap((hue): PlanePoint[] => {
    const reading = subject.run.readings.find((r) => r.series === 'primaries' && r.hue === hue);
    if (!reading || reading.x === null || reading.y === null) return [];
    const at = diagram === 'xy' ? ([reading.x, reading.y] as const) : xyToUv(reading.x, reading.y);
    return [{ label: hue, x: at[0], y: at[1], ref: refOf(subject, [reading.row]) }];
  });
  return corners.length === 3 ? corners : null;
}

/** Which colours of the chart are off? Worst first. */
export function chartPatches(subjects: readonly Subject[], limits: Limits): PatchesFigure | null {
  const subject = subjects[0];
  const series = subject && seriesOf(subject, 'chart.de2000');
  if (!subject || !series) return null;
  const limit = limits.visibleDe2000;
  const own = ownRows(series);
  const patches: Patch[] = series.values
    .map((value, index) => ({
      label: String(value.axis ?? ''),
      value: value.value,
      u: value.u,
      out: value.counts && value.value > limit,
      ref: refOf(subject, own[index]!),
    }))
    .sort((a, b) => b.value - a.value);
  const worst = patches[0]!;
  const out = patches.filter((patch) => patch.out).length;
  return {
    form: 'patches',
    id: 'chart-patches',
    question: 'Which colours of the chart are off?',
    title:
      out === 0
        ? `No patch passes the visible threshold; the worst is patch ${worst.label} at ${numberText(worst.value, 1)}`
        : `${out} of ${patches.length} patches ${out === 1 ? 'passes' : 'pass'} the visible threshold, patch ${worst.label} worst at ${numberText(worst.value, 1)}`,
    ...noteText('ΔE2000 with luminance, worst first', [subject]),
    unit: series.unit,
    decimals: 1,
    patches,
    limit: { value: limit, label: `visible, ${numberText(limit, limit % 1 ? 1 : 0)}` },
  };
}

/** Where do colours on the way to full pass the visible threshold? */
export function sweepError(subjects: readonly Subject[], limits: Limits): LevelsFigure | null {
  const subject = subjects[0];
  if (!subject) return null;
  const limit = limits.visibleDe2000;
  const found = hues.flatMap((hue) => {
    const series = seriesOf(subject, `sweep.${hue.hue}.de2000`);
    const points = series ? pointsOf(subject, series, (value) => value > limit).filter((p) => p.counts) : [];
    return points.length > 0 ? [{ ...hue, points }] : [];
  });
  const worst = found
    .map((hue) => ({ hue, point: furthest(hue.points, 0)! }))
    .sort((a, b) => b.point.y - a.point.y)[0];
  if (!worst) return null;
  const names = found.filter((hue) => hue.points.some((p) => p.out)).map((hue) => hue.name.toLowerCase());
  return {
    form: 'levels',
    id: 'sweep-error',
    valueDecimals: decimalsOf('sweep.red.de2000'),
    question: 'Where do colours pass the visible threshold?',
    title:
      names.length === 0
        ? `No colour of the sweep passes the visible threshold; the largest error is ${numberText(worst.point.y, 1)}`
        : `${worst.hue.name} is furthest off, ${numberText(worst.point.y, 1)} at ${withUnit(worst.point.x, '%', 0)}`,
    ...noteText('ΔE2000 with luminance', [subject]),
    x: fixedAxis('saturation', '%', [0, 25, 50, 75, 100]),
    y: linearAxis('error', 'ΔE2000', [...found.flatMap((hue) => reach(hue.points)), limit], {
      fromZero: true,
    }),
    lines: found.map((hue) => ({
      label: hue.name,
      weight: hue.hue === worst.hue.hue ? 'strong' : 'plain',
      mark: hue.mark,
      dash: hue.dash,
      points: hue.points,
    })),
    limits: [{ value: limit, label: `visible, ${numberText(limit, limit % 1 ? 1 : 0)}` }],
  };
}
