import { type Item, isWord, keyOf } from './items.ts';
import type { Scene } from './scene.ts';

/** "At 10 and 90 % the error is 1.2": the levels of a list that no rule has settled, in or beside the clause. */
export function levelsListed({ items, sentence, axes }: Scene): Item[] {
  const first = items[0]?.index ?? 0;
  const last = items.at(-1)?.index ?? 0;
  for (let at = 0; at < sentence.length; at += 1) {
    if (!isWord(sentence[at], 'at')) continue;
    let next = isWord(sentence[at + 1], 'both') ? at + 2 : at + 1;
    const listed: Item[] = [];
    for (
      let item = sentence[next];
      item && (isPlain(item) || isWord(item, ',', 'and'));
      item = sentence[next]
    ) {
      if (item.number) listed.push(item);
      next += 1;
    }
    const end = listed.at(-1);
    if (listed.length < 2 || end?.number?.dimension !== 'percent') continue;
    const beside = at <= last + 1 && end.index >= first - 1;
    // "At 10 and 90 % the error is 1.2 and 4.5": the second number stands in a clause of its own.
    if (beside || (axes.length === 0 && !items.some((item) => keyOf(item, 'concept')))) return listed;
  }
  return [];
}

function isPlain({ number }: Item): boolean {
  return (
    number !== undefined &&
    (number.dimension === '' || number.dimension === 'percent') &&
    // "At 5 % and 10 %": the first is a place already.
    (number.role === undefined || number.role === 'axis') &&
    number.to === undefined
  );
}

/** "Two out of three levels are below 3" */
export function partOfLevels({ items }: Scene): Item | undefined {
  return items.find(
    (item, at) =>
      item.number?.outOf !== undefined &&
      isWord(items[at + 1], 'levels', 'steps', 'patches', 'cells', 'zones', 'of'),
  );
}
