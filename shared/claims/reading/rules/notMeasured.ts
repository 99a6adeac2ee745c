import { isOutBy } from '../besideNumber.ts';
import { brightestSpot } from '../cell.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import { changeWords } from '../lexicon/grammar.ts';
import { isLimitItself } from '../limitSaid.ts';
import type { Quantity } from '../quantity.ts';
import { hasKey, nearestAxis, type Scene } from '../scene.ts';
import { ownedByOther } from './owner.ts';
import { isLedByBy } from './ratioNumber.ts';

const needing = [
  'needs',
  'need',
  'requires',
  'require',
  'wants',
  'want',
  'demands',
  'demand',
  'calls for',
  'call for',
];

export const shareMissing = 'the number is what is missing, and the words do not say of how much';

/** "Lacks 7 % of P3", "all but 7 % of P3": a share of the gamut that is not covered. */
export function isShareMissing({ items }: Scene, quantity: Quantity, number: Item): boolean {
  const at = items.indexOf(number);
  return (
    quantity.id.startsWith('coverage.') &&
    (items.slice(at).some((word) => isWord(word, 'missing', 'lacking', 'absent')) ||
      items
        .slice(Math.max(0, at - 2), at)
        .some((word) => isWord(word, 'lacks', 'lack', 'misses', 'miss', 'omits', 'all but')) ||
      // "Misses P3 by 7 %", "exceeds BT.709 by a fifth"
      isWord(items[at - 1], 'by'))
  );
}

/** Why the number beside this quantity says nothing that was measured; `alone` when the quantity's words are not meant. */
export function valueProblem(
  scene: Scene,
  item: Item,
  quantity: Quantity,
): { why: string; alone?: true } | undefined {
  const number = item.number!;
  if (scene.units.some((mention) => mention.role === 'maker') && !ownedByOther(scene, item))
    return { why: 'the words do not say whether the maker or the review measured it' };
  const at = scene.items.indexOf(item);
  const next = scene.items[at + 1];
  const last = scene.items[at - 1];
  // "Gamma averages 2.2 between 30 and 90 %": the average is that of 10 to 90 %.
  const part = scene.axes.find(
    ({ kind, tone, at: place }) => kind === 'stimulus' && !tone && place === undefined,
  );
  if (quantity.id === 'gamma.average' && part && (part.from !== 10 || part.to !== 90))
    return { why: 'the average gamma is that of 10 to 90 %' };
  // "300 nits is not enough for HDR"
  const enough = scene.items.slice(at + 1, at + 5).findIndex((word) => isWord(word, 'enough', 'plenty'));
  const isJudged =
    enough > 0 &&
    isWord(next, 'is', "isn't", 'are', 'was') &&
    (at === 0 || isWord(scene.sentence[item.index - 1], ':', 'and', 'but', ','));
  if (isJudged) return { why: 'the words do not say whether that was measured' };
  // "At 45 degrees black rises to 0.2 nits"
  const toTheSide = scene.axes.some(
    (axis) => axis.kind === 'angle' && axis.at !== 0 && axis.items.some((word) => scene.items.includes(word)),
  );
  if (toTheSide && /^(?:black|coverage\.|white\.|gamma|grey\.|sweep\.|eotf\.|contrast\.)/.test(quantity.id))
    return { why: 'the quantity is not measured to the side' };
  const second = scene.items[at - 2];
  // "The maker's 900 nits we never saw"
  if (isWord(last, "'s") && keyOf(second, 'makerWord') !== undefined)
    return { why: 'the words do not say whether the maker or the review measured it', alone: true };
  // "It rarely reaches 742 nits", "some samples reach 742 nits"
  const seldom = scene.items
    .slice(0, at)
    .find(
      (word, place) =>
        isWord(word, 'rarely', 'seldom', 'sometimes', 'occasionally') ||
        (isWord(word, 'some', 'most', 'few') &&
          isWord(scene.items[place + 1], 'samples', 'sets', 'units', 'copies')),
    );
  if (seldom) return { why: 'the words leave open how often it is so', alone: true };
  // "With white at 120 nits the error averages 0.6": what was set before the measurement.
  const isSet =
    number.dimension === 'luminance' &&
    isWord(scene.items[0], 'with') &&
    (isWord(last, 'at') ||
      (isWord(last, 'to') && isWord(scene.items[at - 2], 'set', 'adjusted', 'turned'))) &&
    at <= 4 &&
    scene.items.slice(at + 1).some((word) => keyOf(word, 'concept') !== undefined);
  if (isSet) return { why: 'the number names what should be, not what was measured', alone: true };
  // No white is so dim: the number is of something that has no quantity, a halo or a black.
  if (
    /^(?:peak|white$)/.test(quantity.id) &&
    number.dimension === 'luminance' &&
    number.x * number.factor < 2
  )
    return { why: 'the words do not say which luminance is meant', alone: true };
  if (isBesideOther(scene, item) && !ownedByOther(scene, item))
    return { why: 'the words do not say which of the sets the number is of', alone: true };
  // "742, 738 and 745 nits on three days": several numbers of one thing.
  const listed = scene.sentence.slice(item.index - 3, item.index);
  if (
    listed.length === 3 &&
    isWord(listed[2], 'and') &&
    listed[1]?.number?.dimension === '' &&
    isWord(listed[0], ',') &&
    scene.sentence[item.index - 4]?.number !== undefined
  )
    return { why: 'the words give several numbers, and do not say how they differ', alone: true };
  if (beginsList(scene.sentence, item))
    return { why: 'the words give several numbers, and do not say how they differ', alone: true };
  if (isLimitItself(scene.sentence, item))
    return { why: 'the number is the limit, not what was measured', alone: true };
  // "White measures x 0.3127, y 0.3290"
  if (isWord(last, 'x', 'y', 'u', 'v', "u'", "v'"))
    return { why: 'a chromaticity is judged by its distance from the target', alone: true };
  // "A 10 % window holds 742 nits and then sags to 690": what it is after a while is the hold of the peak.
  if (
    quantity.dimension === 'luminance' &&
    quantity.id !== 'peak.sustained' &&
    isWord(last, 'to') &&
    scene.items.slice(0, at).some((word) => isFlagging(word) || isWhile(scene.sentence, word))
  )
    return { why: 'the words do not say when it is so', alone: true };
  // "It peaks at 742 nits. It settles at 690": after a time that nobody names.
  if (
    quantity.id === 'peak' &&
    /^settle[sd]?(?: at)?$/.test(last?.text ?? '') &&
    scene.carry.said?.id === 'peak'
  )
    return { why: 'the words do not say when it is so', alone: true };
  // "Films are mastered at 4,000 nits", "it needs 742 nits to look good", "we set white to 120 nits"
  const need = scene.items.slice(0, at).find((word) => isWord(word, 'mastered', 'graded', ...needing));
  const setTo =
    isWord(last, 'to') &&
    scene.items
      .slice(0, at)
      .some((word, index, all) => isWord(word, 'set') && isWord(all[index - 1], 'we', 'i', 'is', 'was'));
  if (quantity.dimension === 'luminance' && (need ?? setTo))
    return { why: 'the number names what should be, not what was measured' };
  // "The set is rated for 1,000 nits": the maker's number, whoever says it.
  if (isWord(last, 'for', 'at') && isWord(second, 'rated', 'specified', 'specced'))
    return { why: 'the words do not say whether the maker or the review measured it' };
  if (isShareMissing(scene, quantity, item)) return { why: shareMissing };
  // "Within a tenth of 2.2": a distance from the number, and not the number; "tenth of" may be one phrase.
  if (keyOf(isWord(last, 'of') ? second : / of$/.test(last?.text ?? '') ? last : undefined, 'multiple'))
    return { why: 'the words give a distance from this number' };
  if (
    isWord(next, 'target', 'standard', 'ideal', 'reference') ||
    isWord(last, 'target') ||
    (isWord(last, 'is', 'was') && isWord(second, 'target', 'the target', 'standard', 'norm', 'ideal')) ||
    (isWord(last, 'of') && isWord(second, 'instead', 'target', 'ideal')) ||
    isWord(last, 'rather than')
  )
    return { why: 'the number names what should be, not what was measured', alone: true };
  // "At 742 nits against 412 and 468": what others have.
  const isListed =
    isWord(scene.sentence[item.index + 1], 'and') && scene.sentence[item.index + 2]?.number !== undefined;
  if (isWord(last, 'against', 'versus') && scene.units.length === 0 && isListed)
    return { why: 'the words do not say of which set the number is', alone: true };
  // "HDR adds another 54 W": on top of what was said.
  if (isWord(last, 'another', 'extra', 'further', 'adds', 'add', 'saves', 'gains', 'gain', 'buys', 'buy'))
    return { why: 'the number is a difference, and the words do not say of what', alone: true };
  // "Some 650 above the target", "650 over the standard"
  const isFromTarget = /target|standard/.test(next?.text ?? '') && keyOf(next, 'direction') !== undefined;
  if (
    !quantity.signed &&
    (isFromTarget ||
      (isWord(next, 'above', 'below', 'over', 'under', 'beyond', 'off', 'from') &&
        scene.items
          .slice(at + 2, at + 4)
          .some((entry) => isWord(entry, 'target', 'standard', 'ideal', 'reference', 'what'))))
  )
    return { why: 'the number says how far it lies from another, not what was measured', alone: true };
  // "The average is 0.3 lower", "costs 0.3 more": beside a comparing word the number is a distance.
  if (keyOf(next, 'comparative') !== undefined && number.dimension !== 'percent')
    return { why: 'the number is a difference, and the words do not say of what', alone: true };
  // "The dimmest corner falls 15 % short of the brightest spot", which is how the spread is measured
  const isSpread = quantity.id.startsWith('uniformity.') && brightestSpot(scene.items) !== undefined;
  if (!quantity.signed && !isSpread && isWord(next, 'short', 'short of', 'shy', 'adrift'))
    return { why: 'the number says how far it lies from another, not what was measured', alone: true };
  if (
    (['luminance', 'de', 'temperature', 'time', 'power', 'noise'].includes(number.dimension) ||
      (quantity.id === 'grey.de2000' && changes(scene) && !isOutBy(scene, item))) &&
    isLedByBy(scene, item)
  )
    return { why: 'the number says by how much it changed, and the words do not say from what', alone: true };
  // "The colour temperature is 6,600 K in the shadows": that is measured of white alone.
  const tone = scene.axes.find((axis) => axis.kind === 'stimulus' && axis.tone && axis.to !== 100);
  if (
    quantity.axis === null &&
    quantity.id.startsWith('white.') &&
    tone &&
    nearestAxis({ ...scene, focus: item }, 'stimulus') === tone
  )
    return { why: 'the quantity is not measured along these levels' };
  // "Neither rival can match its 742 nits": whose number it is stands apart from who is compared with it.
  if (
    isWord(last, 'its', 'our') &&
    scene.items
      .slice(0, at)
      .some(({ text }) => /^(?:match(?:es)?|equals?|approach(?:es)?|beats?|better|tops?|touch)$/.test(text))
  )
    return { why: 'the words compare with this number: say it of each set', alone: true };
  // "The difference in peak luminance between the two was 171 nits"
  const apart = scene.items
    .slice(0, at)
    .findLastIndex((word) =>
      isWord(word, 'difference', 'gap', 'margin', 'distance', 'disparity', 'lead', 'advantage'),
    );
  if (
    apart >= 0 &&
    scene.items.slice(apart, at).some((word) => isWord(word, 'between', 'separating', 'over', 'to')) &&
    scene.items
      .slice(apart, at)
      .some((word) => keyOf(word, 'unit') ?? keyOf(word, 'maker') ?? isWord(word, 'two'))
  )
    return { why: 'the number says how far two sets lie apart, not what was measured', alone: true };
  if (isWord(last, 'of') && isWord(second, 'difference', 'gap', 'gain', 'drop', 'rise', 'margin', 'lead'))
    return { why: 'the number is a difference, and the words do not say of what', alone: true };
  if (
    number.dimension === 'luminance' &&
    number.state === undefined &&
    hasKey(scene, 'verb', 'cost') &&
    !hasKey(scene, 'verb', 'reach')
  )
    return { why: 'the number is what is lost, and the words do not say of what', alone: true };
  if (number.to !== undefined && /^uniformity\..*cell$/.test(quantity.id))
    return { why: 'the words do not say of which cells each number is' };
  // "Detail is kept up to 1,000 nits": how bright the signal may be, not the screen.
  const detail = scene.items
    .slice(0, at)
    .find(
      (word) =>
        isWord(word, 'detail', 'details', 'texture', 'gradation') ||
        /^(?:tracks|follows|hugs)\b/.test(word.text),
    );
  if (number.comparator === 'upTo' && detail)
    return { why: 'the number names a level of the signal, not what was measured', alone: true };
  if (number.hedge === 'nowhereNear' || number.hedge === 'vague')
    return { why: 'the words give no number that can be checked' };
  if (quantity.id.startsWith('contrast.') && number.to !== undefined && number.to.x * 10 < number.x)
    return { why: 'a contrast is stated against 1' };
  if (quantity.id === 'white.cct' && number.x < 1500)
    return { why: 'a distance from the target in kelvin is no check' };
  return undefined;
}

/** "Keeps 70, 50 and 35 %", "70 and 50 %": the first of several, whose unit stands behind the last. */
function beginsList(sentence: readonly Item[], { index, number }: Item): boolean {
  const [mark, next, joiner, last] = sentence.slice(index + 1, index + 5);
  // "The error is 1.2 at 10 and 90 %": a list of levels.
  if (isWord(sentence[index - 1], 'at')) return false;
  if (number?.dimension !== '' || next?.number === undefined || next.number.spelled) return false;
  if ((next.number.role ?? 'value') !== 'value') return false;
  if (next.number.dimension !== '') return isWord(mark, ',', 'and');
  return isWord(mark, ',') && isWord(joiner, ',', 'and') && last?.number !== undefined;
}

/** "It leaves the Umbra, with 28.7 % on white, eating dust": thrown in behind the other set, and perhaps that set's. */
function isBesideOther({ sentence, units }: Scene, { index }: Item): boolean {
  const set =
    isWord(sentence[index - 1], 'with') && isWord(sentence[index - 2], ',') ? sentence[index - 3] : undefined;
  const other = set && units.some(({ item, role }) => item === set && role !== 'subject');
  const close = sentence.findIndex((item) => item.index > index && isWord(item, ','));
  const next = sentence[close + 1];
  return (
    other === true &&
    close > 0 &&
    next !== undefined &&
    next.type !== 'mark' &&
    !isWord(next, 'and', 'but', 'while', 'so', 'which', 'whereas')
  );
}

/** "The mean error decreased by 1.8" */
function changes(scene: Scene): boolean {
  return (
    hasKey(scene, 'verb', 'fall', 'rise', 'cut') || scene.items.some((word) => isOneOf(word, changeWords))
  );
}

/** "Leave that window up for a couple of minutes and the figure sinks to 976" */
function isWhile(sentence: readonly Item[], { index }: Item): boolean {
  return (
    isWord(sentence[index], 'sinks', 'sank', 'drops', 'falls') &&
    sentence.slice(0, index).some((word) => isWord(word, 'minutes', 'seconds', 'while'))
  );
}

/** "… and then sags to 690" */
function isFlagging(word: Item): boolean {
  return /^(?:sags?|sagging|wilts?|tires?|flags?|fades?|decays?|slips?|slides?)$/.test(word.text);
}
