import type { Cohort, OrderCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord } from '../items.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import { comparedQuantity } from './compared.ts';

const byNumber = ['exceeded', 'surpassed', 'topped'];
/** Words of a set that only another is ahead of */
export const exceeding: readonly string[] = [...byNumber, 'beaten', 'bettered', 'outdone'];

/** A set, what is ahead of it, and where that puts it */
interface Exceeded {
  verb: Item;
  by: UnitMention;
  rank: OrderCheck['rank'];
}

/** "Its power consumption is exceeded only by that of the Plain": the highest, bar that one. */
function exceededOnly({ items, units, used }: Scene): Exceeded | undefined {
  const verb = items.find(
    (item, at) => isWord(item, ...exceeding) && isWord(items[at + 1], 'only') && !used.has(item),
  );
  const by = units.find(({ role, item }) => role === 'barred' && item.index > (verb?.index ?? 0));
  return verb && by && { verb, by, rank: { type: 'best' } };
}

/** "The Hearth is exceeded by the Plain in peak luminance": behind that one. */
function exceededPlainly({ items, units, used }: Scene): Exceeded | undefined {
  const at = items.findIndex((item, place) => isWord(item, ...exceeding) && isWord(items[place + 1], 'by'));
  const verb = items[at];
  const isPassive = isWord(items[at - 1], 'is', 'was', 'are', 'narrowly', 'easily', 'comfortably');
  if (!verb || !isPassive || used.has(verb)) return undefined;
  const by = units.find(
    ({ role, item }) => role !== 'subject' && item.index > verb.index && item.index <= verb.index + 3,
  );
  return by && { verb, by, rank: { type: 'behind' } };
}

/** A set that another one is ahead of, in the passive voice. */
export function readExceededBy(scene: Scene, findings: Findings): undefined {
  const found = exceededOnly(scene) ?? exceededPlainly(scene);
  if (!found) return;
  const { verb, by, rank } = found;
  const id = resolveMention(by, scene.carry, scene.context);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  const words = [verb, by.item];
  if (id === undefined)
    return refuse(findings, scene, 'order', 'the words do not say which set is meant', words);
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, words);
  const better = quantity.better === 'target' ? undefined : quantity.better;
  const direction = isWord(verb, ...byNumber) ? 'higher' : better;
  if (!direction) return refuse(findings, scene, 'order', 'better has no direction for this quantity', words);
  const { cohort, items } =
    rank.type === 'best' ? cohortOf(scene) : { cohort: { units: [id] } satisfies Cohort, items: [] };
  propose(findings, scene, 'order', orderCheck(scene, quantity, direction, rank, cohort), [
    ...words,
    ...items,
  ]);
}
