import { type Item, isWord, keyOf } from './items.ts';
import { plays } from './parts.ts';

/** "The greys are not green", "whites go a touch magenta": a hue said of what has none, and what it is said of. */
export function hueSaidOfGrey(
  items: readonly Item[],
  item: Item,
): { hue: string; subject: Item } | undefined {
  const hue = keyOf(item, 'hue') ?? (isWord(item, 'pink', 'purple') ? 'magenta' : undefined);
  if (!hue) return undefined;
  const at = items.indexOf(item);
  const next = items[at + 1];
  if (
    next &&
    next.type !== 'mark' &&
    !isWord(
      next,
      'and',
      'or',
      'but',
      'at',
      'in',
      'from',
      'here',
      'below',
      'above',
      'up to',
      'until',
      'under',
      'over',
    )
  )
    return undefined;
  const verb = items.slice(Math.max(0, at - 5), at).find((entry) => plays(entry, 'colouring'));
  if (!verb) return undefined;
  const subject = items.find(
    (entry) =>
      entry.index < verb.index &&
      (plays(entry, 'greys') || keyOf(entry, 'tone') || keyOf(entry, 'concept') === 'whitePoint'),
  );
  // "Green greys, and the Plain's remote is blue"
  const parted = items.some(
    (entry) =>
      subject && entry.index > subject.index && entry.index < verb.index && isWord(entry, 'and', "'s"),
  );
  return subject && !parted ? { hue, subject } : undefined;
}

/** Does it say which colour a grey has, or a stretch of them ("from 50 % to white a slight green")? A statement of its own. */
export function coloursGrey(items: readonly Item[]): boolean {
  return items.some(
    (item, at) =>
      hueSaidOfGrey(items, item) !== undefined ||
      (keyOf(item, 'intensity') !== undefined &&
        keyOf(items[at + 1], 'hue') !== undefined &&
        items.slice(0, at).some(({ number }) => number?.dimension === 'percent' || number?.role === 'axis')),
  );
}
