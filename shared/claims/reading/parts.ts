import type { Item } from './items.ts';
import { partWords } from './lexicon/parts.ts';
import { expandPhrases } from './phraseTrie.ts';

export type Part = keyof typeof partWords;

const sets = new Map<Part, ReadonlySet<string>>();

function setOf(part: Part): ReadonlySet<string> {
  let set = sets.get(part);
  if (!set) {
    set = new Set(expandPhrases(partWords[part]).map((words) => words.join(' ')));
    sets.set(part, set);
  }
  return set;
}

/** Is it a word that may play this part (`lexicon/parts.ts`)? */
export function plays(item: Item | undefined, part: Part): boolean {
  return item !== undefined && setOf(part).has(item.text);
}
