import { isOnlySet, isSetName, joinPieces, namesSet, type Piece } from './clausePieces.ts';
import { echoOf } from './echoWords.ts';
import { isGapped } from './gapped.ts';
import { coloursGrey } from './hueSaid.ts';
import { type Item, isWord, keyOf, type MeaningKind, meaningOf } from './items.ts';
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
import { hasVerb } from './verbs.ts';

const strongJoiners = new Set([
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
]);

/** "the Kasulind gets to 94 %" */
function namesSetFirst(items: readonly Item[]): boolean {
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
    isWord(items[at], 'that') &&
    isWord(items[at - 1], 'window', 'patch', 'peak', 'box') &&
    /^(?:ha[sd] |have )?(?:settle[sd]|f[ae]ll(?:s|en)|drop(?:s|ped)|s[iu]nks?|slip(?:s|ped)|sag(?:s|ged))(?: |$)/.test(
      verb?.text ?? '',
    ) &&
    items.slice(Math.max(0, at - 6), at).some(({ number }) => number !== undefined)
  );
}

/** "…, the Plain and the Umbra 412 and 468": two sets, and what both are said to have. */
function opensSets(piece: Piece, following: Piece | undefined): boolean {
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
function isSecondOfPair(piece: Piece, before: readonly Item[] | undefined): boolean {
  return (
    piece.mark === '' &&
    piece.joiner === 'and' &&
    isOnlySet(piece) &&
    before !== undefined &&
    isSetName(before, before.length - 1)
  );
}

/** "…, and the Hearth the highest peak": a set, and what it is the first in. */
function namesExtreme({ items, joiner, mark }: Piece): boolean {
  const words = items.filter((item) => item.text !== joiner && !isWord(item, 'the'));
  const [set, extreme] = words;
  return (
    (joiner === 'and' || joiner === 'while' || mark !== '') &&
    (keyOf(set, 'unit') ?? keyOf(set, 'maker')) !== undefined &&
    isWord(
      extreme,
      'lowest',
      'highest',
      'smallest',
      'largest',
      'greatest',
      'biggest',
      'best',
      'worst',
      'least',
    ) &&
    items.length <= 8 &&
    !hasVerb(items)
  );
}

/** "…, and the Plain's greyscale error, for comparison, averages 5.3": what is said of another set begins. */
function opensOwner({ items, mark, joiner }: Piece): boolean {
  const owner = items.slice(0, 5).findIndex((item) => isWord(item, "'s", "'"));
  return (
    mark === ',' &&
    (joiner === 'and' || joiner === 'but') &&
    owner > 0 &&
    isSetName(items, owner - 1) &&
    items.slice(owner).some((item) => keyOf(item, 'concept') !== undefined)
  );
}

function takesFormat(items: readonly Item[]): boolean {
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
function opensPair({ items, mark, joiner }: Piece, following: Piece | undefined): boolean {
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
function opensWithMaker(items: readonly Item[]): boolean {
  const at = items.slice(0, 3).findIndex((item) => keyOf(item, 'maker') !== undefined);
  return at >= 0 && keyOf(items[at + 1], 'saying') === undefined && !isWord(items[at + 1], "'s");
}

/** "…; it holds on to more light than the Nocthale": complete, whatever stands before the semicolon. */
function isStatement(items: readonly Item[]): boolean {
  const [first, second] = items;
  // "That still beats the Plain, and it leaves the Umbra, with 28.7 % on white, eating dust": one comparison.
  if (isWord(second, 'leaves', 'puts')) return false;
  if (keyOf(first, 'pronoun') === 'it' && /(?:s|ed)$/.test(second?.text ?? '')) return true;
  const opens =
    keyOf(first, 'pronoun') !== undefined || isWord(first, 'the', 'this', 'there', 'both', 'neither');
  return opens && (hasVerb(items) || items.some((item) => keyOf(item, 'standing') !== undefined));
}

/**
 * Parts a sentence into clauses at marks and conjunctions, but only where both sides claim something of their
 * own; leading and trailing phrases stay with the clause they belong to.
 */
export function clausesOf(items: readonly Item[]): Item[][] {
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
    if (
      item.type === 'mark' &&
      (item.text === ',' ||
        item.text === ';' ||
        item.text === ':' ||
        item.text === '—' ||
        item.text === '–' ||
        item.text === '-' ||
        item.text === '…')
    ) {
      if (item.text === '-' && item.glued) continue;
      cut(item.text, '');
      continue;
    }
    if (isSettling(items, at) && current.length > 0) cut('', 'which');
    if (
      !(item.text === 'which' && isWord(current.at(-1), 'of')) &&
      !isRunnerUp(items, at) &&
      !isPartOfVerb(items, at) &&
      strongJoiners.has(item.text) &&
      (item.type === 'word' || item.meanings.length === 0)
    ) {
      if (current.length > 0 || mark === '') cut(current.length > 0 ? '' : mark, item.text);
      else joiner = item.text;
      current.push(item);
      continue;
    }
    current.push(item);
  }
  cut('', '');
  joinPieces(pieces);
  const leaning = pieces.filter(({ items: piece }) => leansToo(piece) || leansAsBefore(piece)).length;
  const clauses: Item[][] = [];
  let pending: Item[] = [];
  for (const [order, piece] of pieces.entries()) {
    const ends = piece.items.some((item) => ['clips', 'rolls-off'].includes(keyOf(item, 'direction') ?? ''));
    // "…, whereas those of the Tarn go the other way"
    const ofOther =
      isWord(piece.items[1], 'those', 'that') && isWord(piece.items[2], 'of') && namesSet(piece.items);
    // "The Plain looks anaemic, while the Umbra covers more than the Hearth"
    const otherActs =
      piece.joiner === 'while' &&
      namesSet(piece.items.slice(0, 4)) &&
      hasVerb(piece.items) &&
      (namesSet(pending) || clauses.length > 0);
    // "Its tint is yellow, where the Plain's leans to green"
    const leansOfOther =
      isWord(piece.items[0], 'where', 'while', 'but') &&
      namesSet(piece.items.slice(0, 4)) &&
      leans(piece.items) &&
      hasVerb(pending);
    const contrasts =
      leansOfOther || otherActs || (piece.joiner === 'whereas' && (hasVerb(piece.items) || ends || ofOther));
    // "Takes HDR10 and HLG, whereas the other only takes HDR10": each side is a statement, with its own set.
    const compares = pending.some(
      (item) =>
        isWord(item, 'matches', 'equals') ||
        keyOf(item, 'verb') === 'exceed' ||
        (keyOf(item, 'standing') ?? keyOf(item, 'equative')) !== undefined,
    );
    const acts = hasVerb(pending) || compares;
    if (contrasts && pending.length > 0 && acts) {
      clauses.push(pending);
      pending = [];
    }
    const strong =
      contrasts ||
      piece.items.some(isAnchor) ||
      deniesTopic(piece.items) ||
      seesTopic(piece.items) ||
      deniesStatistic(piece) ||
      coloursGrey(piece.items) ||
      (leaning > 1 && leans(piece.items)) ||
      leansOfOther ||
      saysPlace(piece.items) ||
      (order > 0 && takesNextPlace(piece.items)) ||
      // "It takes HDR10 and HLG, and the Plain adds HDR10+"
      (piece.mark === ',' && namesSet(piece.items.slice(0, 4)) && takesFormat(piece.items)) ||
      (order > 0 && namesExtreme(piece)) ||
      leansAsBefore(piece.items) ||
      // "…, it leans red all the way up"
      (order > 0 &&
        piece.mark === ',' &&
        leansToo(piece.items) &&
        keyOf(piece.items[0], 'pronoun') !== undefined) ||
      (piece.items.some((item) => keyOf(item, 'standing') !== undefined) &&
        piece.items.some(({ number }) => number?.role === 'window')) ||
      (hasVerb(piece.items) && piece.items.some((item) => keyOf(item, 'panelKind') !== undefined)) ||
      ((piece.joiner !== '' || piece.mark !== '') && order > 0 && echoOf(piece.items) !== undefined) ||
      isNoneOn(piece.items) ||
      countsPart(piece.items) ||
      (piece.joiner !== '' && seesItsOwn(piece.items)) ||
      promisesWhat(piece.items) ||
      (order > 0 && isGapped(piece.items));
    // "Almost all of P3 is covered; BT.2020 to three quarters", "none of this is alarming; the Plain's error averages 5.3"
    const opensAnew =
      (keyOf(piece.items[0], 'format') !== undefined && /^it(?: |$)/.test(piece.items[1]?.text ?? '')) ||
      namesSet(piece.items.slice(0, 3)) ||
      opensWithMaker(piece.items) ||
      // "Uniformity is poor; the bottom left loses 19 %"
      (isWord(piece.items[0], 'the') && isWord(piece.items[1], 'top', 'bottom', 'upper', 'lower')) ||
      (strong && piece.items.some((item) => keyOf(item, 'gamut')));
    const isJoined = piece.mark === ',' && (piece.joiner === 'and' || piece.joiner === 'but');
    const isWhole =
      (piece.mark === ';' || isJoined) &&
      isStatement(piece.joiner === '' ? piece.items : piece.items.slice(1));
    const isParted =
      piece.mark === ';' ||
      // "None of this is alarming, and the Plain's greyscale error averages 5.3"
      (isJoined && (strong || isWhole));
    if (
      isParted &&
      (opensAnew || isWhole) &&
      (hasVerb(pending) ||
        pending.some((item) =>
          ['format', 'lean', 'standing', 'awardWord'].some(
            (kind) => keyOf(item, kind as MeaningKind) !== undefined,
          ),
        ))
    ) {
      clauses.push(pending);
      pending = [];
    }
    const last = clauses[clauses.length - 1];
    if (!strong && opensOwner(piece) && pending.length > 0 && hasVerb(pending)) {
      clauses.push(pending);
      pending = [];
    }
    // "For contrast it trails the Nocthale, which is worth knowing": the remark is no part of the comparison.
    if (!strong && piece.joiner === 'which' && piece.mark === ',' && compares) {
      clauses.push(pending);
      pending = [];
    }
    if (!strong) {
      // "In the Calm mode, errors …" goes with what follows; "…, from 60 % upwards" with what came before.
      const following = pieces[order + 1];
      const opensNext =
        !isSecondOfPair(piece, pending.length > 0 ? pending : last) &&
        piece.joiner !== '' &&
        piece.joiner !== 'with' &&
        following?.mark === ',' &&
        // "…, and the Umbra, which is a third dearer": the set that the relative clause is of.
        (following.joiner === '' || (following.joiner === 'which' && isOnlySet(piece)));
      // "…, the maximum (5.6) is not": what stands before the bracket names its number.
      const names =
        following?.mark === '(' &&
        piece.mark !== '(' &&
        piece.items.some((item) => keyOf(item, 'stat') ?? keyOf(item, 'concept')) &&
        following.items.some((item) => item.number);
      // "…, the Kasulind counters with £549": whose number it is stands before "with".
      const opensWithSet =
        (piece.mark !== '' || piece.joiner === 'while') &&
        following?.joiner === 'with' &&
        (following.mark === '' || piece.joiner === 'while') &&
        piece.items.slice(0, 3).some((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker'));
      const leads =
        last === undefined ||
        opensWithSet ||
        names ||
        // "Lag: 9.6 ms (Plain: 21 ms)"
        (piece.mark === '(' && following?.mark === ':') ||
        opensNext ||
        piece.mark === ';' ||
        piece.mark === '—' ||
        opensPair(piece, following) ||
        opensSets(piece, following) ||
        // "It beats the Plain (4.1) and the Umbra (3.3)": the number in the next bracket is of this set.
        (piece.mark === ')' && following?.mark === '(' && namesSet(piece.items)) ||
        (piece.joiner !== '' && piece.joiner !== 'with' && hasVerb(piece.items));
      // "White varies by 4 %, which I could not see, and at 19 dB(A) it is …": said in passing of what stands before.
      const isPassing =
        piece.joiner === 'which' &&
        last !== undefined &&
        piece.items.some((item) => isWord(item, 'i', 'we')) &&
        piece.items.some((item) => isWord(item, 'could', "couldn't", 'can', "can't", 'cannot'));
      // "…, as is red, while green errs the other way and is undersaturated": the answer is complete.
      const afterEcho =
        (piece.joiner === 'while' || piece.joiner === 'whereas') &&
        following !== undefined &&
        last &&
        echoOf(last) !== undefined;
      if ((leads && !isPassing) || pending.length > 0 || afterEcho) pending.push(...piece.items);
      else last.push(...piece.items);
      continue;
    }
    // "From 2.4 as delivered, the average drops to 0.6": the first of two states.
    const onward = pieces[order + 1];
    if (
      isWord(piece.items[0], 'from') &&
      piece.items.some((item) => keyOf(item, 'stage')) &&
      !hasVerb(piece.items) &&
      onward?.items.some((item) => ['fall', 'rise', 'cut'].includes(keyOf(item, 'verb') ?? '')) &&
      onward.items.some((item, at) => item.number && isWord(onward.items[at - 1], 'to'))
    ) {
      pending.push(...piece.items);
      continue;
    }
    // "At £949, the Kasulind undercuts it": whose price it is says the clause that follows.
    if (
      order === 0 &&
      isWord(piece.items[0], 'at', 'for', 'priced at', 'costing') &&
      piece.items.some((item) => item.number?.role === 'money') &&
      piece.items.filter(isAnchor).length === 1 &&
      !hasVerb(piece.items) &&
      onward?.mark === ',' &&
      onward.joiner === ''
    ) {
      pending.push(...piece.items);
      continue;
    }
    const isColon = piece.mark === ':';
    // "You hardly need a meter to see why: the greys have an obvious tint": the denial ends at the colon.
    if (
      isColon &&
      hasVerb(piece.items) &&
      (isWord(pending[0], 'nor') ||
        (hasVerb(pending) &&
          pending.some((item) => keyOf(item, 'negation') !== undefined) &&
          pending.some((item) => isWord(item, 'need', 'needs', 'needed'))))
    ) {
      clauses.push(pending);
      pending = [];
    }
    // "I wouldn't live with the Plain, which is past 3 from 30 %": the denial is not of what the set does.
    if (
      piece.joiner === 'which' &&
      keyOf(pending.at(-1), 'unit') !== undefined &&
      pending.some((item) => keyOf(item, 'negation') !== undefined)
    ) {
      clauses.push(pending);
      pending = [];
    }
    // "It leans to blue, and not shyly: white comes out at 7,600 K": the colon begins anew.
    if (isColon && pending.length > 0 && leans(pending) && hasVerb(piece.items)) {
      clauses.push(pending);
      pending = [];
    }
    // "Neither covers all of it: the Kasulind gets to 94 %": behind the colon a set is named anew.
    if (isColon && pending.length > 0 && hasVerb(pending) && namesSetFirst(piece.items)) {
      clauses.push(pending);
      pending = [];
    }
    // "It handles HDR10+, which the Kasulind does not": what is repeated of another set stands alone.
    const repeats = (piece.joiner !== '' || piece.mark !== '') && echoOf(piece.items) !== undefined;
    if (repeats && pending.length > 2) {
      clauses.push(pending);
      pending = [];
    }
    // "The Plain is bright, and the Hearth has none": what stands before is said of its own set.
    if (isNoneOn(piece.items) && pending.length > 0 && hasVerb(pending) && namesSet(pending)) {
      clauses.push(pending);
      pending = [];
    }
    const before = pending.length > 0 ? pending : last;
    const joinsList =
      (piece.joiner === 'and' ||
        piece.joiner === 'or' ||
        piece.joiner === 'nor' ||
        (piece.joiner === '' && piece.mark === ',')) &&
      before !== undefined &&
      !hasVerb(piece.items) &&
      pending.length === 0 &&
      listKind(before[before.length - 1]) !== undefined &&
      listKind(piece.items.find((item) => listKind(item) !== undefined)) ===
        listKind(before[before.length - 1]) &&
      !piece.items.some((item) => item.number !== undefined || keyOf(item, 'multiple') !== undefined) &&
      !before.some((item) => keyOf(item, 'house') && piece.items.some((other) => keyOf(other, 'house'))) &&
      !(before.some(saysSeverity) && piece.items.some(saysSeverity));
    if (joinsList && last) last.push(...piece.items);
    else if (isColon && pending.length > 0 && clauses.length === 0) {
      clauses.push([...pending, ...piece.items]);
      pending = [];
    } else {
      clauses.push([...pending, ...piece.items]);
      pending = [];
    }
  }
  if (pending.length > 0) {
    const last = clauses[clauses.length - 1];
    const isApart = isWord(items[items.indexOf(pending[0]!) - 1], ';');
    if (last && !hasVerb(pending) && !isApart) last.push(...pending);
    else clauses.push(pending);
  }
  return clauses;
}
