import type { Check } from '../../contract/check.ts';
import { carriedConcept } from './carry.ts';
import { type Item, isWord, keyOf, meaningOf, type NumberPhrase } from './items.ts';
import type { unitWords } from './lexicon/grammar.ts';
import { shows } from './needs.ts';
import { countsThings } from './plainTalk.ts';
import { quantityById } from './quantity.ts';
import type { Scene } from './scene.ts';

type UnitWord = (typeof unitWords)[string];

/** The dimension and unit that numbers of a concept have where the words leave the unit out. */
const natural: Readonly<Record<string, readonly [dimension: string, unit: string]>> = {
  peak: ['luminance', 'cd/m²'],
  sustained: ['luminance', 'cd/m²'],
  luminance: ['luminance', 'cd/m²'],
  sdrWhite: ['luminance', 'cd/m²'],
  cct: ['temperature', 'K'],
  lag: ['time', 'ms'],
  response: ['time', 'ms'],
  power: ['power', 'W'],
  standby: ['power', 'W'],
  noise: ['noise', 'dB(A)'],
};

const light = new Set(['peak', 'sustained', 'luminance', 'sdrWhite', 'whitePoint']);

/** A number that nothing has given a unit or another sense, and behind which no noun stands that it counts. */
function isBare(scene: Scene, item: Item): boolean {
  const { number } = item;
  if (!number || number.role !== undefined || number.dimension !== '' || number.outOf !== undefined)
    return false;
  if (
    number.spelled &&
    number.x < 100 &&
    !/^(?:measured|recorded)$/.test(scene.sentence[item.index - 1]?.text ?? '') &&
    !number.hedge
  )
    return false;
  const next = scene.sentence[item.index + 1];
  return !(
    next?.type === 'word' &&
    next.meanings.length === 0 &&
    (countsThings(next) || /^(?:of|more|less|out)$/.test(next.text))
  );
}

/** "Peak brightness: 742", "lag is 9.6", "Plain 412, Vane 571": the number stands for what is named before it. */
function isLabelled(scene: Scene, item: Item): boolean {
  let at = item.index - 1;
  while (keyOf(scene.sentence[at], 'hedge') ?? keyOf(scene.sentence[at], 'comparator')) at -= 1;
  const before = scene.sentence[at];
  return (
    // "0.4 on standby"
    keyOf(scene.sentence[item.index + 1], 'concept') === 'standby' ||
    (isWord(scene.sentence[item.index + 1], 'on', 'in', 'at') &&
      keyOf(scene.sentence[item.index + 2], 'concept') === 'standby') ||
    isWord(
      before,
      ':',
      '=',
      'is',
      "'s",
      'was',
      'at',
      'with',
      'of',
      'measured',
      'only',
      'just',
      'does',
      'got',
    ) ||
    (keyOf(before, 'unit') ?? keyOf(before, 'maker')) !== undefined ||
    keyOf(before, 'concept') !== undefined ||
    keyOf(before, 'verb') === 'reach'
  );
}

/** "Weight in kg: 17.4": the label names the unit. */
function takeLabelledUnit(number: NumberPhrase, { dimension, unit, factor = 1 }: UnitWord): undefined {
  number.dimension = dimension;
  number.unit = unit;
  number.factor = factor;
  if (dimension === 'money') number.role = 'money';
}

/** Does the clause before state an amount of light that "it", which is its subject too, is said to reach or pass here? */
function isLightAgain({ items, previous, sentence }: Scene, item: Item): boolean {
  const verb = sentence[item.index - 1];
  // "The maker says 1,000 nits; the meter says 742"
  const isMeter =
    isWord(verb, 'says', 'said', 'reads', 'read', 'shows') && isWord(sentence[item.index - 2], 'metre');
  if (isMeter && previous?.items.some(({ number }) => number?.dimension === 'luminance')) return true;
  return (
    [previous, previous?.previous].some((clause) =>
      clause?.items.some(({ number }) => number?.dimension === 'luminance'),
    ) &&
    ['reach', 'exceed'].includes(
      keyOf(verb, 'verb') ?? keyOf(verb, 'comparator')?.replace(/^>=?$/, 'exceed') ?? '',
    ) &&
    items.some((word) => word.index < item.index && isWord(word, 'it'))
  );
}

const finding = [
  ...['measured', 'recorded', 'said', 'says', 'reads', 'read', 'shows', 'showed', 'found', 'got', 'clocked'],
];

/** Was a maker's number quoted in the sentence before the clause, or in the sentence before it and nothing else? */
function isClaimedBefore({ previous, carry }: Scene): boolean {
  const isQuoted = (check: Check | undefined) => check?.kind === 'fact' && check.by === 'maker';
  for (let before = previous; before; before = before.previous) if (before.said?.some(isQuoted)) return true;
  return previous === null && isQuoted(carry.statement?.check);
}

/** "Orrinvale quotes 16 ms of lag; our box said 19.3", "It claims 95 % of P3. I got 97.": in the unit of the maker's number. */
function takeUnitClaimed(scene: Scene, item: Item): undefined {
  const { items, sentence } = scene;
  const { claimed } = scene.carry;
  const isLast = (sentence[item.index + 1]?.type ?? 'mark') === 'mark';
  const hedged = keyOf(sentence[item.index - 1], 'hedge') !== undefined;
  const says = isWord(sentence[hedged ? item.index - 2 : item.index - 1], ...finding);
  if (!claimed || claimed.key.startsWith('fact:') || !isLast || !says || !isClaimedBefore(scene)) return;
  if (items.some((word) => keyOf(word, 'concept'))) return;
  const { dimension, unit } = quantityById(claimed.key);
  if (['time', 'power', 'noise', 'luminance', 'temperature', 'ratio', 'percent'].includes(dimension))
    Object.assign(item.number!, { dimension, unit, factor: 1 });
}

/** "A warranty of just 12 months, when both rivals give you 24": months again. */
function isWarranty({ previous, sentence, carry, items }: Scene, { index, number }: Item): boolean {
  // "The Plain's warranty lasts 36": so long a one is told in months.
  const isNamed = items.some((word) => keyOf(word, 'fact') === 'warranty' && word.index === index - 2);
  if (isNamed && number!.x >= 12 && isWord(sentence[index - 1], 'lasts', 'runs')) return true;
  if (
    !items.some(
      (word) => (keyOf(word, 'unit') ?? keyOf(word, 'maker') ?? keyOf(word, 'pronoun')) !== undefined,
    )
  )
    return false;
  const lead = sentence.slice(Math.max(0, index - 3), index);
  const said = previous?.said?.at(-1) ?? carry.statement?.check;
  return (
    said?.kind === 'fact' &&
    said.key === 'warranty' &&
    lead.some((word) =>
      isWord(word, 'give', 'gives', 'offer', 'offers', 'grant', 'grants', 'has', 'have', 'get', 'gets'),
    ) &&
    (sentence[index + 1]?.type ?? 'mark') === 'mark'
  );
}

/** "Two years on the Hearth, where Veltrane gives the Plain five": years again. */
function termBefore(scene: Scene, item: Item): NumberPhrase | undefined {
  const { number } = item;
  if (!number?.spelled || number.role !== undefined || number.dimension !== '' || number.outOf !== undefined)
    return undefined;
  return isWarranty(scene, item)
    ? scene.previous?.items.find((word) => word.number?.dimension === 'months')?.number
    : undefined;
}

/** "At forty-five the Plain keeps seventy-one", "full white varies by just eight": percent, as such things are told. */
function isShareLeft({ items, sentence, axes, conditions }: Scene, item: Item): boolean {
  const { number } = item;
  if (!number || number.role !== undefined || number.dimension !== '' || number.outOf !== undefined)
    return false;
  if (number.x < 3 || number.x > 100 || (sentence[item.index + 1]?.type ?? 'mark') !== 'mark') return false;
  // "Keeps 70, 50 and 35 %"
  if (sentence[item.index + 2]?.number) return false;
  let at = items.indexOf(item) - 1;
  while (keyOf(items[at], 'hedge') !== undefined || isWord(items[at], 'just', 'only', 'a', 'still')) at -= 1;
  const isAside = axes.some(({ kind }) => kind === 'angle') || conditions.angle !== undefined;
  const keeps = isWord(items[at], ...['keeps', 'keep', 'holds', 'holding', 'retains', 'keeping']);
  const varies = isWord(items[at], 'by') && /^var(?:y|ies|ied)$/.test(items[at - 1]?.text ?? '');
  const ofField = sentence.some((word) => /\bwhite$|\bgrey$|field$|screen$/.test(word.text));
  return (keeps && isAside) || (varies && ofField);
}

/** The length beside a number before which no unit stands, but a side of the cabinet behind it. */
function besideMeasure(scene: Scene, item: Item): NumberPhrase | undefined {
  const next = scene.sentence[item.index + 1];
  if (meaningOf(next, 'fact')?.data !== 'length') return undefined;
  return scene.sentence.find(({ number }) => number?.dimension === 'length')?.number;
}

/** "The lag is 11.3 ms on the Hearth, and the Plain takes 18.6": of time, and no power. */
function timeBefore({ previous, sentence }: Scene, { index }: Item): NumberPhrase | undefined {
  if (!isWord(sentence[index - 1], 'takes', 'took', 'needs', 'needed')) return undefined;
  const isTime = ({ number }: Item) => number?.dimension === 'time' && number.role !== 'seconds';
  // "9.4 ms, which is lower than the Plain's, while the Umbra takes 13.5"
  const stated = previous && isWord(previous.items[0], 'which') ? previous.previous : previous;
  const before = stated?.items.find(isTime);
  return stated?.said?.length === 1 ? before?.number : undefined;
}

/**
 * Gives bare numbers the unit that the words around them leave no doubt of: light beside a patch of the screen
 * ("918 in a 25 % window"), and what a label before the number names ("Peak brightness in nits: Plain 412").
 */
export function settleBareNumbers(scene: Scene): undefined {
  if (!shows(scene.signs, 'number')) return;
  let concept: string | undefined;
  const unit = shows(scene.signs, 'measure')
    ? scene.items.map((item) => meaningOf(item, 'measure')).find((found) => found !== undefined)
    : undefined;
  for (const item of scene.items) {
    const term = termBefore(scene, item);
    if (term) {
      ({ dimension: item.number!.dimension, unit: item.number!.unit, factor: item.number!.factor } = term);
      continue;
    }
    if (isShareLeft(scene, item)) {
      [item.number!.dimension, item.number!.unit] = ['percent', '%'];
      continue;
    }
    if (!isBare(scene, item)) continue;
    const number = item.number!;
    // "52 mm deep, 1,230 wide": measured as its neighbour is.
    const side = besideMeasure(scene, item);
    if (side) {
      ({ dimension: number.dimension, unit: number.unit, factor: number.factor } = side);
      continue;
    }
    if (unit) {
      takeLabelledUnit(number, unit.data as UnitWord);
      continue;
    }
    if (isWarranty(scene, item)) {
      [number.dimension, number.unit] = ['months', 'months'];
      continue;
    }
    const time = timeBefore(scene, item);
    if (time) {
      ({ dimension: number.dimension, unit: number.unit, factor: number.factor } = time);
      continue;
    }
    concept ??=
      scene.items.map((word) => keyOf(word, 'concept')).find((key) => key !== undefined) ??
      scene.concept ??
      (scene.conditions.origin.window === undefined ? undefined : carriedConcept(scene.carry)) ??
      '';
    const isLight = concept === '' || light.has(concept) || concept === 'black' || concept === 'hold';
    const besidePatch = scene.conditions.window !== undefined && number.x >= 20 && isLight;
    // "It reaches 468 nits, and it clears 465": light again.
    const again = (concept === '' || light.has(concept)) && isLightAgain(scene, item);
    const named =
      again || besidePatch ? natural.luminance : isLabelled(scene, item) ? natural[concept] : undefined;
    // Small numbers are errors or counts, not light; a white of 4 is no temperature.
    if (!named && concept !== undefined) takeUnitClaimed(scene, item);
    const least = { luminance: 20, temperature: 1500 }[named?.[0] ?? ''] ?? 0;
    if (!named || number.x < least) continue;
    [number.dimension, number.unit] = named;
  }
}
