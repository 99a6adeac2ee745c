import type { StatedConditions } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { isLedByBy } from './ratioNumber.ts';
import { isSaidBeforeAdjusting } from './saidBefore.ts';

/** Verbs that go by what is better of the quantity: who beats another for lag is below it. */
export const winning: readonly string[] = ['beats', 'beat', 'betters', 'outdoes'];
export const losing: readonly string[] = ['trails', 'loses to', 'lose to', 'lost to', 'losing to'];

/** "11 nits above the Kasulind's": the preposition compares. */
export function awayFrom(scene: Scene): (ComparativeEntry & { item: Item; byMerit?: boolean }) | undefined {
  const verb = scene.items.find((item) =>
    isWord(item, 'exceeds', 'surpasses', 'tops', 'leads', ...winning, ...losing),
  );
  const by = verb && scene.items.some((item) => item.number && isLedByBy(scene, item));
  // "It beats the Kasulind by 30 nits", "the Kasulind beats it by 30 nits".
  const overOwn =
    verb !== undefined &&
    scene.unit !== undefined &&
    keyOf(scene.items[scene.items.indexOf(verb) + 1], 'pronoun') === 'it';
  if (verb && by && (overOwn || scene.units.some(({ item }) => item.index > verb.index)))
    return {
      item: verb,
      concept: '',
      direction: isWord(verb, ...losing) ? 'lower' : 'higher',
      byMerit: isWord(verb, ...winning, ...losing),
    };
  // "The Kasulind is ahead by 170 nits": of this review's own set.
  const standing = scene.items.find((item) => isWord(item, 'ahead', 'behind'));
  const led =
    standing &&
    scene.items.some((item) => item.number && isLedByBy(scene, item) && item.index > standing.index);
  const isOther = scene.unit !== undefined && scene.unit !== scene.context.own;
  if (led && isOther && !scene.units.some((mention) => mention.item.index > standing.index))
    return {
      item: standing,
      concept: '',
      direction: isWord(standing, 'ahead') ? 'higher' : 'lower',
      byMerit: true,
    };
  for (const item of scene.items) {
    const found = awayAt(scene, item);
    if (found) return found;
  }
  return undefined;
}

/** The word behind a number that makes it a distance to another set: "below the Kasulind", "ahead of it". */
function awayAt(scene: Scene, item: Item): (ComparativeEntry & { item: Item }) | undefined {
  const at = scene.items.indexOf(item);
  const before = scene.items[at - 1];
  // "More than a third above what the Umbra gives"
  const share = keyOf(before, 'multiple') !== undefined && isWord(item, 'above', 'below', 'over', 'under');
  if (!share && (!before?.number || before.number.role === 'axis' || before.number.dimension === ''))
    return undefined;
  const key = keyOf(item, 'comparator');
  const on = isWord(scene.items[at + 1], 'on');
  // "£1,000 on top of the Plain"
  const onTop = isWord(item, 'on') && isWord(scene.items[at + 1], 'top') && isWord(scene.items[at + 2], 'of');
  const up = key === '>' || onTop || isWord(item, 'ahead', 'ahead of', 'up on') || (on && isWord(item, 'up'));
  const down = key === '<' || isWord(item, 'behind', 'short of', 'down on') || (on && isWord(item, 'down'));
  if (!up && !down) return undefined;
  const near = scene.units.some(
    (mention) =>
      mention.role !== 'subject' && mention.item.index > item.index && mention.item.index <= item.index + 4,
  );
  // "The Kasulind is 100 cd/m² behind": behind this review's own set.
  const alone =
    isWord(item, 'behind', 'ahead') &&
    !isWord(scene.items[at + 1], 'of') &&
    scene.unit !== undefined &&
    scene.unit !== scene.context.own &&
    !scene.units.some((mention) => mention.item.index > item.index);
  return near || alone || setOfIt(scene, item) !== undefined
    ? { item, concept: '', direction: up ? 'higher' : 'lower' }
    : undefined;
}

/** "The Plain tops out at 494, and yet the Hearth is only 7 nits ahead of it": the set that the clause before was about. */
export function setOfIt(scene: Scene, away: Item): string | undefined {
  const { items, previous, unit, unitNamed, context } = scene;
  const next = items[items.indexOf(away) + 1];
  const it = isWord(next, 'of', 'on') ? items[items.indexOf(away) + 2] : next;
  // "The Umbra is £200 up on it": on this review's own set, where no other was spoken of.
  const before = previous?.unit ?? (previous === null && isWord(next, 'on') ? context.own : undefined);
  return it?.text === 'it' && unitNamed && before !== undefined && before !== unit ? before : undefined;
}

/** "£70 below the Kasulind", "100 nits behind": this number is a distance to another set. */
export function isAway(scene: Scene, number: Item): boolean {
  const next = scene.items[scene.items.indexOf(number) + 1];
  return next !== undefined && awayAt(scene, next) !== undefined;
}

const figures = ['figure', 'figures', 'number', 'value', 'reading', 'result', 'level', 'score', 'one'];

/** "twice the SDR figure", "half the as-delivered number": what the multiple is taken of is named by its condition. */
function opensFigure(items: readonly Item[], at: number): boolean {
  const isMultiple = keyOf(items[at], 'multiple') !== undefined || items[at]!.number?.dimension === 'times';
  if (!isMultiple && !isWord(items[at], 'as', 'of')) return false;
  const start = isWord(items[at + 1], 'the', 'its') ? at + 2 : at + 1;
  const condition = items[start];
  return (
    (keyOf(condition, 'signal') ?? keyOf(condition, 'stage') ?? keyOf(condition, 'mode')) !== undefined &&
    isWord(items[start + 1], ...figures)
  );
}

/** "than", or the second "as" of "as high as": what follows speaks of the other operand. */
export function opensOther(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  const { text } = item;
  const leads = text === 'than' || text === 'of' || text.startsWith('as');
  if (!leads) return (item.meanings.length > 0 || item.number !== undefined) && opensFigure(items, at);
  if (opensFigure(items, at)) return true;
  if (isWord(item, 'than')) return true;
  const before = items[at - 1];
  // "three times the lag of the Evening mode", "a third of that before adjustment"
  if (isWord(item, 'of')) {
    const next = isWord(items[at + 1], 'the', 'that', 'its') ? items[at + 2] : items[at + 1];
    const named = [next, items[at + 3], items[at + 4]].some(
      (entry, order) =>
        (order === 0 || isWord(items[at + 1], 'that')) &&
        (keyOf(entry, 'mode') ?? keyOf(entry, 'stage') ?? keyOf(entry, 'dimming')) !== undefined,
    );
    return (
      named &&
      items.slice(0, at).some((entry) => keyOf(entry, 'multiple') ?? entry.number?.dimension === 'times')
    );
  }
  if (/^as (?:high|much|many) as$/.test(item.text))
    return keyOf(before, 'multiple') !== undefined || before?.number?.dimension === 'times';
  return (
    isWord(item, 'as') &&
    (keyOf(before, 'equative') !== undefined ||
      isWord(before, 'long', 'high', 'large', 'great', 'big', 'wide')) &&
    // "For as long as you like"
    !(isWord(before, 'long') && isWord(items[at + 1], 'you', 'we', 'i', 'one', 'anyone'))
  );
}

/** "The mean shrinks to 0.84, which is less than half": of what it was before the adjustment. */
function isShareOfBefore({ items, previous }: Scene): boolean {
  const words = items.filter((item) => item.type !== 'mark');
  const last = words.at(-1);
  if (keyOf(last, 'multiple') === undefined || !isWord(words[0], 'which', 'that', "that's")) return false;
  return (
    previous?.conditions.stage === 'adjusted' &&
    previous.said?.length === 1 &&
    previous.items.some((item) => ['fall', 'cut', 'lose'].includes(keyOf(item, 'verb') ?? ''))
  );
}

/** Conditions that "than before adjustment", "than in SDR" set for the other operand alone. */
export function thanConditions(scene: Scene): Partial<StatedConditions> | undefined {
  // "Less than a third of what it was": before adjustment.
  const was = scene.items.some(
    (item, index) =>
      (isWord(item, 'what') &&
        isWord(scene.items[index + 1], 'it', 'they') &&
        isWord(scene.items[index + 2], 'was', 'were')) ||
      (isWord(item, 'former', 'original', 'initial', 'previous') &&
        isWord(scene.items[index - 1], 'its', 'the')),
  );
  const ofThat = scene.items.some(
    (item, at) => keyOf(item, 'multiple') !== undefined && isWord(scene.items[at + 1], 'that'),
  );
  if (ofThat && isSaidBeforeAdjusting(scene)) return { stage: 'as-delivered' };
  if (isShareOfBefore(scene)) return { stage: 'as-delivered' };
  if (was && scene.conditions.stage === 'adjusted') return { stage: 'as-delivered' };
  const at = scene.items.findIndex((_, index) => opensOther(scene.items, index));
  if (at < 0) return undefined;
  const rest = scene.items.slice(at + 1);
  const result: Record<string, unknown> = {};
  const stage = rest.find((item) => keyOf(item, 'stage'));
  const signal = rest.find((item) => keyOf(item, 'signal'));
  const mode = rest.find((item) => keyOf(item, 'mode'));
  if (stage) result.stage = keyOf(stage, 'stage');
  else if (rest.some((item) => isWord(item, 'before')) && scene.conditions.stage === 'adjusted')
    result.stage = 'as-delivered';
  const dimming = rest.find((item) => keyOf(item, 'dimming'));
  if (dimming) result.dimming = keyOf(dimming, 'dimming');
  if (signal) result.signal = keyOf(signal, 'signal');
  if (mode) result.mode = keyOf(mode, 'mode');
  return Object.keys(result).length > 0 ? (result as Partial<StatedConditions>) : undefined;
}
