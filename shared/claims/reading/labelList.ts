import { countedAt, isAmount, isSet, takeUnit } from './counted.ts';
import { type Item, isWord, keyOf } from './items.ts';

/** A clause with the words that it takes from another part of its sentence, because it leaves them out. */
export interface Part {
  items: Item[];
  borrowed?: ReadonlySet<Item>;
  /** Why nobody can tell what it takes */
  problem?: string;
}

const longestLabel = 12;
const longestEntry = 9;

function isLabel(label: readonly Item[]): boolean {
  return (
    label.length > 0 &&
    label.length <= longestLabel &&
    // "Neither covers all of it: …" is a statement, no label.
    // "What softens the blow is the warranty: …" is one, too.
    !label.some(
      (item) => keyOf(item, 'negation') !== undefined || isWord(item, 'both', 'is', 'was', 'are'),
    ) &&
    !label.some((item) => isSet(item) || (isAmount(item) && !isWord(label[item.index - 1], 'hdmi'))) &&
    label.some(
      (item) =>
        (keyOf(item, 'concept') ?? keyOf(item, 'fact') ?? keyOf(item, 'gamut')) !== undefined ||
        isWord(item, 'hdmi', 'usb', 'prices'),
    )
  );
}

function isParting(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  if (item.type === 'mark') return isWord(item, ',', ';', '/', '·', '•', '|', '—', '–');
  return isWord(item, 'and', 'but', 'while', 'against', 'versus') && items.slice(at + 1, at + 4).some(isSet);
}

/** What is counted goes behind its number, as in a sentence; any other label stands before it. */
function withLabel(label: readonly Item[], entry: readonly Item[], isFirst: boolean): Part {
  const counted = label.map((_, at) => countedAt(label, at)).find(({ length }) => length > 0);
  if (counted) return { items: [...entry, ...counted], borrowed: new Set(counted) };
  return { items: [...label, ...entry], ...(!isFirst && { borrowed: new Set(label) }) };
}

/** "Peak in nits: Plain 412, Vane 571 and Umbra 880": one clause an entry, each with the label before it. */
export function labelList(items: readonly Item[]): { parts: Part[]; end: number } | undefined {
  const colon = items.findIndex((item) => isWord(item, ':') || (isWord(item, '—', '–') && !item.glued));
  if (colon < 1 || !isLabel(items.slice(0, colon))) return undefined;
  const label = items.slice(0, colon + 1).filter((item) => !isWord(item, '(', ')'));
  const entries: Item[][] = [];
  let end = colon + 1;
  while (end < items.length) {
    let next = end + 1;
    while (next < items.length && !isParting(items, next)) next += 1;
    const entry = items
      .slice(end, next)
      .filter((item) => item.type !== 'mark' || isWord(item, "'s", "'", '+', '-'));
    const alone = entry.filter(isSet).length === 1 && entry.filter(isAmount).length === 1;
    if (!alone || entry.length > longestEntry) break;
    entries.push(entry);
    end = next;
  }
  if (entries.length < 2) return undefined;
  const amounts = entries.map((entry) => entry.find(isAmount)!);
  const model = amounts.find(({ number }) => number !== undefined && number.dimension !== '');
  for (const amount of amounts) takeUnit(amount, model);
  return { parts: entries.map((entry, order) => withLabel(label, entry, order === 0)), end };
}
