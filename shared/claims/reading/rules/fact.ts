import type { BoundOp, Check, FactCheck, StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import type { Item } from '../items.ts';
import { isWord, keyOf, meaningOf } from '../items.ts';
import type { FactWord } from '../lexicon/facts.ts';
import { hasKey, type Scene } from '../scene.ts';
import { statedNumber, statedOf } from '../stated.ts';
import { conditionsFor, isSettled, operandOf, selectorOf, subjectOf } from '../subject.ts';
import { splitVariant } from '../units.ts';

const unitDimension: Readonly<Record<string, string>> = {
  length: 'length',
  mass: 'mass',
  frequency: 'frequency',
  months: 'months',
};

/** Conditions of a fact: only whose it is; a mode or a signal says nothing about a socket. */
export function factConditions(scene: Scene): StatedConditions {
  const base = conditionsFor(scene, undefined);
  const origin: Record<string, 'named' | 'carried' | 'article'> = {};
  const result: StatedConditions = { origin };
  if (base.unit !== undefined) {
    result.unit = base.unit;
    origin.unit = base.origin.unit ?? 'named';
  }
  if (base.variantInches !== undefined) {
    result.variantInches = base.variantInches;
    origin.variantInches = 'named';
  }
  return result;
}

function opOf(item: Item): FactCheck['op'] {
  const comparator = item.number?.comparator;
  if (comparator === '<' || comparator === '<=' || comparator === '>' || comparator === '>=')
    return comparator as BoundOp;
  return '=';
}

/** "the same four ports": what is said of another size is said of this set too. */
function withTwin(
  scene: Scene,
  findings: Findings,
  check: FactCheck,
  items: (Item | undefined)[],
): undefined {
  const same = scene.items.find((item) => isWord(item, 'same', 'identical'));
  propose(findings, scene, 'fact', check, [...items, same]);
  const isVariant =
    check.conditions.variantInches !== undefined ||
    (check.conditions.unit !== undefined && check.conditions.unit !== scene.context.own);
  if (!same || !isVariant) return;
  const { unit: _unit, variantInches: _inches, ...rest } = check.conditions;
  propose(findings, scene, 'fact', { ...check, conditions: { ...rest, origin: {} } }, [...items, same]);
}

/** Ports, dimensions, weight, refresh rate, warranty, HDR formats, resolution, prices. */
export function readFacts(scene: Scene, findings: Findings): undefined {
  readMakerClaims(scene, findings);
  readCounts(scene, findings);
  readMeasures(scene, findings);
  readFormats(scene, findings);
  readPrice(scene, findings);
}

/** "four HDMI 2.1 ports": number, noun and perhaps a version between. */
function readCounts(scene: Scene, findings: Findings): undefined {
  for (let at = 0; at < scene.items.length; at += 1) {
    const item = scene.items[at]!;
    const bare = isWord(item, 'hdmi', 'usb');
    const meaning = meaningOf(item, 'fact');
    if (scene.used.has(item) || (!bare && meaning?.data !== 'count')) continue;
    const key = bare ? `${item.text}.count` : meaning!.key;
    const items: Item[] = [item];
    let version: string | undefined;
    const next = scene.items[at + 1];
    if (bare) {
      if (next?.number && (next.number.place < 1 || next.number.role === 'name')) version = next.text;
      else if (next?.type === 'word' && /^\d+\.\d+$/.test(next.text)) version = next.text;
      if (!version) continue;
      items.push(next!);
      if (next!.number) next!.number.role = 'name';
    }
    const noun = scene.items[at + (version ? 2 : 1)];
    if (
      version &&
      noun &&
      /^(?:ports?|inputs?|sockets?|connections?|connectors?|terminals?)$/.test(noun.text)
    )
      items.push(noun);
    const count = scene.items
      .slice(Math.max(0, at - 4), at)
      .filter((entry) => !scene.used.has(entry))
      .reverse()
      .find(
        (entry) =>
          (entry.number &&
            entry.number.dimension === '' &&
            (!entry.number.role || entry.number.role === 'value')) ||
          keyOf(entry, 'stat') === 'none' ||
          keyOf(entry, 'negation') === 'not' ||
          isWord(entry, 'single', 'both', 'lone') ||
          (keyOf(entry, 'multiple') === 'twice' && false),
      );
    const negated = count && (keyOf(count, 'stat') === 'none' || keyOf(count, 'negation'));
    const after = scene.items.slice(at + 1, at + 5);
    const ofThem = scene.items.find(
      (entry, index) =>
        index > at &&
        entry.number &&
        isWord(scene.items[index + 1], 'of') &&
        isWord(scene.items[index + 2], 'them', 'which'),
    );
    const supported = after.find((entry) => isWord(entry, 'support', 'version'));
    const later = scene.items.find(
      (entry, index) =>
        index > at && index <= at + 3 && entry.number && entry.number.dimension === '' && !entry.number.role,
    );
    if (!count && later && !scene.items.some((entry) => keyOf(entry, 'verb'))) {
      propose(
        findings,
        scene,
        'fact',
        {
          kind: 'fact',
          key: version ? `${key}.${version}` : key,
          op: opOf(later),
          x: later.number!.x,
          conditions: factConditions(scene),
        },
        [...items, later],
      );
      continue;
    }
    if (!count) {
      if (version && bare) {
        if (!/^(?:ports?|inputs?|sockets?)$/.test(noun?.text ?? '') || supported)
          propose(findings, scene, 'fact', versionCheck(scene, item.text, version), items);
        continue;
      }
      continue;
    }
    const x = negated ? 0 : (count.number?.x ?? (isWord(count, 'both') ? 2 : 1));
    const fullKey = version ? `${key}.${version}` : key;
    // "three of the four ports support HDMI 2.1": the part has the version, the whole is the count.
    const part = scene.items.find(
      (entry, index) =>
        entry.number &&
        entry.index < count.index &&
        isWord(scene.items[index + 1], 'of') &&
        !scene.used.has(entry),
    );
    const whole = scene.items.some((entry) => keyOf(entry, 'stat') === 'all' && entry.index < count.index)
      ? count
      : undefined;
    if ((part ?? whole) && !version) {
      const versionItem = scene.items.find(
        (entry) => entry.index > item.index && (entry.number?.place ?? 1) < 1,
      );
      if (versionItem) {
        versionItem.number!.role = 'name';
        propose(
          findings,
          scene,
          'fact',
          {
            kind: 'fact',
            key: `${key}.${versionItem.text}`,
            op: opOf(part ?? count),
            x: (part ?? count).number?.x ?? 0,
            conditions: factConditions(scene),
          },
          [part ?? count, item, versionItem],
        );
        for (const entry of scene.items) if (isWord(entry, 'hdmi', 'usb')) scene.used.add(entry);
      }
    }
    const check: FactCheck = {
      kind: 'fact',
      key: fullKey,
      op: count.number ? opOf(count) : '=',
      x,
      conditions: factConditions(scene),
    };
    withTwin(scene, findings, check, [
      count,
      ...items,
      scene.items.find((entry) => entry.index === count.index - 1 && keyOf(entry, 'comparator')),
    ]);
    if (ofThem) continue;
  }
}

/** "71 mm deep", "weighs 17.4 kg", "a refresh rate of 120 Hz", "two years of warranty". */
function readMeasures(scene: Scene, findings: Findings): undefined {
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
      },
      [item, noun, key === 'stand.width' ? stand : undefined],
    );
  }
  for (const item of scene.items) {
    const resolution = keyOf(item, 'resolution');
    if (!resolution || scene.used.has(item)) continue;
    if (
      !hasKey(scene, 'fact', 'resolution') &&
      !scene.items.some((entry) => isWord(entry, 'panel', 'resolves', 'native', 'screen', 'pixels'))
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
  const verb = scene.items.find((item) =>
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
    ),
  );
  const missing = verb && isWord(verb, 'lacks', 'omits', 'lack', 'ignores', 'skips', 'drops', 'misses');
  if (
    !topical &&
    !verb &&
    !(
      scene.previous &&
      scene.previous.items.some((item) => isWord(item, ...supporting)) &&
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
  const turn = scene.items.find(
    (item) =>
      keyOf(item, 'negation') === 'not' &&
      item.index > formats[0]!.index &&
      item.index < formats[formats.length - 1]!.index,
  );
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
    if (!number || number.role !== 'money' || scene.used.has(item)) continue;
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
    const check: FactCheck = {
      kind: 'fact',
      key: 'price',
      op: opOf(item) === '<=' && number.comparator === 'upTo' ? '=' : opOf(item),
      x: stated.x,
      stated,
      unit: number.unit,
      ...by,
      conditions: factConditions(scene),
    };
    number.role = 'value';
    const comparatorItem = scene.items[scene.items.indexOf(item) - 1];
    propose(findings, scene, 'fact', check, [
      item,
      verb,
      keyOf(comparatorItem, 'comparator') ? comparatorItem : undefined,
    ]);
  }
}

/** "Orrinvale claims 1,000 nits", "and we got there". */
function readMakerClaims(scene: Scene, findings: Findings): undefined {
  const saying = scene.items.find((item) => keyOf(item, 'saying') !== undefined);
  const maker = scene.units.find((mention) => mention.role === 'maker') ?? undefined;
  const makerItem =
    maker?.item ??
    scene.items.find((item) => keyOf(item, 'makerWord') !== undefined) ??
    (saying && /paper|box|sheet|specification/.test(saying.text) ? saying : undefined);
  // "the promised 1,000 nits": the participle stands for the maker.
  const participle = scene.items.find(
    (item, at) =>
      keyOf(item, 'saying') !== undefined &&
      /(?:ed|quoted)$/.test(item.text) &&
      scene.items[at + 1]?.number !== undefined,
  );
  const figure =
    maker &&
    scene.items.find((item) => isWord(item, 'figure', 'figures', 'number', 'claim', 'promise', 'spec'));
  if ((saying ?? figure) && (makerItem ?? participle)) {
    const conditions = factConditions(scene);
    if (maker && !maker.id.includes('|') && maker.id !== scene.context.own) {
      conditions.unit = splitVariant(maker.id).unit!;
      (conditions.origin as Record<string, string>).unit = 'named';
    }
    for (const item of scene.items) {
      const number = item.number;
      if (!number || scene.used.has(item) || (number.role && number.role !== 'value')) continue;
      const subject = subjectOf(scene, number.dimension, item);
      const words = [makerItem, participle ?? saying ?? figure, item];
      const factNoun = scene.items.find((entry) => keyOf(entry, 'fact') && !scene.used.has(entry));
      if (!isSettled(subject) || subject.quantity.id === 'fact:price') {
        if (factNoun) continue;
        refuse(findings, scene, 'maker', 'the words do not say what the maker’s number is of', words);
        continue;
      }
      const stated = statedOf(number, subject.quantity.family);
      const unit = number.unit || subject.quantity.unit;
      propose(
        findings,
        scene,
        'maker',
        {
          kind: 'fact',
          key: makerKey(scene, subject.quantity.id),
          op: opOf(item),
          x: stated.x,
          stated,
          ...(unit && { unit }),
          by: 'maker',
          conditions,
        },
        [...words, ...subject.items],
      );
      scene.carry.claimed = { key: subject.quantity.id, x: stated.x, place: stated.place ?? 1, unit };
    }
  }
  const answer =
    makerItem &&
    scene.items.find(
      (item) =>
        item.index < makerItem.index &&
        isWord(
          item,
          'meets',
          'keeps',
          'fulfils',
          'fulfills',
          'honours',
          'reaches',
          'misses',
          'exceeds',
          'beats',
          'undercuts',
        ),
    );
  if (answer && scene.carry.claimed && !scene.used.has(answer)) {
    const { key, x, unit } = scene.carry.claimed;
    const subject = subjectOf(scene, key.startsWith('peak') ? 'luminance' : undefined);
    const negated =
      isWord(answer, 'misses', 'undercuts') ||
      scene.items.some((item) => item.index < answer.index && keyOf(item, 'negation'));
    if (isSettled(subject) && subject.quantity.id === key)
      propose(
        findings,
        scene,
        'maker',
        {
          kind: 'bound',
          bounds: [
            {
              operand: operandOf(scene, subject.quantity, selectorOf(scene, subject.quantity, 'over')),
              op: negated ? '<' : isWord(answer, 'exceeds', 'beats') ? '>' : '>=',
              x,
              unit,
            },
          ],
        },
        [answer],
      );
  }
  const claimed = scene.carry.claimed;
  const got = scene.items.find(
    (item) => keyOf(item, 'gotThere') !== undefined || keyOf(item, 'fellShort') !== undefined,
  );
  if (!claimed || !got || scene.used.has(got)) return;
  const short =
    keyOf(got, 'fellShort') !== undefined ||
    scene.items.some((item) => item.index < got.index && keyOf(item, 'negation'));
  const dimension = claimed.key.startsWith('peak') ? 'luminance' : undefined;
  const subject = subjectOf(scene, dimension);
  const quantity = isSettled(subject) && subject.quantity.id === claimed.key ? subject.quantity : undefined;
  if (!quantity)
    return refuse(findings, scene, 'maker', 'the words do not say which measurement answers the claim', [
      got,
    ]);
  propose(
    findings,
    scene,
    'maker',
    {
      kind: 'bound',
      bounds: [
        {
          operand: operandOf(scene, quantity, selectorOf(scene, quantity, 'over')),
          op: short ? '<' : '>=',
          x: claimed.x,
          unit: claimed.unit,
        },
      ],
    },
    [got],
  );
}

/** The key under which the maker's number is kept: the quantity's own, or without its diagram or window. */
function makerKey(scene: Scene, id: string): string {
  const unit = scene.context.units.find(
    (entry) => entry.id === (splitVariant(scene.unit).unit ?? scene.context.own),
  );
  const shorter = id.replace(/\.(?:xy|uv|native)$/, '');
  return [id, shorter].find((key) => unit?.facts.includes(key)) ?? id;
}

/** "It has HDMI 2.1" is true of one such port where they are counted by version, else of the set's version. */
function versionCheck(scene: Scene, socket: string, version: string): FactCheck {
  const unit = scene.context.units.find(
    (entry) => entry.id === (splitVariant(scene.unit).unit ?? scene.context.own),
  );
  const counted = `${socket}.count.${version}`;
  return unit?.facts.includes(counted)
    ? { kind: 'fact', key: counted, op: '>=', x: 1, conditions: factConditions(scene) }
    : { kind: 'fact', key: `${socket}.version`, op: '=', x: version, conditions: factConditions(scene) };
}
