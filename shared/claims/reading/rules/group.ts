import type { ReadingContext } from '../../../contract/articleText.ts';
import type { Cohort } from '../../../contract/check.ts';
import { type Item, isWord } from '../items.ts';
import type { Scene } from '../scene.ts';

/** The other sets that make a group of `n` with this one: those the review compares with, else all of the library. */
export function groupOf(context: ReadingContext, n: number): Cohort | undefined {
  if (context.against && context.against.length + 1 === n) return { units: context.against };
  return context.units.length === n ? {} : undefined;
}

/** "the quickest of the three", "among the four": the number of sets in the group, and its words. */
export function groupNamed(scene: Scene): { n: number; items: Item[] } | undefined {
  for (const [at, item] of scene.items.entries()) {
    const { number } = item;
    if (number?.dimension !== '' || number.x < 2 || number.x > 20 || (number.role && number.role !== 'value'))
      continue;
    const before = scene.items[at - 1];
    const lead = scene.items[at - 2];
    const article =
      isWord(before, 'the', 'these', 'those', 'our', 'all') &&
      isWord(lead, 'of', 'among', 'amongst', 'between', 'from');
    if (!article && !isWord(before, 'among', 'amongst')) continue;
    const next = scene.items[at + 1];
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
  return undefined;
}
