import { isAmount, isSet } from './counted.ts';
import { type Item, isWord, keyOf } from './items.ts';
import type { Part } from './labelList.ts';

export interface FurtherSet {
  start: number;
  end: number;
  part: Part;
}

/** "undercuts", "beats", "trails": a word that takes the other set as its object. */
function takesSet(item: Item | undefined): boolean {
  return (
    isWord(item, 'undercuts', 'undercutting') ||
    keyOf(item, 'verb') === 'exceed' ||
    (keyOf(item, 'standing') !== undefined && /^(?:beat|trail|lead|outshine|top|pip)/.test(item?.text ?? ''))
  );
}

/** Where the amount stands in "[the] Plain by [exactly] £90"; −1 where the words are others. */
function amountBehind(items: readonly Item[], set: number): number {
  if (!isWord(items[set + 1], 'by')) return -1;
  let at = set + 2;
  while (isWord(items[at], 'exactly', 'just', 'only', 'precisely', 'a') || keyOf(items[at], 'hedge')) at += 1;
  const amount = items[at];
  return amount && (isAmount(amount) || keyOf(amount, 'multiple') !== undefined) ? at : -1;
}

/** "It undercuts the Plain by £90 and the Umbra by £160": the second half, with the verb that both share. */
export function furtherSetAt(items: readonly Item[], set: number): FurtherSet | undefined {
  const start = isWord(items[set - 1], 'the') ? set - 1 : set;
  if (!isWord(items[start - 1], 'and', ',', 'but')) return undefined;
  const amount = amountBehind(items, set);
  if (amount < 0) return undefined;
  const verb = items.slice(0, start).findLastIndex((item, at) => {
    const object = isWord(items[at + 1], 'the') ? at + 2 : at + 1;
    return takesSet(item) && isSet(items[object]) && amountBehind(items, object) > 0;
  });
  if (verb < 0) return undefined;
  const shared = items[verb]!;
  const part = { items: [shared, ...items.slice(start, amount + 1)], borrowed: new Set([shared]) };
  return { start, end: amount + 1, part };
}
