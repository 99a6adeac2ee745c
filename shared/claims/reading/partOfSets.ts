import { type Item, isWord, keyOf } from './items.ts';

const allOf =
  /^(?:none|not one|not a single one|each|every one|all|any|both|neither|no two)(?: one)? of(?: the)?$/;
const setNouns = ['sets', 'televisions', 'tvs', 'models', 'screens'];
const deeds =
  /^(?:has|have|is|are|was|were|does|do|shows?|gets?|supports?|costs?|weighs?|draws?|makes?|pass(?:es)?)$/;

/**
 * "None of the three", "every one of them", "each of the sets", "two of the three": all of several sets, with the word
 * for their number where there is one, or only some of them. Undefined where the clause begins otherwise.
 */
export function partOfAll(items: readonly Item[]): { count?: Item } | 'some' | undefined {
  const words = items.filter((item) => item.type !== 'mark' && !isWord(item, 'and', 'but', 'where', 'while'));
  const [first, second, third, fourth] = words;
  const isSome = isCount(first) && isWord(second, 'of') && isWord(third, 'the') && isCount(fourth);
  if (isSome) return isOfSets(words[4]) ? 'some' : undefined;
  const end = endOfLead(words);
  if (end === undefined) return undefined;
  const next = words[isWord(words[end], 'the', 'these', 'those') ? end + 1 : end];
  if (!isCount(next)) return isWord(next, 'them', 'the sets', 'sets', 'televisions') ? {} : undefined;
  const rest = words.slice(words.indexOf(next) + 1);
  if (!isOfSets(rest[0])) return undefined;
  // "Not one of the three keeps every level under 3": of which the denial is, nobody knows.
  const every = rest.some((word) => keyOf(word, 'stat') === 'all');
  return every && /^(?:no|neither)/.test(first!.text) ? 'some' : { count: next };
}

/** Where "none of the", "every one of" ends: the words may be tagged as one phrase or as several. */
function endOfLead(words: readonly Item[]): number | undefined {
  let text = '';
  for (const [at, word] of words.slice(0, 5).entries()) {
    text += (at > 0 ? ' ' : '') + word.text;
    if (allOf.test(text)) return at + 1;
  }
  return undefined;
}

function isCount(item: Item | undefined): item is Item {
  return item?.number?.spelled === true && item.number.dimension === '';
}

/** Behind "of the three": sets by their noun, or what they do. */
function isOfSets(next: Item | undefined): boolean {
  return (
    isWord(next, 'rivals', ...setNouns) || keyOf(next, 'verb') !== undefined || deeds.test(next?.text ?? '')
  );
}

/** "… on any of the three sets", "with all three televisions": the count of the sets that something is said of. */
export function onEach(items: readonly Item[]): Item | undefined {
  const at = items.findIndex(
    (item, place) =>
      isCount(item) &&
      isWord(items[place + 1], ...setNouns) &&
      ['all', 'any'].includes(keyOf(items[place - 1], 'stat') ?? '') &&
      isWord(items[place - 2], 'on', 'in', 'with', 'across', 'for'),
  );
  const ranks = items.some((item) => keyOf(item, 'superlative') ?? keyOf(item, 'ordinal'));
  return at < 0 || ranks ? undefined : items[at];
}
