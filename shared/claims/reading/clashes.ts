import type { Check, ValueCheck } from '../../contract/check.ts';
import type { Finding } from './finding.ts';
import { type Item, isWord, keyOf } from './items.ts';

/**
 * Two numbers for one thing in one sentence: nobody contradicts himself in a breath, so the words that set the second
 * apart were not understood. Where the second names its quantity anew, it is left to the judge as it stands.
 */
export function doubtClashes(findings: readonly Finding[], items: readonly Item[]): Finding[] {
  const said: { check: ValueCheck; words: Finding['words'] }[] = [];
  return findings.map((finding) => {
    const { check } = finding;
    if (!isPlainValue(check)) return finding;
    const clash = said.find((other) => isOfSame(other.check, check) && areApart(other.check, check));
    said.push({ check, words: finding.words });
    if (!clash || namesQuantity(finding, clash.words, items)) return finding;
    return {
      ...finding,
      check: null,
      why: 'the sentence has another number for this before, and the words do not say how the two differ',
    };
  });
}

/** "742 nits, a little less than the 1,000": the second number is a mark beside the first, no other value. */
function isPlainValue(check: Check | null): check is ValueCheck {
  if (check?.kind !== 'value' || check.range !== undefined || check.negated) return false;
  return !check.stated.lowOpen && !check.stated.highOpen;
}

function isOfSame(one: ValueCheck, other: ValueCheck): boolean {
  return subjectOf(one) === subjectOf(other);
}

/** What a value is of, without where its conditions were named. */
function subjectOf({ operand }: ValueCheck): string {
  const { origin: _, ...conditions } = operand.conditions;
  return JSON.stringify({ ...operand, conditions: Object.entries(conditions).sort() });
}

function areApart({ stated: one }: ValueCheck, { stated: other }: ValueCheck): boolean {
  return one.unit === other.unit && (one.high < other.low || other.high < one.low);
}

/** Does the finding name its quantity? "Contrast falls from 5,240:1 to 1,310:1" names it once, for both. */
function namesQuantity({ start, end }: Finding, named: Finding['words'], items: readonly Item[]): boolean {
  const inside = items.filter((item) => item.start >= start && item.end <= end);
  const moves =
    inside.some((item) => item.number && isWord(items[item.index - 1], 'from')) &&
    inside.some((item) => item.number && isWord(items[item.index - 1], 'to'));
  return inside.some(
    (item) =>
      !(moves && named.some((word) => word.start === item.start)) &&
      (keyOf(item, 'concept') !== undefined || keyOf(item, 'gamut') !== undefined),
  );
}
