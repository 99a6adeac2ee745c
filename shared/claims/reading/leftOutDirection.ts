import type { House } from '../../contract/house.ts';
import { type Item, isWord, keyOf, meaningOf } from './items.ts';
import { plays } from './parts.ts';

/** "under", "slightly over", "a little under" */
const leftOut = /^(|.+ )(over|under)$/;

/**
 * "Reds are a little oversaturated and blues a little under": behind a hue and at the end of what is said of it, "over"
 * and "under" leave out the word that an earlier direction of the sentence said. They become that direction.
 */
export function settleLeftOutDirections(items: readonly Item[], { intensities }: House): undefined {
  let spoken: string | undefined;
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    const direction = meaningOf(item, 'direction');
    if (direction) spoken = (direction.data as string | undefined) ?? item.text;
    const left = spoken === undefined || direction ? null : leftOut.exec(item.text);
    if (!left || !isSaidOfHue(items, at)) continue;
    const [, lead = '', key = ''] = left;
    item.meanings = [{ kind: 'direction', key, data: spoken }];
    const size = intensities[lead.trim()];
    if (size) item.meanings = [...item.meanings, { kind: 'intensity', key: size }];
  }
}

function isSaidOfHue(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  if (next && next.type !== 'mark' && !isWord(next, 'and', 'but', 'while', 'with')) return false;
  let left = at - 1;
  while (keyOf(items[left], 'intensity') ?? (plays(items[left], 'leading') || plays(items[left], 'copula')))
    left -= 1;
  return keyOf(items[left], 'hue') !== undefined;
}
