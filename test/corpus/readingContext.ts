import type { ReadingContext } from '../../shared/contract/articleText.ts';
import type { ArticleRecord, Evidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';

export function readingContextOf(evidence: Evidence, { meta }: ArticleRecord, house: House): ReadingContext {
  return {
    own: meta.unit,
    locale: meta.locale ?? 'en-GB',
    ...(meta.date ? { date: meta.date } : {}),
    ...(meta.conditions ? { conditions: meta.conditions as never } : {}),
    house,
    units: [...evidence.units.values()].map(({ id, unit, runs, observations }) => ({
      id,
      maker: unit.maker,
      model: unit.model,
      ...(unit.size ? { diagonalInches: unit.size.diagonal_in } : {}),
      variantInches: (unit.variants ?? []).map(({ size }) => size.diagonal_in),
      modes: runs.map(({ conditions }) => ({
        mode: conditions.mode,
        signal: conditions.signal,
        stage: conditions.stage,
      })),
      facts: Object.keys(unit.facts ?? {}),
      topics: [...new Set(observations.map(({ topic }) => topic))],
    })),
  };
}
