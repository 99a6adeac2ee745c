import type { OrderCheck } from '../../../contract/check.ts';
import { brightestSpot, otherSpot } from '../cell.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { readBestFigure } from './bestFigure.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { comparedQuantity } from './compared.ts';
import { betterDirection, denialOfList, namesNoSet } from './orderWords.ts';

/** "The brightest under £1,100", "the second-cheapest", "among the brightest": a place among many. */
export function readSuperlative(
  scene: Scene,
  findings: Findings,
  item: Item,
  key: string,
  entry: ComparativeEntry,
): undefined {
  if (entry.concept === '' && readBestFigure(scene, findings, item)) return;
  // "Between its brightest and its darkest point"
  if (brightestSpot(scene.items) === item || otherSpot(scene.items, item)) return;
  const at = scene.items.indexOf(item);
  const quantity = comparedQuantity(scene, entry);
  const before = scene.items[at - 1];
  // "The brightest highlights reach 742 nits": of this set, and no ranking.
  const reaches = scene.items.slice(at + 2).some((word) => keyOf(word, 'verb') === 'reach');
  if (
    isWord(scene.items[at + 1], 'whites') ||
    (isWord(scene.items[at + 1], 'highlights', 'parts') && reaches)
  ) {
    scene.used.add(item);
    return;
  }
  // "In its brightest mode"
  if (
    entry.concept !== 'uniformity' &&
    isWord(
      scene.items[at + 1],
      'white',
      'field',
      'mode',
      'setting',
      'preset',
      'scene',
      'scenes',
      'window',
      'picture',
    ) &&
    // "The most even picture of the three" ranks.
    !(
      isWord(before, 'the') &&
      isWord(scene.items[at + 2], 'of') &&
      isWord(scene.items[at + 3], 'the', 'all', 'our')
    )
  ) {
    scene.used.add(item);
    return;
  }
  // "At its thickest": a place of the cabinet.
  if (isWord(before, 'its') && isWord(scene.items[at - 2], 'at')) return;
  // "The best television I have ever had": in what, nobody says.
  const isSet = isWord(scene.items[at + 1], 'television', 'set', 'tv', 'telly', 'screen');
  if (isSet && entry.concept === '' && !scene.items.some((word) => keyOf(word, 'concept')))
    return refuse(findings, scene, 'order', 'the words do not say in what', [item, scene.items[at + 1]]);
  const isRank =
    isDoneBest(scene, item) ||
    isWord(before, 'the', 'our', 'its') ||
    keyOf(before, 'ordinal') ||
    isWord(
      scene.items[at + 1],
      'set',
      'sets',
      'television',
      'televisions',
      'tv',
      'tvs',
      'we',
      'of',
      'in',
      'yet',
      'ever',
      'screen',
      'screens',
      'under',
    );
  if (
    !isRank ||
    isWord(
      scene.items[at + 1],
      'step',
      'steps',
      'level',
      'levels',
      ...(key === 'mostAccurate' ? [] : ['grey', 'greys']),
      'two',
      'three',
      'patch',
      'patches',
      'corner',
      'corners',
      'transition',
      'transitions',
      'change',
      'part',
      'parts',
      'point',
      'spot',
      'spots',
      'area',
      'areas',
    )
  )
    return;
  // "The brightest star in that film": a superlative of something that is no set.
  if (namesNoSet(scene.items, at)) {
    scene.used.add(item);
    return;
  }
  // "The dearest of the three is also the heaviest", "between the cheapest and the dearest": which set, nobody says.
  const first = scene.items.findIndex((word) => keyOf(word, 'superlative') !== undefined);
  const leads = first <= 2 && isWord(scene.items[first - 1], 'the');
  const opens = leads && !isSaidLater(scene, first);
  if (opens || scene.items.slice(0, at).some((word) => isWord(word, 'between')))
    return refuse(findings, scene, 'order', 'the words do not say which set that is', [item]);
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [item]);
  const direction = betterDirection(entry, key, quantity);
  if (!direction)
    return refuse(findings, scene, 'order', 'better has no direction for this quantity', [item]);
  const { cohort, items } = cohortOf(scene);
  const window = scene.items.slice(Math.max(0, at - 6), at);
  const among = window.find(
    (entry_) =>
      isWord(entry_, 'among', 'amongst') ||
      (isWord(entry_, 'of') && isWord(scene.items[scene.items.indexOf(entry_) - 1], 'one')) ||
      keyOf(entry_, 'stat') === 'any',
  );
  // "Among the three brightest": a place among so many.
  const many = scene.items[at - 1];
  if (among && many?.number?.dimension === '' && !isWord(scene.items[at + 1], 'of')) {
    many.number.role = 'cohort';
    return refuse(findings, scene, 'order', 'a place among the first so many is no check', [
      among,
      many,
      item,
    ]);
  }
  const ordinal = window
    .map((entry_) => ({ entry: entry_, n: Number(keyOf(entry_, 'ordinal')) }))
    .find((found) => Number.isFinite(found.n) && found.n > 1);
  const rank: OrderCheck['rank'] = among
    ? { type: 'among' }
    : ordinal
      ? { type: 'position', n: ordinal.n }
      : { type: 'best' };
  const negation =
    scene.items.find(
      (entry_) =>
        entry_.index < item.index && keyOf(entry_, 'negation') === 'not' && !isWord(entry_, 'without'),
    ) ?? denialOfList(scene);
  // "The better of the Plain and …": the other set stands right behind "of".
  const subjectOther = scene.units.find(
    (mention) => mention.role === 'compared' && mention.item.index <= item.index + 3,
  );
  if (subjectOther && cohort.except === undefined) {
    const id = resolveMention(subjectOther, scene.carry, scene.context);
    const itself = id === (scene.unit ?? scene.context.own);
    if (id && !itself && isWord(scene.items[at + 1], 'of')) cohort.units = [id];
  }
  const ahead = scene.units.find(
    (mention) =>
      mention.role === 'compared' &&
      scene.items
        .slice(at, scene.items.indexOf(mention.item))
        .some((word) => isWord(word, 'after', 'behind', 'before', 'following')),
  );
  if (ahead)
    return refuse(findings, scene, 'order', 'which set stands next to it in a ranking is no check', [
      item,
      ahead.item,
    ]);
  propose(
    findings,
    scene,
    'order',
    orderCheck(scene, quantity, direction, rank, cohort, negation ? { negated: true } : {}),
    [
      item,
      among,
      ordinal?.entry,
      negation,
      ...items,
      ...scene.items.filter(
        (entry_) =>
          entry_.index > item.index &&
          isWord(entry_, 'tested', 'measured', 'seen', 'reviewed', 'ever', 'yet'),
      ),
    ],
  );
}

/** "The Hearth holds its luminance best at 45 degrees" */
function isDoneBest({ items }: Scene, item: Item): boolean {
  const at = items.indexOf(item);
  const next = items[at + 1];
  const lead = items.slice(0, at);
  return (
    isWord(item, 'best') &&
    keyOf(items[at - 1], 'concept') !== undefined &&
    lead.some(
      (word) =>
        keyOf(word, 'verb') === 'keep' || isWord(word, 'holds', 'keeps', 'retains', 'preserves', 'tracks'),
    ) &&
    (next === undefined || next.type === 'mark' || isWord(next, 'at', 'of', 'from', 'in', 'and', 'off'))
  );
}

/** "The brightest set under £1,100, it costs …", "the quickest of the lot." */
function isSaidLater({ items, units }: Scene, at: number): boolean {
  const rest = items.slice(at + 1);
  const verb = rest.findIndex((word) =>
    isWord(word, 'is', 'was', 'costs', 'has', 'draws', 'weighs', 'manages', 'lie', 'lies'),
  );
  return (
    units.length > 0 || verb < 0 || rest.slice(0, verb).some((word) => keyOf(word, 'pronoun') !== undefined)
  );
}
