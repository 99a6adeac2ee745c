import { type Findings, opine, refuse } from '../finding.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import { countsThings, isPlainNumber } from '../plainTalk.ts';
import { firstWith, type Scene } from '../scene.ts';
import { isSettled } from '../settled.ts';
import { subjectOf } from '../subject.ts';

const tellingNouns =
  /^(?:ways?|things?|reasons?|people|times?|of|hands?|sides?|more|days?|weeks?|hours?|minutes?|readers?|us|sets?|televisions?|tvs?|models?|units?|rivals?|runs?|words?|paragraphs?|the|a|and|or|is|was|to|in|that|who|makers?|samples?|sizes?|films?|scenes?|legs?|eyes?|points?|or|but|years?|months?|nights?|evenings?|mornings?|friends?|colleagues?|pages?|steps?|levels?|measurements?|readings?|patterns?|metres?|rooms?|other|others|such|so|last|first|next|thirds?|screws?|bolts?|flights?|stairs|floors?|doors?|remotes?|remote|batter(?:y|ies)|boxes|chairs?|sofas?|cups?|children|couriers?|episodes|discs?|lamps?|attempts?|tries|visits?|sentences?|chapters?)$/;

/** Does a claim that was read speak of it already? */
function isSaid(findings: Findings, item: Item): boolean {
  return findings.list.some(({ check, start, end }) => check && start <= item.start && end >= item.end);
}

/** Everything with a number, a comparative or a house word that no check covers: unproven, never ignored. */
export function readLeftovers(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    if (scene.used.has(item)) continue;
    const number = item.number;
    if (number) {
      if (number.role && number.role !== 'value' && number.role !== 'money' && number.role !== 'axisOrValue')
        continue;
      const next = scene.items[scene.items.indexOf(item) + 1];
      if (
        number.spelled &&
        number.dimension === '' &&
        number.outOf === undefined &&
        (number.x <= 1 ||
          next === undefined ||
          tellingNouns.test(next.text) ||
          countsThings(next) ||
          next.type === 'mark')
      )
        continue;
      // "Of the three only the Hearth has …", which leads the sentence
      if (number.spelled && item.index === 2 && isWord(scene.sentence[0], 'of', 'among', 'amongst')) continue;
      // "Our three part company": so many sets.
      if (number.spelled && isWord(scene.items[scene.items.indexOf(item) - 1], 'our', 'these', 'those'))
        continue;
      if (isGroupOnly(scene, item)) continue;
      if (isYearOrAge(scene, item) || isPlainNumber(scene.sentence, item)) continue;
      if (
        number.role === 'axisOrValue' &&
        findings.list.some((finding) =>
          finding.words.some((word) => word.start <= item.start && word.end >= item.end),
        )
      )
        continue;
      if (number.dimension === 'vague') {
        const spoken = firstWith(scene, 'concept', 'price') ?? firstWith(scene, 'concept');
        refuse(findings, scene, 'leftover', 'the words give no number that can be checked', [spoken, item]);
        continue;
      }
      const subject = subjectOf(scene, number.dimension, item);
      refuse(
        findings,
        scene,
        'leftover',
        isSettled(subject) ? 'no rule reads this number' : subject.problem,
        [item, ...(isSettled(subject) ? subject.items : [])],
      );
      continue;
    }
    const unchanged = isUnchanged(scene, item) ? firstWith(scene, 'concept') : undefined;
    if (unchanged) {
      refuse(findings, scene, 'leftover', 'the words say that nothing has changed, and give no number', [
        unchanged,
        item,
      ]);
      continue;
    }
    if (isLimitOfOther(scene, item)) {
      const rest = scene.items.filter(({ index, type }) => index > item.index && type !== 'mark');
      refuse(findings, scene, 'leftover', 'the words do not say at which levels', [item, ...rest]);
      return;
    }
    if (
      keyOf(item, 'gamut') &&
      !scene.items.some((other) => other.number) &&
      !isSaid(findings, item) &&
      // "P3 is the gamut of the digital cinema": what it is.
      !(item.index === 0 && isWord(scene.items[1], 'is', 'was') && isWord(scene.items[2], 'the', 'a')) &&
      // "Known as P3, and a set that cannot cover it": a saying of sets at large.
      !scene.items.some(
        (other, at) =>
          isWord(other, 'a', 'any') && isWord(scene.items[at + 1], 'set', 'television', 'screen'),
      ) &&
      (firstWith(scene, 'verb', 'cover') || firstWith(scene, 'concept', 'coverage')) &&
      !firstWith(scene, 'comparative') &&
      !firstWith(scene, 'superlative')
    )
      refuse(findings, scene, 'leftover', 'the words give no number', [
        firstWith(scene, 'verb', 'cover'),
        item,
      ]);
    else if (item.text === 'minutes on end' && firstWith(scene, 'concept') && !isSaid(findings, item))
      refuse(findings, scene, 'leftover', 'the words give no number', [
        firstWith(scene, 'verb'),
        firstWith(scene, 'concept'),
        item,
      ]);
    else if (
      keyOf(item, 'concept') === 'hold' &&
      !scene.items.some((other) => other.number ?? keyOf(other, 'multiple')) &&
      scene.items.some((other) => ['mostly', 'all'].includes(keyOf(other, 'stat') ?? ''))
    )
      refuse(findings, scene, 'leftover', 'the words give no number', [firstWith(scene, 'verb'), item]);
    else if (keyOf(item, 'hedge') === 'vague' && nounAfter(scene, item))
      refuse(findings, scene, 'leftover', 'the words give no number', [item]);
    else if (
      keyOf(item, 'multiple') &&
      scene.items.some(
        (other) =>
          keyOf(other, 'concept') ||
          keyOf(other, 'unit') ||
          keyOf(other, 'fullScreen') ||
          /\brivals?$/.test(other.text),
      )
    )
      refuse(findings, scene, 'leftover', 'the words do not say what the share is taken of', [item]);
    else if (isUnreadExtreme(scene, findings, item))
      refuse(findings, scene, 'leftover', 'the words do not say which sets, or levels, are compared', [
        item,
        scene.items.find((other) => other.index > item.index && keyOf(other, 'concept') !== undefined),
      ]);
    else if (
      keyOf(item, 'superlative') &&
      scene.items.some((other) =>
        isWord(other, 'tested', 'set', 'sets', 'we', 'televisions', 'class', 'rivals'),
      )
    )
      refuse(findings, scene, 'leftover', 'no rule reads this comparison', [item]);
  }
}

/** "After adjustment its peak stays exactly where it was": that nothing has changed, and no number says how much of it. */
function isUnchanged({ items }: Scene, item: Item): boolean {
  const at = items.indexOf(item);
  const isWhere =
    isWord(item, 'where', 'as') &&
    isWord(items[at + 1], 'it', 'they') &&
    isWord(items[at + 2], 'was', 'were');
  return isWhere && (items[at + 3]?.type ?? 'mark') === 'mark' && at > 0;
}

/** "The Hearth has its largest error at 80 %": where no rule has made anything of the clause. */
function isUnreadExtreme({ items, units }: Scene, { list }: Findings, item: Item): boolean {
  const at = items.indexOf(item);
  const isExtreme =
    isWord(item, 'lowest', 'highest', 'largest', 'greatest', 'biggest', 'smallest') &&
    isWord(items[at - 1], 'the', 'its', "'s") &&
    (units.length > 0 || items.some((word) => word.index > item.index && keyOf(word, 'hue') !== undefined));
  if (!isExtreme || !items.slice(at + 1, at + 4).some((word) => keyOf(word, 'concept'))) return false;
  const { start } = items[0]!;
  const { end } = items.at(-1)!;
  return !list.some(({ words }) => words.some((word) => word.start >= start && word.end <= end));
}

/** "Under 3, a limit that the Plain exceeds": said of another set in passing. */
function isLimitOfOther({ items, units }: Scene, item: Item): boolean {
  const at = items.indexOf(item);
  return (
    isWord(item, 'limit', 'threshold', 'line', 'mark') &&
    isWord(items[at - 1], 'a', 'the') &&
    isWord(items[at + 1], 'that', 'which') &&
    units.some((mention) => mention.item.index > item.index && mention.item.index <= item.index + 4)
  );
}

/** Words between what is spoken of and an adjective that is said of it. */
export const copulas: readonly string[] = [
  'is',
  'are',
  'looks',
  'look',
  'was',
  'were',
  'feels',
  'feel',
  'seems',
  'seem',
  'sounds',
  'appears',
  'remains',
  "'s",
];

/** Adjectives that no house word defines, said of the picture: opinion. */
export function readOpinions(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    if (keyOf(item, 'opinion') === undefined || scene.used.has(item) || !isPredicate(scene, item)) continue;
    opine(findings, scene, 'opinion', [item]);
  }
}

/** "The menus of those two", "all three along the wall", "of the three": which are meant, and no count of anything. */
function isGroupOnly({ items }: Scene, item: Item): boolean {
  const { spelled, dimension, outOf, x } = item.number!;
  const at = items.indexOf(item);
  // "All four accept HLG" says something of them.
  if (!spelled || dimension !== '' || outOf !== undefined || x > 12 || at < 3) return false;
  return (
    isWord(items[at - 1], 'those', 'these', 'all', 'the other', 'other') ||
    // "When the two stand together"
    (isWord(items[at - 1], 'the') &&
      isWord(items[at + 1], 'stand', 'sit', 'hang', 'are', 'were', 'together', 'differ')) ||
    (isWord(items[at - 1], 'the') && isWord(items[at - 2], 'of'))
  );
}

/** "My 1998 portable", "our daughter is 12": nothing of the set. */
function isYearOrAge(scene: Scene, item: Item): boolean {
  const { dimension, outOf } = item.number!;
  if (dimension !== '' || outOf !== undefined) return false;
  const at = scene.items.indexOf(item);
  const next = scene.items[at + 1];
  if (/^(?:19|20)\d\d$/.test(item.text))
    return (
      isWord(scene.items[at - 1], 'my', 'our', 'a', 'an', 'the', 'old') &&
      next?.type === 'word' &&
      next.meanings.length === 0
    );
  return (
    /^\d\d?$/.test(item.text) &&
    isWord(scene.items[at - 1], 'is', 'was', 'turned', 'aged') &&
    scene.items
      .slice(0, at)
      .some((entry) =>
        isWord(entry, 'daughter', 'son', 'niece', 'nephew', 'child', 'wife', 'husband', 'aged'),
      )
  );
}

function nounAfter(scene: Scene, item: Item): boolean {
  const next = scene.items[scene.items.indexOf(item) + 1];
  return (
    next !== undefined &&
    (keyOf(next, 'concept') !== undefined ||
      /^(?:percent|%|nits|degrees|watts?|kelvins?|cd|kilos?|milliseconds|hertz|decibels)/.test(next.text))
  );
}

/** Adjectives said of the picture: "looks just as punchy", "blacks are inky". */
function isPredicate(scene: Scene, item: Item): boolean {
  const at = scene.items.indexOf(item);
  const next = scene.items[at + 1];
  // "A respectable 14 ms", "for bright rooms": said of a number or of the room.
  if (next?.number || isWord(next, 'room', 'rooms')) return false;
  const before = scene.items.slice(Math.max(0, at - 4), at);
  return before.some((entry) => isOneOf(entry, copulas));
}
