import { type Item, isWord, keyOf } from './items.ts';

type Sense = (items: readonly Item[], at: number) => boolean;

/** "Takes about twice as long as the Plain": of time, and no power. */
function takesLong(items: readonly Item[], at: number): boolean {
  return items.slice(at + 1, at + 7).some((item) => isWord(item, 'long', 'longer'));
}

/** "In contrast, the Plain stays below 3": on the other hand. A ratio, or who leads, is of the contrast. */
function setsOver(items: readonly Item[], at: number): boolean {
  if (at !== 1 || !isWord(items[0], 'in') || !isWord(items[2], ',')) return false;
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

/** By word: where the words around it take it in another sense than the lexicon's. */
const otherSenses: ReadonlyMap<string, Sense> = new Map<string, Sense>([
  ['takes', takesLong],
  ['take', takesLong],
  ['took', takesLong],
  ['contrast', setsOver],
  // "With luminance set aside": without it.
  [
    'with luminance',
    (items, at) => isWord(items[at + 1], 'set', 'left', 'taken') && isWord(items[at + 2], 'aside', 'out'),
  ],
  // "…, as averages do, …": of averages at large.
  ['averages', (items, at) => isWord(items[at - 1], 'as') && isWord(items[at + 1], 'do', 'will', 'can')],
  // "Passes the 700 cd/m² mark": no score.
  ['mark', (items, at) => items[at - 1]?.number !== undefined && items[at - 1]!.number!.dimension !== ''],
  // "Behind the Hearth's panel sit 24 zones": a place.
  [
    'behind',
    (items, at) =>
      items.slice(at + 1, at + 5).some((item) => isWord(item, "'s")) &&
      items.slice(at + 2, at + 6).some((item) => isWord(item, 'panel', 'screen', 'glass', 'grille', 'back')),
  ],
  // "A patient neighbour on the other end": no set.
  [
    'the other',
    (items, at) =>
      isWord(
        items[at + 1],
        ...['end', 'side', 'hand', 'half', 'way', 'room', 'night', 'day', 'evening', 'taps', 'controls'],
        ...['seats', 'people', 'guests', 'rooms', 'lamps', 'colours', 'hues', 'patterns', 'films', 'scenes'],
      ),
  ],
  // "By the same measure": as before.
  ['measure', (items, at) => isWord(items[at - 1], 'same', 'that', 'this', 'any')],
  // "The same goes for the Plain": it holds there too, and costs nothing.
  ['goes for', (items, at) => isWord(items[at - 1], 'same')],
  // "People who draw the curtains"
  [
    'draw',
    (items, at) =>
      items.slice(at + 1, at + 3).some((item) => isWord(item, 'curtains', 'blinds', 'conclusions', 'line')),
  ],
  // "Night scenes hang on the curve"
  [
    'on the curve',
    (items, at) =>
      /^(?:hang|depend|rest|rel|turn|focus|concentrat|work)(?:s|y|ies|ed|e|es|ing)?$/.test(
        items[at - 1]?.text ?? '',
      ),
  ],
  // "From straight ahead the Plain shows none"
  ['ahead', (items, at) => isWord(items[at - 1], 'straight')],
  // "The bottom left loses 19 %": a place.
  ['left', (items, at) => isWord(items[at - 1], 'top', 'bottom', 'upper', 'lower')],
]);

/** Takes the lexicon's sense from words that the words around them use in another. */
export function forgetHomographs(items: readonly Item[]): undefined {
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    if (item.meanings.length > 0 && otherSenses.get(item.text)?.(items, at)) item.meanings = [];
  }
}
