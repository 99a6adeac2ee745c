import type { Figure, FigureLine, GridFigure, LevelsFigure, PatchesFigure } from '../figure.ts';
import { linearAxis } from '../scale.ts';
import { reach } from './seriesPoints.ts';

/**
 * Lays one run's figure over the same figure of another, for plots that have several lines or marks of their own.
 * Of the other's lines only those come along that answer the question: the one that its finding is about, and the
 * one to hold against the lead's finding. `label` names the other run.
 */
export function layOver(lead: Figure, other: Figure, label: string): Figure {
  const finding = lead.title === other.title ? 'the same' : lowered(other.title);
  const both = {
    title: `${lead.title}; ${label}: ${finding}`,
    runs: `${lead.runs} against ${other.runs}`,
  };
  if (lead.form === 'levels' && other.form === 'levels') return { ...levels(lead, other, label), ...both };
  if (lead.form === 'patches' && other.form === 'patches') return { ...patches(lead, other, label), ...both };
  if (lead.form === 'grid' && other.form === 'grid') return { ...grid(lead, other, label), ...both };
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

function patches(lead: PatchesFigure, other: PatchesFigure, label: string): PatchesFigure {
  const found = new Map(other.patches.map((patch) => [patch.label, patch.value]));
  return {
    ...lead,
    other: label,
    patches: lead.patches.map((patch) => {
      const value = found.get(patch.label);
      return value === undefined ? patch : { ...patch, other: value };
    }),
  };
}

function grid(lead: GridFigure, other: GridFigure, label: string): GridFigure {
  // Places of another grid are other places of the screen.
  if (lead.rows !== other.rows || lead.columns !== other.columns) return lead;
  const found = new Map(other.cells.map((cell) => [`${cell.row} ${cell.column}`, cell.value]));
  return {
    ...lead,
    other: label,
    cells: lead.cells.map((cell) => {
      const value = found.get(`${cell.row} ${cell.column}`);
      return value === undefined ? cell : { ...cell, other: value };
    }),
  };
}
