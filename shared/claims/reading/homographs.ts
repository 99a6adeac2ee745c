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
  // "Gamma averages 2.38 where 2.4 is asked for"
  for (const [at, item] of items.entries())
    if (
      item.number &&
      isWord(items[at - 1], 'where', 'when') &&
      isWord(items[at + 1], 'is', 'was') &&
      isWord(items[at + 2], 'asked', 'called', 'wanted')
    )
      item.number.role = 'ignored';
}

/** "With luminance set aside": without it. */
function setsAside(items: readonly Item[], { text, index }: Item): boolean {
  return (
    text === 'with luminance' &&
    isWord(items[index + 1], 'set', 'left', 'taken') &&
    isWord(items[index + 2], 'aside', 'out')
  );
}

/** "The bottom left loses 19 %": a place. */
function isCorner(items: readonly Item[], { text, index }: Item): boolean {
  return text === 'left' && isWord(items[index - 1], 'top', 'bottom', 'upper', 'lower');
}

/** "The same goes for the Plain": it holds there too, and costs nothing. */
function isTrueOf(items: readonly Item[], { text, index }: Item): boolean {
  return text === 'goes for' && isWord(items[index - 1], 'same');
}

/** "By the same measure", "by that yardstick": as before. */
function isYardstick(items: readonly Item[], { text, index }: Item): boolean {
  return text === 'measure' && isWord(items[index - 1], 'same', 'that', 'this', 'any');
}

/** "Our meter cannot go below 0.005 nits": of the instrument. */
function ignoreFloor(items: readonly Item[]): undefined {
  const meter = items.findIndex((item) => isWord(item, 'metre', 'instrument', 'probe', 'colorimeter'));
  const cannot = items.slice(meter + 1, meter + 3).some((item) => isWord(item, 'cannot', "can't", 'stops'));
  const number = items.slice(meter + 1, meter + 7).find((item) => item.number)?.number;
  if (meter >= 0 && meter < 3 && cannot && number) number.role = 'ignored';
}

/** "We took 21 steps and 24 patches", "within the uncertainty of 3": how it was measured. */
function ignoreMethod(items: readonly Item[]): undefined {
  const took = items.findIndex(
    (item, at) => isWord(item, 'took', 'take') && isWord(items[at - 1], 'we', 'i'),
  );
  for (const [at, item] of items.entries()) {
    if (!item.number) continue;
    const counts = isWord(items[at + 1], 'steps', 'patches', 'levels', 'readings', 'points', 'measurements');
    const lead = isWord(items[at - 1], 'of', 'is') ? items[at - 2] : undefined;
    if ((took >= 0 && took < at && counts) || isWord(lead, 'uncertainty')) item.number.role = 'ignored';
  }
}

/** Takes the lexicon's sense from words that the words around them use in another. */
export function forgetHomographs(items: readonly Item[]): undefined {
  ignoreAsked(items);
  ignoreFloor(items);
  ignoreMethod(items);
  for (const item of items) {
    const other =
      takesLong(items, item) ||
      setsOver(items, item) ||
      setsAside(items, item) ||
      isYardstick(items, item) ||
      isTrueOf(items, item) ||
      isCorner(items, item);
    if (other) item.meanings = [];
  }
}
