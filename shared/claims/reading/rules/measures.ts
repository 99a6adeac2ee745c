import type { FactCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { accessoryBefore } from '../foreign.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import type { FactWord } from '../lexicon/facts.ts';
import { speaksOfSets } from '../plainTalk.ts';
import { hasKey, type Scene } from '../scene.ts';
import { statedOf } from '../stated.ts';
import { denialBefore, factConditions, opOf, withTwin } from './factCheck.ts';
import { factConditionsOf } from './owner.ts';
import { namesPortShare } from './partOfPorts.ts';
import { isLedByBy } from './ratioNumber.ts';
import { quantityOfCheck } from './saidBefore.ts';

const unitDimension: Readonly<Record<string, string>> = {
  length: 'length',
  mass: 'mass',
  frequency: 'frequency',
  months: 'months',
};

/** "A 300 × 300 mm mount" */
function isOfMount(scene: Scene, item: Item): boolean {
  return scene.sentence
    .slice(item.index + 1, item.index + 5)
    .some((entry) => isWord(entry, 'mount', 'mounts', 'vesa', 'bracket', 'pattern'));
}

/** "1,228 mm by 709 mm by 63 mm": width, height and perhaps depth, as is the custom of the trade. */
function readSides(scene: Scene, findings: Findings): undefined {
  const sides: Item[] = [];
  for (const [at, item] of scene.items.entries()) {
    const number = item.number;
    if (!number || scene.used.has(item) || !['length', ''].includes(number.dimension)) continue;
    const joined = isWord(scene.items[at - 1], 'by', '×', 'x') && scene.items[at - 2] === sides.at(-1);
    if (sides.length > 0 && !joined) {
      if (sides.length > 1) break;
      sides.length = 0;
    }
    sides.push(item);
  }
  // "A remote of 20 buttons", but not "From the carton, the greyscale error averages 3.1"
  const isMeasured = sides.every(({ number }) => number!.dimension === '') && hasKey(scene, 'concept');
  if (sides[0] && !isMeasured && (accessoryBefore(scene, sides[0]) || isOfMount(scene, sides.at(-1)!))) {
    for (const side of sides) side.number!.role = 'ignored';
    return;
  }
  const unit = sides.find((item) => item.number!.dimension === 'length')?.number;
  if (!unit || sides.length < 2 || sides.length > 3) return;
  for (const [order, item] of sides.entries()) {
    // A side without a unit has its neighbour's: "1,228 by 709 mm".
    const own = item.number!.dimension === 'length' ? item.number! : unit;
    const number = { ...item.number!, dimension: 'length', unit: own.unit, factor: own.factor };
    const stated = statedOf(number, 'plain');
    const key = ['width', 'height', 'depth'][order]!;
    const check: FactCheck = {
      kind: 'fact',
      key,
      op: '=',
      x: stated.x,
      stated,
      unit: unit.unit,
      conditions: factConditions(scene),
    };
    propose(findings, scene, 'fact', check, [item]);
  }
}

/** "A year's warranty": twelve months, without a number. */
function readYearOfWarranty(scene: Scene, findings: Findings): undefined {
  const noun = scene.items.find((item) => keyOf(item, 'fact') === 'warranty' && !scene.used.has(item));
  const at = scene.items.findIndex(
    (item, index) => isWord(item, 'year', 'twelvemonth') && isWord(scene.items[index - 1], 'a', 'single'),
  );
  if (!noun || at < 0 || scene.items.some(({ number }) => number?.dimension === 'months')) return;
  const year = scene.items[at]!;
  const denial = denialBefore(scene, year);
  propose(
    findings,
    scene,
    'fact',
    {
      kind: 'fact',
      key: 'warranty',
      op: '=',
      x: 12,
      stated: { x: 12, low: 12, high: 12, unit: 'months' },
      unit: 'months',
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    },
    [scene.items[at - 1], year, noun, denial],
  );
}

/** "The Plain's warranty is 24 months, and Nocthale grants three years": what was spoken of, of another maker's set. */
function givesWarranty(scene: Scene, { index }: Item): boolean {
  const gives = scene.sentence
    .slice(Math.max(0, index - 3), index)
    .some((word) =>
      isWord(
        word,
        ...(['grants', 'gives', 'give', 'offers', 'offer', 'provides', 'allows', 'grant', 'has'] as const),
        ...(['get', 'gets', 'comes', 'come', 'carries'] as const),
      ),
    );
  const spokenOf = [...(scene.previous?.said ?? []), ...(scene.previous?.previous?.said ?? [])];
  // "Orrinvale covers the set for 12 months"
  const covers =
    isWord(scene.sentence[index - 1], 'for') &&
    scene.sentence.slice(0, index - 1).some((word) => isWord(word, 'covers', 'covered', 'guarantees'));
  // "Five years, against one year from Nocthale"
  const opposed = isWord(scene.sentence[index - 1], 'against', 'versus');
  return (
    covers || ((gives || opposed) && spokenOf.some((check) => quantityOfCheck(check) === 'fact:warranty'))
  );
}

/** The side that the clause before measured, where this one only names another set as the owner. */
function sideBefore({ previous, items, units, carry }: Scene): string | undefined {
  const foot = items.some((item) => isWord(item, 'pedestal', 'plinth', 'base', 'foot', 'stand'));
  const said = previous?.said?.length === 1 ? previous.said[0] : foot ? carry.statement?.check : undefined;
  const owner = units.some(({ item }) => isWord(items[items.indexOf(item) + 1], "'s"));
  return owner && said?.kind === 'fact' && !said.by && /^(?:width|height|depth|stand\.width)$/.test(said.key)
    ? said.key
    : undefined;
}

function comparedDimension(scene: Scene, dimension: string, { index }: Item): string | undefined {
  // "It is also, at 47 mm, the slimmest"
  const behind = scene.sentence
    .slice(index + 1, index + 4)
    .filter((item) => keyOf(item, 'superlative') !== undefined);
  for (const item of [...scene.items, ...behind]) {
    const entry = (meaningOf(item, 'comparative') ?? meaningOf(item, 'superlative'))?.data as
      | { concept: string }
      | undefined;
    if (dimension === 'length' && entry?.concept === 'fact:depth') return 'depth';
    if (dimension === 'length' && isWord(item, 'thickest point', 'slim', 'thickest')) return 'depth';
  }
  return undefined;
}

/** "71 mm deep", "weighs 17.4 kg", "a refresh rate of 120 Hz", "two years of warranty". */
export function readMeasures(scene: Scene, findings: Findings): undefined {
  readSides(scene, findings);
  readYearOfWarranty(scene, findings);
  for (const item of scene.items) {
    const number = item.number;
    if (!number || scene.used.has(item) || (number.role && number.role !== 'value')) continue;
    const dimension = number.dimension;
    if (!['length', 'mass', 'frequency', 'months'].includes(dimension)) continue;
    if (dimension === 'length' && isOfMount(scene, item)) {
      number.role = 'ignored';
      continue;
    }
    // "The box weighs 23 kg"
    const boxed = scene.items.some(
      (entry, place) =>
        /(?:^|the )(?:box|carton|package)$/.test(entry.text) &&
        entry.index < item.index &&
        isWord(scene.items[place + 1], 'weighs', 'is', 'measures'),
    );
    if (boxed || accessoryBefore(scene, item)) {
      number.role = 'ignored';
      continue;
    }
    const lagBefore =
      scene.items.every((entry) => entry === item || entry.type === 'mark') &&
      scene.previous !== null &&
      hasKey(scene.previous, 'concept', 'lag', 'response');
    if (
      dimension === 'frequency' &&
      (number.to || scene.items.some((entry) => isWord(entry, 'vrr', 'variable')))
    ) {
      refuse(findings, scene, 'fact', 'no fact says which refresh rates vary', [item]);
      continue;
    }
    // "It gains 330 nits and loses 5 mm of depth"
    if (
      isWord(scene.items[scene.items.indexOf(item) - 1], 'loses', 'lost', 'gains', 'saves', 'adds', 'shaves')
    ) {
      refuse(findings, scene, 'fact', 'the number is a difference, and the words do not say of what', [item]);
      continue;
    }
    // "Two of its four HDMI ports handle 144 Hz"
    if (dimension === 'frequency' && namesPortShare(scene)) {
      refuse(findings, scene, 'fact', 'no fact says what a single port takes', [item]);
      continue;
    }
    // "Flicker is absent at 120 Hz"
    if (dimension === 'frequency' && hasKey(scene, 'topic')) {
      number.role = 'ignored';
      continue;
    }
    // "13.2 ms at 60 Hz"
    const ofTime =
      isWord(scene.items[scene.items.indexOf(item) - 1], 'at') &&
      scene.items.some((entry) => entry.index < item.index && entry.number?.unit === 'ms');
    if (dimension === 'frequency' && (ofTime || lagBefore || hasKey(scene, 'concept', 'lag', 'response'))) {
      number.role = 'ignored';
      continue;
    }
    // "One year more than Veltrane gives" is a difference, which `compare.ts` reads.
    if (dimension === 'months' && keyOf(scene.items[scene.items.indexOf(item) + 1], 'comparative')) continue;
    if (dimension === 'months' && !hasKey(scene, 'fact', 'warranty') && !givesWarranty(scene, item)) {
      number.role = 'ignored';
      continue;
    }
    if (isLedByBy(scene, item) && hasKey(scene, 'superlative')) {
      refuse(findings, scene, 'fact', 'the number is a lead, and the words do not say over which set', [
        item,
      ]);
      continue;
    }
    const comparative = scene.items.find((entry) => keyOf(entry, 'comparative'));
    if (comparative && scene.items.indexOf(item) + 1 === scene.items.indexOf(comparative)) continue;
    // "Lighter by two and a half kilos": a difference.
    if (comparative && comparative.index < item.index && isLedByBy(scene, item)) continue;
    const candidates = scene.items.filter((entry) => {
      const meaning = meaningOf(entry, 'fact');
      return meaning !== undefined && unitDimension[meaning.data as FactWord['unit']] === dimension;
    });
    const noun = candidates.sort(
      (a, b) => Math.abs(a.index - item.index) - Math.abs(b.index - item.index),
    )[0];
    // "1,230 mm wide without the stand"
    const without = scene.items.findIndex((entry) => isWord(entry, 'without', 'minus', 'excluding'));
    const stand = scene.items.find(
      (entry, at) =>
        !(without >= 0 && at > without && at <= without + 3) &&
        (keyOf(entry, 'fact') === 'stand.width' ||
          isWord(entry, 'stand', 'feet', 'foot') ||
          // "It rests on a single plate, 880 mm wide"
          (isWord(entry, 'plate', 'base', 'plinth', 'pedestal') &&
            scene.sentence
              .slice(Math.max(0, entry.index - 5), entry.index)
              .some((word) => isWord(word, 'rests', 'stands', 'sits', 'stand', 'its', 'rest', 'sit')))),
    );
    let key = noun
      ? keyOf(noun, 'fact')!
      : dimension === 'months'
        ? 'warranty'
        : dimension === 'mass'
          ? 'weight'
          : dimension === 'frequency'
            ? 'refresh'
            : undefined;
    // "It weighs 17.4 kg with its stand, which is 812 mm wide"
    const lead = scene.previous?.items.at(-1);
    const ofStand =
      isWord(scene.items[0], 'which') &&
      (isWord(lead, 'stand', 'feet', 'foot') || keyOf(lead, 'fact') === 'stand.width');
    if (ofStand && key === 'width') key = 'stand.width';
    if (stand && (key === 'width' || key === undefined) && dimension === 'length') key = 'stand.width';
    // "At 63 mm it is fatter than the Gannet": the comparing word names the dimension.
    if (!key) key = comparedDimension(scene, dimension, item);
    if (
      key === 'depth' &&
      scene.items.some((entry, place) => isWord(entry, 'thinnest') && isWord(scene.items[place - 1], 'its'))
    ) {
      refuse(findings, scene, 'fact', 'only the greatest depth is kept', [item]);
      continue;
    }
    // "It measures 1,293 mm across"
    if (!key && dimension === 'length' && isWord(scene.items[scene.items.indexOf(item) + 1], 'across'))
      key = 'width';
    // "A foot 410 mm across, where the Plain's sprawls over 880 mm"
    if (!key && dimension === 'length') key = sideBefore(scene);
    if (!key && !speaksOfSets(scene.sentence)) {
      number.role = 'ignored';
      continue;
    }
    if (!key) {
      refuse(findings, scene, 'fact', 'the words do not say which dimension is meant', [item]);
      continue;
    }
    // A warranty is promised to the month.
    const stated =
      dimension === 'months' && !number.hedge
        ? {
            x: number.x * number.factor,
            low: number.x * number.factor,
            high: number.x * number.factor,
            unit: number.unit,
          }
        : statedOf(number, 'plain');
    const unit = number.unit;
    const denial = denialBefore(scene, item);
    withTwin(
      scene,
      findings,
      {
        kind: 'fact',
        key,
        op: opOf(item),
        x: stated.x,
        stated,
        ...(unit && { unit }),
        ...(hasKey(scene, 'saying') &&
          (hasKey(scene, 'makerWord') || scene.units.some((mention) => mention.role === 'maker')) && {
            by: 'maker',
          }),
        conditions: factConditionsOf(scene, item),
        ...(denial && { negated: true }),
      },
      [denial, item, noun, key === 'stand.width' ? stand : undefined],
    );
  }
}
