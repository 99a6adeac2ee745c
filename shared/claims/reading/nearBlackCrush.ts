import { type Item, isWord, keyOf } from './items.ts';

function isSeen(item: Item | undefined): boolean {
  return keyOf(item, 'severity') !== undefined || keyOf(item, 'house') === 'visible';
}

/**
 * "The near-black detail was visibly crushed", "nothing near black is crushed": what was seen. Without a word of how much
 * or a denial it stays a direction of the tone curve.
 */
export function nameCrush(items: readonly Item[]): undefined {
  const crush = items.find((item) => isWord(item, 'crushed', 'crushes', 'crush', 'crushing'));
  if (!crush) return;
  const near = items.find(
    (item) =>
      item.index < crush.index &&
      (keyOf(item, 'tone') === 'nearBlack' ||
        // "The shadows were visibly crushed"
        (keyOf(item, 'tone') === 'shadows' && isSeen(items[crush.index - 1]))),
  );
  const between = near ? items.slice(Math.max(0, near.index - 2), crush.index + 1) : [];
  const denials = between.filter(
    (item) => keyOf(item, 'negation') !== undefined || ['none', 'never'].includes(keyOf(item, 'stat') ?? ''),
  );
  // "Near black, crushing was no longer seen"
  const behind = items.slice(crush.index + 1, crush.index + 4);
  const isUnseen =
    isWord(crush, 'crushing') &&
    behind.some((item) => keyOf(item, 'negation') !== undefined && !isWord(item, 'without'));
  const seen =
    denials.length > 0 || isUnseen || between.some((item) => keyOf(item, 'severity') !== undefined);
  if (!near || !seen || between.some((item) => item.type === 'mark' && item.index > near.index + 1)) return;
  // "Nothing near black is not crushed": what that says of the picture, no check asks.
  if (denials.length > 1) {
    crush.meanings = [];
    return;
  }
  crush.meanings = [{ kind: 'topic', key: 'near-black' }];
}
