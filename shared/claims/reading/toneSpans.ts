import type { AxisSpan } from './axis.ts';
import { type Item, isWord, type Meaning, meaningOf } from './items.ts';

/** Tone words ("highlights") as axis spans, unless numbers name one. */
export function toneSpans(items: readonly Item[]): AxisSpan[] {
  const spans: AxisSpan[] = [];
  // "At full saturation red is 7 % short": the end of the sweep.
  for (let at = 0; at < items.length; at += 1)
    if (
      isWord(items[at], 'full', 'maximum') &&
      isWord(items[at + 1], 'saturation', 'amplitude', 'stimulus', 'signal', 'intensity', 'strength') &&
      isWord(items[at - 1], 'at', 'in')
    )
      spans.push({
        kind: 'stimulus',
        at: 100,
        fromIncluded: true,
        toIncluded: true,
        items: items.slice(at - 1, at + 2),
        tone: true,
      });
  // "Pure red", "fully saturated red": the end of its sweep.
  for (let at = 1; at < items.length; at += 1)
    if (
      meaningOf(items[at], 'hue') &&
      (isWord(items[at - 1], 'pure', 'full', 'full-strength') ||
        (isWord(items[at - 1], 'saturated') && isWord(items[at - 2], 'fully')))
    )
      spans.push({
        kind: 'stimulus',
        at: 100,
        fromIncluded: true,
        toIncluded: true,
        items: items.slice(at - 1, at),
        tone: true,
      });
  for (const item of items) {
    const tone: Meaning | undefined = meaningOf(item, 'tone');
    if (!tone) continue;
    const range = tone.data as { from: number; to: number };
    spans.push({
      kind: 'stimulus',
      from: range.from,
      to: range.to,
      fromIncluded: true,
      toIncluded: true,
      items: [item],
      tone: true,
    });
  }
  return spans;
}
