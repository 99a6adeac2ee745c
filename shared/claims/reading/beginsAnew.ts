import { namesSet, type Piece } from './clausePieces.ts';
import { type Item, isWord, keyOf, type MeaningKind } from './items.ts';
import { isSelfContained, isStatement, opensWithMaker } from './pieceStarts.ts';
import { hasVerb } from './verbs.ts';

const stating: readonly MeaningKind[] = ['format', 'lean', 'standing', 'awardWord'];

/** Verbs, and words that state something as a verb does: "takes HDR10", "leans green", "wins on price". */
function states(items: readonly Item[]): boolean {
  return (
    isSelfContained(items) ||
    hasVerb(items) ||
    items.some((item) => stating.some((kind) => keyOf(item, kind) !== undefined))
  );
}

function hasFormat(items: readonly Item[]): boolean {
  return items.some((item) => keyOf(item, 'format') !== undefined);
}

/** Begins with a subject, as what is no request does: "fill the screen", "move to the side". */
function isSaid(items: readonly Item[]): boolean {
  const first = items.find((item) => keyOf(item, 'idiom') === undefined);
  return (
    first !== undefined &&
    (['pronoun', 'unit', 'concept'].some((kind) => keyOf(first, kind as MeaningKind) !== undefined) ||
      isWord(first, 'the', 'this', 'there', 'and', 'but', 'while'))
  );
}

/**
 * Does a clause end before this piece because what begins here is another whole statement?
 * @param isOwn whether the piece claims something of its own
 */
export function beginsAnew(piece: Piece, pending: readonly Item[], isOwn: boolean): boolean {
  const { items, mark, joiner } = piece;
  const isJoined =
    mark === ',' && ['and', 'but', 'while', 'whereas', 'although', 'though', 'yet'].includes(joiner);
  // "I saw no blooming, nor does any appear from 45 degrees"
  if (mark === ',' && isWord(items[0], 'nor') && isWord(items[1], 'does', 'do', 'did', 'is', 'has', 'was'))
    return true;
  if (!states(pending)) return false;
  // "It is not as bright as the Nocthale and it misses 7 % of P3"; "move to the side and it is distracting" is one.
  // "It does HLG, it does HDR10+" is one list.
  const isSpliced = mark === ',' && joiner === '' && !(hasFormat(items) && hasFormat(pending));
  const isPlain = mark === '' && ['and', 'but', 'while'].includes(joiner);
  if ((isPlain || isSpliced) && isSaid(pending) && isSelfContained(isPlain ? items.slice(1) : items))
    return true;
  // "The contrast is fine: of the three sets the Hearth draws the least power"
  const ofGroup =
    isWord(items[0], 'of', 'among') && isWord(items[1], 'the', 'all') && items[2]?.number !== undefined;
  if (mark === ':' && ofGroup && hasVerb(items)) return true;
  if (!(mark === ';' || isJoined)) return false;
  // "It is as bright as the Kasulind; it holds on to more light than the Nocthale"
  if (isStatement(joiner === '' ? items : items.slice(1))) return true;
  if (isJoined && !isOwn) return false;
  // "Almost all of P3 is covered; BT.2020 to three quarters", "none of this is alarming, and the Plain's error averages 5.3"
  return (
    (keyOf(items[0], 'format') !== undefined && /^it(?: |$)/.test(items[1]?.text ?? '')) ||
    namesSet(items.slice(0, 3)) ||
    opensWithMaker(items) ||
    // "Uniformity is poor; the bottom left loses 19 %"
    (isWord(items[0], 'the') && isWord(items[1], 'top', 'bottom', 'upper', 'lower')) ||
    (isOwn && items.some((item) => keyOf(item, 'gamut')))
  );
}
