import type { ScoreCheck } from '../../contract/check.ts';
import { scoreUnit } from '../../score/scoreUnit.ts';
import { compare, onTheLimit } from './decide.ts';
import { fold } from './fold.ts';
import { type Outcome, unproven } from './outcome.ts';
import type { Sight } from './sight.ts';
import { isInside } from './stated.ts';
import { nameOfUnit, plain } from './terms.ts';

type Recorded = { value: number | string | boolean | null; max?: number; from: string; path: string };

/** A score or an award against the score sheet; without one, against what was recorded with the article. */
export function judgeScore(check: ScoreCheck, sight: Sight): Outcome {
  const { criterion } = check;
  const quantity = criterion === 'award' ? 'award' : `score.${criterion}`;
  const stated = { criterion, x: check.x, max: check.max ?? null };
  const unit = sight.unit(check.conditions.unit ?? sight.own);
  if (!unit) return unproven(`The library has no unit ${check.conditions.unit}`, quantity, stated);
  const recorded = recordedScore(check, sight, unit.id);
  if (typeof recorded === 'string') return unproven(recorded, quantity, stated);
  sight.used.set(recorded.path, JSON.stringify([recorded.value, recorded.max ?? null]));
  const meets = agrees(check, recorded);
  const holds = meets !== (check.negated ?? false);
  const what =
    criterion === 'award'
      ? 'award'
      : criterion === 'total'
        ? 'score'
        : `score for ${criterion.replaceAll(/[.-]/g, ' ')}`;
  const value =
    recorded.value === null || recorded.value === false
      ? 'none'
      : typeof recorded.value === 'number'
        ? `${plain(recorded.value)}${recorded.max === undefined ? '' : ` of ${plain(recorded.max)}`}`
        : String(recorded.value);
  return {
    verdict: holds ? 'holds' : 'breaks',
    probability: null,
    sentence: `The ${what} of the ${nameOfUnit(unit)} is ${value} (${recorded.from}), and the text says ${check.negated ? 'not ' : ''}${claimWords(check)}`,
    notes: [],
    stated,
    found: { value: recorded.value ?? 'none', ...(recorded.max === undefined ? {} : { max: recorded.max }) },
    conditions: { unit: unit.id },
    quantity,
    evidence: [],
    ...(holds || check.negated ? {} : { suggestion: value }),
  };
}

function recordedScore(check: ScoreCheck, sight: Sight, unitId: string): Recorded | string {
  const { bench } = sight;
  const unit = bench.evidence.units.get(unitId)!;
  sight.dependencies.set('sheet', { on: 'sheet' });
  if (bench.scoreSheet) {
    const result = scoreUnit(bench.scoreSheet, unit, {
      article: unitId === sight.own ? bench.article : sight.articleOf(unit),
      measure: (run) => bench.measure(unit, run),
    });
    for (const path of result.used)
      sight.measurement(unit, unit.runs.find((run) => run.id === path.run)!, path.quantity);
    const from = 'score sheet';
    const path = 'scoresheet';
    if (check.criterion === 'award') {
      if (result.total === null)
        return `The award needs a total, and ${result.missing.join(', ')} ${result.missing.length === 1 ? 'has' : 'have'} no points yet`;
      return { value: result.award, from, path };
    }
    if (check.criterion === 'total') {
      if (result.total === null)
        return `The score sheet gives no total: no points for ${result.missing.join(', ')}`;
      return { value: result.total, max: bench.scoreSheet.max, from, path };
    }
    const points = result.criteria.find(({ id }) => fold(id) === fold(check.criterion));
    if (!points) return `The score sheet has no criterion ${check.criterion}`;
    if (points.points === null)
      return `The score sheet gives no points for ${check.criterion}: ${points.why}`;
    return { value: points.points, max: bench.scoreSheet.max, from, path };
  }
  const article = unitId === sight.own ? bench.article : sight.articleOf(unit);
  const from = 'recorded with the article';
  const path = `article/${article?.id ?? ''}/score`;
  if (!article) return `No article on the ${nameOfUnit(unit)} records a score`;
  const { score, score_max: max, award } = article.meta;
  if (check.criterion === 'award')
    return award === undefined ? 'No award is recorded with the article' : { value: award, from, path };
  if (check.criterion !== 'total')
    return `There is no score sheet, so a score for ${check.criterion} cannot be checked`;
  if (score === undefined || score === null) return 'No score is recorded with the article';
  return { value: score, from, path, ...(max === undefined || max === null ? {} : { max }) };
}

function agrees(check: ScoreCheck, recorded: Recorded): boolean {
  const { x } = check;
  if (typeof recorded.value === 'number' && typeof x === 'number') {
    const scale = check.max !== undefined && recorded.max !== undefined ? check.max / recorded.max : 1;
    const found = recorded.value * scale;
    if (check.op && check.op !== '=') {
      if (check.op === '<') return found < x - onTheLimit;
      if (check.op === '>') return found > x + onTheLimit;
      return compare(found, check.op, x);
    }
    if (check.stated?.hedge) return isInside(found, check.stated);
    return Math.abs(found - x) <= onTheLimit;
  }
  const has = recorded.value !== null && recorded.value !== false && recorded.value !== '';
  if (x === null || x === false) return !has;
  if (x === true) return has;
  return has && fold(String(recorded.value)) === fold(String(x));
}

function claimWords({ x, max }: ScoreCheck): string {
  if (x === null || x === false) return 'none';
  if (x === true) return 'there is one';
  return `${typeof x === 'number' ? plain(x) : x}${max === undefined ? '' : ` of ${plain(max)}`}`;
}
