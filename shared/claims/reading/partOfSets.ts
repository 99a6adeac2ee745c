import { type Item, isWord, keyOf } from './items.ts';

const parting = /^(?:none|not|each|every|all|any|both|neither|no two)\b/;

/** "None of the three", "every one of them", "each of the sets", "two of the three": all of several sets, or some. */
export function partOfAll(items: readonly Item[]): { count?: Item } | 'some' | undefined {
  const words = items.filter((item) => item.type !== 'mark' && !isWord(item, 'and', 'but', 'where', 'while'));
  const [first] = words;
  if (!first || !(first.number?.spelled || parting.test(first.text))) return undefined;
  const text = words
    .slice(0, 6)
    .map((word) => word.text)
    .join(' ');
  const all =
    /^(?:none|not one|not a single one|each|every one|all|any|both|neither|no two)(?: one)? of (?:the |these |those )?/.exec(
      text,
    )?.[0];
  if (all === undefined) {
    const [, of, the, count] = words;
    const some =
      first.number?.spelled === true &&
      isWord(of, 'of') &&
      isWord(the, 'the') &&
      count?.number?.spelled === true &&
      isOfSets(words, 4);
    return some ? 'some' : undefined;
  }
  const at =
    words.findIndex(
      (_, place) =>
        words
          .slice(0, place + 1)
          .map((word) => word.text)
          .join(' ').length >= all.trimEnd().length,
    ) + 1;
  const next = words[at];
  if (next?.number?.spelled && next.number.dimension === '') {
    if (!isOfSets(words, at + 1)) return undefined;
    // "Not one of the three keeps every level under 3": of which the denial is, nobody knows.
    const every = words.slice(at).some((word) => keyOf(word, 'stat') === 'all');
    return /^no/.test(all) && every ? 'some' : { count: next };
  }
  return isWord(next, 'them', 'the sets', 'sets', 'televisions') ? {} : undefined;
}

/** Behind "of the three": sets by their noun, or what they do. */
function isOfSets(words: readonly Item[], at: number): boolean {
  const next = words[at];
  if (isWord(next, 'sets', 'televisions', 'tvs', 'models', 'screens', 'rivals')) return true;
  return (
    keyOf(next, 'verb') !== undefined ||
    isWord(
      next,
      ...['has', 'have', 'is', 'are', 'was', 'were', 'does', 'do', 'shows', 'show', 'gets', 'get'],
    ) ||
    isWord(
      next,
      ...[
        'supports',
        'support',
        'costs',
        'weighs',
        'weigh',
        'draws',
        'draw',
        'makes',
        'make',
        'passes',
        'pass',
      ],
    )
  );
}

/** "… on any of the three sets", "with all three televisions": the count of the sets that something is said of. */
export function onEach(items: readonly Item[]): Item | undefined {
  const at = items.findIndex(
    ({ number }, place) =>
      number?.spelled === true &&
      number.dimension === '' &&
      isWord(items[place + 1], 'sets', 'televisions', 'tvs', 'models', 'screens') &&
      ['all', 'any'].includes(keyOf(items[place - 1], 'stat') ?? '') &&
      isWord(items[place - 2], 'on', 'in', 'with', 'across', 'for'),
  );
  const ranks = items.some((item) => keyOf(item, 'superlative') ?? keyOf(item, 'ordinal'));
  return at < 0 || ranks ? undefined : items[at];
}
