import { type Item, isWord, keyOf } from './items.ts';

/** "Takes about twice as long as the Plain": of time, and no power. */
function takesLong(items: readonly Item[], { text, index }: Item): boolean {
  if (text !== 'takes' && text !== 'take' && text !== 'took') return false;
  const rest = items.slice(index + 1, index + 7);
  return rest.some((item) => isWord(item, 'long', 'longer'));
}

/** "In contrast, the Plain stays below 3": on the other hand. A ratio, or who leads, is of the contrast. */
function setsOver(items: readonly Item[], { text, index }: Item): boolean {
  if (text !== 'contrast' || index !== 1 || !isWord(items[0], 'in') || !isWord(items[2], ',')) return false;
  return !items.some(
    (item) =>
      item.number?.dimension === 'ratio' ||
      item.number?.dimension === 'times' ||
      (keyOf(item, 'standing') ??
        keyOf(item, 'superlative') ??
        keyOf(item, 'comparative') ??
        keyOf(item, 'multiple')) !== undefined,
  );
}

/** "Ask for 100 nits at half stimulus and you get 108": what is asked for was never measured. */
function ignoreAsked(items: readonly Item[]): undefined {
  const [first, next, third] = items;
  const number = third?.number;
  if (isWord(first, 'ask', 'asked') && isWord(next, 'for') && number) number.role = 'ignored';
}

/** Takes the lexicon's sense from words that the words around them use in another. */
export function forgetHomographs(items: readonly Item[]): undefined {
  ignoreAsked(items);
  for (const item of items) if (takesLong(items, item) || setsOver(items, item)) item.meanings = [];
}
