import { type Item, keyOf } from './items.ts';

/** Verbs of being, having and measuring that are no entries of the lexicon */
const plainVerbs = new Set([
  'is',
  'are',
  'was',
  'were',
  'has',
  'have',
  'be',
  'looks',
  'look',
  'takes',
  'take',
  "'s",
  'does',
  'do',
  'can',
  'shows',
  'see',
  'averages',
  'needs',
  'draws',
  'draw',
  'runs',
  'weighs',
  'measures',
  'costs',
  'tracks',
  'follows',
  'suffers',
  'appears',
  'supports',
  'scores',
  'saturates',
  'beats',
  'goes',
  "isn't",
  "aren't",
  "doesn't",
  "don't",
  "hasn't",
]);

/** Does the clause say what something is or does? */
export function hasVerb(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      plainVerbs.has(item.text) || keyOf(item, 'verb') !== undefined || keyOf(item, 'saying') !== undefined,
  );
}
