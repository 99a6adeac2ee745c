import { type ArticleChecker, createChecker, type JudgingBench } from '../../shared/claims/index.ts';
import type { Article } from '../../shared/contract/article.ts';
import type { Evidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';
import type { ScoreSheet } from '../../shared/contract/scoreSheet.ts';
import { measurementsOf } from '../stores/measurements.ts';
import type { DrawsSource } from './drawsShop.ts';

/** What the library lays down for every article: words, limits, and the score sheet where the house has one. */
export interface HouseRules {
  house: House;
  scoreSheet: ScoreSheet | null;
}

/** What the verdicts of one article rest on; draws come from the worker, so that nothing here waits. */
export function benchOf(
  id: string,
  meta: Article,
  evidence: Evidence,
  { house, scoreSheet }: HouseRules,
  source: DrawsSource,
): JudgingBench {
  return {
    evidence,
    article: { id, meta },
    house,
    scoreSheet,
    measure: measurementsOf,
    draws: source.draws,
  };
}

export function checkerOf(bench: JudgingBench): ArticleChecker {
  return createChecker(bench);
}
