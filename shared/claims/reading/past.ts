import { type Item, isWord } from './items.ts';
import { meets, needBits } from './needs.ts';
import { isStatement } from './pieceStarts.ts';
import type { Scene } from './scene.ts';

/** The condition that such words name, and that no run answers to. */
export const earlierTime = 'at the earlier time that the words name';

const ofOld: ReadonlySet<string> = new Set(['old', 'earlier', 'previous', 'first', 'original']);

const ofUpdate = needBits([
  { words: [...ofOld, 'before'] },
  { words: ['firmware', 'update', 'patch', 'fix'] },
]);

/** "Before the update", "with the old firmware": an earlier state that a run may stand for. */
export function speaksOfUpdate({ items, signs }: Pick<Scene, 'items' | 'signs'>): boolean {
  if (!meets(signs, ofUpdate)) return false;
  return items.some((item, at) => {
    const next = items[at + 1];
    if (ofOld.has(item.text))
      return isWord(next, 'firmware') && isWord(items[at - 1], 'the', 'its', 'an', 'our');
    return (
      item.text === 'before' &&
      isWord(next, 'the', 'its') &&
      items.slice(at + 2, at + 5).some((word) => isWord(word, 'update', 'firmware', 'patch', 'fix'))
    );
  });
}

/** "…, but the error isn't below 3": whole, and of what the set does now, whatever it did before. */
export function statesPresent(items: readonly Item[]): boolean {
  const said = isWord(items[0], 'and', 'but', 'while', 'though', 'although', 'yet', ';')
    ? items.slice(1)
    : items;
  return (
    isStatement(said) && !said.some((item) => /^(?:was|were|had|cost|wasn't|weren't|hadn't)$/.test(item.text))
  );
}

const past = needBits([
  { words: ['used', 'ran', 'stood', 'sat', 'lay', 'averaged', 'formerly', 'previously'] },
]);

/** "The worst level used to be off by 8.1", "formerly": not what the set does now. */
export function speaksOfThePast(
  { items, signs }: Pick<Scene, 'items' | 'signs'>,
  sentence: readonly Item[],
): boolean {
  if (!meets(signs, past)) return false;
  return items.some((item, at) => {
    if (item.text === 'used')
      return (
        isWord(items[at + 1], 'to') &&
        isWord(items[at + 2], 'be', 'have', 'reach', 'cost', 'average', 'peak', 'measure', 'show', 'draw')
      );
    // "The curve, which ran at 2.27, now runs at 2.21"
    if (/^(?:ran|stood|sat|lay|averaged)$/.test(item.text))
      return (
        sentence.some((word) => isWord(word, 'now', 'today')) &&
        !items.some((word) => isWord(word, 'now', 'today'))
      );
    return item.text === 'formerly' || item.text === 'previously';
  });
}
