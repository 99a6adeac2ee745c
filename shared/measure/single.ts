import { type Outcome, scalarPlan } from './plan.ts';
import { type PreparedRun, seriesNotes, seriesPoints } from './prepare.ts';

/**
 * Single values as they were noted: `lag`, `response`, `standby`, `noise`, `power.<mode>` and whatever else a run
 * names. They carry no uncertainty and are judged as reported only.
 */
export function planSingles(run: PreparedRun): Outcome[] {
  const byId = new Map<string, number>();
  for (const point of seriesPoints(run, 'single')) {
    const { quantity } = run.points.at[point]!;
    if (quantity === undefined || quantity.trim() === '') continue;
    const id = singleId(quantity.trim(), run.conditions.mode);
    if (!byId.has(id)) byId.set(id, point);
  }
  return [...byId].map(([id, point]) => {
    const { unit } = run.points.at[point]!;
    return scalarPlan(run, {
      id,
      inputs: [point],
      value: (w) => w.Y[point]!,
      uses: 'luminance',
      law: 'none',
      ...(unit === undefined ? {} : { unit }),
      notes: seriesNotes(run, 'single').filter((note) => note.startsWith('row')),
      otherwise: 'no value was noted',
    });
  });
}

/** Power is always named with its mode: a bare `power` takes the run's ("HDR Calm" → `power.hdr-calm`). */
export function singleId(quantity: string, mode: string): string {
  if (quantity !== 'power') return quantity;
  const slug = mode
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return `power.${slug}`;
}
