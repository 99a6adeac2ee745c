import type { AxisSpan } from './axis.ts';
import { type Item, isWord, type Meaning, meaningOf } from './items.ts';
import { meets, needBits, type Signs } from './needs.ts';

/** "Gamma averages 2.11, so shadows open up", "how shadows turn into light": what comes of it, and not where it was measured. */
function isConsequence(items: readonly Item[], at: number): boolean {
  const lead = items.slice(Math.max(0, at - 2), at);
  // "…, so mid-tones are too bright" says something of them.
  if (isWord(items[at + 1], 'is', 'are', 'look', 'looks', 'stay', 'come', 'lie', 'sit', 'lean')) return false;
  return lead.some((item) => isWord(item, 'so', 'how'));
}

const toned = needBits([{ kinds: ['tone', 'hue'], words: ['full', 'maximum'] }]);

/** Tone words ("highlights") as axis spans, unless numbers name one. */
export function toneSpans(items: readonly Item[], signs: Signs): AxisSpan[] {
  if (!meets(signs, toned)) return [];
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
    if (!tone || isConsequence(items, items.indexOf(item))) continue;
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
