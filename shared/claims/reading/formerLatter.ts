import type { ReadingContext } from '../../contract/articleText.ts';
import { type Item, isWord } from './items.ts';
import { setsNamed } from './respectively.ts';
import { unitMentions } from './unitMentions.ts';

/** "The Hearth reaches 742 nits and the Plain 571. The latter is cheaper": the second of the two sets just named. */
export function nameFormerAndLatter(
  items: readonly Item[],
  before: readonly string[] | undefined,
  context: ReadingContext,
): undefined {
  if (!items.some((item) => isWord(item, 'former', 'latter'))) return;
  const words = items.filter(
    (item) =>
      isWord(item, 'former', 'latter') &&
      isWord(items[item.index - 1], 'the') &&
      // "The latter set" is one, "the latter figure" is none.
      !isWord(items[item.index + 1], 'figure', 'number', 'value', 'quantity', 'error'),
  );
  const [lead] = words;
  if (!lead) return;
  const here = setsNamed(unitMentions(items.slice(0, lead.index), context));
  const [first, second, third] = here.length > 0 ? here : (before ?? []);
  if (first === undefined || second === undefined || third !== undefined) return;
  for (const item of words) {
    item.type = 'phrase';
    item.meanings = [{ kind: 'unit', key: isWord(item, 'former') ? first : second }];
  }
}
