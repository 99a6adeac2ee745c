import type { Bound, BoundOp, Check } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';

/** How many levels a clause says something of. */
export interface LevelCount {
  n: number;
  /** "At least two": more may be; "at most two": fewer may be; "all but two": what is said is said of the others */
  side: 'exactly' | 'least' | 'most' | 'others';
  items: Item[];
}

/** Is this number, or word for one, a count of levels, steps or patches? The nouns that say so, with it. */
function countAt(scene: Scene, at: number): Item[] | undefined {
  const { items } = scene;
  const behind = items.slice(at + 1, at + 5);
  const noun = behind.findIndex((word) => plays(word, 'levels'));
  const between = behind.slice(0, noun);
  if (
    noun >= 0 &&
    between.every(
      (word) => word.number || plays(word, 'partitive') || plays(word, 'verdict') || isPlaced(word),
    )
  )
    return [items[at]!, ...between, behind[noun]!];
  // "Of the eleven steps, three are visible"
  const before = items.slice(0, at).findLast((word) => plays(word, 'levels'));
  const next = items[at + 1];
  const stated = plays(next, 'colouring') || keyOf(next, 'verb') === 'exceed';
  const partOf =
    before && items.slice(0, before.index).some((word) => isWord(word, 'of', 'of the', 'out of'));
  return stated && partOf ? [before, items[at]!] : undefined;
}

/** "the brightest two", "the two brightest" */
function isPlaced(word: Item | undefined): boolean {
  return keyOf(word, 'superlative') !== undefined || plays(word, 'placed');
}

/** "No step but the last", "every step except 100 %": which one is spared, a count does not ask. */
function sparesOne(items: readonly Item[]): boolean {
  return items.some((item, at) => {
    const all = ['all', 'none', 'never'].includes(keyOf(item, 'stat') ?? '');
    if (!all || !plays(items[at + 1], 'levels')) return false;
    const [sparing, next, word] = items.slice(at + 2, at + 5);
    if (!plays(sparing, 'excepting') && !isWord(sparing, 'but')) return false;
    const spared = isWord(next, 'the', 'for') ? word : next;
    return (
      spared?.number?.dimension === 'percent' ||
      isPlaced(spared) ||
      isWord(spared, 'last', 'first', 'top', 'bottom')
    );
  });
}

/** "Only the brightest step is past 3": which one that is, a count does not ask. */
function namesOneLevel(items: readonly Item[]): boolean {
  return items.some(
    (item, at) =>
      isWord(item, 'only', 'just') &&
      isWord(items[at + 1], 'the') &&
      (isPlaced(items[at + 2]) || isWord(items[at + 2], 'last', 'first', 'top', 'bottom')) &&
      plays(items[at + 3], 'levels'),
  );
}

/** "Bar the last two", "but the brightest one" */
function isSpared(items: readonly Item[], at: number): boolean {
  return items
    .slice(Math.max(0, at - 4), at)
    .some((entry) => plays(entry, 'excepting') || isWord(entry, 'but'));
}

function sideOf(comparator: string | undefined): LevelCount['side'] | undefined {
  if (comparator === undefined) return 'exactly';
  return comparator === '>=' ? 'least' : comparator === '<=' ? 'most' : undefined;
}

/**
 * "Two of the levels are over 3", "just one patch exceeds 4": how many levels. Undefined where the clause counts none,
 * null where it does in words that no check asks ("about five", "not two").
 */
export function countOfLevels(scene: Scene): LevelCount | null | undefined {
  if (sparesOne(scene.items) || namesOneLevel(scene.items)) return null;
  for (const [at, item] of scene.items.entries()) {
    const { number } = item;
    if (isWord(item, 'no two') && countAt(scene, at)) return null;
    // "All levels bar the last two": which ones they are, a count does not ask.
    const isEnd =
      isWord(scene.items[at - 1], 'last', 'first', 'top', 'bottom') || isPlaced(scene.items[at - 1]);
    if (number && isEnd && isSpared(scene.items, at)) return null;
    // "…, but two levels are over 3": what opens the clause spares nothing.
    const isBehind = at > 1 && plays(scene.items[at - 1], 'excepting');
    if (isBehind && !isWord(scene.items[at - 1], 'all but')) continue;
    // "Only one of the levels": alone it says that there is such a level.
    const single =
      isWord(item, 'single') || (isWord(item, 'one of the') && isWord(scene.items[at - 1], 'only', 'just'));
    if (!single && (number?.dimension !== '' || number.role !== undefined || number.outOf !== undefined))
      continue;
    // "Of the 24 patches": how many there are.
    const isWhole = plays(scene.items[at - 1], 'partitive') && !isPlaced(scene.items[at + 1]);
    const items = isWhole ? undefined : countAt(scene, at);
    if (!items) continue;
    const n = number?.x ?? 1;
    const side = sideOf(number?.comparator);
    const denied = scene.items
      .slice(0, at)
      .some((entry) => keyOf(entry, 'negation') ?? (keyOf(entry, 'stat') === 'none' || undefined));
    // "The brightest two steps": which ones they are, a count does not ask.
    const placed = isPlaced(scene.items[at - 1]) || items.some(isPlaced);
    if (!side || placed || number?.hedge || number?.to || denied || n < 1 || !Number.isInteger(n))
      return null;
    return { n, side: isWord(scene.items[at - 1], 'all but') ? 'others' : side, items };
  }
  return undefined;
}

/** So many levels are past the limit, and no more. */
export function countCheck(
  scene: Scene,
  quantity: Quantity,
  { n, side }: LevelCount,
  limit: { op: BoundOp; x: number; unit?: string; houseWord?: string },
): Check {
  const { op, x, unit, houseWord } = limit;
  const { at: _at, ...part } = selectorOf(scene, quantity, 'over');
  const bound = (stat: 'any' | 'all', by: BoundOp): Bound => ({
    operand: operandOf(scene, quantity, { ...part, stat, exceptions: n }),
    op: by,
    x,
    ...(unit && { unit }),
  });
  if (side === 'others')
    return { kind: 'bound', bounds: [bound('all', op)], ...(houseWord && { houseWord }) };
  const some = side === 'most' ? [] : [bound('any', op)];
  const rest = side === 'least' ? [] : [bound('all', opposite[op])];
  return { kind: 'bound', bounds: [...some, ...rest], ...(houseWord && { houseWord }) };
}

export const opposite: Readonly<Record<BoundOp, BoundOp>> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };
