import type { Check, FactCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import type { FactWord } from '../lexicon/facts.ts';
import { hasKey, type Scene } from '../scene.ts';
import { statedNumber, statedOf } from '../stated.ts';
import { denialBefore, factConditions, opOf, withTwin } from './factCheck.ts';
import { readMakerClaims } from './maker.ts';
import { readCounts } from './socket.ts';

const unitDimension: Readonly<Record<string, string>> = {
  length: 'length',
  mass: 'mass',
  frequency: 'frequency',
  months: 'months',
};

/** Ports, dimensions, weight, refresh rate, warranty, HDR formats, resolution, prices. */
export function readFacts(scene: Scene, findings: Findings): undefined {
  readMakerClaims(scene, findings);
  readCounts(scene, findings);
  readMeasures(scene, findings);
  readPanel(scene, findings);
  readFormats(scene, findings);
  readPrice(scene, findings);
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

/** "It has an IPS panel": the kind of panel, said of the set and not of panels in general. */
function readPanel(scene: Scene, findings: Findings): undefined {
  for (const [at, item] of scene.items.entries()) {
    const noun = scene.items[at + 1];
    if (!isWord(item, 'ips', 'va', 'oled') || !isWord(noun, 'panel', 'screen')) continue;
    const verb = scene.items
      .slice(Math.max(0, at - 3), at)
      .find((entry) => isWord(entry, 'has', 'uses', 'pairs', 'sports', 'is', 'offers', 'carries'));
    if (!verb || hasKey(scene, 'superlative') || hasKey(scene, 'comparative')) continue;
    const denial = denialBefore(scene, item);
    const check: FactCheck = {
      kind: 'fact',
      key: 'panel',
      op: 'includes',
      x: [item.text.toUpperCase()],
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    };
    propose(findings, scene, 'fact', check, [denial, verb, item, noun]);
  }
}

/** "71 mm deep", "weighs 17.4 kg", "a refresh rate of 120 Hz", "two years of warranty". */
function readMeasures(scene: Scene, findings: Findings): undefined {
  readSides(scene, findings);
  for (const item of scene.items) {
    const number = item.number;
    if (!number || scene.used.has(item) || (number.role && number.role !== 'value')) continue;
    const dimension = number.dimension;
    if (!['length', 'mass', 'frequency', 'months'].includes(dimension)) continue;
    if (dimension === 'frequency' && hasKey(scene, 'concept', 'lag', 'response')) {
      number.role = 'ignored';
      continue;
    }
    if (dimension === 'months' && !hasKey(scene, 'fact', 'warranty')) {
      number.role = 'ignored';
      continue;
    }
    const comparative = scene.items.find((entry) => keyOf(entry, 'comparative'));
    if (comparative && isWord(scene.items[scene.items.indexOf(comparative) + 1], 'than')) continue;
    const candidates = scene.items.filter((entry) => {
      const meaning = meaningOf(entry, 'fact');
      return meaning !== undefined && unitDimension[meaning.data as FactWord['unit']] === dimension;
    });
    const noun = candidates.sort(
      (a, b) => Math.abs(a.index - item.index) - Math.abs(b.index - item.index),
    )[0];
    const stand = scene.items.find(
      (entry) => keyOf(entry, 'fact') === 'stand.width' || isWord(entry, 'stand', 'feet', 'foot'),
    );
    let key = noun
      ? keyOf(noun, 'fact')!
      : dimension === 'mass'
        ? 'weight'
        : dimension === 'frequency'
          ? 'refresh'
          : undefined;
    if (stand && (key === 'width' || key === undefined) && dimension === 'length') key = 'stand.width';
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
        conditions: factConditions(scene),
        ...(denial && { negated: true }),
      },
      [denial, item, noun, key === 'stand.width' ? stand : undefined],
    );
  }
  for (const item of scene.items) {
    const resolution = keyOf(item, 'resolution');
    if (!resolution || scene.used.has(item)) continue;
    if (
      !hasKey(scene, 'fact', 'resolution') &&
      !scene.items.some((entry) =>
        isWord(
          entry,
          'panel',
          'the panel',
          'resolves',
          'native',
          'screen',
          'pixels',
          'television',
          'tv',
          'set',
        ),
      )
    )
      continue;
    propose(
      findings,
      scene,
      'fact',
      { kind: 'fact', key: 'resolution', op: '=', x: resolution, conditions: factConditions(scene) },
      [item, scene.items.find((entry) => keyOf(entry, 'fact') === 'resolution')],
    );
  }
}

const supporting = [
  'supports',
  'support',
  'supported',
  'accepts',
  'accept',
  'understands',
  'handles',
  'takes',
  'plays',
  'decodes',
  'reads',
  'knows',
  'speaks',
  'offers',
  'has',
  'have',
  'includes',
  'lacks',
  'omits',
  'missing',
  'compatible',
  'leaves',
  'does',
  'do',
  'is',
  'are',
  'comes',
  'recognises',
  'displays',
  'copes',
  'without',
  'formats',
  'drops',
  'skips',
  'ignores',
  'misses',
  'lists',
  'covers',
];

/** "supports HDR10 and HLG but not HDR10+": formats in a set. */
function readFormats(scene: Scene, findings: Findings): undefined {
  const formats = scene.items.filter(
    (item) =>
      keyOf(item, 'format') !== undefined && !(keyOf(item, 'signal') && keyOf(item, 'format') === undefined),
  );
  if (formats.length === 0) return;
  const topical = hasKey(scene, 'fact', 'hdr.formats');
  const verb = scene.items.find(
    (item) =>
      isWord(
        item,
        'supports',
        'support',
        'supported',
        'accepts',
        'accept',
        'understands',
        'handles',
        'decodes',
        'lacks',
        'omits',
        'lack',
        'compatible',
        'plays',
        'ignores',
        'skips',
        'drops',
        'offers',
        'recognises',
        'misses',
        'copes',
        'speaks',
        'knows',
      ) ||
      (isWord(item, 'has', 'have', 'takes', 'includes') &&
        formats.some((format) => format.index > item.index && format.index <= item.index + 2)),
  );
  const missing = verb && isWord(verb, 'lacks', 'omits', 'lack', 'ignores', 'skips', 'drops', 'misses');
  if (
    !topical &&
    !verb &&
    !(
      scene.previous?.items.some((item) => isWord(item, ...supporting)) &&
      scene.items.some((item) => keyOf(item, 'negation'))
    )
  )
    return;
  const negation = scene.items.find(
    (item) =>
      (keyOf(item, 'negation') === 'not' || keyOf(item, 'stat') === 'none') && item.index < formats[0]!.index,
  );
  const excluded = (missing ? 1 : 0) + (negation && negation !== verb ? 1 : 0);
  const only = scene.items.find((item) => isWord(item, 'only', 'solely', 'just'));
  const conditions = factConditions(scene);
  const last = formats[formats.length - 1]!;
  const between = (item: Item) => item.index > formats[0]!.index && item.index < last.index;
  const isNot = (item: Item) => keyOf(item, 'negation') === 'not' || keyOf(item, 'stat') === 'none';
  // "HDR10 is supported, but HLG isn't": the denial stands behind what it denies.
  const turn =
    scene.items.find((item) => isNot(item) && between(item)) ??
    (scene.items.some((item) => isNot(item) && item.index > last.index)
      ? scene.items.find((item) => isWord(item, 'but', 'while', 'whereas', 'though') && between(item))
      : undefined);
  const left = turn ? formats.filter((item) => item.index > turn.index) : [];
  for (const item of left)
    propose(
      findings,
      scene,
      'fact',
      { kind: 'fact', key: 'hdr.formats', op: 'excludes', x: [keyOf(item, 'format')!], conditions },
      [turn, item],
    );
  const kept = formats.filter((item) => !left.includes(item));
  const names = kept.map((item) => keyOf(item, 'format')!);
  if (excluded % 2 === 1) {
    for (const item of formats)
      propose(
        findings,
        scene,
        'fact',
        { kind: 'fact', key: 'hdr.formats', op: 'excludes', x: [keyOf(item, 'format')!], conditions },
        [item, negation, verb],
      );
    return;
  }
  const check: Check = only
    ? { kind: 'fact', key: 'hdr.formats', op: '=', x: names, conditions }
    : { kind: 'fact', key: 'hdr.formats', op: 'includes', x: names, conditions };
  propose(findings, scene, 'fact', check, [
    ...kept,
    verb,
    only,
    scene.items.find((item) => keyOf(item, 'fact') === 'hdr.formats'),
  ]);
}

/** A price that is stated, not a limit of a cohort. */
function readPrice(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    const number = item.number;
    if (number?.role !== 'money' || scene.used.has(item)) continue;
    const superlative = scene.items.find(
      (entry) =>
        keyOf(entry, 'superlative') ||
        (keyOf(entry, 'stat') === 'none' && scene.items.some((other) => keyOf(other, 'comparative'))),
    );
    const comparative = scene.items.find(
      (entry) => keyOf(entry, 'comparative') && Math.abs(entry.index - item.index) <= 2,
    );
    const limit = number.comparator && number.comparator !== 'upTo';
    if (limit && superlative) continue;
    if (comparative && !number.comparator) continue;
    // "by £100", "a gap of £100": no price of a set.
    const lead = scene.items.slice(Math.max(0, scene.items.indexOf(item) - 3), scene.items.indexOf(item));
    if (
      isWord(lead.at(-1), 'by') ||
      scene.items.some((entry) =>
        isWord(entry, 'gap', 'difference', 'premium', 'saving', 'savings', 'discount', 'surcharge', 'extra'),
      )
    )
      continue;
    const after = scene.items[scene.items.indexOf(item) + 1];
    if (number.comparator && keyOf(after, 'comparative')) continue;
    const stated = statedNumber(
      {
        x: number.x,
        place: number.place,
        unit: number.unit,
        ...(number.hedge && { hedge: number.hedge }),
        ...(number.hedgeText && { hedgeText: number.hedgeText }),
      },
      'price',
    );
    const priced =
      limit === undefined ||
      limit === false ||
      scene.items.some(
        (entry) =>
          keyOf(entry, 'verb') === 'cost' ||
          keyOf(entry, 'concept') === 'price' ||
          isWord(entry, 'is', 'comes'),
      );
    if (!priced) continue;
    const verb = scene.items.find(
      (entry) => keyOf(entry, 'verb') === 'cost' || keyOf(entry, 'concept') === 'price',
    );
    const by =
      scene.units.some((mention) => mention.role === 'maker') && hasKey(scene, 'saying')
        ? { by: 'maker' }
        : {};
    const denial = denialBefore(scene, item);
    const check: FactCheck = {
      kind: 'fact',
      key: 'price',
      op: opOf(item) === '<=' && number.comparator === 'upTo' ? '=' : opOf(item),
      x: stated.x,
      stated,
      unit: number.unit,
      ...by,
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    };
    number.role = 'value';
    const comparatorItem = scene.items[scene.items.indexOf(item) - 1];
    propose(findings, scene, 'fact', check, [
      item,
      verb,
      keyOf(comparatorItem, 'comparator') ? comparatorItem : undefined,
      denial,
    ]);
  }
}
