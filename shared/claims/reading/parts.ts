import type { Item } from './items.ts';
import { partWords } from './lexicon/parts.ts';
import type { Need } from './needs.ts';
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

/** What a clause with such a word shows. */
export function needOf(part: Part): Need {
  return { words: [...setOf(part)] };
}

/** The first word, or phrase of up to three, that may play this part. */
export function findPart(items: readonly Item[], part: Part): Item[] | undefined {
  const set = setOf(part);
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    let text = item.text;
    if (set.has(text)) return [item];
    for (let end = at + 1; end < Math.min(items.length, at + 3); end += 1) {
      text += ` ${items[end]!.text}`;
      if (set.has(text)) return items.slice(at, end + 1);
    }
  }
  return undefined;
}
