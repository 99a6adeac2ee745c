import { type Item, isWord } from './items.ts';

/** "Clipping sets in at 90 %": where the curve ends, and nothing that was seen in a picture. */
export function nameClippingPlace(items: readonly Item[]): undefined {
  for (const [at, item] of items.entries()) {
    if (!isWord(item, 'clipping')) continue;
    const verb = items[at + 1];
    const lead = isWord(items[at + 2], 'in') ? at + 3 : at + 2;
    const begins = isWord(verb, 'sets', 'set', 'begins', 'began', 'starts', 'started', 'kicks', 'comes');
    if (begins && isWord(items[lead], 'at', 'from') && items[lead + 1]?.number?.dimension === 'percent')
      item.meanings = [{ kind: 'direction', key: 'clips' }];
  }
}
