import { isOnlySet, namesSet, type Piece } from './clausePieces.ts';
import { echoOf } from './echoWords.ts';
import { type Item, isWord, keyOf, meaningOf } from './items.ts';
import { isAnchor, isNoneOn, leans } from './ownStatement.ts';
import { isSecondOfPair, namesSetFirst, opensOwner, opensPair, opensSets } from './pieceStarts.ts';
import { compares } from './pieceStatement.ts';
import { hasVerb } from './verbs.ts';

/** Does a clause end before a piece that claims nothing of its own? */
export function endsBeforeRemark(piece: Piece, pending: readonly Item[]): boolean {
  // "For contrast it trails the Nocthale, which is worth knowing": the remark is no part of the comparison.
  const isRemark = piece.joiner === 'which' && piece.mark === ',' && compares(pending);
  return isRemark || (opensOwner(piece) && hasVerb(pending));
}

/**
 * Does a piece that claims nothing of its own go with what follows ("In the Calm mode, errors …") and not with what
 * came before ("…, from 60 % upwards")?
 * @param last the clause before it
 */
export function goesWithNext(
  piece: Piece,
  following: Piece | undefined,
  pending: readonly Item[],
  last: readonly Item[],
): boolean {
  const { items, mark, joiner } = piece;
  // "White varies by 4 %, which I could not see, and at 19 dB(A) it is …": said in passing of what stands before.
  const isPassing =
    joiner === 'which' &&
    items.some((item) => isWord(item, 'i', 'we')) &&
    items.some((item) => isWord(item, 'could', "couldn't", 'can', "can't", 'cannot'));
  // "…, as is red, while green errs the other way and is undersaturated": the answer is complete.
  const afterEcho =
    (joiner === 'while' || joiner === 'whereas') && following !== undefined && echoOf(last) !== undefined;
  if (afterEcho) return true;
  if (isPassing) return false;
  const opensNext =
    !isSecondOfPair(piece, pending.length > 0 ? pending : last) &&
    joiner !== '' &&
    joiner !== 'with' &&
    following?.mark === ',' &&
    // "…, and the Umbra, which is a third dearer": the set that the relative clause is of.
    (following.joiner === '' || (following.joiner === 'which' && isOnlySet(piece)));
  // "…, the maximum (5.6) is not": what stands before the bracket names its number.
  const names =
    following?.mark === '(' &&
    mark !== '(' &&
    items.some((item) => keyOf(item, 'stat') ?? keyOf(item, 'concept')) &&
    following.items.some((item) => item.number);
  // "…, the Kasulind counters with £549": whose number it is stands before "with".
  const opensWithSet =
    (mark !== '' || joiner === 'while') &&
    following?.joiner === 'with' &&
    (following.mark === '' || joiner === 'while') &&
    items.slice(0, 3).some((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker'));
  return (
    opensWithSet ||
    names ||
    // "Lag: 9.6 ms (Plain: 21 ms)"
    (mark === '(' && following?.mark === ':') ||
    opensNext ||
    mark === ';' ||
    mark === '—' ||
    opensPair(piece, following) ||
    opensSets(piece, following) ||
    // "It beats the Plain (4.1) and the Umbra (3.3)": the number in the next bracket is of this set.
    (mark === ')' && following?.mark === '(' && namesSet(items)) ||
    (joiner !== '' && joiner !== 'with' && hasVerb(items))
  );
}

/** Is a piece with a number only the beginning of what the next one says? */
export function leadsUp({ items }: Piece, onward: Piece | undefined, isFirst: boolean): boolean {
  if (onward === undefined || hasVerb(items)) return false;
  // "From 2.4 as delivered, the average drops to 0.6": the first of two states.
  const isState =
    isWord(items[0], 'from') &&
    items.some((item) => keyOf(item, 'stage')) &&
    onward.items.some((item) => ['fall', 'rise', 'cut'].includes(keyOf(item, 'verb') ?? '')) &&
    onward.items.some((item, at) => item.number && isWord(onward.items[at - 1], 'to'));
  // "At £949, the Kasulind undercuts it": whose price it is says the clause that follows.
  const isPrice =
    isFirst &&
    isWord(items[0], 'at', 'for', 'priced at', 'costing') &&
    items.some((item) => item.number?.role === 'money') &&
    items.filter(isAnchor).length === 1 &&
    onward.mark === ',' &&
    onward.joiner === '';
  return isState || isPrice;
}

/** Does what waits for its statement end before a piece that claims something of its own? */
export function endsBefore(piece: Piece, pending: readonly Item[]): boolean {
  if (pending.length === 0) return false;
  const { items, mark, joiner } = piece;
  const acts = hasVerb(pending);
  const denies = pending.some((item) => keyOf(item, 'negation') !== undefined);
  if (mark === ':' && hasVerb(items)) {
    // "You hardly need a meter to see why: the greys have an obvious tint": the denial ends at the colon.
    const needsNone = acts && denies && pending.some((item) => isWord(item, 'need', 'needs', 'needed'));
    // "It leans to blue, and not shyly: white comes out at 7,600 K": the colon begins anew.
    if (isWord(pending[0], 'nor') || needsNone || leans(pending)) return true;
  }
  return (
    // "The television cannot be blamed, since its lag is 9.1 ms": nor of what is given as the reason.
    (acts && denies && mark === ',' && ['since', 'because'].includes(joiner)) ||
    // "I wouldn't live with the Plain, which is past 3 from 30 %": the denial is not of what the set does.
    (joiner === 'which' && keyOf(pending.at(-1), 'unit') !== undefined && denies) ||
    // "Neither covers all of it: the Kasulind gets to 94 %": behind the colon a set is named anew.
    (mark === ':' && acts && namesSetFirst(items)) ||
    // "It handles HDR10+, which the Kasulind does not": what is repeated of another set stands alone.
    (pending.length > 2 && (joiner !== '' || mark !== '') && echoOf(items) !== undefined) ||
    // "On brightness it wins; on contrast it loses to the Kasulind": each side ranks in what it names.
    (mark === ';' &&
      [items, pending].every((side) => side.some((item) => keyOf(item, 'standing') !== undefined))) ||
    // "The Plain is bright, and the Hearth has none": what stands before is said of its own set.
    (isNoneOn(items) && acts && namesSet(pending))
  );
}

function saysSeverity(item: Item): boolean {
  return keyOf(item, 'severity') !== undefined;
}

/** Kinds of things that "and" strings together without beginning a new statement. */
function listKind(item: Item | undefined): string | undefined {
  if (!item) return undefined;
  if (item.number)
    return item.number.role === undefined || item.number.role === 'value'
      ? `number ${item.number.dimension}`
      : `role ${item.number.role}`;
  for (const kind of [
    'hue',
    'topic',
    'format',
    'signal',
    'concept',
    'gamut',
    'unit',
    'stat',
    'tint',
    'house',
    'severity',
    'intensity',
    'level',
    'tone',
    'maker',
    'comparative',
    'direction',
    'opinion',
  ] as const)
    if (meaningOf(item, kind)) return kind;
  return undefined;
}

/** "Judder and blooming", "at 40 and 60 %": does a piece go on with the list that the clause before it ends with? */
export function joinsList({ items, mark, joiner }: Piece, before: readonly Item[]): boolean {
  const kind = listKind(before.at(-1));
  return (
    (['and', 'or', 'nor'].includes(joiner) || (joiner === '' && mark === ',')) &&
    kind !== undefined &&
    !hasVerb(items) &&
    listKind(items.find((item) => listKind(item) !== undefined)) === kind &&
    !items.some((item) => item.number !== undefined || keyOf(item, 'multiple') !== undefined) &&
    !before.some((item) => keyOf(item, 'house') && items.some((other) => keyOf(other, 'house'))) &&
    !(before.some(saysSeverity) && items.some(saysSeverity))
  );
}
