import type { Bound, Check } from '../../../contract/check.ts';
import type { House } from '../../../contract/house.ts';
import { carriedConcept } from '../carry.ts';
import { ask, type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { subjectOf } from '../subject.ts';
import { countOfLevels } from './levelCount.ts';
import { limitCheck, limitWords } from './limit.ts';
import { onlyThere } from './onlyThere.ts';

/** "Errors become visible at 60 % and stay visible from there up": the onset once more, and nothing new. */
function repeatsOnset({ items, previous }: Scene): boolean {
  const from = items.findIndex(
    (item, at) => isWord(item, 'from') && isWord(items[at + 1], 'there', 'then', 'that'),
  );
  return from >= 0 && (previous?.said?.some(({ kind }) => kind === 'onset') ?? false);
}

/** Words of seeing that are a limit only where the clause speaks of an error. */
const weak =
  /^(?:see|seen|be seen|show|shows|spot|notice|noticed|accuracy|detectable|in sight|over the line)$/;

function errorQuantity(scene: Scene): { quantity: Quantity; items: Item[] } | undefined {
  const subject = subjectOf(scene, undefined);
  if (isSettled(subject)) {
    if (subject.quantity.dimension === 'de') return { quantity: subject.quantity, items: subject.items };
    if (subject.quantity.id === 'white.distance' || subject.quantity.id === 'white.cct') {
      return isOffAxis(scene) ? { quantity: quantityById('angle.de2000'), items: subject.items } : undefined;
    }
    if (subject.quantity.id === 'angle.luminance' && !hasKey(scene, 'concept', 'luminance'))
      return { quantity: quantityById('angle.de2000'), items: subject.items };
    return undefined;
  }
  if (scene.axes.some((axis) => axis.kind === 'stimulus' && !axis.tone))
    return { quantity: quantityById('grey.de2000'), items: [] };
  const colourWord = scene.items.find((item) => isWord(item, 'colour', 'colours'));
  const greyWord = scene.items.find(
    (item, at) => isWord(item, 'grey', 'greys', 'tones') && !isWord(scene.items[at - 1], 'skin', 'flesh'),
  );
  if (
    isOffAxis(scene) &&
    scene.items.some((item) => isWord(item, 'shift', 'shifts', 'colour', 'colours', 'changes'))
  )
    return { quantity: quantityById('angle.de2000'), items: [] };
  if (greyWord) return { quantity: quantityById('grey.de2000'), items: [greyWord] };
  if (colourWord) return { quantity: quantityById('chart.de2000'), items: [colourWord] };
  return undefined;
}

/** "Cyan slips past the visible limit": a hue beside the threshold of errors is its own error. */
function hueAtThreshold({ items }: Scene, word: Item): { quantity: Quantity; items: Item[] } | undefined {
  const [hue, other] = items.filter((item) => keyOf(item, 'hue') !== undefined);
  if (!hue || other || !/threshold|limit/.test(word.text)) return undefined;
  return { quantity: quantityById(`sweep.${keyOf(hue, 'hue')}.de2000`), items: [hue] };
}

/** "Adjusted, it is close to reference": of a set, with nothing else named, it is the greyscale (`judging.md`, "House words");
 * plain "reference" of a set may be a manner of speaking. */
function plainReference(scene: Scene, word: string): { quantity: Quantity; items: Item[] } | undefined {
  const other = scene.items.some(
    (item) => keyOf(item, 'concept') ?? keyOf(item, 'hue') ?? keyOf(item, 'gamut') ?? keyOf(item, 'topic'),
  );
  const ofSet = scene.conditions.origin.stage === 'named' || scene.conditions.stage === 'adjusted';
  if (other || !ofSet || word !== 'closeToReference') return undefined;
  return { quantity: quantityById('grey.de2000'), items: [] };
}

function referenceBounds(scene: Scene, quantity: Quantity, word: string): Bound[] {
  const { limits } = scene.context.house;
  const bound = (stat: 'average' | 'max', x: number): Bound => ({
    operand: operandOf(scene, quantity, { ...selectorOf(scene, quantity, 'under'), stat }),
    op: '<',
    x,
    unit: quantity.unit,
  });
  if (word === 'reference')
    return [bound('average', limits.referenceAverage), bound('max', limits.referenceMaximum)];
  if (word === 'closeToReference') return [bound('average', limits.closeToReferenceAverage)];
  return [bound('average', limits.accurateAverage)];
}

/** "Near-black steps are visible": what a pattern shows of them, where nothing has spoken of an error. */
function isNearBlackDetail(scene: Scene): boolean {
  const spoken = scene.concept ?? carriedConcept(scene.carry);
  return (
    spoken === undefined &&
    hasKey(scene, 'tone', 'nearBlack') &&
    scene.items.some((item) => plays(item, 'levels')) &&
    !hasKey(scene, 'concept', 'error', 'greyError')
  );
}

/** "The weak spot", "a good show": a thing, not something that is seen. */
function isNoun(scene: Scene, item: Item): boolean {
  const before = scene.items[scene.items.indexOf(item) - 1];
  return (
    isWord(item, 'spot', 'show', 'shows', 'notice') &&
    (isWord(before, 'a', 'the', 'one', 'its', 'this', 'that', 'every', 'sweet', 'soft', 'blind', 'hot') ||
      keyOf(before, 'opinion') !== undefined)
  );
}

/** "My reference curtain": a noun of no meaning here. */
function isThing(next: Item | undefined): boolean {
  return (
    next?.type === 'word' &&
    next.meanings.length === 0 &&
    !/^(?:and|but|or|by|in|for|at|on|to|with|when|while|as|after|from|here|now|level|grade|quality|class|standard|result|results|figures?|performance|territory|showing|accuracy|pictures?|images?|throughout|again|too|is|are|was|only|if|once)$/.test(
      next.text,
    )
  );
}

/** "The opera that you see": a thing, and whoever looks at it. */
function isWhatYouSee({ items }: Scene, word: Item): boolean {
  const at = items.indexOf(word);
  const noun = items[at - 3];
  return (
    isWord(word, 'see', 'sees', 'saw') &&
    isWord(items[at - 1], 'you', 'we', 'i', 'they') &&
    isWord(items[at - 2], 'that', 'what', 'which') &&
    noun?.type === 'word' &&
    noun.meanings.length === 0
  );
}

/** "Who has never seen the film", "will show you the figures": what is seen or shown is a thing, and no error. */
function hasObject({ items }: Scene, word: Item): boolean {
  let at = items.indexOf(word) + 1;
  if (isWord(items[at], 'you', 'us', 'me', 'them', 'him', 'her')) at += 1;
  // "You can see the Plain's trainer reaching for the towel"
  const set = isWord(items[at], 'the') ? at + 1 : at;
  if (keyOf(items[set], 'unit') !== undefined && isWord(items[set + 1], "'s", "'"))
    return items[set + 2]?.type === 'word' && items[set + 2]!.meanings.length === 0;
  if (!isWord(items[at], 'the', 'a', 'an', 'his', 'their', 'your', 'my', 'our')) return false;
  const noun = items[at + 1];
  return (
    noun?.type === 'word' &&
    noun.meanings.length === 0 &&
    !isWord(
      noun,
      'thing',
      'difference',
      'differences',
      'deviation',
      'least',
      'slightest',
      'single',
      'trace',
      'hint',
    )
  );
}

const comparedTo = /^(?:monitor|display|screen|disc|film|set|meter|curve|white|clip)$/;

/** A house word that names a thing, a limit or what is seen, and says of nothing that it passes the limit. */
function setsNoLimit(scene: Scene, item: Item, word: string): boolean {
  const { items } = scene;
  const at = items.indexOf(item);
  const [third, second, last, next] = [items[at - 3], items[at - 2], items[at - 1], items[at + 1]];
  // "Of the errors a meter can see"
  if (weak.test(item.text) && isWord(last, 'can', 'could') && isWord(second, 'metre', 'instrument', 'camera'))
    return true;
  if (weak.test(item.text)) {
    // "What you see is a blue tint", "what you may notice is …": what it is.
    const isWhat =
      isWord(second, 'what') || (isWord(third, 'what') && isWord(last, 'may', 'might', 'will', 'do'));
    // "It shows what an average can conceal"
    const ofThought = isWord(next, 'what', 'how', 'why', 'that');
    if (isWhat || ofThought || scene.conditional || hasObject(scene, item) || isWhatYouSee(scene, item))
      return true;
  }
  // "The Plain's corner affects not to have noticed": what somebody makes believe.
  if (items.slice(0, at).some((entry) => isWord(entry, 'affects', 'pretends', 'claims', 'appears', 'feigns')))
    return weak.test(item.text);
  // "A reference monitor": a thing to compare with.
  if (word === 'reference' && (comparedTo.test(next?.text ?? '') || isThing(next))) return true;
  // "3 is the threshold" says which it is.
  if (isWord(last, 'the', 'our') && isWord(second, 'is') && third?.number) return true;
  // "The limit for a visible error is 3"
  return (
    isWord(last, 'a', 'an', 'any', 'the') &&
    items.slice(Math.max(0, at - 4), at).some((entry) => isWord(entry, 'limit', 'threshold', 'bar'))
  );
}

/** House words that stand for a limit: visible, invisible, imperceptible, reference, accurate. */
export function readHouseWords(scene: Scene, findings: Findings): undefined {
  readAdjectives(scene, findings);
  if (repeatsOnset(scene)) return;
  // "Colours hold until 45 degrees, after which they shift visibly": the stretch ends before what is said.
  const turn = scene.sentence.find(
    (item, at) => isWord(item, 'after', 'beyond', 'past') && isWord(scene.sentence[at + 1], 'which', 'that'),
  );
  const { limits } = scene.context.house;
  for (const item of scene.items) {
    const word = keyOf(item, 'house');
    if (!word || scene.used.has(item) || isNoun(scene, item) || setsNoLimit(scene, item, word)) continue;
    if (turn && turn.index < item.index && scene.axes.some(({ items }) => items.at(-1)!.index < turn.index)) {
      refuse(findings, scene, 'house', 'the words do not say from which level on', [turn, item]);
      continue;
    }
    scene.focus = item;
    const isWeak = weak.test(item.text);
    const found = errorQuantity(scene) ?? hueAtThreshold(scene, item) ?? plainReference(scene, word);
    const negations = scene.items.filter(
      (entry) =>
        entry !== item &&
        !scene.used.has(entry) &&
        // "In the greys you see nothing"
        (entry.index < item.index ||
          (isWeak && entry.index === item.index + 1 && isWord(entry, 'nothing'))) &&
        (keyOf(entry, 'negation') !== undefined || ['none', 'never'].includes(keyOf(entry, 'stat') ?? '')) &&
        !scene.items.some(
          (word) => isWord(word, 'but') && word.index > entry.index && word.index < item.index,
        ),
    );
    // "It sits above 3, which is roughly where people begin to notice": what the number means, and no finding.
    const isWhere = scene.items.some(
      (entry) => isWord(entry, 'where') && entry.index < item.index && entry.index > item.index - 6,
    );
    if (isWeak && isWhere) continue;
    const inComparator = scene.items.find(
      (entry) => entry.index === item.index - 1 || entry.index === item.index - 2,
    );
    if (
      isWeak &&
      (!found ||
        (negations.length === 0 &&
          !scene.items.some((entry) =>
            isWord(entry, 'can', 'you', 'eye', 'begin', 'begins', 'start', 'starts'),
          )))
    )
      continue;
    if (!found) {
      if (!isWeak) refuse(findings, scene, 'house', 'the words do not say which error is meant', [item]);
      continue;
    }
    const { quantity } = found;
    const words: (Item | undefined)[] = [item, ...found.items, ...limitWords(scene, quantity)];
    // "the visible threshold of 3": the number only repeats the limit.
    const limitNumber = scene.items.find(
      (entry) =>
        entry.number &&
        entry.index > item.index &&
        entry.index <= item.index + 2 &&
        entry.number.dimension === '' &&
        !entry.number.role,
    );
    const visible = quantity.id === 'grey.deitp' ? limits.visibleDeItp : limits.visibleDe2000;
    if (word === 'visible' || word === 'invisible' || word === 'imperceptible') {
      let past = word === 'visible';
      if (past && (keyOf(inComparator, 'comparator') === '<' || keyOf(inComparator, 'comparator') === '<<'))
        past = false;
      if (negations.length % 2 === 1) {
        past = !past;
        words.push(...negations);
      }
      if (inComparator && keyOf(inComparator, 'comparator')) words.push(inComparator);
      const x = word === 'imperceptible' ? limits.imperceptibleDe2000 : (limitNumber?.number?.x ?? visible);
      if (limitNumber) words.push(limitNumber);
      if (countOfLevels(scene) === null) {
        refuse(findings, scene, 'house', 'the words leave open how many levels are meant', words);
        continue;
      }
      const check: Check = past
        ? everywhereOver(
            scene,
            limitCheck(scene, quantity, '>', x, { houseWord: item.text, unit: quantity.unit }),
          )
        : alwaysUnder(
            limitCheck(scene, quantity, '<=', x, { houseWord: item.text, unit: quantity.unit }),
            // "The average is 2.5, which most would never spot": what is not seen is no level's.
            (hasKey(scene, 'stat', 'average') && !isWeak) || /threshold|limit/.test(item.text),
          );
      if (isNearBlackDetail(scene)) {
        const severity: [number, number] = past ? [1, 4] : [0, 0];
        ask(
          findings,
          scene,
          'house',
          'the words do not say whether the steps themselves are seen, or their error',
          [
            { kind: 'observed', topic: 'near-black', severity, conditions: conditionsFor(scene, undefined) },
            check,
          ],
          words,
        );
        continue;
      }
      propose(findings, scene, 'house', onlyThere(scene, check), words);
      continue;
    }
    if (quantity.dimension !== 'de' || hasKey(scene, 'superlative') || hasKey(scene, 'comparative')) {
      if (!scene.items.some((entry) => keyOf(entry, 'superlative') ?? keyOf(entry, 'comparative')))
        refuse(findings, scene, 'house', 'the words do not say which error is meant', words);
      continue;
    }
    // "Accurate the Hearth is not."
    const inverted = item.index === 0 ? scene.items.findLast((entry) => isWord(entry, 'not')) : undefined;
    const negation =
      scene.items.find(
        (entry) =>
          entry.index < item.index && keyOf(entry, 'negation') !== undefined && !scene.used.has(entry),
      ) ?? inverted;
    propose(
      findings,
      scene,
      'house',
      {
        kind: 'bound',
        bounds: referenceBounds(scene, quantity, word),
        houseWord: item.text,
        ...(negation && { negated: true }),
      },
      [item, ...found.items, negation, firstWith(scene, 'stat')],
    );
  }
}

/** "invisible" binds every level, also after a clause about the average. */
function alwaysUnder(check: Check, ofAverage: boolean): Check {
  if (check.kind !== 'bound') return check;
  return {
    ...check,
    bounds: check.bounds.map((bound) =>
      bound.operand.type === 'quantity' &&
      bound.operand.selector.stat !== 'at' &&
      bound.operand.selector.stat !== 'scalar' &&
      bound.operand.selector.stat !== 'all' &&
      (bound.operand.selector.stat !== 'average' || !ofAverage)
        ? {
            ...bound,
            operand: { ...bound.operand, selector: { ...bound.operand.selector, stat: 'max' as const } },
          }
        : bound,
    ),
  };
}

/** "It is visible from 20 to 40 %": at each of these levels, whatever statistic was spoken of before. */
function everywhereOver(scene: Scene, check: Check): Check {
  const named = hasKey(scene, 'stat', 'average', 'max', 'min');
  if (check.kind !== 'bound' || named) return check;
  const inNumbers = scene.items.some((item) => item.number?.to);
  return {
    ...check,
    bounds: check.bounds.map((bound) => {
      const { operand } = bound;
      const isStretch =
        operand.type === 'quantity' &&
        (operand.selector.stat === 'average' || (inNumbers && operand.selector.stat === 'max')) &&
        operand.selector.from !== undefined &&
        operand.selector.to !== undefined;
      return isStretch
        ? { ...bound, operand: { ...operand, selector: { ...operand.selector, stat: 'min' as const } } }
        : bound;
    }),
  };
}

/** Adjectives that the house has given a limit: "punchy" as a peak over so many cd/m². */
function readAdjectives(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    const meaning = meaningOf(item, 'adjective');
    if (!meaning || scene.used.has(item)) continue;
    const entry = meaning.data as House['adjectives'][string];
    const quantity = quantityById(entry.quantity);
    const base = conditionsFor(scene, quantity);
    const conditions =
      entry.signal && base.signal === undefined
        ? { ...base, signal: entry.signal, origin: { ...base.origin, signal: 'named' as const } }
        : base;
    const negation = scene.items.find(
      (other) => other.index < item.index && keyOf(other, 'negation') === 'not',
    );
    const selector = selectorOf(scene, quantity, entry.op.startsWith('<') ? 'under' : 'over');
    propose(
      findings,
      scene,
      'adjective',
      {
        kind: 'bound',
        bounds: [
          {
            operand: operandOf(scene, quantity, selector, conditions),
            op: entry.op,
            x: entry.x,
            unit: quantity.unit,
          },
        ],
        houseWord: item.text,
        ...(negation && { negated: true }),
      },
      [item, negation],
    );
  }
}
