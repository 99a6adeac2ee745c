import { type Item, isWord } from './items.ts';
import type { Scene } from './scene.ts';

const counts: Readonly<Record<string, number>> = { both: 2, neither: 2 };

/**
 * The sets that "both", "neither", "the other two" and "all five" mean where nothing leaves a doubt: those that the
 * sentence before named, those that the review compares, or all that there are. Undefined where it could be others.
 */
export function knownGroup(
  { context, carry }: Pick<Scene, 'context' | 'carry'>,
  first: Item,
  second: Item | undefined,
): readonly string[] | undefined {
  const { own, against } = context;
  const all = context.units.map(({ id }) => id);
  const rivals = against && against.length > 0 ? against : all.filter((id) => id !== own);
  const said = [first, second].find(({ number } = first) => number !== undefined)?.number?.x;
  const others = isWord(first, 'others', 'other', 'the others', 'the other') || isRival(second);
  const n = said ?? counts[first.text];
  if (others) return n === undefined || n === rivals.length ? rivals : undefined;
  if (n === undefined) return undefined;
  if (carry.sets?.length === n) return carry.sets;
  if (against?.length === n - 1) return [own, ...against];
  return all.length === n ? all : undefined;
}

function isRival(item: Item | undefined): boolean {
  return isWord(item, 'rival', 'rivals');
}
