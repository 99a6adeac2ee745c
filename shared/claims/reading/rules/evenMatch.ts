import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { knownGroup } from '../knownGroup.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { orderCheck } from './cohort.ts';
import { comparedQuantity } from './compared.ts';
import { concepts, negated } from './orderWords.ts';

/** "level with", "on a par with", "neck and neck", "nothing between them": the words that put two sets level. */
function evenAt(items: readonly Item[]): Item[] | undefined {
  for (const [at, item] of items.entries()) {
    const next = items[at + 1];
    const before = isWord(items[at - 1], 'not', 'all', 'dead', 'just') ? items[at - 2] : items[at - 1];
    // "It is not even doubled" is no match.
    const isLevel =
      isWord(item, 'level') ||
      (isWord(item, 'even') &&
        (next === undefined || next.type === 'mark' || isWord(next, 'with', 'on', 'for', 'in', 'at')));
    if (isLevel && isWord(before, 'are', 'is', 'were', 'was', 'draws', 'draw', "isn't")) return [item];
    if (isWord(item, 'par') && isWord(items[at - 1], 'a')) return [item];
    if (isWord(item, 'match', 'equal') && isWord(next, 'each other', 'each')) return [item, next!];
    if (isWord(item, 'neck') && isWord(items[at + 2], 'neck')) return items.slice(at, at + 3);
    if (isWord(item, 'nothing', 'little') && isWord(next, 'between')) return items.slice(at, at + 3);
    if (
      isWord(item, 'tie', 'tied', 'ties', 'inseparable') ||
      (isWord(item, 'heat') && isWord(items[at - 1], 'dead'))
    )
      return [item];
  }
  return undefined;
}

/** The two sets that are level: this one and the one behind "with", or the two that the text speaks of. */
function pairOf(scene: Scene): { other: string; own?: string; items: Item[] } | undefined {
  const mention = scene.units.find(({ role }) => role === 'compared' || role === 'possessive');
  if (mention && mention.id !== 'rival') {
    const id = resolveMention(mention, scene.carry, scene.context);
    return id === undefined ? undefined : { other: id, items: [mention.item] };
  }
  const named = scene.group ?? pairSpokenOf(scene);
  if (named?.length !== 2) return undefined;
  const own = named.includes(scene.context.own) ? scene.context.own : named[0]!;
  return { own, other: named.find((id) => id !== own)!, items: [] };
}

/** "the two are …", "… between them", "they are …" */
function pairSpokenOf(scene: Scene): readonly string[] | undefined {
  const at = scene.items.findIndex(
    (item) => isWord(item, 'them', 'they', 'two', 'both', 'the other') || item.number?.x === 2,
  );
  const item = scene.items[at];
  if (!item) return undefined;
  if (!isWord(item, 'them', 'they')) return knownGroup(scene, item, scene.items[at + 1]);
  return scene.carry.sets?.length === 2 ? scene.carry.sets : undefined;
}

/** "On contrast the two are level", "it is on a par with the Kasulind": no farther apart than the words allow. */
export function readEvenMatch(scene: Scene, findings: Findings): undefined {
  const words = evenAt(scene.items);
  if (!words || words.some((item) => scene.used.has(item))) return;
  const pair = pairOf(scene);
  const about = concepts(scene);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  const count = scene.items.find(({ number }) => number?.spelled && number.x === 2);
  if (count) count.number!.role = 'ignored';
  if ('problem' in quantity && about.length === 0 && !pair) return;
  // "Check that your sideboard is level"
  const ofSets =
    scene.units.length > 0 ||
    scene.items.some((item) => keyOf(item, 'pronoun') || isWord(item, 'two', 'both', 'them', 'they', 'pair'));
  if (!pair && about.length === 0 && !ofSets && !count) return;
  if ('problem' in quantity || !pair)
    return refuse(findings, scene, 'order', 'the words do not say which sets are level, or in what', [
      ...words,
      ...about,
    ]);
  const { own, other } = pair;
  const { unit: _unit, ...rest } = scene.conditions;
  const of =
    own === undefined
      ? scene
      : {
          ...scene,
          unit: own === scene.context.own ? undefined : own,
          conditions:
            own === scene.context.own
              ? rest
              : { ...rest, unit: own, origin: { ...rest.origin, unit: 'named' as const } },
        };
  const direction = quantity.better === 'lower' ? 'lower' : 'higher';
  const negation = words.some((item) => keyOf(item, 'stat') === 'none') ? {} : negated(scene, words[0]!);
  propose(
    findings,
    { ...of, group: undefined, ...(own !== undefined && { unitProblem: undefined }) },
    'order',
    orderCheck(of, quantity, direction, { type: 'matches' }, { units: [other] }, negation),
    [...words, ...pair.items, ...about],
  );
}
