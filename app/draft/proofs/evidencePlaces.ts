import { nameOfQuantity } from '../../../shared/claims/checking/terms.ts';
import type { Judgement } from '../../../shared/contract/claim.ts';
import type { Evidence } from '../../../shared/contract/evidence.ts';

export interface ReadingPlace {
  unit: string;
  run: string;
  rows: number[];
}

/** The runs and rows that a verdict rests on, in its own order; `run/…` without a unit is the article's own. */
export function readingPlaces(evidence: readonly string[], own: string): ReadingPlace[] {
  const places: ReadingPlace[] = [];
  for (const path of evidence) {
    const match = /^(?:unit\/([^/]+)\/)?(?:run\/)?([^/#]+)#(\d+)$/.exec(path);
    if (!match) continue;
    const unit = match[1] ?? own;
    const run = match[2]!;
    const known = places.find((place) => place.unit === unit && place.run === run);
    if (known) known.rows.push(Number(match[3]));
    else places.push({ unit, run, rows: [Number(match[3])] });
  }
  return places;
}

const plural = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;

/** "Colour error of the greyscale; SDR as delivered, Calm, 11 readings": what was looked at, in quiet words. */
export function definitionLine(judgement: Judgement, own: string, evidence: Evidence | null): string {
  const parts: string[] = [];
  const { quantity } = judgement;
  if (quantity)
    parts.push(capital(nameOfQuantity(quantity.replace(/^observation\./, '').replaceAll('-', ' '))));
  const places = readingPlaces(judgement.evidence, own);
  const first = places[0];
  const run = first && evidence?.units.get(first.unit)?.runs.find((candidate) => candidate.id === first.run);
  if (run) {
    const { signal, stage, mode } = run.conditions;
    const readings = places.reduce((sum, place) => sum + place.rows.length, 0);
    const others = places.length > 1 ? ` and ${plural(places.length - 1, 'other run')}` : '';
    parts.push(`${signal} ${stage.replace('-', ' ')}, ${mode}${others}, ${plural(readings, 'reading')}`);
  } else if (judgement.evidence.length > 0) parts.push(plural(judgement.evidence.length, 'statement'));
  return parts.join('; ');
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
