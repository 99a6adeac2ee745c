import type { ReadingContext } from '../contract/articleText.ts';
import type { ArticleRecord, Evidence, UnitEvidence } from '../contract/evidence.ts';
import type { House } from '../contract/house.ts';
import type { ScoreSheet } from '../contract/scoreSheet.ts';
import { currentRuns } from './checking/index.ts';

/** Ids of single values that name a mode or a signal: `power.sdr`, `lag.game`. */
function singleValuesOf(unit: UnitEvidence): string[] {
  const ids = currentRuns(unit).flatMap(({ readings }) =>
    readings.flatMap(({ series, quantity }) =>
      series === 'single' && quantity !== undefined && quantity.includes('.') ? [quantity] : [],
    ),
  );
  return [...new Set(ids)].sort();
}

/** What reading must know of the library: names, modes, keys and topics; no measured number. */
export function readingContextOf(
  evidence: Evidence,
  article: ArticleRecord,
  house: House,
  scoreSheet?: ScoreSheet | null,
): ReadingContext {
  const { meta } = article;
  const criteria = scoreSheet?.criteria.map(({ id }) => id);
  return {
    own: meta.unit,
    locale: meta.locale ?? 'en-GB',
    ...(meta.date ? { date: meta.date } : {}),
    ...(meta.conditions ? { conditions: meta.conditions } : {}),
    units: [...evidence.units.values()]
      .sort((one, other) => (one.id < other.id ? -1 : 1))
      .map((evidenceOfUnit) => {
        const { id, unit, observations } = evidenceOfUnit;
        return {
          id,
          maker: unit.maker,
          model: unit.model,
          ...(unit.size ? { diagonalInches: unit.size.diagonal_in } : {}),
          variantInches: (unit.variants ?? []).map(({ size }) => size.diagonal_in),
          modes: currentRuns(evidenceOfUnit).map(({ conditions }) => ({
            mode: conditions.mode,
            signal: conditions.signal,
            stage: conditions.stage,
          })),
          quantities: singleValuesOf(evidenceOfUnit),
          facts: Object.keys(unit.facts ?? {}).sort(),
          topics: [...new Set(observations.map(({ topic }) => topic))].sort(),
          ...(criteria ? { criteria } : {}),
        };
      }),
    house,
  };
}
