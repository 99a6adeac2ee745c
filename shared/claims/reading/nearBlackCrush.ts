import { type Item, isWord, keyOf } from './items.ts';

/**
 * "The near-black detail was visibly crushed", "nothing near black is crushed": what was seen. Without a word of how much
 * or a denial it stays a direction of the tone curve.
 */
export function nameCrush(items: readonly Item[]): undefined {
  const crush = items.find((item) => isWord(item, 'crushed', 'crushes', 'crush'));
  if (!crush) return;
  const near = items.find((item) => keyOf(item, 'tone') === 'nearBlack' && item.index < crush.index);
  const between = near ? items.slice(Math.max(0, near.index - 2), crush.index + 1) : [];
  const seen = between.some(
    (item) =>
      keyOf(item, 'severity') !== undefined ||
      keyOf(item, 'negation') !== undefined ||
      keyOf(item, 'stat') === 'none',
  );
  if (!near || !seen || between.some((item) => item.type === 'mark')) return;
  crush.meanings = [{ kind: 'topic', key: 'near-black' }];
}
