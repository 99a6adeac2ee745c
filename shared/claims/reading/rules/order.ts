import type { OrderCheck } from '../../../contract/check.ts';
import { brightestSpot, cellOf } from '../cell.ts';
import { type Finding, type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { openComparatives } from '../needs.ts';
import { speaksOfSets } from '../plainTalk.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { hasIt, readCoversMore, readHigher, readMoreSo, readWorse } from './aheadOfOwn.ts';
import { readBestFigure } from './bestFigure.ts';
import { readBetweenRuns } from './betweenRuns.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import { type ComparativeEntry, entryOf } from './comparativeEntry.ts';
import { comparativeProblem, isMoreSo } from './comparativeProblem.ts';
import { comparedQuantity, isOfLoss } from './compared.ts';
import { thisOneBehind } from './comparedWords.ts';
import { betterDirection, concepts, isOwned, negated } from './orderWords.ts';
import { otherMention } from './otherOperand.ts';
import { isLedByBy } from './ratioNumber.ts';
import { sizeWordOf } from './sizeWord.ts';
import { onlyOne, readAgainstRivals, readBothAhead, readExtreme, readNeither } from './standAlone.ts';
import { readSuperlative } from './superlative.ts';

/** "Not as bright as the Umbra, but brighter than the Plain": what stands before "but" is compared apart. */
function behindBut(scene: Scene, comparative: Item): Scene {
  const { items, units } = scene;
  const but = items.findLastIndex((item) => isWord(item, 'but') && item.index < comparative.index);
  const apart = items
    .slice(0, Math.max(0, but))
    .some((item) => keyOf(item, 'equative') ?? keyOf(item, 'comparative'));
  if (!apart) return scene;
  const start = items[but]!.index;
  return { ...scene, items: items.slice(but), units: units.filter(({ item }) => item.index > start) };
}

/** Rankings and comparisons without a number: "brightest under £1,100", "dearer than the Tamarick". */
export function readOrders(scene: Scene, findings: Findings): undefined {
  const windows = scene.items.filter(({ number }) => number?.role === 'window');
  const isOfWindows =
    windows.length > 1 && !scene.items.some(({ number }) => number?.dimension === 'luminance');
  const before = findings.list.length;
  readEachOrder(scene, findings);
  if (isOfWindows)
    for (const finding of findings.list.slice(before)) readEachWindow(scene, findings, finding, windows);
}

/** "Brightest in a 10 % window, and in a 5 % window too": the same of each size of the patch. */
function readEachWindow(
  scene: Scene,
  findings: Findings,
  finding: Finding,
  windows: readonly Item[],
): undefined {
  const { check, start, end } = finding;
  if (check?.kind !== 'order' || check.key.type !== 'quantity' || check.key.selector.stat !== 'at') return;
  const { key } = check;
  const inWindow = (x: number): OrderCheck => {
    const conditions = { ...key.conditions, window: x };
    return { ...check, key: { ...key, selector: { ...key.selector, at: x }, conditions } };
  };
  const own = windows.find((item) => item.start >= start && item.end <= end);
  const x = own?.number?.x ?? key.conditions.window;
  if (x !== undefined && x !== key.conditions.window) {
    finding.check = inWindow(x);
    scene.said = scene.said?.map((said) => (said === check ? finding.check! : said));
  }
  for (const item of windows)
    if (item.number!.x !== x) propose(findings, scene, 'order', inWindow(item.number!.x), [item]);
}

function readEachOrder(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    if (scene.used.has(item) || (keyOf(item, 'comparative') && (cellOf(scene) || brightestSpot(scene.items))))
      continue;
    if (isWord(item, 'worst') && readBestFigure(scene, findings, item)) continue;
    if (readExtreme(scene, findings, item)) continue;
    const superlative = meaningOf(item, 'superlative');
    const comparative = meaningOf(item, 'comparative');
    if (superlative)
      readSuperlative(
        scene,
        findings,
        item,
        superlative.key,
        entryOf(scene, item, superlative.data as ComparativeEntry),
      );
    else if (comparative) {
      const part = behindBut(scene, item);
      readComparative(
        part,
        findings,
        item,
        comparative.key,
        entryOf(part, item, comparative.data as ComparativeEntry),
      );
      if (part.said) scene.said = part.said;
    }
  }
}

function readComparative(
  scene: Scene,
  findings: Findings,
  item: Item,
  key: string,
  given: ComparativeEntry,
): undefined {
  const problem = comparativeProblem(scene, item, given);
  if (problem === 'no set') return;
  if (problem) return refuse(findings, scene, 'order', problem.why, problem.words);
  if (isMoreSo(scene, item)) return readMoreSo(scene, findings, item);
  const at = scene.items.indexOf(item);
  const than = scene.items.findIndex((other, index) => index > at && isWord(other, 'than'));
  const nobody = scene.items.find(
    (other, index) =>
      index < at && (keyOf(other, 'stat') === 'none' || keyOf(other, 'negation') !== undefined),
  );
  // "It came with a cheaper set": a set of that kind, with nothing that it is compared with.
  if (
    than < 0 &&
    !nobody &&
    isWord(scene.items[at - 1], 'a', 'an') &&
    isWord(scene.items[at + 1], 'set', 'television', 'model', 'screen', 'tv')
  )
    return refuse(findings, scene, 'order', 'the words do not say what it is compared with', [item]);
  // "The Plain (412 nits) and the Umbra (468 nits) are both dimmer": of two sets, and one stands in this clause.
  const both = scene.items.find(
    (word, place) => isWord(word, 'both') && place < at && !isWord(scene.items[place - 1], 'than'),
  );
  const alone = scene.units.filter(({ item: set }) => set.index < item.index);
  if (
    both &&
    !scene.group &&
    alone.length <= 1 &&
    isWord(scene.items[scene.items.indexOf(both) - 1], 'are', 'were')
  )
    return refuse(findings, scene, 'order', 'two sets at once are no check: say it of each', [both, item]);
  const other = otherMention(scene);
  const generic = openComparatives.has(key);
  const quantity = comparedQuantity(scene, given);
  const lost = !('problem' in quantity) && isOfLoss(scene, quantity);
  const entry: ComparativeEntry = lost
    ? { ...given, direction: given.direction === 'higher' ? 'lower' : 'higher' }
    : given;
  const comparing = { item, key, entry };
  const { sizeWord, item: sizeItem } = sizeWordOf(scene, item);
  const more = sizeWord ? { sizeWord } : {};
  // "no other set under £1,100 has been brighter this year"
  const noOther =
    nobody &&
    scene.items.some(
      (word) =>
        isWord(word, 'other', 'set', 'television', 'tv', 'rival', 'nothing', 'screen') ||
        isWord(word, 'nothing else'),
    ) &&
    keyOf(nobody, 'stat') === 'none' &&
    than < 0;
  const neverMore =
    than < 0 &&
    !other &&
    scene.items.some(
      (word) =>
        keyOf(word, 'stat') === 'never' ||
        keyOf(word, 'stat') === 'none' ||
        isWord(word, 'yet', "haven't", 'not'),
    ) &&
    scene.items.some((word) => isWord(word, 'measured', 'tested', 'seen', 'reviewed', 'had'));
  if (scene.items.some((word) => word.number && isLedByBy(scene, word) && !scene.used.has(word)))
    return refuse(findings, scene, 'order', 'the words do not say which set is meant by so much', [
      item,
      nobody,
    ]);
  if (
    noOther ||
    neverMore ||
    (nobody &&
      keyOf(nobody, 'stat') === 'none' &&
      than >= 0 &&
      !other &&
      !scene.unitNamed &&
      scene.items.some((word) => isWord(word, 'it', 'set', 'other')))
  ) {
    if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [item, nobody]);
    const direction = betterDirection(entry, key, quantity);
    if (!direction)
      return refuse(findings, scene, 'order', 'better has no direction for this quantity', [item, nobody]);
    const { cohort, items } = cohortOf(scene);
    // "Neither rival is brighter": this review's own set is ahead of both.
    if (scene.group) {
      const { unit: _unit, ...conditions } = scene.conditions;
      const own = { ...scene, unit: undefined, unitProblem: undefined, group: undefined, conditions };
      if (scene.group.includes(scene.context.own) || !isWord(nobody, 'neither'))
        return refuse(findings, scene, 'order', 'the words do not say which set is ahead', [item, nobody]);
      const best = orderCheck(own, quantity, direction, { type: 'best' }, { units: scene.group }, more);
      return propose(findings, own, 'order', best, [item, nobody]);
    }
    return propose(
      findings,
      scene,
      'order',
      orderCheck(scene, quantity, direction, { type: 'best' }, cohort, more),
      [item, nobody, ...items],
    );
  }
  const only = onlyOne(scene);
  if (only && (than >= 0 || other))
    return refuse(findings, scene, 'order', 'the words do not say among which sets', [item, only.item]);
  if (only && than < 0) {
    if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [item, only.item]);
    const direction = betterDirection(entry, key, quantity);
    if (!direction || only.id === undefined)
      return refuse(findings, scene, 'order', 'the words do not say in what, or which set', [
        item,
        only.item,
      ]);
    const { unit: _unit, ...conditions } = scene.conditions;
    const { cohort, items } = cohortOf(scene);
    return propose(
      findings,
      scene,
      'order',
      orderCheck(
        { ...scene, unit: undefined, conditions },
        quantity,
        direction,
        { type: 'best' },
        { ...cohort, except: [...(cohort.except ?? []), only.id] },
        more,
      ),
      [item, only.item, only.word, ...items],
    );
  }
  if (!nobody && (!other || other.id === 'rival') && readAgainstRivals(scene, findings, comparing)) return;
  if (than < 0 && !other && readCoversMore(scene, findings, item, entry)) return;
  if (than < 0 && !other && readWorse(scene, findings, comparing)) return;
  if (than < 0 && !other) {
    const carried = scene.previous?.units.find((mention) => mention.role === 'compared');
    // "Both rivals keep more of theirs at 45 degrees"
    const isKept = ['keep', 'lose'].includes(keyOf(scene.items[at - 1], 'verb') ?? '') && scene.unitNamed;
    // "The Kasulind has a higher contrast than ours, and the Veltrane has a lower one"
    const isOne =
      isWord(scene.items[at + 1], 'one') &&
      isWord(scene.items[at - 1], 'a', 'an') &&
      scene.unitNamed &&
      (scene.previous?.said?.some(({ kind }) => kind === 'order') ?? false);
    // "Both rivals have a smaller average error"
    const isOfBoth =
      isWord(scene.items[at - 1], 'a', 'an') &&
      scene.items.some((word) => isWord(word, 'both') && word.index < item.index) &&
      concepts(scene).some(({ index }) => index > item.index);
    const isTold = !('problem' in quantity) && (isOwned(scene) || isKept || isOne || isOfBoth);
    if (generic && !(carried && concepts(scene).length > 0) && !isTold) {
      if (!('problem' in quantity) && hasIt(scene, at)) {
        readHigher(scene, findings, item, quantity, betterDirection(entry, key, quantity));
        return;
      }
      // "Off axis the Vane is the better set": a comparison all the same.
      const asSet = isWord(scene.items[at + 1], 'set', 'screen', 'television', 'tv', 'panel');
      const inAll = isWord(scene.items[at + 1], 'in') && keyOf(scene.items[at + 2], 'stat') !== undefined;
      if (scene.unitNamed && (asSet || inAll))
        refuse(findings, scene, 'order', 'the words do not say in what', [item, scene.items[at + 1]]);
      return;
    }
    // "Deeper still": than the set that was spoken of just before.
    const still = isWord(scene.items[at + 1], 'still');
    const before = splitVariant(scene.previous ? scene.previous.unit : scene.carry.unit).unit;
    const id =
      still && before !== undefined && before !== scene.unit
        ? before
        : scene.unit !== undefined && scene.unit !== scene.context.own
          ? scene.context.own
          : carried && resolveMention(carried, scene.carry, scene.context);
    if (!id) {
      if (
        scene.items.some((word) => keyOf(word, 'pronoun') || keyOf(word, 'unit') || keyOf(word, 'maker')) ||
        scene.unitNamed
      )
        refuse(findings, scene, 'order', 'the words do not say what it is compared with', [item, sizeItem]);
      return;
    }
    const subjects = scene.units.filter((mention) => mention.role === 'subject');
    if (subjects.length > 1 && scene.items.some((word) => isWord(word, 'neither')))
      return readNeither(scene, findings, comparing, subjects);
    if (subjects.length > 1 && readBothAhead(scene, findings, comparing, subjects)) return;
    if (subjects.length > 1)
      return refuse(findings, scene, 'order', 'two sets at once are no check: say it of each', [
        item,
        ...subjects.map((mention) => mention.item),
      ]);
    if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [item, sizeItem]);
    const direction = betterDirection(entry, key, quantity);
    if (!direction) return;
    return propose(
      findings,
      scene,
      'order',
      orderCheck(
        scene,
        quantity,
        direction,
        { type: 'ahead' },
        { units: [id] },
        { ...more, ...negated(scene, item) },
      ),
      [item, sizeItem],
    );
  }
  const thisOne = other ? undefined : thisOneBehind(scene);
  if (thisOne && !('problem' in quantity) && betterDirection(entry, key, quantity))
    return propose(
      findings,
      scene,
      'order',
      orderCheck(
        scene,
        quantity,
        betterDirection(entry, key, quantity)!,
        { type: 'ahead' },
        { units: [scene.context.own] },
        {
          ...more,
          ...negated(scene, item),
        },
      ),
      [item, scene.items[than], thisOne, ...concepts(scene)],
    );
  if (!other) {
    if (generic && !scene.items.some((word) => keyOf(word, 'concept'))) return;
    const last = scene.items
      .slice(than)
      .find(
        (word) =>
          keyOf(word, 'stage') || keyOf(word, 'signal') || keyOf(word, 'mode') || isWord(word, 'before'),
      );
    if (last && readBetweenRuns(scene, findings, comparing, quantity)) return;
    if (last)
      return refuse(
        findings,
        scene,
        'order',
        'an order between two runs of one set is stated without a number',
        [item, last],
      );
    // "The kettle is louder than the traffic": neither side is a set.
    if (!speaksOfSets(scene.sentence.filter((word) => !(isWord(word, 'it') && word.index > item.index)))) {
      scene.used.add(item);
      return;
    }
    const places =
      scene.axes.length > 0 || scene.items.some((word) => keyOf(word, 'plane') ?? keyOf(word, 'side'));
    if (!generic || (places && than >= 0))
      refuse(findings, scene, 'order', 'the words do not say what it is compared with', [item]);
    return;
  }
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [item, other.item]);
  const best = nobody && keyOf(nobody, 'stat') === 'none' && !negated(scene, item).negated;
  const rivalless =
    best &&
    isWord(
      scene.items[scene.items.indexOf(nobody) + 1],
      'set',
      'other',
      'television',
      'tv',
      'screen',
      'model',
    );
  const bestId = rivalless ? resolveMention(other, scene.carry, scene.context) : undefined;
  const bestWay = bestId === undefined ? undefined : betterDirection(entry, key, quantity);
  // "No set has a lower average error than the Flint": the Flint is the best of all.
  if (bestId !== undefined && bestWay) {
    const { unit: _unit, ...rest } = scene.conditions;
    const conditions =
      bestId === scene.context.own
        ? rest
        : { ...rest, unit: splitVariant(bestId).unit!, origin: { ...rest.origin, unit: 'named' as const } };
    const of = { ...scene, conditions };
    return propose(
      findings,
      { ...scene, unitProblem: undefined },
      'order',
      orderCheck(of, quantity, bestWay, { type: 'best' }, cohortOf(scene).cohort, more),
      [nobody, item, other.item, ...concepts(scene)],
    );
  }
  if (best)
    return refuse(findings, scene, 'order', 'the words do not say which set is ahead', [item, other.item]);
  const direction = betterDirection(entry, key, quantity);
  if (!direction)
    return refuse(findings, scene, 'order', 'better has no direction for this quantity', [item, other.item]);
  const ids = scene.units
    .filter((mention) => mention.role === 'compared' || mention.role === 'possessive')
    .map((mention) => resolveMention(mention, scene.carry, scene.context));
  if (ids.some((id) => id === undefined))
    return refuse(findings, scene, 'order', `“${other.item.text}” could be more than one set`, [
      item,
      other.item,
    ]);
  propose(
    findings,
    scene,
    'order',
    orderCheck(
      scene,
      quantity,
      direction,
      { type: 'ahead' },
      { units: ids as string[] },
      { ...more, ...negated(scene, item) },
    ),
    [
      item,
      sizeItem,
      ...scene.units.filter((mention) => mention.role !== 'subject').map((mention) => mention.item),
      scene.items[than],
      ...concepts(scene),
    ],
  );
}
