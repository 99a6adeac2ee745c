import { isOnlySet, isSetName, namesSet, type Piece } from './clausePieces.ts';
import { isExtreme } from './extreme.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { hasVerb } from './verbs.ts';

/** "the Kasulind gets to 94 %" */
export function namesSetFirst(items: readonly Item[]): boolean {
  // "…: there the Kasulind shines at 534 nits"
  const start = isWord(items[0], 'there', 'here') ? items.slice(1) : items;
  const states = start !== items && start.some(({ number }) => number !== undefined);
  return (
    start.slice(0, 2).some((item) => keyOf(item, 'unit') !== undefined) &&
    (states ||
      start
        .slice(1, 4)
        .some(
          (item) =>
            keyOf(item, 'verb') !== undefined ||
            isWord(item, 'has', 'is', 'weighs', 'comes', 'gets') ||
            ['clips', 'rolls-off'].includes(keyOf(item, 'direction') ?? ''),
        ))
  );
}

/** "…, the Plain and the Umbra 412 and 468": two sets, and what both are said to have. */
export function opensSets(piece: Piece, following: Piece | undefined): boolean {
  return (
    piece.mark === ',' &&
    piece.joiner === '' &&
    isOnlySet(piece) &&
    following?.joiner === 'and' &&
    following.mark === '' &&
    namesSet(following.items.slice(0, 3)) &&
    following.items.some(({ number }) => number !== undefined)
  );
}

/** "Brighter than the Plain and the Umbra, at 742 nits": the second of two that are compared with. */
export function isSecondOfPair(piece: Piece, before: readonly Item[] | undefined): boolean {
  return (
    piece.mark === '' &&
    piece.joiner === 'and' &&
    isOnlySet(piece) &&
    before !== undefined &&
    isSetName(before, before.length - 1)
  );
}

/** "…, and the Hearth the highest peak": a set, and what it is the first in. */
export function namesExtreme({ items, joiner, mark }: Piece): boolean {
  const words = items.filter((item) => item.text !== joiner && !isWord(item, 'the'));
  const [set, extreme] = words;
  return (
    (joiner === 'and' || joiner === 'while' || mark !== '') &&
    (keyOf(set, 'unit') ?? keyOf(set, 'maker')) !== undefined &&
    isExtreme(extreme) &&
    items.length <= 8 &&
    !hasVerb(items)
  );
}

/** "…, and the Plain's greyscale error, for comparison, averages 5.3": what is said of another set begins. */
export function opensOwner({ items, mark, joiner }: Piece): boolean {
  const owner = items.slice(0, 5).findIndex((item) => isWord(item, "'s", "'"));
  return (
    mark === ',' &&
    (joiner === 'and' || joiner === 'but') &&
    owner > 0 &&
    isSetName(items, owner - 1) &&
    items.slice(owner).some((item) => keyOf(item, 'concept') !== undefined)
  );
}

export function takesFormat(items: readonly Item[]): boolean {
  const at = items.findIndex((item) =>
    isWord(
      item,
      'adds',
      'takes',
      'accepts',
      'supports',
      'lacks',
      'has',
      'handles',
      'offers',
      'reads',
      'knows',
    ),
  );
  return at > 0 && items.slice(at + 1).some((item) => keyOf(item, 'format') !== undefined);
}

/** "Red is on target, green and blue are 4 % under": the first of two that a statement is of. */
export function opensPair({ items, mark, joiner }: Piece, following: Piece | undefined): boolean {
  return (
    (mark === ',' || joiner === 'and') &&
    items.length <= 2 &&
    keyOf(items.at(-1), 'hue') !== undefined &&
    following?.joiner === 'and' &&
    keyOf(following.items[1], 'hue') !== undefined &&
    (/^(?:are|were|both)\b/.test(following.items[2]?.text ?? '') ||
      keyOf(following.items[2], 'direction') !== undefined)
  );
}

/** "the Kasulind adds …": its set, and not what Kasulind says */
export function opensWithMaker(items: readonly Item[]): boolean {
  const at = items.slice(0, 3).findIndex((item) => keyOf(item, 'maker') !== undefined);
  return at >= 0 && keyOf(items[at + 1], 'saying') === undefined && !isWord(items[at + 1], "'s");
}

/** "The Umbra outshines …", "the Plain leans …": a set's name, and a verb that can have no other subject. */
function opensWithActingSet(items: readonly Item[]): boolean {
  const article = isWord(items[0], 'the') ? 1 : 0;
  const at = items[article]?.number?.role === 'size' ? article + 1 : article;
  // "The Kasulind and the Tamarick are dimmer"
  const other = isWord(items[at + 1], 'and') && isWord(items[at + 2], 'the') && isSetName(items, at + 3);
  return (
    isSetName(items, at) &&
    (isVerbOfOne(items[at + 1]) || (other && isWord(items[at + 4], 'are', 'have', 'were', 'both')))
  );
}

/** "Its black level is lower", "the Plain's cabinet is blue", "the input lag is shorter" */
function opensWithFigure(items: readonly Item[]): boolean {
  const owner = isWord(items[2], "'s") && isSetName(items, 1);
  const start = owner ? 3 : 1;
  if (!owner && !isWord(items[0], 'its', 'the')) return false;
  const figure = items
    .slice(start, start + 3)
    .findIndex((item) => (keyOf(item, 'concept') ?? keyOf(item, 'fact')) !== undefined);
  return figure >= 0 && (isVerbOfOne(items[start + figure + 1]) || isWord(items[start + figure + 1], 'are'));
}

function isVerbOfOne(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    item.type !== 'mark' &&
    /^[a-z]+s(?: |$)/.test(item.text) &&
    !/^(?:less|as|plus|versus|sets|nits|points|pounds|levels|errors|blacks|whites|greys)(?: |$)/.test(
      item.text,
    )
  );
}

/** "…; it holds on to more light than the Nocthale": complete, whatever stands before the semicolon. */
export function isStatement(items: readonly Item[]): boolean {
  const [first, second] = items;
  // "That still beats the Plain, and it leaves the Umbra, with 28.7 % on white, eating dust": one comparison.
  if (isWord(second, 'leaves', 'puts')) return false;
  if (isSelfContained(items)) return true;
  const opens =
    keyOf(first, 'pronoun') !== undefined || isWord(first, 'the', 'this', 'there', 'both', 'neither');
  return opens && (hasVerb(items) || items.some((item) => keyOf(item, 'standing') !== undefined));
}

/** "… and it misses 7 % of P3", "… and the Umbra is cheaper": its own subject and a verb of one, with or without a comma before it. */
export function isSelfContained(items: readonly Item[]): boolean {
  const [first, ...rest] = items;
  // "… and it also comes as a 65-inch"
  const second = isWord(rest[0], 'also', 'still', 'even', 'only', 'never', 'always', 'now', 'then')
    ? rest[1]
    : rest[0];
  return (
    (keyOf(first, 'pronoun') === 'it' &&
      !isWord(first, 'its') &&
      /(?:s|ed|n't|^(?:cost|came|lost|fell|got|can|will))$/.test(second?.text ?? '')) ||
    opensWithActingSet(items) ||
    opensWithFigure(items)
  );
}
