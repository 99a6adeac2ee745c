import { createMeasurer } from '../../shared/certainty/index.ts';
import { type ArticleChecker, createChecker, type JudgingBench } from '../../shared/claims/index.ts';
import type { Article } from '../../shared/contract/article.ts';
import type { Evidence } from '../../shared/contract/evidence.ts';
import type { House } from '../../shared/contract/house.ts';
import type { DrawsSource } from './draws.ts';

/** Measurements are kept by the run's digest, so that a new checker starts warm. */
const measurer = createMeasurer();

/** What the verdicts of one article rest on; draws come from the worker, so that nothing here waits. */
export function benchOf(
  id: string,
  meta: Article,
  evidence: Evidence,
  house: House,
  source: DrawsSource,
): JudgingBench {
  return { evidence, article: { id, meta }, house, measure: measurer.measure, draws: source.draws };
}

export function checkerOf(bench: JudgingBench): ArticleChecker {
  return createChecker(bench);
}
