import type { Figure, FigureLine, LevelsFigure } from '../figure.ts';
import { linearAxis } from '../scale.ts';
import { reach } from './seriesPoints.ts';

/**
 * Lays one run's figure over the same figure of another, for plots that have several lines or marks of their own.
 * Of the other's lines only those come along that answer the question: the one that its finding is about, and the
 * one to hold against the lead's finding. `names` tell the two runs apart.
 */
export function layOver(lead: Figure, other: Figure, names: { lead: string; other: string }): Figure {
  const label = names.other;
  const both = { title: bothFindings(lead, other, label), runs: `${lead.runs} against ${other.runs}` };
  if (lead.form === 'levels' && other.form === 'levels') return { ...levels(lead, other, label), ...both };
  const laid = { label, lead: names.lead };
  if (lead.form === 'patches' && other.form === 'patches')
    return {
      ...lead,
      ...both,
      note: `${lead.note}; filled ${names.lead}, hollow ${label}`,
      other: { ...laid, patches: other.patches },
    };
  if (lead.form === 'grid' && other.form === 'grid') {
    const { rows, columns, cells } = other;
    const same = rows === lead.rows && columns === lead.columns;
    const which = same
      ? `large figures ${names.lead}, small ${label}`
      : `${label}: another grid, see the large plot`;
    return {
      ...lead,
      ...both,
      note: `${lead.note}; ${which}`,
      other: { ...laid, rows, columns, cells },
    };
  }
  return lead;
}

/** "Follows BT.1886 within 6 %; Vane 50: luminance is 12 % under BT.1886 at 20 %" */
export function bothFindings(lead: Figure, other: Figure, label: string): string {
  return `${lead.title}; ${label}: ${lead.title === other.title ? 'the same' : lowered(other.title)}`;
}

/** The first word small, unless it is a name such as BT.709. */
function lowered(title: string): string {
  return /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

function levels(lead: LevelsFigure, other: LevelsFigure, label: string): LevelsFigure {
  const strong = lead.lines.find((line) => line.weight === 'strong')?.label;
  const along = other.lines
    .filter((line) => line.weight === 'strong' || line.label === strong)
    .map(
      (line): FigureLine => ({
        ...line,
        label: `${line.label}, ${label}`,
        weight: 'plain',
        mark: 'ring',
        dash: 'dashed',
      }),
    );
  const lines = [...lead.lines, ...along];
  return {
    ...lead,
    lines,
    x: lead.x.scale === 'log' || other.x.max <= lead.x.max ? lead.x : other.x,
    y: linearAxis(
      lead.y.label,
      lead.y.unit,
      [lead.y.min, lead.y.max, ...along.flatMap((line) => reach(line.points))],
      { fromZero: lead.y.min === 0 },
    ),
  };
}
