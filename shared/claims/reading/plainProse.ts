import type { Carry } from './carry.ts';
import { type Item, isWord, keyOf, type MeaningKind } from './items.ts';
import { saysExtreme } from './selector.ts';
import { saysWorkDone } from './workDone.ts';

const telling = new Set<MeaningKind>([
  'house',
  'comparative',
  'superlative',
  'equative',
  'tint',
  'direction',
  'topic',
  'gotThere',
  'fellShort',
  'multiple',
  'ordinal',
  'fact',
  'format',
  'panelKind',
  'resolution',
  'opinion',
  'lean',
  'awardWord',
  'standing',
  'gamut',
  'severity',
  'adjective',
  'hedge',
  'hue',
]);

const tellingConcepts = new Set(['tint', 'award', 'hold', 'score']);
const tellingWords = new Set([
  'darkest',
  'dimmest',
  'matches',
  'same',
  'hdmi',
  'usb',
  'equals',
  'match',
  'pink',
  'purple',
]);

/** Could any rule make something of this item? Most prose has none, and is passed over quickly. */
export function mayClaim(item: Item): boolean {
  if (item.number && item.number.role !== 'ignored') return true;
  for (const meaning of item.meanings)
    if (telling.has(meaning.kind) || tellingConcepts.has(meaning.key)) return true;
  if (tellingWords.has(item.text)) return true;
  return (
    item.meanings.length > 0 &&
    ((keyOf(item, 'stat') !== undefined && /^(?:low|high|small|larg|great|bigg|least)/.test(item.text)) ||
      keyOf(item, 'verb') === 'exceed')
  );
}

/** Kinds of meaning that leave nothing for the next sentence, unless a rule makes a claim of them. */
const passing = new Set<MeaningKind>([
  'verb',
  'saying',
  'makerWord',
  'idiom',
  'comparator',
  'trailing',
  'intensity',
  'negation',
  'room',
  'side',
  'plane',
  'level',
  'month',
]);

function leavesNothing(item: Item): boolean {
  for (const { kind, key } of item.meanings) {
    if (kind === 'pronoun' && key === 'it') continue;
    // "Everything", "never": only an average, a maximum or a minimum is taken up by the next sentence.
    if (kind === 'stat' && (key === 'none' || key === 'never' || key === 'all' || key === 'any')) continue;
    if (!passing.has(kind)) return false;
  }
  return !saysExtreme(item);
}

/**
 * Prose about something else: no rule could read it, and all that it leaves for the next sentence is that what the
 * sentence before said is over. No scenes are made of it, which would take three fifths of its time.
 */
export function isIdle(items: readonly Item[], carry: Carry): boolean {
  if (carry.asked !== undefined || carry.unit !== undefined || carry.statement !== undefined) return false;
  let hasWords = false;
  for (const item of items) {
    if (mayClaim(item) || !leavesNothing(item)) return false;
    // "It" takes up the statistic of the sentence before.
    if (carry.stat !== undefined && isWord(item, 'it', 'this', 'that')) return false;
    if (item.type !== 'mark') hasWords = true;
  }
  return hasWords && !saysWorkDone(items);
}
