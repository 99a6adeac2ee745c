import { namesSet, type Piece } from './clausePieces.ts';
import { echoOf } from './echoWords.ts';
import { isGapped } from './gapped.ts';
import { coloursGrey } from './hueSaid.ts';
import { type Item, isWord, keyOf } from './items.ts';
import {
  countsPart,
  deniesStatistic,
  deniesTopic,
  isAnchor,
  isNoneOn,
  leans,
  leansAsBefore,
  leansToo,
  promisesWhat,
  saysPlace,
  seesItsOwn,
  seesTopic,
  takesNextPlace,
} from './ownStatement.ts';
import { namesExtreme, takesFormat } from './pieceStarts.ts';
import { hasVerb } from './verbs.ts';

/** Do the words set two sides against each other: "it trails the Nocthale", "it is as bright as the Kasulind"? */
export function compares(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      isWord(item, 'matches', 'equals') ||
      keyOf(item, 'verb') === 'exceed' ||
      (keyOf(item, 'standing') ?? keyOf(item, 'equative')) !== undefined,
  );
}

/**
 * Does a piece set another set against what stands before it?
 * @param pending what stands before it and is in no clause yet
 * @param isFirst whether nothing before it has become a clause
 */
export function contrastsWith(piece: Piece, pending: readonly Item[], isFirst: boolean): boolean {
  const { items, joiner } = piece;
  const acts = hasVerb(items);
  const namesOther = namesSet(items.slice(0, 4));
  if (joiner === 'whereas') {
    const ends = items.some((item) => ['clips', 'rolls-off'].includes(keyOf(item, 'direction') ?? ''));
    // "…, whereas those of the Tarn go the other way"
    const ofOther = isWord(items[1], 'those', 'that') && isWord(items[2], 'of') && namesSet(items);
    if (acts || ends || ofOther) return true;
  }
  // "The Plain looks anaemic, while the Umbra covers more than the Hearth"
  if (joiner === 'while' && namesOther && acts && (namesSet(pending) || !isFirst)) return true;
  // "Its tint is yellow, where the Plain's leans to green"
  const colours = leans(items) || leansAsBefore(items.slice(1));
  return (
    isWord(items[0], 'where', 'while', 'but') &&
    namesOther &&
    colours &&
    (hasVerb(pending) || leans(pending) || (pending.length === 0 && !isFirst))
  );
}

/**
 * Does a piece claim something of its own, beside what the pieces around it claim?
 * @param isFirst whether it begins the sentence
 * @param leaning how many pieces of the sentence say where a colour leans
 */
export function statesOwn(piece: Piece, isFirst: boolean, leaning: number): boolean {
  const { items, mark, joiner } = piece;
  return (
    items.some(isAnchor) ||
    deniesTopic(items) ||
    seesTopic(items) ||
    deniesStatistic(piece) ||
    coloursGrey(items) ||
    (leaning > 1 && leans(items)) ||
    saysPlace(items) ||
    leansAsBefore(items) ||
    // "It takes HDR10 and HLG, and the Plain adds HDR10+"
    (mark === ',' && namesSet(items.slice(0, 4)) && takesFormat(items)) ||
    (items.some((item) => keyOf(item, 'standing') !== undefined) &&
      items.some(({ number }) => number?.role === 'window')) ||
    (hasVerb(items) && items.some((item) => keyOf(item, 'panelKind') !== undefined)) ||
    isNoneOn(items) ||
    countsPart(items) ||
    (joiner !== '' && seesItsOwn(items)) ||
    promisesWhat(items) ||
    (!isFirst && statesBehindAnother(piece))
  );
}

/** What is a statement only behind another: a place, an extreme, an echo, a number without its verb. */
function statesBehindAnother(piece: Piece): boolean {
  const { items, mark, joiner } = piece;
  return (
    takesNextPlace(items) ||
    namesExtreme(piece) ||
    // "…, it leans red all the way up"
    (mark === ',' && leansToo(items) && keyOf(items[0], 'pronoun') !== undefined) ||
    ((joiner !== '' || mark !== '') && echoOf(items) !== undefined) ||
    isGapped(items)
  );
}
