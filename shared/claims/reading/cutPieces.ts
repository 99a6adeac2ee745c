import { isSetName, joinPieces, type Piece } from './clausePieces.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { dropGenerality, dropLeadIn } from './leadIn.ts';
import { hasVerb } from './verbs.ts';

/** Conjunctions and relative words at which a new piece begins. */
const joiners = new Set([
  'and',
  'but',
  'while',
  'although',
  'though',
  'whereas',
  'which',
  'so',
  'yet',
  'however',
  'because',
  'where',
  'plus',
  'then',
  'albeit',
  'with',
  'nor',
  'making',
  'leaving',
  'since',
  'for',
]);

/** "…, followed by the Plain with 571 and the Umbra with 468": whose number it is stands before "with". */
function isRunnerUp(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at], 'with') &&
    keyOf(items[at - 1], 'unit') !== undefined &&
    items[at + 1]?.number !== undefined &&
    items
      .slice(0, at)
      .some((item) => isWord(item, 'followed', 'then', 'runner-up', 'runner', 'next', 'nearest', 'closest'))
  );
}

/** "…, for at 10 % the tone curve is too dark": because it is. */
function givesReason(items: readonly Item[], at: number): boolean {
  const end = items.findIndex((item, place) => place > at && item.type === 'mark');
  return (
    isWord(items[at - 1], ',', ';') &&
    isWord(items[at + 1], 'at', 'by', 'from', 'it', 'there', 'here') &&
    // "Banding isn't a problem, for there is none": of what stands before.
    !items.slice(at + 2, at + 4).some((item) => isWord(item, 'none')) &&
    hasVerb(items.slice(at + 2, end < 0 ? undefined : end))
  );
}

/** "The blue sweep ends with an error of 5.4": what belongs to the verb begins nothing. */
function isPartOfVerb(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at], 'with') &&
    isWord(items[at - 1], 'ends', 'ended', 'finishes', 'starts', 'started', 'begins', 'opens', 'comes') &&
    isWord(items[at + 1], 'an', 'a', 'the', 'errors')
  );
}

/** "… in a 10 % window that has settled at 1,240 nits after three minutes": said of what stands before. */
function isSettling(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  const verb = isWord(next, 'has', 'had', 'have') ? items[at + 2] : next;
  return (
    isWord(items[at - 1], 'window', 'patch', 'peak', 'box') &&
    /^(?:ha[sd] |have )?(?:settle[sd]|f[ae]ll(?:s|en)|drop(?:s|ped)|s[iu]nks?|slip(?:s|ped)|sag(?:s|ged))(?: |$)/.test(
      verb?.text ?? '',
    ) &&
    items.slice(Math.max(0, at - 6), at).some(({ number }) => number !== undefined)
  );
}

/** "The gap between the Plain and the Umbra is £250", "between its brightest and its dimmest part": the word that joins the ends of a gap. */
function joinsEnds(items: readonly Item[], at: number): boolean {
  if (!isWord(items[at], 'and')) return false;
  const from = items.slice(Math.max(0, at - 5), at).findLastIndex((item) => isWord(item, 'between'));
  const inside = items.slice(Math.max(0, at - 5) + from + 1, at);
  return (
    from >= 0 &&
    inside.every(
      (item, step) =>
        isWord(item, 'the', 'its', "'s") || keyOf(item, 'superlative') || isSetName(inside, step),
    )
  );
}

/** Cuts a sentence at its marks and conjunctions, and puts together again what these part from its own subject or verb. */
export function piecesOf(items: readonly Item[]): Piece[] {
  const pieces: Piece[] = [];
  let current: Item[] = [];
  let mark = '';
  let joiner = '';
  const cut = (nextMark: string, nextJoiner: string) => {
    if (current.length > 0) pieces.push({ items: current, mark, joiner });
    current = [];
    mark = nextMark;
    joiner = nextJoiner;
  };
  for (const [at, item] of items.entries()) {
    if (item.type === 'mark' && (item.text === '(' || item.text === ')')) {
      cut(item.text, '');
      continue;
    }
    if (item.type === 'mark' && item.text.length === 1 && ',;:—–-…'.includes(item.text)) {
      if (item.text === '-' && item.glued) continue;
      cut(item.text, '');
      continue;
    }
    if (item.text === 'that' && current.length > 0 && isSettling(items, at)) cut('', 'which');
    if (
      joiners.has(item.text) &&
      (item.type === 'word' || item.meanings.length === 0) &&
      (item.text !== 'for' || givesReason(items, at)) &&
      !(item.text === 'which' && isWord(current.at(-1), 'of')) &&
      !isRunnerUp(items, at) &&
      !isPartOfVerb(items, at) &&
      !joinsEnds(items, at)
    ) {
      if (current.length > 0 || mark === '') cut(current.length > 0 ? '' : mark, item.text);
      else joiner = item.text;
      current.push(item);
      continue;
    }
    current.push(item);
  }
  cut('', '');
  dropLeadIn(pieces);
  dropGenerality(pieces);
  joinPieces(pieces);
  return pieces;
}
