import type { Check } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isOneOf, isWord, keyOf, type MeaningKind } from '../items.ts';
import { plays } from '../parts.ts';
import { hasKey, type Scene } from '../scene.ts';
import { hasVerb } from '../verbs.ts';
import { factConditions } from './factCheck.ts';

const verbsOfFormats = [
  'supports',
  'support',
  'supported',
  'accepts',
  'accept',
  'understands',
  'understand',
  'handle',
  'play',
  'decode',
  'know',
  'speak',
  'offer',
  'handles',
  'plays',
  'decodes',
  'decoded',
  'handled',
  'knows',
  'speaks',
  'offers',
  'lacks',
  'omits',
  'compatible',
  'recognises',
  'copes',
  'drops',
  'skips',
  'ignores',
  'misses',
];

/** Words that speak of formats wherever one stands in the clause. */
const tellingOfFormats = [
  ...verbsOfFormats,
  'lack',
  'board',
  'aboard',
  'catered',
  'present',
  'missing',
  'absent',
  'welcome',
  'understood',
  'accepted',
  'covered',
];

/** Verbs that may be of anything, and tell of the formats right behind them. */
const leadingToFormats = [
  ...['has', 'have', 'takes', 'take', 'includes', 'get', 'gets', 'adds', 'add'],
  ...['reads', 'read', 'swallows', 'swallow', 'digests', 'digest', 'processes', 'process', 'welcomes'],
];

/** Words after which "but not HLG" goes on with the list of formats; some say it of other things too. */
const supporting = [
  ...verbsOfFormats,
  'takes',
  'reads',
  'has',
  'have',
  'includes',
  'missing',
  'leaves',
  'does',
  'do',
  'is',
  'are',
  'comes',
  'displays',
  'without',
  'formats',
  'lists',
  'covers',
];

/** "HDR10+, no; HLG: yes": the word behind a format that answers for it alone. */
function answerTo({ sentence }: Scene, { index }: Item): Item | undefined {
  const [mark, answer, end] = sentence.slice(index + 1, index + 4);
  const isAnswer = isWord(mark, ',', ':') && isWord(answer, 'yes', 'no', 'nope');
  return isAnswer && (end?.type ?? 'mark') === 'mark' ? answer : undefined;
}

/** "…; HDR10+ is left out": the formats of which it is said. */
function leftOutOf({ sentence, items }: Scene, formats: readonly Item[]): Item[] {
  const left = items.find(
    (item, at) => /^(?:is|are|was) left$/.test(item.text) && isWord(items[at + 1], 'out'),
  );
  if (!left) return [];
  const from = sentence.findLastIndex(
    (item) => item.index < left.index && isWord(item, ';', ',', 'but', 'while'),
  );
  return formats.filter(({ index }) => index > from && index < left.index);
}

/** "supports HDR10 and HLG but not HDR10+": formats in a set. */
export function readFormats(scene: Scene, findings: Findings): undefined {
  const named = scene.items.filter(
    (item) =>
      keyOf(item, 'format') !== undefined && !(keyOf(item, 'signal') && keyOf(item, 'format') === undefined),
  );
  if (named.some((item) => answerTo(scene, item))) {
    for (const item of named) {
      const answer = answerTo(scene, item);
      if (isWord(answer, 'no', 'nope')) exclude(scene, findings, keyOf(item, 'format')!, [item, answer]);
      else if (answer) {
        const x = [keyOf(item, 'format')!];
        const check: Check = {
          kind: 'fact',
          key: 'hdr.formats',
          op: 'includes',
          x,
          conditions: factConditions(scene),
        };
        propose(findings, scene, 'fact', check, [item, answer]);
      }
    }
    return;
  }
  const gone = leftOutOf(scene, named);
  for (const item of gone) exclude(scene, findings, keyOf(item, 'format')!, [item]);
  const formats = named.filter((item) => !gone.includes(item));
  if (formats.length === 0) return;
  const topical = hasKey(scene, 'fact', 'hdr.formats');
  const verb = scene.items.find(
    (item) =>
      isOneOf(item, tellingOfFormats) ||
      (isWord(item, 'does', 'do') && formats.some((format) => format.index === item.index + 1)) ||
      (isOneOf(item, leadingToFormats) &&
        formats.some((format) => format.index > item.index && format.index <= item.index + 3)),
  );
  // "What Veltrane leaves out is HDR10+"
  const leftOut = scene.items.some(
    (item, at) => isWord(item, 'leaves', 'left') && isWord(scene.items[at + 1], 'out'),
  );
  if (leftOut && isWord(scene.items[0], 'what')) {
    for (const item of formats) exclude(scene, findings, keyOf(item, 'format')!, [item]);
    return;
  }
  // "HDR10+ it does not"
  const [format] = formats;
  const [it, not, end] = scene.items.slice(scene.items.indexOf(format!) + 1);
  const inverted =
    isWord(it, 'it does not', "it doesn't", 'it did not') ||
    (isWord(it, 'it') && keyOf(not, 'negation') === 'not' && (end?.type ?? 'mark') === 'mark');
  if (inverted && formats.length === 1)
    return exclude(scene, findings, keyOf(format, 'format')!, [format, it]);
  const missing =
    verb &&
    isWord(verb, 'missing', 'absent', 'lacks', 'omits', 'lack', 'ignores', 'skips', 'drops', 'misses');
  if (
    !topical &&
    !verb &&
    !isBareList(scene, formats) &&
    !isBareDenial(scene, formats) &&
    !(
      scene.previous?.items.some((item) => isOneOf(item, supporting)) &&
      scene.items.some((item) => keyOf(item, 'negation'))
    )
  )
    return;
  // "…, but HDR10+ is a stranger to it": another thing is said of what stands behind "but".
  const but = scene.items.find(
    (item) => isWord(item, 'but') && item.index > formats[0]!.index && item.index < formats.at(-1)!.index,
  );
  const apart = but && scene.items.slice(scene.items.indexOf(formats.at(-1)!) + 1);
  // "Plays HDR10 and HLG but turns HDR10+ away"
  const away = but && scene.items.find((item) => item.index > but.index && isWord(item, 'away', 'down'));
  const turns = scene.items.some(
    (item) => away && item.index > but.index && isWord(item, 'turns', 'turned', 'turning'),
  );
  if (but && turns) {
    const taken = formats.filter(({ index }) => index < but.index);
    const x = taken.map((item) => keyOf(item, 'format')!);
    const includes = { kind: 'fact' as const, key: 'hdr.formats', op: 'includes' as const, x };
    propose(findings, scene, 'fact', { ...includes, conditions: factConditions(scene) }, [verb, ...taken]);
    for (const item of formats.filter(({ index }) => index > but.index))
      exclude(scene, findings, keyOf(item, 'format')!, [item, away]);
    return;
  }
  if (
    but &&
    apart?.some((item) => isWord(item, 'is', 'are', 'remains', 'stays')) &&
    !apart.some((item) => keyOf(item, 'negation') ?? isOneOf(item, tellingOfFormats))
  )
    return refuse(findings, scene, 'fact', 'the words do not say which of the formats it takes', formats);
  const negation = scene.items.find(
    (item) =>
      (keyOf(item, 'negation') === 'not' || keyOf(item, 'stat') === 'none') &&
      item.index < formats[0]!.index &&
      // "Dolby nothing, but HDR10 is aboard"
      !scene.items.some(
        (other) => isWord(other, 'but') && other.index > item.index && other.index < formats[0]!.index,
      ),
  );
  // "No HDR10+, but HLG is on board": the denial ends there.
  const behindBut = but ? formats.filter(({ index }) => index > but.index) : [];
  const isTurned =
    but !== undefined &&
    negation !== undefined &&
    negation.index < but.index &&
    behindBut.length > 0 &&
    !scene.items.some((item) => item.index > but.index && keyOf(item, 'negation') !== undefined);
  if (isTurned) {
    for (const item of formats.filter(({ index }) => index < but.index))
      exclude(scene, findings, keyOf(item, 'format')!, [item, negation]);
    const x = behindBut.map((item) => keyOf(item, 'format')!);
    const includes = { kind: 'fact' as const, key: 'hdr.formats', op: 'includes' as const, x };
    propose(findings, scene, 'fact', { ...includes, conditions: factConditions(scene) }, behindBut);
    return;
  }
  const excluded = (missing ? 1 : 0) + (negation && negation !== verb ? 1 : 0);
  const only = scene.items.find((item) => isWord(item, 'only', 'solely', 'just'));
  const conditions = factConditions(scene);
  const last = formats[formats.length - 1]!;
  const between = (item: Item) => item.index > formats[0]!.index && item.index < last.index;
  const isNot = (item: Item) => keyOf(item, 'negation') === 'not' || keyOf(item, 'stat') === 'none';
  // "HDR10 is supported, but HLG isn't": the denial stands behind what it denies.
  const behind = scene.items.find((item) => isNot(item) && item.index > last.index);
  // "HLG is missing, HDR10+ is not": the denial is of the lack.
  const lackedNot =
    isWord(verb, 'missing', 'absent') &&
    scene.items.some((item) => keyOf(item, 'negation') === 'not' && item.index > verb!.index);
  if (lackedNot) return refuse(findings, scene, 'fact', 'the words leave open what is denied', formats);
  const lacked = scene.previous?.items.some((item) => isWord(item, 'missing', 'absent', 'lacks', 'lacking'));
  if (lacked && !verb && scene.items.some((item) => keyOf(item, 'negation') === 'not'))
    return refuse(findings, scene, 'fact', 'the words leave open what is denied', formats);
  // "Every HDR format bar HDR10+"
  const sparing = scene.items.find(
    (item) =>
      plays(item, 'excepting') && item.index < formats[0]!.index && item.index >= formats[0]!.index - 2,
  );
  const all = scene.items.some((item) => keyOf(item, 'stat') === 'all');
  if (sparing && all) {
    for (const item of formats) exclude(scene, findings, keyOf(item, 'format')!, [sparing, item]);
    return;
  }
  const turn =
    scene.items.find((item) => isNot(item) && between(item)) ??
    (behind && scene.sentence.find((item) => turnsList(scene.sentence, item) && between(item)));
  // "HDR10+ isn't on board"
  const is = isWord(scene.items[scene.items.indexOf(last) + 1], 'is', 'are') ? 2 : 1;
  const absent =
    behind && formats.length === 1 && scene.items.indexOf(behind) === scene.items.indexOf(last) + is;
  const goesOn = scene.previous?.said?.some((check) => check.kind === 'fact' && check.key === 'hdr.formats');
  if (absent && (verb ?? goesOn) && !missing)
    return exclude(scene, findings, keyOf(last, 'format')!, [last, behind, verb]);
  const denied = readUnknownFormat(scene, findings, last);
  const left = turn ? formats.filter((item) => item.index > turn.index) : [];
  for (const item of left)
    exclude(scene, findings, keyOf(item, 'format')!, [turn?.type === 'mark' ? behind : turn, item]);
  const kept = formats.filter((item) => !left.includes(item));
  const makersOwn = denied || left.length > 0 ? [] : nameAfter(scene.items, scene.items.indexOf(last));
  const names = kept.map((item) => keyOf(item, 'format')!);
  if (makersOwn.length > 0) names.push(makersOwn.map(({ text }) => text).join(' '));
  if (excluded % 2 === 1) {
    for (const item of formats) exclude(scene, findings, keyOf(item, 'format')!, [item, negation, verb]);
    return;
  }
  const check: Check = only
    ? { kind: 'fact', key: 'hdr.formats', op: '=', x: names, conditions }
    : { kind: 'fact', key: 'hdr.formats', op: 'includes', x: names, conditions };
  propose(findings, scene, 'fact', check, [
    ...kept,
    ...makersOwn,
    verb,
    only,
    scene.items.find((item) => keyOf(item, 'fact') === 'hdr.formats'),
  ]);
}

/** The set does without this format, so the words say. */
function exclude(scene: Scene, findings: Findings, format: string, words: (Item | undefined)[]): undefined {
  const check: Check = {
    kind: 'fact',
    key: 'hdr.formats',
    op: 'excludes',
    x: [format],
    conditions: factConditions(scene),
  };
  propose(findings, scene, 'fact', check, words);
}

/** "…, but HLG isn't", "HDR10 and HLG are on board; HDR10+ is not": here what was said of the formats before ends. */
function turnsList(sentence: readonly Item[], item: Item): boolean {
  if (isWord(item, 'but', 'while', 'whereas', 'though', ';')) return true;
  return (
    isWord(item, ',') && sentence.some((entry) => entry.index < item.index && isWord(entry, 'is', 'are'))
  );
}

/** "HDR10 and HLG, but not Dynamic Glow.": a list that stands by itself, without a verb. */
function isBareList(scene: Scene, formats: readonly Item[]): boolean {
  return (
    scene.items[0] === formats[0] &&
    formats.length > 1 &&
    scene.previous === null &&
    !scene.sentence.some(
      (item) => item.number ?? keyOf(item, 'concept') ?? keyOf(item, 'verb') ?? keyOf(item, 'topic'),
    ) &&
    !hasVerb(scene.sentence)
  );
}

/** "No HDR10+ on this one, though.": a format that is denied, without a verb. */
function isBareDenial(scene: Scene, formats: readonly Item[]): boolean {
  // "And there is no HDR10+"
  const no = scene.items.findIndex((item) => isWord(item, 'no'));
  const there = isWord(scene.items[no - 1], 'is', "'s", 'are') && isWord(scene.items[no - 2], 'there');
  const last = scene.items.indexOf(formats.at(-1)!);
  const next = scene.items[last + 1];
  const ends =
    next === undefined ||
    next.type === 'mark' ||
    next.index > formats.at(-1)!.index + 1 ||
    isWord(next, 'and', 'but', 'here', 'on', 'support', 'which');
  const each = formats.every((format) => isWord(scene.items[scene.items.indexOf(format) - 1], 'no'));
  if (there && each && ends) return true;
  return (
    isWord(scene.items[0], 'no') &&
    scene.items[1] === formats[0] &&
    !hasVerb(scene.items) &&
    !scene.items.some((item) => item.number ?? keyOf(item, 'concept') ?? keyOf(item, 'topic'))
  );
}

/** The words of a name that only its maker uses, right after "and", a comma or "not": "HDR10, HLG and Dynamic Glow". */
function nameAfter(items: readonly Item[], at: number): Item[] {
  let from = at + 1;
  while (isWord(items[from], ',')) from += 1;
  if (isWord(items[from], 'and', 'or', 'plus', 'but', 'nor')) from += 1;
  if (from === at + 1 && keyOf(items[at], 'negation') !== 'not') return [];
  let to = from;
  while (items[to]?.capital && items[to]!.type !== 'mark' && !keyOf(items[to], 'format')) to += 1;
  const name = items.slice(from, to);
  const names = name.some((item) =>
    ['unit', 'maker', 'hue', 'concept'].some((kind) => keyOf(item, kind as MeaningKind)),
  );
  return names || (items[to] !== undefined && items[to]!.type !== 'mark') ? [] : name;
}

/** "HDR10 and HLG are on board; Dynamic Glow is not", "but not Dynamic Glow": a format by a name that only its maker uses. */
function readUnknownFormat(scene: Scene, findings: Findings, last: Item): boolean {
  const { items } = scene;
  const not = items.find((item) => item.index > last.index && keyOf(item, 'negation') === 'not');
  if (!not) return false;
  let at = items.indexOf(not) - 1;
  while (isWord(items[at], 'is', 'are', 'does', 'do')) at -= 1;
  const end = at;
  while (items[at]?.capital && items[at]!.type === 'word' && items[at]!.index > last.index) at -= 1;
  const before = items.slice(at + 1, end + 1);
  const name = before.length > 0 ? before : nameAfter(items, items.indexOf(not));
  if (name.length === 0) return false;
  exclude(scene, findings, name.map(({ text }) => text).join(' '), [...name, not]);
  return true;
}
