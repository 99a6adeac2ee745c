import type { Check } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import { hasKey, type Scene } from '../scene.ts';
import { factConditions } from './factCheck.ts';

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
export function readFormats(scene: Scene, findings: Findings): undefined {
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
        'board',
        'aboard',
        'catered',
        'present',
        'welcome',
        'understood',
        'accepted',
        'covered',
      ) ||
      (isWord(item, 'has', 'have', 'takes', 'includes') &&
        formats.some((format) => format.index > item.index && format.index <= item.index + 2)),
  );
  const missing = verb && isWord(verb, 'lacks', 'omits', 'lack', 'ignores', 'skips', 'drops', 'misses');
  if (
    !topical &&
    !verb &&
    !(
      scene.previous?.items.some((item) => isOneOf(item, supporting)) &&
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
  readUnknownFormat(scene, findings, last);
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

/** "HDR10 and HLG are on board; Dynamic Glow is not": a format by a name that only its maker uses. */
function readUnknownFormat(scene: Scene, findings: Findings, last: Item): undefined {
  const { items } = scene;
  const not = items.find((item) => item.index > last.index && keyOf(item, 'negation') === 'not');
  if (!not) return;
  let at = items.indexOf(not) - 1;
  while (isWord(items[at], 'is', 'are', 'does', 'do')) at -= 1;
  const end = at;
  while (items[at]?.capital && items[at]!.type === 'word' && items[at]!.index > last.index) at -= 1;
  const name = items.slice(at + 1, end + 1);
  if (name.length === 0) return;
  propose(
    findings,
    scene,
    'fact',
    {
      kind: 'fact',
      key: 'hdr.formats',
      op: 'excludes',
      x: [name.map(({ text }) => text).join(' ')],
      conditions: factConditions(scene),
    },
    [...name, not],
  );
}
