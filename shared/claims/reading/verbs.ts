import { type Item, isWord, keyOf } from './items.ts';

/** Does the clause say what something is or does? */
export function hasVerb(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      keyOf(item, 'verb') !== undefined ||
      keyOf(item, 'saying') !== undefined ||
      isWord(
        item,
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
      ),
  );
}
