import { type Item, isWord } from './items.ts';
import type { Scene } from './scene.ts';
import { hasVerb } from './verbs.ts';
import { startsWithVerb } from './whoseClause.ts';

/** The clause that a new one leans on: the one before it, or, behind what is said in passing, the one before that. */
export function leansOn(
  scenes: readonly Scene[],
  clause: readonly Item[],
  sentence: readonly Item[],
): Scene | null {
  const last = scenes.at(-1) ?? null;
  if (!last) return null;
  return behindDashes(scenes, clause, sentence) ?? behindAside(last, clause) ?? last;
}

/** "It covers 98 % – more than the Plain, and the Umbra has 84 % – and 72 % of BT.2020": across what two dashes enclose. */
function behindDashes(
  scenes: readonly Scene[],
  clause: readonly Item[],
  sentence: readonly Item[],
): Scene | undefined {
  const dashes = sentence.filter((item) => isWord(item, '–', '—') && !item.glued);
  const [opening, closing] = dashes;
  const first = clause[0]?.index ?? 0;
  if (!opening || !closing || dashes.length !== 2 || closing.index !== first - 1) return undefined;
  return scenes.findLast(({ items }) => (items[0]?.index ?? 0) < opening.index);
}

const prepositions = ['from', 'with', 'at', 'after', 'despite', 'given'];

/** "Contrast reaches 4,880:1, from a full white of 300 nits, and is thus twice the Plain's": the verb goes on with the first. */
function behindAside({ items, previous }: Scene, clause: readonly Item[]): Scene | undefined {
  if (!previous || !isWord(clause[0], 'and', 'but') || !startsWithVerb(clause)) return undefined;
  return isWord(items[0], ...prepositions) && !hasVerb(items) ? previous : undefined;
}
