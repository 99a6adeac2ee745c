import { type Item, isWord, keyOf } from './items.ts';

/** Words before a number that change nothing: "a mere 742", "just 742", "a deep 0.04". */
const emphasis = new Set([
  'just',
  'only',
  'mere',
  'a',
  'an',
  'the',
  'full',
  'whole',
  'deep',
  'measly',
  'healthy',
  'whopping',
  'respectable',
  'low',
  'high',
  'good',
  'decent',
  'solid',
  'impressive',
  'modest',
  'mark',
  'of',
  'even',
  'very',
  'measured',
  'fine',
  'staggering',
  'paltry',
  'remarkable',
  'reasonable',
  'wide',
  'excellent',
  'tiny',
  'huge',
  'heady',
  'still',
]);

/** "creeps over", "goes below": the verb carries the comparator. */
function motionComparator(item: Item | undefined): string | undefined {
  const verb = keyOf(item, 'verb');
  if (verb === 'rise' && /(?:over|above|past|beyond)$/.test(item!.text)) return '>';
  if ((verb === 'fall' || verb === 'stay') && /(?:below|under)$/.test(item!.text)) return '<';
  return undefined;
}

/** "Stays below ΔE2000 3", "exceeds a ΔE of 3", "above a contrast of 1,000:1": the limit stands before what is limited. */
function limitedBy(items: readonly Item[], index: number): string | undefined {
  const last = items[index - 1];
  const of = isWord(last, 'of') || / of$/.test(last?.text ?? '');
  const noun = isWord(last, 'of') ? items[index - 2] : last;
  const stat =
    ['average', 'max', 'min'].includes(keyOf(noun, 'stat') ?? '') ||
    isWord(noun, 'ratio', 'level', 'value', 'figure');
  const concept = keyOf(noun, 'concept') ?? (stat ? '' : undefined);
  if (!noun || concept === undefined || !(of || ['error', 'deItp', 'greyError'].includes(concept)))
    return undefined;
  const article = items[noun!.index - 1];
  const before = isWord(article, 'a', 'an') ? items[noun!.index - 2] : article;
  if (of && !isWord(article, 'a', 'an')) return undefined;
  // "A black of 0.051 cd/m² under a white of 212"
  if (/^(?:black|whitePoint|sdrWhite)$/.test(concept)) return undefined;
  // "5,370:1, over a black of 0.044": at that black.
  if (before && items[before.index - 1]?.type === 'mark') return undefined;
  if (keyOf(before, 'verb') === 'exceed') return '>';
  const comparator = keyOf(before, 'comparator') ?? motionComparator(before);
  return comparator === 'upTo' ? undefined : comparator;
}

const motion =
  /(?:^|[ ])(?:crept|creeps|gone|went|goes|come|came|comes|moved|moves|crawled|drifted|nudged|inched|edged)$/;

/** Gives each number the hedge and the comparator that stand beside it: "about 742", "under 3", "12 or so". */
export function attachNeighbours(items: Item[]): void {
  for (const item of items) {
    const number = item.number;
    if (!number) continue;
    let at = item.index - 1;
    while (at >= 0 && items[at]!.type === 'word' && emphasis.has(items[at]!.text)) at -= 1;
    let before = items[at];
    const hedge = keyOf(before, 'hedge');
    if (hedge && !(keyOf(before, 'comparator') && hedge !== 'almost')) {
      number.hedge = hedge;
      number.hedgeText = before!.text;
      at -= 1;
      while (at >= 0 && items[at]!.type === 'word' && emphasis.has(items[at]!.text)) at -= 1;
      before = items[at];
    }
    // "Does not quite reach 3,300:1"
    const quite = keyOf(before, 'verb') === 'reach' ? items[at - 1] : undefined;
    if (isWord(quite, 'not quite') && !number.hedge) {
      number.hedge = 'almost';
      number.hedgeText = quite!.text;
    }
    const limited = limitedBy(items, item.index);
    const comparator = keyOf(before, 'comparator') ?? motionComparator(before) ?? limited;
    // "The average has crept up to 0.7": that is where it is.
    const spreads = /^(?:sprawl|stretch|extend|spread|reach)(?:s|es)?$/.test(items[at - 1]?.text ?? '');
    const arrives =
      (comparator === 'upTo' && motion.test(items[at - 1]?.text ?? '')) ||
      // "The foot sprawls over 880 mm"
      (spreads && isWord(before, 'over') && number.dimension === 'length');
    if (comparator && !arrives) number.comparator = comparator;
    // "Higher by a factor of 2.6"
    if (
      number.dimension === '' &&
      isWord(items[item.index - 1], 'of') &&
      isWord(items[item.index - 2], 'factor')
    )
      number.dimension = 'times';
    let after = items[item.index + 1];
    // "60% of its luminance at most"
    if (isWord(after, 'of', 'for'))
      for (let ahead = item.index + 2; ahead < Math.min(items.length, item.index + 6); ahead += 1) {
        if (items[ahead]!.type === 'mark' || items[ahead]!.number) break;
        if (
          keyOf(items[ahead], 'trailing') &&
          /^(?:at (?:most|least|best|worst)|or (?:more|less|better))/.test(items[ahead]!.text)
        )
          after = items[ahead];
      }
    const trailing = keyOf(after, 'trailing');
    if (
      trailing &&
      !(after!.text === '+' && !after!.glued) &&
      after!.text !== 'upwards' &&
      !number.comparator
    )
      number.comparator = trailing;
    if (
      isWord(after, 'or so', 'or thereabouts', 'give or take', 'more or less') ||
      keyOf(after, 'hedge') === 'about'
    )
      number.hedge ??= 'about';
  }
}
