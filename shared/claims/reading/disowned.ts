import { type Item, isWord, keyOf } from './items.ts';
import { earlierWords, untrueWords } from './lexicon/disowned.ts';
import type { Problem } from './problem.ts';
import type { Scene } from './scene.ts';

const telling = [
  'claim',
  'claims',
  'idea',
  'notion',
  'belief',
  'rumour',
  'story',
  'suggestion',
  'impression',
];
const whoever = ['whoever', 'anyone', 'anybody', 'those', 'people', 'everyone', 'everybody', 'that'];

/**
 * Why the review does not vouch for a statement that it prints: it calls it untrue, takes it back, or says that it only
 * looks so. What it holds instead is another statement, which no rule can build from the denied one.
 */
export function disownedProblem({ sentence, items }: Scene): Problem | undefined {
  const last = items.at(-1)!.index;
  for (let at = 0; at < sentence.length; at += 1) {
    const item = sentence[at]!;
    if (item.type === 'mark') continue;
    if (untrueWords.has(item.text) && callsUntrue(sentence, at))
      return { why: 'the review calls it untrue, and a check would not', words: [item] };
    if (earlierWords.has(item.text) && item.index <= last && tellsOfEarlierText(sentence, at))
      return { why: 'it is what was written or measured before, and the words take it back', words: [item] };
    if (item.index > items[0]!.index && onlyLooksSo(sentence, items, at))
      return { why: 'the words say that it only looks so', words: [item] };
  }
  return undefined;
}

/** "It is not true that …", "the claim that … is false", "whoever says … is wrong", "don't believe anyone who …" */
function callsUntrue(sentence: readonly Item[], at: number): boolean {
  const item = sentence[at]!;
  const before = sentence.slice(0, at);
  const isDenied = before.slice(-3).some((word) => keyOf(word, 'negation') === 'not');
  if (isWord(item, 'believe', 'trust'))
    return isDenied && sentence.slice(at + 1, at + 4).some((word) => isWord(word, ...whoever));
  if (isWord(item, 'true')) return isDenied && isOfThat(sentence, at);
  if (isDenied) return false;
  if (isOfThat(sentence, at))
    return before.slice(-4).some((word) => isWord(word, 'is', "'s", 'it is', "it's", 'a'));
  return (
    before.slice(-3).some((word) => isWord(word, 'is', 'are', "'s", 'was', 'were')) &&
    (isWord(sentence[0], ...whoever) || before.some((word) => isWord(word, ...telling)))
  );
}

function isOfThat(sentence: readonly Item[], at: number): boolean {
  return (
    sentence.slice(at + 1, at + 3).some((word) => isWord(word, 'that')) || isWord(sentence[at + 1], 'to')
  );
}

/** "I had written that …", "in an earlier version of this review", "by mistake" */
function tellsOfEarlierText(sentence: readonly Item[], at: number): boolean {
  const item = sentence[at]!;
  const last = sentence[at - 1];
  const next = sentence[at + 1];
  if (isWord(item, 'mistake', 'error', 'oversight'))
    return isWord(last, 'by', 'in') && next?.number === undefined;
  if (isWord(item, 'written', 'wrote', 'printed', 'reported'))
    return (isWord(sentence[at - 2], 'i', 'we') || isWord(last, 'i', 'we')) && isWord(next, 'that');
  return (
    isWord(last, 'earlier', 'previous', 'first', 'last', 'former') &&
    isWord(next, 'of', ',') &&
    isWord(sentence[at - 2], 'an', 'the', 'our', 'in')
  );
}

/** "It seems brighter than the Plain but isn't" */
function onlyLooksSo(sentence: readonly Item[], items: readonly Item[], at: number): boolean {
  if (!isWord(sentence[at], 'but', 'yet', 'though')) return false;
  const [denial, more] = sentence.slice(at + 1, at + 3);
  const isDenied =
    /n't$/.test(denial?.text ?? '') || (isWord(denial, 'is', 'does', 'are') && isWord(more, 'not'));
  const after = sentence[at + (isWord(more, 'not') ? 3 : 2)];
  return (
    isDenied &&
    (after === undefined || after.type === 'mark') &&
    items.some((word) => /^(?:looks?|seems?|sounds?|appears?|feels?)$/.test(word.text))
  );
}
