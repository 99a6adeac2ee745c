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

interface Made {
  meta: ArticleRecord['meta'];
  house: House;
  scoreSheet: ScoreSheet | null;
  spoken: boolean;
  context: ReadingContext;
}

/** Contexts by the evidence that they were made from, the latest first: the same objects give the same context. */
const made = new WeakMap<Evidence, Made[]>();

/** Articles read side by side on one evidence. */
const kept = 16;

/**
 * What reading must know of the library: names, modes, keys and topics; no measured number. The same objects give the
 * same context, so that its lexicon is built once.
 * @param spoken a spoken take: no punctuation, numbers and letters as words
 */
export function readingContextOf(
  evidence: Evidence,
  { meta }: ArticleRecord,
  house: House,
  scoreSheet: ScoreSheet | null = null,
  spoken = false,
): ReadingContext {
  const known = made.get(evidence) ?? [];
  const same = known.find(
    (one) =>
      one.meta === meta && one.house === house && one.scoreSheet === scoreSheet && one.spoken === spoken,
  );
  if (same) return same.context;
  const context = makeContext(evidence, meta, house, scoreSheet, spoken);
  made.set(evidence, [{ meta, house, scoreSheet, spoken, context }, ...known].slice(0, kept));
  return context;
}

function makeContext(
  evidence: Evidence,
  meta: ArticleRecord['meta'],
  house: House,
  scoreSheet: ScoreSheet | null,
  spoken: boolean,
): ReadingContext {
  const criteria = scoreSheet?.criteria.map(({ id }) => id);
  const given = [meta, ...evidence.articles.map((article) => article.meta)].flatMap(({ award }) =>
    typeof award === 'string' ? [award] : [],
  );
  const awards = [...new Set(given)].sort();
  return {
    own: meta.unit,
    locale: meta.locale ?? 'en-GB',
    ...(meta.date ? { date: meta.date } : {}),
    ...(meta.against && meta.against.length > 0 ? { against: meta.against } : {}),
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
    ...(awards.length > 0 ? { awards } : {}),
    house,
    ...(spoken ? { spoken } : {}),
  };
}
