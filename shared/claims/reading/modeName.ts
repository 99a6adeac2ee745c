import { type Item, isWord, keyOf } from './items.ts';

/** Words before "mode" that name none. */
const notModes = new Set([
  'picture',
  'this',
  'that',
  'the',
  'which',
  'every',
  'any',
  'its',
  'each',
  'one',
  'same',
  'standby',
  'hdr',
  'sdr',
  'viewing',
  'default',
  'best',
  'other',
  'our',
  'either',
  'both',
  'a',
  'no',
  'all',
  'preset',
  'what',
  'right',
  'first',
  'accurate',
  'better',
  'worst',
  'bright',
  'brightest',
  'most',
  'second',
  'another',
  'night',
  'eco',
  'off',
  'on',
  'of',
  'in',
  'screen',
  'dark',
  'sound',
  'delivered',
  'adjusted',
  'calibrated',
  'hdr10',
  'hlg',
]);

/** "On sample B", "with firmware 3.2": which copy of the set, or which software, was measured. */
export function issueAt(
  items: readonly Item[],
  at: number,
): { dimension: 'sample' | 'firmware'; name: string; item: Item } | undefined {
  const item = items[at]!;
  let next = items[at + 1];
  if (isWord(item, 'sample') && next && (/^[a-z]$/.test(next.text) ? next.capital : next.number))
    return { dimension: 'sample', name: next.capital ? next.text.toUpperCase() : next.text, item: next };
  // "Version 1.6.2 keeps 93 %": a number of three parts is a release.
  if (isWord(item, 'version', 'release', 'build') && /^\d+\.\d+\.\d+/.test(next?.text ?? ''))
    return { dimension: 'firmware', name: next!.text, item: next! };
  if (!isWord(item, 'firmware')) return undefined;
  let left = at - 1;
  while (isWord(items[left], 'older', 'newer', 'earlier', 'latest', 'current', 'original', 'new', 'old'))
    left -= 1;
  const before = items[left];
  // "older firmware, 1.4.0, …"
  if (isWord(next, ',') && /^\d+\.\d/.test(items[at + 2]?.text ?? '')) next = items[at + 2];
  if (
    !isWord(before, 'on', 'with', 'under', 'in', 'using', 'from') &&
    at > 0 &&
    !isWord(before, 'the', 'its')
  )
    return undefined;
  if (isWord(next, 'version', 'release')) next = items[at + 2];
  return next && /^\d/.test(next.text) ? { dimension: 'firmware', name: next.text, item: next } : undefined;
}

/** "Studio is the mode to choose", "we chose Studio". */
function isChosen(items: readonly Item[], at: number): boolean {
  if (!items[at]!.capital) return false;
  if (
    isWord(
      items[at - 1],
      'choose',
      'chose',
      'chosen',
      'choosing',
      'pick',
      'picked',
      'select',
      'selected',
      'prefer',
      'preferred',
      'recommend',
      'use',
      'used',
    )
  )
    return true;
  return (
    isWord(items[at + 1], 'is', 'was') &&
    items.slice(at + 2, at + 6).some((item) => isWord(item, 'mode', 'preset', 'setting', 'choice'))
  );
}

/**
 * A picture mode at this item: one that a run names, or one that only the article knows; `outside`: any but this one, and
 * nobody says which.
 */
export function modeAt(
  items: readonly Item[],
  at: number,
): { mode?: string; unknown?: string; outside?: string } | null {
  const item = items[at]!;
  const known = keyOf(item, 'mode');
  const next = items[at + 1];
  const isMode = isWord(next, 'mode', 'preset', 'setting', 'picture') || isWord(next, 'modes');
  if (known) {
    const before = items[at - 1];
    // "Outside Game mode": in which, nobody says.
    if (
      isWord(before, 'outside', 'outwith', 'except', 'bar') ||
      /^(?:other than|apart from)$/.test(before?.text ?? '')
    )
      return { outside: item.text };
    const led =
      isWord(before, 'in', 'to', 'using', 'with', 'from') ||
      (isWord(before, 'the', 'its') && isWord(items[at - 2], 'in', 'to', 'using', 'with'));
    return isMode || led || isChosen(items, at) || item.text.includes(' ') || isWord(next, ',', ':')
      ? { mode: known }
      : null;
  }
  if (isWord(next, 'mode', 'preset') && item.type !== 'mark' && !item.number) {
    if (keyOf(item, 'stage') || keyOf(item, 'signal') || keyOf(item, 'dimming') || keyOf(item, 'unit'))
      return null;
    if (!notModes.has(item.text)) return { unknown: item.text };
  }
  // "In Vivid it reaches …": a name that no run knows must not fall back to another mode.
  const before = items[at - 1];
  if (
    item.type !== 'mark' &&
    item.capital &&
    item.text.length > 2 &&
    isWord(before, 'in', 'using') &&
    item.meanings.every((meaning) =>
      ['opinion', 'intensity', 'equative', 'severity', 'direction'].includes(meaning.kind),
    ) &&
    !/^(?:the|our|this|its|that|these|all|both|ips|va|oled|lcd|led|eotf|cie|itu|tv|uk|eu|us|usa)$/.test(
      item.text,
    ) &&
    !items[at + 1]?.number
  )
    return { unknown: item.text };
  return null;
}
