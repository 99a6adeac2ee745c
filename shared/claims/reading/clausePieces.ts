import { type Item, isWord, keyOf } from './items.ts';
import { isAnchor } from './ownStatement.ts';
import { hasVerb } from './verbs.ts';

/** A stretch of a sentence between two marks or conjunctions, with the mark and the conjunction that it begins with. */
export interface Piece {
  items: Item[];
  mark: string;
  joiner: string;
}

export function namesSet(items: readonly Item[]): boolean {
  return items.some((_, at) => isSetName(items, at));
}

/** "The Umbra", "the Nocthale": a maker's name with an article stands for its set. */
export function isSetName(items: readonly Item[], at: number): boolean {
  const item = items[at];
  return (
    keyOf(item, 'unit') !== undefined || (keyOf(item, 'maker') !== undefined && isWord(items[at - 1], 'the'))
  );
}

/** "and the Umbra" */
export function isOnlySet({ items, joiner }: Piece): boolean {
  return (
    namesSet(items) &&
    items.every((item, at) => item.text === joiner || isWord(item, 'the') || isSetName(items, at))
  );
}

/** "and the Tamarick are dimmer": a verb of more sets than one. */
function areMany(items: readonly Item[]): boolean {
  const set = items.slice(0, 3).findIndex((_, at) => isSetName(items, at));
  return set > 0 && isWord(items[set + 1], 'are', 'have', 'were', 'both', 'do', "aren't", "don't", "haven't");
}

/** "…, whereas the Plain and the Umbra both run at 144 Hz": two sets are one subject, whatever joins them. */
function joinSubjects(pieces: Piece[]): undefined {
  for (let at = pieces.length - 2; at > 0; at -= 1) {
    const [piece, next] = [pieces[at]!, pieces[at + 1]!];
    if (piece.joiner === '' || next.joiner !== 'and' || next.mark !== '') continue;
    // "…, and the Kasulind and the Tamarick are dimmer"
    if (piece.joiner === 'and' && !(piece.mark === ',' && areMany(next.items))) continue;
    const opensWithSet = next.items.slice(1, 3).some((_, step) => isSetName(next.items, step + 1));
    const isSet = piece.items.every(
      (item) =>
        item.text === piece.joiner ||
        isWord(item, 'the', 'both') ||
        isSetName(piece.items, piece.items.indexOf(item)),
    );
    if (!isSet || !opensWithSet || !namesSet(piece.items)) continue;
    pieces.splice(at, 2, { ...piece, items: [...piece.items, ...next.items] });
  }
}

/** Thrown in between a set and its verb: "with 979 cd/m²", "a fine set with a backlight behind it". */
function isThrownIn({ items, mark, joiner }: Piece, isFirst: boolean): boolean {
  if (hasVerb(items)) return false;
  if (!isFirst) return mark === '' && isWord(items[0], 'with', 'of', 'and') && !items.some(isAnchor);
  const numbered = isWord(items[0], 'with', 'at') && items.some(({ number }) => number !== undefined);
  const named = isWord(items[0], 'a', 'an', 'our', 'still') && joiner === '' && !items.some(isAnchor);
  return mark === ',' && (numbered || named);
}

/** "…, and the Thrift, with 979 cd/m², is the brightest": a set and its verb are one statement across what stands between. */
function joinAcross(pieces: Piece[]): undefined {
  for (let at = pieces.length - 3; at >= 0; at -= 1) {
    const set = pieces[at]!;
    if (!isOnlySet(set)) continue;
    let end = at + 1;
    while (end < at + 4 && pieces[end] && isThrownIn(pieces[end]!, end === at + 1)) end += 1;
    const after = pieces[end];
    if (end === at + 1 || !after || after.mark !== ',' || after.joiner !== '') continue;
    if (!hasVerb(after.items.slice(0, 2)) && keyOf(after.items[0], 'verb') === undefined) continue;
    const items = pieces.slice(at, end + 1).flatMap((piece) => piece.items);
    pieces.splice(at, end + 1 - at, { ...set, items });
  }
}

/** "The worst step (full white) lands at 4.7": an aside that claims nothing does not part subject and verb. */
function joinAsides(pieces: Piece[]): undefined {
  for (let at = pieces.length - 2; at > 0; at -= 1) {
    const [before, aside, after] = [pieces[at - 1]!, pieces[at]!, pieces[at + 1]!];
    if (aside.mark !== '(' || after.mark !== ')' || after.joiner !== '') continue;
    // "…, where the Plain (the one occasion on which I envied its owner) still keeps 71 %"
    if (aside.items.length > (isOnlySet(before) ? 12 : 4)) continue;
    if (aside.items.some(isAnchor) || hasVerb(before.items) || !hasVerb(after.items.slice(0, 2))) continue;
    pieces.splice(at - 1, 3, { ...before, items: [...before.items, ...aside.items, ...after.items] });
  }
}

const closing: Readonly<Record<string, string>> = { ',': ',', '–': '–', '—': '—', '-': '-', '(': ')' };

/** Something that a verb can follow: "and the dirty-screen effect", "though the stand", "the Plain's blooming". */
function isBareSubject({ items, joiner }: Piece): boolean {
  const said = items.filter(
    (item, at) => item.text !== joiner && !(isWord(item, "'s") && isSetName(items, at - 1)),
  );
  return (
    said.length <= 6 &&
    !hasVerb(said) &&
    !said.some(isAnchor) &&
    said.some((item) => subjectKinds.some((kind) => keyOf(item, kind) !== undefined))
  );
}

const subjectKinds = ['topic', 'concept', 'fact', 'hue', 'tint'] as const;
const asideWords = [
  'which',
  'where',
  'though',
  'although',
  'if',
  'while',
  'as',
  'like',
  'once',
  'the',
  'a',
  'an',
  'from',
  'in',
  'at',
  'for',
  'to',
  'it',
  'I',
  'we',
  'and',
  'on',
];

/** "The stand – a sober affair, thank heaven – needs 464 mm": subject and verb are one statement across an aside. */
function joinSubjectAndVerb(pieces: Piece[]): undefined {
  for (let at = pieces.length - 3; at >= 0; at -= 1) {
    const subject = pieces[at]!;
    const opens = pieces[at + 1]!;
    const end = closing[opens.mark];
    if (end === undefined || !isBareSubject(subject)) continue;
    if (opens.mark === ',' && !isWord(opens.items[0], ...asideWords)) continue;
    const last = pieces.findIndex(
      (piece, order) =>
        order > at + 1 &&
        order <= at + 4 &&
        piece.mark === end &&
        piece.joiner === '' &&
        opensWithVerb(piece.items),
    );
    if (last < 0) continue;
    const aside = pieces.slice(at + 1, last).flatMap(({ items }) => items);
    if (aside.length > 14 || aside.some((item) => isAnchor(item) && keyOf(item, 'tint') === undefined))
      continue;
    // What is a statement of its own says nothing of the subject; a denial may be meant for both.
    const isRelative = opens.joiner === 'which' && !aside.some(({ number }) => number !== undefined);
    const isApart =
      (hasVerb(aside) || isRelative) && !aside.some((item) => keyOf(item, 'negation') !== undefined);
    const kept = isApart ? [] : aside;
    pieces.splice(at, last + 1 - at, {
      ...subject,
      items: [...subject.items, ...kept, ...pieces[last]!.items],
    });
  }
}

/** "Below 30 %, where most modern drama takes place, it never rises above 1.5": a place, an aside on it, and the statement. */
function joinAcrossPlace(pieces: Piece[]): undefined {
  const [place, aside, after] = pieces;
  if (!place || !aside || !after || place.joiner !== '' || place.items.length > 6 || hasVerb(place.items))
    return;
  const isPlace = place.items.some((item) => keyOf(item, 'comparator') ?? isWord(item, 'at', 'from', 'in'));
  if (!isPlace || aside.mark !== ',' || !['where', 'which'].includes(aside.joiner)) return;
  if (after.mark !== ',' || after.joiner !== '' || aside.items.some(isAnchor)) return;
  pieces.splice(0, 3, { ...place, items: [...place.items, ...after.items] });
}

function opensWithVerb(items: readonly Item[]): boolean {
  return (
    hasVerb(items.slice(0, 2)) ||
    isWord(
      items[0],
      'needs',
      'averages',
      'stays',
      'varies',
      'show',
      'prove',
      'say',
      'reduces',
      'lowers',
      'cuts',
      'drags',
    )
  );
}

/** Puts together the pieces that marks part from their own subject or verb. */
export function joinPieces(pieces: Piece[]): undefined {
  if (pieces.length < 2) return;
  joinSubjects(pieces);
  joinAsides(pieces);
  joinAcross(pieces);
  joinSubjectAndVerb(pieces);
  joinAcrossPlace(pieces);
}
