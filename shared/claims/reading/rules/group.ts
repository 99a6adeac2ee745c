import type { Cohort } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { othersThan } from '../knownGroup.ts';
import type { Scene } from '../scene.ts';
import { splitVariant } from '../variant.ts';

/**
 * The other sets that make a group of `n` with the one that the clause is about: those of the review, this review's own
 * among them, else all of the library.
 */
export function groupOf(scene: Scene, n: number): Cohort | undefined {
  const { context } = scene;
  if (context.against && context.against.length + 1 === n) {
    const units = othersThan(scene, splitVariant(scene.unit).unit ?? context.own);
    return units && { units };
  }
  return context.units.length === n ? {} : undefined;
}

const collectives: Readonly<Record<string, number>> = { pair: 2, duo: 2, trio: 3, threesome: 3, quartet: 4 };

/** "the quickest of the three", "among the four": the number of sets in the group, and its words. */
export function groupNamed(scene: Scene): { n: number; items: Item[] } | undefined {
  for (const [at, item] of scene.items.entries()) {
    const { number } = item;
    const several = collectives[item.text];
    if (several !== undefined && isWord(scene.items[at - 1], 'the', 'this', 'our'))
      return { n: several, items: [item] };
    if (number?.dimension !== '' || number.x < 2 || number.x > 20 || (number.role && number.role !== 'value'))
      continue;
    const before = scene.items[at - 1];
    const lead = scene.items[at - 2];
    const article =
      isWord(before, 'the', 'these', 'those', 'our', 'all') &&
      (isWord(lead, 'of', 'among', 'amongst', 'between', 'from') || / of$/.test(lead?.text ?? ''));
    if (!article && !isWord(before, 'among', 'amongst')) continue;
    const next = scene.sentence[item.index + 1]?.type === 'mark' ? undefined : scene.items[at + 1];
    if (
      next &&
      next.type !== 'mark' &&
      !isWord(
        next,
        'sets',
        'televisions',
        'tvs',
        'models',
        'here',
        'we',
        'it',
        'in',
        'on',
        'for',
        'by',
        'and',
        'but',
        'at',
        'with',
        'tested',
        'screens',
        'rivals',
      )
    )
      continue;
    return { n: number.x, items: [item] };
  }
  return groupOfLead(scene);
}

/** "Of the three, the Hearth is the brightest": the lead serves the whole sentence. */
function groupOfLead({ sentence }: Scene): { n: number; items: Item[] } | undefined {
  const [lead, article, count] = sentence;
  const { number } = count ?? {};
  const leads =
    isWord(lead, 'of', 'among', 'amongst') && isWord(article, 'the', 'these', 'those', 'our', 'all');
  if (!leads || number?.dimension !== '' || number.x < 2 || number.x > 20) return undefined;
  if (number.role !== undefined && number.role !== 'value' && number.role !== 'cohort') return undefined;
  const next = sentence[3];
  const isAlone =
    next?.type === 'mark' || isWord(next, 'the', 'it', 'sets', 'televisions', 'tvs', 'models', 'screens');
  return isAlone || keyOf(next, 'unit') !== undefined || keyOf(next, 'maker') !== undefined
    ? { n: number.x, items: [] }
    : undefined;
}

/** "than either rival", "than the other two": the sets that the review compares with, when there are two. */
export function rivalsAfter(
  scene: Scene,
  at: number,
): { cohort: Cohort | undefined; items: Item[] } | undefined {
  const rest = scene.items.slice(at + 1, at + 7);
  const first = rest.findIndex((item) => isWord(item, 'either', 'both', 'the other', 'the others', 'other'));
  if (first < 0) return undefined;
  const word = rest[first]!;
  const items = rest
    .slice(first, first + 4)
    .filter(
      (item) =>
        isWord(
          item,
          'either',
          'both',
          'of',
          'the',
          'the other',
          'the others',
          'other',
          'others',
          'rival',
          'rivals',
          'set',
          'sets',
          'two',
        ) || item.number?.x === 2,
    );
  const pair = isWord(word, 'either', 'both') || items.some((item) => item.number?.x === 2);
  const after = scene.items[scene.items.indexOf(word) + 1];
  const ends = after === undefined || after.type === 'mark';
  if (!pair || (items.length < 2 && !isWord(word, 'both') && !(isWord(word, 'either') && ends)))
    return undefined;
  const others = othersThan(scene, scene.unit ?? scene.context.own);
  return { cohort: others?.length === 2 ? { units: others } : undefined, items };
}

/** "between the other two", "between its two rivals", "between the other pair": the words, when they mean two sets. */
export function pairAfter(items: readonly Item[], at: number): Item[] | undefined {
  const words: Item[] = [];
  let others = false;
  let two = false;
  for (const item of items.slice(at + 1, at + 7)) {
    const rival = keyOf(item, 'pronoun') === 'rival' || isWord(item, 'other', 'others', 'rivals', 'sets');
    const pair = item.number?.x === 2 || isWord(item, 'pair', 'both');
    if (!rival && !pair && !isWord(item, 'the', 'its', 'of', 'those', 'our', 'what')) break;
    others ||= rival && item.text !== 'sets';
    two ||= pair || /(?:rivals|others|competition)$/.test(item.text);
    words.push(item);
  }
  return others && two ? words : undefined;
}
