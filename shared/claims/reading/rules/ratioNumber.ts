import type { BoundOp, StatedNumber } from '../../../contract/check.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { statedMultiple, statedNumber, tidy } from '../stated.ts';

/** "twice", "a third": a word that stands for a number of times. */
export interface Multiple {
  item: Item;
  entry: { x: number; low: number; high: number };
}

export function multipleAt(scene: Scene): Multiple | undefined {
  for (const [at, item] of scene.items.entries()) {
    const meaning = meaningOf(item, 'multiple');
    if (!meaning || scene.used.has(item)) continue;
    // "At half the price the Plain is brighter": of the price, and no part of how bright it is.
    const ofPrice =
      isWord(scene.items[at - 1], 'at', 'for') &&
      (/ the$/.test(item.text) || isWord(scene.items[at + 1], 'the')) &&
      scene.items
        .slice(at + 1, at + 3)
        .some((word) => keyOf(word, 'concept') === 'price' || isWord(word, 'price', 'money')) &&
      scene.items.slice(at + 1).some((word) => keyOf(word, 'comparative') !== undefined);
    if (ofPrice) continue;
    const entry = meaning.data as { x: number; low: number; high: number };
    return { item, entry: entry.x < 1 && isOnTop(scene, at) ? onTop(entry) : entry };
  }
  return undefined;
}

/** "Half as much light again", "a third as bright again": what is told comes on top of the whole. */
function isOnTop(scene: Scene, at: number): boolean {
  const again = scene.items.slice(at + 1, at + 6).findIndex((item) => isWord(item, 'again'));
  if (again < 0) return false;
  const between = scene.items.slice(at, at + again + 1);
  return between.some((item) => /(?:^| )as(?: |$)/.test(item.text)) && !between.some((item) => item.number);
}

function onTop({ x, low, high }: Multiple['entry']): Multiple['entry'] {
  return { x: tidy(1 + x), low: tidy(1 + low), high: tidy(1 + high) };
}

export function hedgeBefore(scene: Scene, item: Item): Item | undefined {
  let at = scene.items.indexOf(item) - 1;
  while (at >= 0 && isWord(scene.items[at], 'a', 'the', 'be')) at -= 1;
  return keyOf(scene.items[at], 'hedge') ? scene.items[at] : undefined;
}

/** "by £90", "by almost £90", "by more than £90": the number is a distance, not a value. */
export function isLedByBy(scene: Scene, item: Item): boolean {
  let at = scene.items.indexOf(item) - 1;
  while (
    keyOf(scene.items[at], 'hedge') !== undefined ||
    keyOf(scene.items[at], 'comparator') !== undefined ||
    isWord(scene.items[at], 'a', 'some', 'just', 'only', 'the', 'full', 'whole', 'mere', 'good', 'another')
  )
    at -= 1;
  return isWord(scene.items[at], 'by');
}

/** What a number or a multiple says of the quotient a / b, with its rounding. */
export function ratioStated(
  number: Item | undefined,
  multiple: Multiple | undefined,
  hedgeItem: Item | undefined,
  isComparative: boolean,
  lower: boolean,
): StatedNumber | undefined {
  if (number) {
    const phrase = number.number!;
    if (phrase.dimension === 'times') {
      // Of "almost" only half, twice, a third and a quarter have the wider range (`judging.md`, "Rounding").
      const hedge = phrase.hedge === 'notFarOff' ? 'almost' : phrase.hedge;
      const stated = statedNumber(
        {
          x: phrase.x,
          place: phrase.place,
          ...(hedge && { hedge }),
          ...(phrase.hedgeText && { hedgeText: phrase.hedgeText }),
        },
        'plain',
        phrase.x === 2,
      );
      return isComparative && lower
        ? { ...stated, x: tidy(1 / stated.x), low: tidy(1 / stated.high), high: tidy(1 / stated.low) }
        : stated;
    }
    const stated = statedNumber(
      {
        x: phrase.x,
        place: phrase.place,
        ...(phrase.hedge && { hedge: phrase.hedge }),
        ...(phrase.hedgeText && { hedgeText: phrase.hedgeText }),
      },
      'plain',
    );
    const map = (value: number) =>
      tidy(isComparative ? (lower ? 1 - value / 100 : 1 + value / 100) : value / 100);
    const flip = isComparative && lower;
    return {
      ...stated,
      x: map(stated.x),
      low: map(flip ? stated.high : stated.low),
      high: map(flip ? stated.low : stated.high),
      ...(flip && { lowOpen: stated.highOpen, highOpen: stated.lowOpen }),
      place: tidy(phrase.place / 100),
    };
  }
  if (!multiple) return undefined;
  const { entry } = multiple;
  const stated = statedMultiple(entry, keyOf(hedgeItem, 'hedge'), hedgeItem?.text);
  if (!isComparative) return stated;
  if (entry.x >= 1)
    return lower
      ? { ...stated, x: tidy(1 / entry.x), low: tidy(1 / stated.high), high: tidy(1 / stated.low) }
      : stated;
  return lower
    ? {
        ...stated,
        x: tidy(1 - entry.x),
        low: tidy(1 - stated.high),
        high: tidy(1 - stated.low),
        ...(stated.highOpen && { lowOpen: true, highOpen: undefined }),
        ...(stated.lowOpen && { highOpen: true, lowOpen: undefined }),
      }
    : { ...stated, x: tidy(1 + entry.x), low: tidy(1 + stated.low), high: tidy(1 + stated.high) };
}

const opposite: Readonly<Record<BoundOp, BoundOp>> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };
const mirrored: Readonly<Record<BoundOp, BoundOp>> = { '<': '>', '<=': '>=', '>': '<', '>=': '<=' };

/** The inequality of a comparator; "well over" has its scale. Undefined for "up to" and none. */
export function limitOperator(
  comparator: string | undefined,
  denied: boolean,
): { op: BoundOp; scale: number } | undefined {
  if (comparator === undefined || comparator === 'upTo') return undefined;
  const op = (comparator === '<<' ? '<' : comparator === '>>' ? '>' : comparator) as BoundOp;
  const scale = comparator === '<<' ? 0.8 : comparator === '>>' ? 1.25 : 1;
  return { op: denied ? opposite[op] : op, scale };
}

/** "more than twice", "at least 30 % brighter", "less than half": a limit on the quotient a / b. */
export function limitOn(
  scene: Scene,
  number: Item | undefined,
  multiple: Multiple | undefined,
  { comparative, lower, denied }: { comparative: boolean; lower: boolean; denied: boolean },
): { x: number; op: BoundOp; item?: Item } | undefined {
  const anchor = number ?? multiple?.item;
  const before = anchor && scene.items[scene.items.indexOf(anchor) - 1];
  const found = limitOperator(
    number ? number.number!.comparator : keyOf(before, 'hedge') ? undefined : keyOf(before, 'comparator'),
    denied,
  );
  if (!found) return undefined;
  const phrase = number?.number;
  const isPart = phrase ? phrase.dimension === 'percent' : multiple!.entry.x < 1;
  const said = (phrase ? (isPart ? phrase.x / 100 : phrase.x) : multiple!.entry.x) * found.scale;
  const flip = comparative && lower;
  const x = !comparative ? said : isPart ? (lower ? 1 - said : 1 + said) : lower ? 1 / said : said;
  return {
    x: tidy(x),
    op: flip ? mirrored[found.op] : found.op,
    ...(keyOf(before, 'comparator') && { item: before! }),
  };
}

/** A denial before the number that no hedge or comparator takes up. */
export function denialOf(scene: Scene, anchor: Item): Item | undefined {
  return scene.items.find(
    (item) =>
      item.index < anchor.index &&
      keyOf(item, 'negation') !== undefined &&
      keyOf(item, 'hedge') === undefined &&
      keyOf(item, 'comparator') === undefined,
  );
}
