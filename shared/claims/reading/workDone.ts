import { type Item, isWord, keyOf } from './items.ts';
import { meets, needBits, type Signs } from './needs.ts';

/** What is turned on the way to an adjusted picture. */
const controls: ReadonlySet<string> = new Set([
  ...['white balance', 'balance', 'control', 'controls', 'menu', 'menus', 'slider', 'sliders', 'settings'],
  ...[
    'calibration',
    'adjustment',
    'adjustments',
    'adjusting',
    'calibrating',
    'correction',
    'tweak',
    'tweaks',
  ],
  ...['tweaking', 'tuning', 'fiddling', 'two point', 'ten point', 'twenty point', 'colour management'],
  ...['gain', 'gains', 'bias'],
]);
const labours: ReadonlySet<string> = new Set(['work', 'tinkering', 'fiddling', 'effort']);

const timeSpent =
  /^(?:spent|spend|spending|invested|gave|devoted|worked|working|fiddled|fiddling|tinkered|had)$/;
const corrected =
  /^(?:tamed|adjusted|corrected|set|sorted|fixed|trimmed|tuned|tweaked|dialled|straightened|aligned|reined|right)$/;
const outcomes =
  /^(?:gets?|got|brings?|brought|takes?|took|pulls?|pulled|drags?|dragged|leaves?|left|goes|went|improves?|improved|shrinks?|shrank|reduces?|reduced|lowers?|lowered|cuts?|trims?|trimmed|halves|halved|raises?|raised|lifts?|lifted)$/;

/** "with the white balance", "in the menus", "of the controls": worked on, not what is spoken of. */
function isWorkedOn(items: readonly Item[], at: number): boolean {
  return items
    .slice(Math.max(0, at - 4), at)
    .some(
      (item) =>
        isWord(item, 'with', 'on', 'in', 'of', 'at', 'to') ||
        /^(?:adjusting|tweaking|correcting|setting|trimming|tuning|fixing)$/.test(item.text),
    );
}

/** A sentence without one of these says nothing of work. */
const working = needBits([
  { words: [...controls, ...labours, 'calibrate', 'adjust', 'recalibrate', 'tune'] },
]);

/**
 * "An hour with the white balance gets the average to 0.91", "I spent ten minutes in the menus": the set was adjusted,
 * and what is said of it then and later in the paragraph is said of it as adjusted.
 * @param signs what the words show
 */
export function saysWorkDone(items: readonly Item[], signs: Signs): boolean {
  if (!meets(signs, working)) return false;
  if (isHoursWork(items) || isAskedFor(items)) return true;
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    if (!controls.has(item.text)) continue;
    const lead = items.slice(0, at);
    if (
      lead.some(
        (word) =>
          keyOf(word, 'negation') !== undefined ||
          keyOf(word, 'stat') === 'none' ||
          isWord(word, 'before', 'without', 'until', 'if', 'needs', 'need'),
      )
    )
      continue;
    const isAct =
      /^(?:calibration|adjustments?|adjusting|calibrating|correction|tweaks?|tweaking|tuning|fiddling)$/.test(
        item.text,
      );
    if (!isAct && !isWorkedOn(items, at)) continue;
    const rest = items.slice(at + 1);
    if (lead.some((word) => timeSpent.test(word.text)) && items.some(isSpan)) return true;
    if (corrected.test(rest[0]?.text ?? '') && lead.some((word) => isWord(word, 'with', 'once', 'after')))
      return true;
    if (rest.some((word, index) => isOutcome(word, rest[index + 1]))) return true;
  }
  return false;
}

/** "Calibrate the Linnet, though, and its average falls to 0.4" */
function isAskedFor(items: readonly Item[]): boolean {
  const first = isWord(items[0], 'but', 'now', 'so', 'and') ? items[1] : items[0];
  return (
    isWord(first, 'calibrate', 'adjust', 'recalibrate', 'tune') && items.some((item) => isWord(item, 'and'))
  );
}

/** "An hour's work brings that to 0.7" */
function isHoursWork(items: readonly Item[]): boolean {
  return items.some(
    (item, at) =>
      labours.has(item.text) &&
      items.slice(Math.max(0, at - 4), at).some(isSpan) &&
      (items.slice(at + 1).some((word, index, rest) => isOutcome(word, rest[index + 1])) ||
        // "After an hour of work the average is 0.8"
        (isWord(items[0], 'after', 'following') && at <= 5)),
  );
}

/** "an hour", "twenty minutes", "an evening" */
function isSpan(item: Item): boolean {
  return (
    item.number?.role === 'seconds' ||
    item.number?.dimension === 'hours' ||
    /\b(?:hours?|minutes?|evenings?|afternoons?|mornings?|days?|while|time)$/.test(item.text)
  );
}

function isOutcome(item: Item, next: Item | undefined): boolean {
  return (
    outcomes.test(item.text) ||
    ['fall', 'rise', 'cut'].includes(keyOf(item, 'verb') ?? '') ||
    (isWord(item, 'down', 'up') && isWord(next, 'to'))
  );
}
