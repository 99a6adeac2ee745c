import { type Findings, propose, refuse } from '../finding.ts';
import { isWord, keyOf, meaningOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { comparedQuantity, otherMention } from './compare.ts';
import { concepts, negated } from './orderWords.ts';

/** "matches the Kasulind", "as bright as the Veltrane". */
export function readEquals(scene: Scene, findings: Findings): undefined {
  const other = otherMention(scene);
  if (!other) return;
  const at = scene.items.findIndex(
    (item) =>
      isWord(item, 'matches', 'match', 'matching', 'equals', 'rivals') ||
      (isWord(item, 'same', 'identical') &&
        scene.items.some(
          (word) => word.index > item.index && word.index <= item.index + 2 && keyOf(word, 'concept'),
        ) &&
        scene.items.some((word) => word.index > item.index && isWord(word, 'as', 'to'))),
  );
  const id = resolveMention(other, scene.carry, scene.context);
  const equative = scene.items.find((item) => keyOf(item, 'equative') && !scene.used.has(item));
  const entry = meaningOf(equative, 'equative')?.data as ComparativeEntry | undefined;
  const asBefore = equative && isWord(scene.items[scene.items.indexOf(equative) - 1], 'as');
  const hasNumber = scene.items.some(
    (item) => keyOf(item, 'multiple') || (item.number && !item.number.role && item.number.dimension !== ''),
  );
  if (hasNumber) return;
  if (equative && asBefore && entry) {
    const quantity = comparedQuantity(scene, entry);
    if ('problem' in quantity || !id)
      return refuse(
        findings,
        scene,
        'order',
        'problem' in quantity ? quantity.problem : `“${other.item.text}” could be more than one set`,
        [equative, other.item],
      );
    const negation = scene.items.find(
      (item) =>
        item.index < equative.index && (keyOf(item, 'negation') !== undefined || item.text === 'not quite'),
    );
    const rank = negation ? ({ type: 'behind' } as const) : ({ type: 'matches' } as const);
    return propose(
      findings,
      scene,
      'order',
      orderCheck(scene, quantity, entry.direction, rank, { units: [id] }),
      [equative, negation, other.item],
    );
  }
  if (at < 0) return;
  const quantity = comparedQuantity(scene, {
    concept: scene.items.some((item) => keyOf(item, 'concept') === 'price' || isWord(item, 'price'))
      ? 'price'
      : '',
    direction: 'higher',
  });
  const verb = scene.items[at]!;
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [verb, other.item]);
  if (!id)
    return refuse(findings, scene, 'order', `“${other.item.text}” could be more than one set`, [
      verb,
      other.item,
    ]);
  const direction = quantity.better === 'lower' ? 'lower' : 'higher';
  propose(
    findings,
    scene,
    'order',
    orderCheck(scene, quantity, direction, { type: 'matches' }, { units: [id] }, negated(scene, verb)),
    [verb, other.item, ...concepts(scene)],
  );
}

/** "It ranks third for peak luminance." */
export function readRanks(scene: Scene, findings: Findings): undefined {
  const verb = scene.items.find((item) =>
    isWord(item, 'ranks', 'rank', 'ranked', 'finishes', 'places', 'placed', 'comes', 'came'),
  );
  const ordinal = scene.items.find((item) => keyOf(item, 'ordinal') !== undefined && !scene.used.has(item));
  if (
    !verb ||
    !ordinal ||
    ordinal.index < verb.index ||
    scene.items.some((item) => keyOf(item, 'superlative'))
  )
    return;
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  if ('problem' in quantity || quantity.better === 'target')
    return isWord(verb, 'comes', 'came')
      ? undefined
      : refuse(
          findings,
          scene,
          'order',
          'problem' in quantity ? quantity.problem : 'better has no direction for this quantity',
          [verb, ordinal],
        );
  const { cohort, items } = cohortOf(scene);
  const n = Number(keyOf(ordinal, 'ordinal'));
  propose(
    findings,
    scene,
    'order',
    orderCheck(
      scene,
      quantity,
      quantity.better,
      n === 1 ? { type: 'best' } : { type: 'position', n },
      cohort,
    ),
    [verb, ordinal, ...items, ...concepts(scene)],
  );
}

/** "It beats the Kasulind for contrast." */
export function readBeats(scene: Scene, findings: Findings): undefined {
  const other = otherMention(scene);
  const verb = scene.items.find((item) =>
    isWord(
      item,
      'beats',
      'beat',
      'tops',
      'surpasses',
      'betters',
      'outdoes',
      'outperforms',
      'trails',
      'outstrips',
    ),
  );
  if (
    !other ||
    !verb ||
    other.item.index < verb.index ||
    scene.items.some((item) => item.number && !item.number.role)
  )
    return;
  const id = resolveMention(other, scene.carry, scene.context);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  if ('problem' in quantity || quantity.better === 'target' || id === undefined)
    return refuse(
      findings,
      scene,
      'order',
      'problem' in quantity ? quantity.problem : 'the words do not say in what',
      [verb, other.item],
    );
  propose(
    findings,
    scene,
    'order',
    orderCheck(
      scene,
      quantity,
      quantity.better,
      { type: isWord(verb, 'trails') ? 'behind' : 'ahead' },
      { units: [id] },
      negated(scene, verb),
    ),
    [verb, other.item, ...concepts(scene)],
  );
}
