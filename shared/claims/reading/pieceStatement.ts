import { namesSet, type Piece } from './clausePieces.ts';
import { echoOf } from './echoWords.ts';
import { isGapped } from './gapped.ts';
import { coloursGrey } from './hueSaid.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { meets, type Need, type NeedBits, type Needs, needBits, signsOfItems } from './needs.ts';
import {
  countsPart,
  deniesStatistic,
  deniesTopic,
  hueLeans,
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

/** A way in which a piece claims something of its own, and what a piece that lacks it cannot show. */
interface Statement {
  needs: Needs;
  /** @param leaning how many pieces of the sentence say where a colour leans */
  states(piece: Piece, leaning: number): boolean;
}

const ofSet: Need = { kinds: ['unit', 'maker'] };
const ofPlace: Need = { kinds: ['ordinal'], words: ['last'] };

const statements = withBits([
  { needs: [{ kinds: ['topic'] }], states: ({ items }) => deniesTopic(items) || seesTopic(items) },
  { needs: [{ kinds: ['stat'] }], states: (piece) => deniesStatistic(piece) },
  { needs: [{ kinds: ['hue'] }], states: ({ items }) => coloursGrey(items) || leansAsBefore(items) },
  { needs: [{ kinds: ['lean'] }], states: ({ items }, leaning) => leaning > 1 && leans(items) },
  { needs: [{ kinds: ['lean'] }, { kinds: ['hue'] }], states: ({ items }) => hueLeans(items) },
  { needs: [ofPlace], states: ({ items }) => saysPlace(items) },
  {
    // "On brightness it wins; on contrast it loses to the Kasulind"
    needs: [{ kinds: ['standing'] }, { kinds: ['concept'] }],
    states: ({ items, mark }) =>
      mark === ';' &&
      isWord(items[0], 'on', 'in', 'for') &&
      !items.some(({ number }) => number !== undefined) &&
      items.some((item) => keyOf(item, 'standing') !== undefined) &&
      items.some((item) => keyOf(item, 'concept') !== undefined),
  },
  {
    // "The curve clips, and it does so from 90 %"
    needs: [{ words: ['so'] }, { words: ['does', 'did'] }, { kinds: ['number'] }],
    states: ({ items, joiner }) =>
      joiner === 'and' &&
      items.some((item, at) => isWord(item, 'so') && isWord(items[at - 1], 'does', 'did')),
  },
  {
    // "It covers 97 % of P3, which puts it ahead of the Kasulind"
    needs: [{ kinds: ['standing'] }, { words: ['which'] }],
    states: ({ items }) =>
      isWord(items[0], 'which') &&
      isWord(items[1], 'puts', 'put', 'places', 'placed', 'leaves', 'left') &&
      items.some((item) => keyOf(item, 'standing') !== undefined),
  },
  {
    // "It takes HDR10 and HLG, and the Plain adds HDR10+"
    needs: [ofSet],
    states: ({ items, mark }) => mark === ',' && namesSet(items.slice(0, 4)) && takesFormat(items),
  },
  {
    needs: [{ kinds: ['standing'] }, { kinds: ['number'] }],
    states: ({ items }) =>
      items.some((item) => keyOf(item, 'standing') !== undefined) &&
      items.some(({ number }) => number?.role === 'window'),
  },
  {
    needs: [{ kinds: ['panelKind'] }],
    states: ({ items }) => hasVerb(items) && items.some((item) => keyOf(item, 'panelKind') !== undefined),
  },
  { needs: [{ words: ['none'] }], states: ({ items }) => isNoneOn(items) },
  {
    // "…, and from 45° we saw none at all"
    needs: [{ words: ['none', 'none at all'] }, { kinds: ['number'] }],
    states: ({ items, joiner }) =>
      joiner === 'and' &&
      items.some(({ number }) => number?.dimension === 'angle') &&
      items.some((item) => isWord(item, 'saw', 'found', 'noticed', 'is', 'was')),
  },
  { needs: [{ kinds: ['number'] }, { words: ['of'] }], states: ({ items }) => countsPart(items) },
  { needs: [{ kinds: ['severity'] }], states: ({ items, joiner }) => joiner !== '' && seesItsOwn(items) },
  { needs: [{ words: ['what'] }], states: ({ items }) => promisesWhat(items) },
]);

/** What is a statement only behind another: a place, an extreme, an echo, a number without its verb. */
const statementsBehind = withBits([
  { needs: [ofPlace, ofSet], states: ({ items }) => takesNextPlace(items) },
  { needs: [ofSet], states: (piece) => namesExtreme(piece) },
  {
    // "…, it leans red all the way up"
    needs: [{ kinds: ['lean'] }, { kinds: ['pronoun'] }],
    states: ({ items, mark }) => mark === ',' && leansToo(items) && keyOf(items[0], 'pronoun') !== undefined,
  },
  {
    needs: [{ kinds: ['unit', 'maker', 'hue', 'pronoun'] }],
    states: ({ items, mark, joiner }) =>
      ((joiner !== '' || mark !== '') && echoOf(items) !== undefined) || isGapped(items),
  },
]);

function withBits(table: readonly Statement[]): { needs: NeedBits; states: Statement['states'] }[] {
  return table.map(({ needs, states }) => ({ needs: needBits(needs), states }));
}

/**
 * Does a piece claim something of its own, beside what the pieces around it claim?
 * @param isFirst whether it begins the sentence
 * @param leaning how many pieces of the sentence say where a colour leans
 */
export function statesOwn(piece: Piece, isFirst: boolean, leaning: number): boolean {
  if (piece.items.some(isAnchor)) return true;
  const signs = signsOfItems(piece.items);
  return (
    statements.some(({ needs, states }) => meets(signs, needs) && states(piece, leaning)) ||
    (!isFirst && statementsBehind.some(({ needs, states }) => meets(signs, needs) && states(piece, leaning)))
  );
}
