import { carriedConcept } from '../carry.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';

/** What a comparing word compares, and which way is more of it. An empty concept takes the clause's own. */
export interface ComparativeEntry {
  concept: string;
  direction: 'higher' | 'lower';
}

/** A comparing word in its clause: "brighter", with the key of its meaning and what it compares. */
export interface ComparingWord {
  item: Item;
  key: string;
  entry: ComparativeEntry;
}

/**
 * Said of blacks, "brighter", "darker" and "deep" compare the luminance of black: neither the peak nor how thick the
 * cabinet is.
 */
function saidOfBlacks(scene: Scene, entry: ComparativeEntry): ComparativeEntry {
  const named = firstWith(scene, 'concept', 'black');
  // "Its black measures 0.041 nits (only the Plain's is deeper)"
  const takenUp =
    entry.concept === 'fact:depth' && !hasKey(scene, 'concept', 'black') && speaksOfBlack(scene);
  if (!(named || takenUp) || firstWith(scene, 'concept', 'peak', 'sdrWhite')) return entry;
  if (entry.concept === 'peak') return { concept: 'black', direction: entry.direction };
  // "Its blacks are lighter": no weight.
  if (
    entry.concept === 'fact:depth' ||
    (named && entry.concept === 'fact:weight' && entry.direction === 'lower')
  )
    return { concept: 'black', direction: entry.direction === 'higher' ? 'lower' : 'higher' };
  return entry;
}

/** Was black what was spoken of just before, and does the clause name nothing that is thick? */
function speaksOfBlack(scene: Scene): boolean {
  const isOfSize = scene.items.some(
    (item) => keyOf(item, 'fact') !== undefined || item.number?.dimension === 'length',
  );
  return !isOfSize && (scene.concept ?? carriedConcept(scene.carry)) === 'black';
}

/** What a comparative compares here: "less deep" is the adjective turned round, "brighter" of blacks is no peak. */
export function entryOf(scene: Scene, item: Item, given: ComparativeEntry): ComparativeEntry {
  const word = isWord(item, 'less', 'more') ? scene.items[scene.items.indexOf(item) + 1] : undefined;
  const adjective = meaningOf(word, 'equative')?.data as ComparativeEntry | undefined;
  if (!word || !adjective?.concept) return saidOfBlacks(scene, given);
  scene.used.add(word);
  const entry = saidOfBlacks(scene, adjective);
  if (isWord(item, 'more')) return entry;
  return { ...entry, direction: entry.direction === 'higher' ? 'lower' : 'higher' };
}
