import { isWord, keyOf } from './items.ts';
import { meets, needBits } from './needs.ts';
import type { Scene } from './scene.ts';

const credits = [
  'hats',
  'hat',
  'cap',
  'hand',
  'credit',
  'kudos',
  'praise',
  'applause',
  'bow',
  'salute',
  'due',
  'toast',
];
const crediting = needBits([{ kinds: ['unit', 'maker'] }, { words: credits }]);

/** "Hats off to the Kasulind: it showed no blooming": behind the colon the pronoun is the set that is given its due. */
export function creditedSet({ sentence, items, sentenceSigns }: Scene): string | undefined {
  if (!meets(sentenceSigns, crediting)) return undefined;
  const mark = sentence.findLast((item) => isWord(item, ':', '–', '—', ';'));
  const isTakenUp = items.some(
    (item) => mark !== undefined && item.index > mark.index && keyOf(item, 'pronoun') === 'it',
  );
  if (!mark || !isTakenUp) return undefined;
  const lead = sentence.slice(0, mark.index);
  const credit = lead.find((item) => isWord(item, ...credits));
  const sets = lead.filter((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker'));
  const [set] = sets;
  if (!credit || sets.length !== 1 || !set || credit.index > set.index) return undefined;
  const id = keyOf(set, 'unit') ?? keyOf(set, 'maker')!;
  return id.includes('|') ? undefined : id;
}
