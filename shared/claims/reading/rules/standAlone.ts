import type { Cohort, OrderCheck } from '../../../contract/check.ts';
import { isLeast } from '../extreme.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { wholeField } from '../lexicon/claims.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import { hasKey, type Scene, type UnitMention } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import type { ComparingWord } from './comparativeEntry.ts';
import { comparedQuantity, isOfLoss } from './compared.ts';
import { groupNamed, groupOf, rivalsAfter } from './group.ts';
import { betterDirection } from './orderWords.ts';
import { quantityOfCheck } from './saidBefore.ts';

/** "The lowest average error of any set this year": an extreme of a quantity among sets, not of its levels. */
export function readExtreme(scene: Scene, findings: Findings, item: Item): boolean {
  const isLength = isWord(item, 'shortest', 'longest');
  if (isWord(item, 'most', 'fewest') && readMostOf(scene, findings, item)) return true;
  const beyond = scene.items[scene.items.indexOf(item) + 1];
  const ends = beyond === undefined || beyond.type === 'mark' || isWord(beyond, 'at', 'from');
  const isMost =
    isWord(item, 'most') && (isWord(beyond, 'of', 'here') || (ends && groupNamed(scene) !== undefined));
  if (
    !isLength &&
    !isMost &&
    !isWord(item, 'lowest', 'highest', 'smallest', 'largest', 'greatest', 'biggest', 'least') &&
    !(
      isWord(item, 'narrowest', 'widest') &&
      (hasKey(scene, 'concept', 'coverage') || followsCoverage(scene))
    ) &&
    !isWorstOf(scene, item)
  )
    return false;
  const at = scene.items.indexOf(item);
  if (readExtremeOfGroup(scene, findings, item)) return true;
  if (readExtremeOfAll(scene, findings, item)) return true;
  if (isLength) return false;
  const noun = nounAfter(scene.items, at);
  const rest = scene.items.slice(at + 2);
  const amongSets = rest.some(
    (word, index) =>
      (isWord(word, 'set', 'sets', 'television', 'televisions', 'tv', 'tvs', 'rivals', 'class') &&
        isWord(rest[index - 1], 'any', 'all', 'the', 'our', 'its')) ||
      (isWord(word, 'tested', 'measured') && rest.some((other) => isWord(other, 'we'))) ||
      (keyOf(word, 'stat') !== undefined && isWord(rest[index + 1], 'set', 'sets', 'television', 'tv')),
  );
  if (!noun || !(amongSets || namesWholeField(scene, item) || isOfOneSet(scene, at, noun))) return false;
  const sets = scene.items.filter(
    (word) => word !== item && !(word.index > noun.index && keyOf(word, 'stat') !== undefined),
  );
  const quantity = comparedQuantity({ ...scene, items: sets }, { concept: '', direction: 'higher' });
  if ('problem' in quantity) return false;
  const { cohort, items } = cohortOf(scene);
  const direction = isLeast(item) ? 'lower' : 'higher';
  const { rank, ordinal } = rankAt(scene, item);
  const check = orderCheck({ ...scene, items: sets }, quantity, direction, rank, cohort);
  propose(findings, scene, 'order', check, [ordinal, item, noun, ...items]);
  return true;
}

/** "The second lowest": its place, which is the first where no ordinal stands before. */
function rankAt({ items }: Scene, item: Item): { rank: OrderCheck['rank']; ordinal?: Item } {
  const lead = items.slice(Math.max(0, items.indexOf(item) - 3), items.indexOf(item));
  const among = lead.find((word) => isWord(word, 'among', 'amongst'));
  if (among) return { rank: { type: 'among' }, ordinal: among };
  const before = items[items.indexOf(item) - 1];
  const ordinal = isWord(before, '-') ? items[items.indexOf(item) - 2] : before;
  const n = Number(keyOf(ordinal, 'ordinal') ?? 1);
  return ordinal && n > 1 ? { rank: { type: 'position', n }, ordinal } : { rank: { type: 'best' } };
}

/** "The Hearth has the lowest average greyscale error": of sets, where no level, hue or place of the screen is named. */
function isOfOneSet({ items, units, axes }: Scene, at: number, noun: Item): boolean {
  const [subject] = units.filter(({ role }) => role === 'subject');
  const verb = items[at - 2];
  const has =
    isWord(items[at - 1], 'the') &&
    isWord(
      verb,
      'has',
      'had',
      'shows',
      'showed',
      'offers',
      'gives',
      'boasts',
      'posts',
      'manages',
      'delivers',
    );
  const next = items[items.indexOf(noun) + 1];
  const ends =
    next === undefined ||
    next.type === 'mark' ||
    isWord(next, 'and', 'but', 'of', 'while', 'with', 'here', 'by', 'on average') ||
    next.index > noun.index + 1;
  const isPlaced = axes.length > 0 || items.some((word) => keyOf(word, 'hue') ?? keyOf(word, 'tone'));
  return has && ends && !isPlaced && subject !== undefined && subject.item.index < items[at]!.index;
}

/** "The average is 4.2, the worst of the three", "white uniformity is the worst of the three" */
function isWorstOf({ items, previous }: Scene, item: Item): boolean {
  const at = items.indexOf(item);
  const leads = isWord(items[at + 1], 'of', 'here') || / of$/.test(item.text);
  const isSubject =
    (isWord(items[at - 2], 'is', 'was') ||
      (isWord(items[at - 3], 'is', 'was') && isWord(items[at - 2], 'also'))) &&
    // "That average is also the worst of the three"
    items.slice(0, at - 2).some((word) => keyOf(word, 'concept') ?? keyOf(word, 'stat'));
  return isWord(item, 'worst') && leads && (isSubject || (previous?.said?.length ?? 0) > 0);
}

/** "It has the most USB ports of the three": of what is counted. */
function readMostOf(scene: Scene, findings: Findings, item: Item): boolean {
  const at = scene.items.indexOf(item);
  const noun = scene.items.slice(at + 1, at + 4).find((word) => meaningOf(word, 'fact')?.data === 'count');
  if (!noun || scene.items.some((word) => isWord(word, 'than'))) return false;
  const { cohort, items } = cohortOf(scene);
  const direction = isWord(item, 'most') ? 'higher' : 'lower';
  const quantity = quantityById(`fact:${keyOf(noun, 'fact')}`);
  propose(findings, scene, 'order', orderCheck(scene, quantity, direction, { type: 'best' }, cohort), [
    item,
    noun,
    ...items,
  ]);
  return true;
}

/** The quantity behind an extreme: "lowest average greyscale error", "highest native contrast". */
function nounAfter(items: readonly Item[], at: number): Item | undefined {
  const phrase = items.slice(at + 1, at + 5);
  const end = phrase.findIndex(
    (word) => word.type === 'mark' || isWord(word, 'of', 'in', 'at', 'here', 'we'),
  );
  return phrase.slice(0, end < 0 ? undefined : end).findLast((word) => keyOf(word, 'concept') !== undefined);
}

/** "Of them all", "of the lot", "of the three": all sets, or the group that the review compares. */
function namesWholeField(scene: Scene, extreme: Item): boolean {
  const rest = scene.items.filter((word) => word.index > extreme.index);
  const words = rest.map(({ text }) => text).join(' ');
  return (
    wholeField.some((phrase) => words.includes(phrase)) || groupNamed({ ...scene, items: rest }) !== undefined
  );
}

/** "of the four" or, past the quantity that the extreme is of, "average error of the four" */
function leadsToGroup(items: readonly Item[], from: number): boolean {
  let at = from;
  while (
    (keyOf(items[at], 'concept') ?? keyOf(items[at], 'stat')) !== undefined ||
    isWord(items[at], 'figure', 'number', 'value', 'reading', 'result', 'draw', 'share')
  )
    at += 1;
  return isWord(items[at], 'of', 'among') || (at > from && / of$/.test(items[at - 1]!.text));
}

/** "It covers 99.4 % of P3, the widest of the three" */
function followsCoverage({ previous }: Scene): boolean {
  const said = previous?.said?.at(-1);
  return (
    said?.kind === 'value' && said.operand.type === 'quantity' && said.operand.id.startsWith('coverage.')
  );
}

/** "… draws the least power": what stands right behind the word is what is compared. */
function besideNoun(scene: Scene, item: Item): Scene {
  const at = scene.items.indexOf(item);
  const noun = scene.items.slice(at + 1, at + 3).find((word) => keyOf(word, 'concept') !== undefined);
  const items = scene.items.filter((word) => word === noun || keyOf(word, 'concept') === undefined);
  return noun ? { ...scene, items } : scene;
}

/** "Its error is the lowest of the three, and its P3 coverage is the widest": the sets that the clause before ranked. */
function rankedBefore({ previous, unit }: Scene): Cohort | undefined {
  if (!previous || previous.unit !== unit) return undefined;
  const order = previous.said?.find((check) => check.kind === 'order' && check.rank.type === 'best');
  return order?.kind === 'order' && order.cohort.units ? order.cohort : undefined;
}

/** "Of the three, the Plain fades the most at 45 degrees": the sets are named before. */
function endsRanking({ items }: Scene, item: Item, group: readonly Item[]): boolean {
  const at = items.indexOf(item);
  const beyond = items.slice(at + 1).findIndex((word) => keyOf(word, 'concept') === undefined);
  const next = beyond < 0 ? undefined : items[at + 1 + beyond];
  return (
    isWord(items[at - 1], 'the') &&
    (next === undefined ||
      next.type === 'mark' ||
      isWord(next, 'at', 'in', 'from') ||
      keyOf(next, 'signal') !== undefined) &&
    group.every((word) => word.index < item.index) &&
    !items.slice(at + 1).some((word) => isWord(word, 'of', 'among'))
  );
}

/** "White gets to 214 cd/m², the lowest of the four": of the quantity that was just spoken of. */
function readExtremeOfGroup(scene: Scene, findings: Findings, item: Item): boolean {
  const group = groupNamed(scene);
  const ranked = group ? undefined : rankedBefore(scene);
  const leads = group !== undefined && leadsToGroup(scene.items, scene.items.indexOf(item) + 1);
  if (!(group ?? ranked) || !(leads || endsRanking(scene, item, group?.items ?? []))) return false;
  const gamut = scene.items.filter((word) => keyOf(word, 'gamut') !== undefined);
  const words = [item, ...(group?.items ?? []), ...gamut];
  const quantity = quantityBefore(besideNoun(scene, item));
  const members = group ? groupOf(scene, group.n) : ranked;
  if (!quantity || !members) {
    refuse(findings, scene, 'order', 'the words do not say which sets, or in what, are compared', words);
    return true;
  }
  const isLess = isLeast(item);
  // "The Linnet fades the most of the three": what is kept is measured.
  const lower = isWord(item, 'worst') ? quantity.better === 'higher' : isLess !== isOfLoss(scene, quantity);
  if (isWord(item, 'worst') && quantity.better === 'target') return false;
  const direction = lower ? 'lower' : 'higher';
  const items = scene.items.filter((word) => word !== item);
  const { rank, ordinal } = rankAt(scene, item);
  const check = orderCheck({ ...scene, items }, quantity, direction, rank, members);
  propose(findings, scene, 'order', check, [ordinal, ...words]);
  for (const { number } of group?.items ?? []) if (number) number.role = 'cohort';
  return true;
}

/** "9 ms, the shortest we have measured this year", "a warranty of a year is the shortest here". */
function readExtremeOfAll(scene: Scene, findings: Findings, item: Item): boolean {
  const at = scene.items.indexOf(item);
  if (!isWord(scene.items[at - 1], 'the', 'our') || keyOf(scene.items[at - 2], 'ordinal')) return false;
  const rest = scene.items.slice(at + 1, at + 6);
  const [first] = rest;
  const all =
    isWord(first, 'here') ||
    (isWord(first, 'we', "we've", 'of', 'that we') &&
      rest.some((word) => isWord(word, 'measured', 'tested', 'seen', 'had', 'set', 'sets', 'television')) &&
      (!isWord(first, 'of') || rest.some((word) => ['any', 'all'].includes(keyOf(word, 'stat') ?? ''))));
  if (!all) return false;
  const quantity = quantityBefore(scene);
  if (!quantity || scene.units.some(({ role }) => role !== 'subject')) return false;
  const items = scene.items.filter(
    (word) => word !== item && !(word.index > item.index && keyOf(word, 'stat')),
  );
  const named = { ...scene, items };
  const direction = isLeast(item) ? 'lower' : 'higher';
  const { cohort, items: words } = cohortOf(scene);
  const tested = rest.filter((word) => isWord(word, 'here', 'measured', 'tested', 'seen', 'had'));
  const { rank, ordinal } = rankAt(scene, item);
  propose(findings, scene, 'order', orderCheck(named, quantity, direction, rank, cohort), [
    ordinal,
    item,
    ...words,
    ...tested,
  ]);
  return true;
}

/** The quantity that this clause names, else the one that the clause before made a claim of. */
function quantityBefore(scene: Scene): Quantity | undefined {
  const said = scene.items.some((word) => keyOf(word, 'concept')) ? undefined : scene.previous?.said?.at(-1);
  // "7 ms longer than the Plain's, and the longest of our three"
  const apart = said?.kind === 'difference' || said?.kind === 'ratio' ? quantityOfCheck(said) : undefined;
  if (apart !== undefined) return quantityById(apart);
  if (said?.kind === 'value' && said.operand.type === 'quantity') return quantityById(said.operand.id);
  const fact = said?.kind === 'fact' ? quantityOfCheck(said) : undefined;
  if (fact !== undefined) return quantityById(fact);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  return 'problem' in quantity ? undefined : quantity;
}

/** "Neither the Kasulind nor the Nocthale is brighter": this review's own set is ahead of both. */
export function readNeither(
  scene: Scene,
  findings: Findings,
  { item, key, entry }: ComparingWord,
  subjects: readonly UnitMention[],
): undefined {
  const words = [item, ...subjects.map((mention) => mention.item)];
  const quantity = comparedQuantity(scene, entry);
  const ids = subjects.map((mention) => resolveMention(mention, scene.carry, scene.context));
  const direction = 'problem' in quantity ? undefined : betterDirection(entry, key, quantity);
  if ('problem' in quantity || !direction || ids.some((id) => id === undefined || id === scene.context.own))
    return refuse(findings, scene, 'order', 'the words do not say in what, or which set', words);
  const { unit: _unit, ...conditions } = scene.conditions;
  const own = { ...scene, unit: undefined, conditions };
  propose(
    findings,
    scene,
    'order',
    orderCheck(own, quantity, direction, { type: 'ahead' }, { units: ids as string[] }),
    words,
  );
}

/** "Both rivals are slower": of this review's own set, which is ahead of both the other way. */
export function readBothAhead(
  scene: Scene,
  findings: Findings,
  { item, key, entry }: ComparingWord,
  subjects: readonly UnitMention[],
): boolean {
  const { context, items } = scene;
  const ids = subjects.map((mention) => resolveMention(mention, scene.carry, context));
  const areRivals =
    context.against?.length === 2 &&
    ids.length === 2 &&
    context.against.every((id) => ids.includes(id)) &&
    subjects[0]!.item === subjects[1]!.item;
  const denied = items.some((word) => keyOf(word, 'negation') ?? keyOf(word, 'stat') === 'none');
  const quantity = comparedQuantity(scene, entry);
  const direction = 'problem' in quantity ? undefined : betterDirection(entry, key, quantity);
  if (!areRivals || denied || 'problem' in quantity || !direction) return false;
  const { unit: _unit, mode: _mode, ...conditions } = scene.conditions;
  const own = { ...scene, unit: undefined, unitProblem: undefined, group: undefined, conditions };
  const opposite = direction === 'higher' ? 'lower' : 'higher';
  const check = orderCheck(own, quantity, opposite, { type: 'best' }, { units: context.against });
  propose(findings, own, 'order', check, [
    subjects[0]!.item,
    item,
    ...items.filter((word) => isWord(word, 'both')),
  ]);
  return true;
}

/** "Only the Veltrane is brighter": the one set that is ahead of this review's own. */
export function onlyOne(scene: Scene): { item: Item; word: Item; id?: string } | undefined {
  const mention = scene.units.find(({ role }) => role === 'subject');
  if (!mention) return undefined;
  const at = scene.items.indexOf(mention.item);
  const word = scene.items.slice(Math.max(0, at - 2), at).find((item) => isWord(item, 'only', 'just'));
  if (!word) return undefined;
  // "Only one of the rivals is brighter": which of them, nobody says.
  const isOne = scene.items.some((item) => /^one(?: of(?: the)?)?$/.test(item.text));
  const id =
    isOne && scene.units.filter(({ item }) => item === mention.item).length > 1
      ? undefined
      : resolveMention(mention, scene.carry, scene.context);
  return { item: mention.item, word, ...(id !== undefined && id !== scene.context.own && { id }) };
}

/** "Brighter than either rival": ahead of both sets that the review compares with. */
export function readAgainstRivals(
  scene: Scene,
  findings: Findings,
  { item, key, entry }: ComparingWord,
): boolean {
  const than = scene.items.findIndex((other) => other.index > item.index && isWord(other, 'than'));
  const rivals = than < 0 ? undefined : rivalsAfter(scene, than);
  if (!rivals) return false;
  const words = [item, ...rivals.items];
  const quantity = comparedQuantity(scene, entry);
  const direction = 'problem' in quantity ? undefined : betterDirection(entry, key, quantity);
  if ('problem' in quantity || !direction || !rivals.cohort)
    refuse(findings, scene, 'order', 'the words do not say which sets, or in what, are compared', words);
  else {
    const check = orderCheck(scene, quantity, direction, { type: 'best' }, rivals.cohort);
    propose(findings, scene, 'order', check, words);
  }
  return true;
}
