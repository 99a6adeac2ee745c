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
  const finding = lead.title === other.title ? 'the same' : lowered(other.title);
  const both = {
    title: `${lead.title}; ${label}: ${finding}`,
    runs: `${lead.runs} against ${other.runs}`,
  };
  if (lead.form === 'levels' && other.form === 'levels') return { ...levels(lead, other, label), ...both };
  const laid = { label, lead: names.lead };
  if (lead.form === 'patches' && other.form === 'patches')
    return { ...lead, ...both, other: { ...laid, patches: other.patches } };
  if (lead.form === 'grid' && other.form === 'grid') {
    const { rows, columns, cells } = other;
    return { ...lead, ...both, other: { ...laid, rows, columns, cells } };
  }
  return lead;
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
