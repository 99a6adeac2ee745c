import { type Item, isOneOf, isWord, keyOf, numberPhrase } from './items.ts';
import { plays } from './parts.ts';

const parts: Readonly<Record<string, number>> = { half: 50, quarter: 25, threeQuarters: 75 };
const places = [
  'at',
  'from',
  'until',
  'till',
  'above',
  'below',
  'beyond',
  'past',
  'over',
  'under',
  'to',
  'by',
  'up to',
  'before',
  'the',
];
const luminous = new Set(['luminance', 'ratio', 'power', 'time', 'noise']);

function becomesPercent(item: Item, x: number): undefined {
  item.type = 'number';
  item.meanings = [];
  item.number = numberPhrase({ x, place: 1, dimension: 'percent', unit: '%', factor: 1, spelled: false });
}

/**
 * Places on the signal's scale that are said in words: "from half brightness upward", "at a quarter saturation", "at
 * the half-way point", "5.8 at full white". They become the percentage that they stand for.
 */
export function settleScaleParts(items: readonly Item[]): undefined {
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    // "From 50 % to white" is from there on.
    if (
      isWord(item, 'white', 'full white', 'peak white') &&
      isWord(items[at - 1], 'to') &&
      items[at - 2]?.number?.dimension === 'percent' &&
      isWord(items[at - 3], 'from')
    )
      item.meanings = [];
    if (!mayBePlace(item)) continue;
    const before = isWord(items[at - 1], 'the', 'a') ? items[at - 2] : items[at - 1];
    const after = items[at + 1];
    if (isErrorOfWhite(items, at)) {
      // "100 % white" is a level of the signal: as a word for its colour it would take the claim.
      if (item.number) after!.meanings = [];
      becomesPercent(item, 100);
      item.number!.onScale = true;
      continue;
    }
    // "At its worst it is 5.1, in full white"
    if (
      isWord(item, 'full white', 'peak white') &&
      isWord(before, 'in', 'at', 'on') &&
      items.some(isSmall) &&
      speaksOfError(items) &&
      !items.some((other) => luminous.has(other.number?.dimension ?? ''))
    ) {
      becomesPercent(item, 100);
      item.number!.onScale = true;
      continue;
    }
    // "By the time you hit full white the error is about six"
    if (
      isWord(item, 'full white', 'peak white') &&
      isWord(before, 'hit', 'reach', 'get to', 'reaches', 'hits') &&
      speaksOfError(items) &&
      !items.some((other) => luminous.has(other.number?.dimension ?? ''))
    ) {
      becomesPercent(item, 100);
      item.number!.onScale = true;
      continue;
    }
    const leads =
      before !== undefined && (isOneOf(before, places) || keyOf(before, 'comparator') !== undefined);
    if (!leads) continue;
    const share = parts[keyOf(item, 'multiple') ?? ''];
    if (
      share !== undefined &&
      isWord(
        after,
        'signal',
        'stimulus',
        'drive',
        'saturation',
        'intensity',
        'amplitude',
        'brightness',
        'level',
      )
    ) {
      becomesPercent(item, share);
      // "Half brightness" is a level of the signal: as a word for luminance it would take the claim.
      if (isWord(after, 'brightness')) {
        after!.text = 'signal';
        after!.meanings = [];
      }
    } else if (/^half ?-? ?way$/.test(item.text) && isWord(after, 'point', 'mark', 'level', 'step'))
      becomesPercent(item, 50);
    else if (
      isWord(item, 'full white', 'peak white') &&
      isWord(before, 'at', 'by') &&
      (speaksOfError(items) || (isWord(before, 'by') && items.some(isSmall))) &&
      !items.some((other) => luminous.has(other.number?.dimension ?? ''))
    )
      becomesPercent(item, 100);
  }
}

/** Most words are no place on the scale, whatever stands beside them. */
function mayBePlace(item: Item): boolean {
  const { text, number, meanings } = item;
  if (number) return number.dimension === 'percent' && number.x === 100;
  return (
    text === 'full white' ||
    text === 'peak white' ||
    text.startsWith('half') ||
    (meanings.length > 0 && parts[keyOf(item, 'multiple') ?? ''] !== undefined)
  );
}

/** "Only full white is past the threshold", "100 % white exceeds 3": the brightest level, as what is spoken of. */
function isErrorOfWhite(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  const named = isWord(item, 'full white', 'peak white');
  const percent =
    item.number?.dimension === 'percent' && item.number.x === 100 && isWord(items[at + 1], 'white');
  const verb = items[named ? at + 1 : at + 2];
  return (
    (named || percent) &&
    (plays(verb, 'colouring') ||
      isWord(verb, 'ends', 'finishes', 'lands', 'comes', 'stands', 'sits') ||
      ['exceed', 'stay'].includes(keyOf(verb, 'verb') ?? '')) &&
    (speaksOfError(items) ||
      // "Every step is above 3, and full white ends at 8.0"
      (named && isWord(verb, 'ends', 'finishes', 'lands') && items.some(isSmall)) ||
      (['exceed', 'stay'].includes(keyOf(verb, 'verb') ?? '') && items.some(isSmall)) ||
      (keyOf(verb, 'verb') === 'exceed' && items.some((other) => other.number?.dimension === ''))) &&
    !items.some((other) => luminous.has(other.number?.dimension ?? ''))
  );
}

function isSmall({ number }: Item): boolean {
  return number?.dimension === '' && !number.spelled && number.x < 20;
}

function speaksOfError(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      ['greyError', 'error', 'eotf', 'deItp'].includes(keyOf(item, 'concept') ?? '') ||
      keyOf(item, 'stat') === 'max' ||
      keyOf(item, 'house') !== undefined,
  );
}
