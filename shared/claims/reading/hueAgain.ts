import { type Item, isWord, keyOf } from './items.ts';
import { plays } from './parts.ts';

const colouring = ['turn', 'go', 'become', 'are', 'lean', 'turns', 'goes', 'becomes', 'is'];

/**
 * "The greys lean towards blue up to 40 %; from 70 % upwards they turn green", "… blue from 10 to 40 % and green from
 * 70 % up": a second hue of the same greys, at levels of its own.
 */
export function nameHueAgain(items: readonly Item[]): undefined {
  const greys = items.find((item) => plays(item, 'greys'));
  if (!greys) return;
  const first = items.find(
    (item) => item.index > greys.index && (keyOf(item, 'hue') ?? keyOf(item, 'tint')) !== undefined,
  );
  if (!first) return;
  const at = (item: Item | undefined) => item?.number?.dimension === 'percent';
  const levelled = items.slice(0, first.index + 6).some(at);
  for (const item of items) {
    if (item.index <= first.index || keyOf(item, 'hue') === undefined) continue;
    const verb = items[item.index - 1];
    const who = items[item.index - 2];
    const isThey = isWord(verb, ...colouring) && isWord(who, 'they', 'these', 'it');
    const behind = items.slice(item.index + 1, item.index + 4);
    const isAlso =
      isWord(verb, 'and', 'but') &&
      isWord(behind[0], 'from', 'above', 'at', 'below', 'beyond') &&
      behind.some(at);
    const between = items.slice(first.index + 1, item.index);
    const ofOther = between.some(
      (word) => keyOf(word, 'unit') ?? keyOf(word, 'maker') ?? keyOf(word, 'concept'),
    );
    const ownLevel = isAlso || between.some(at);
    if (!levelled || !ownLevel || ofOther || !(isThey || isAlso)) continue;
    item.meanings = [{ kind: 'tint', key: keyOf(item, 'hue')! }];
    // What they lean to is a statement by itself, then.
    const lean = items[first.index - 1];
    const hue = keyOf(first, 'hue');
    if (hue !== undefined && keyOf(lean, 'lean') !== undefined) {
      lean!.meanings = [];
      first.meanings = [{ kind: 'tint', key: hue }];
    }
  }
}
