import { type Findings, propose, refuse } from '../finding.ts';
import { isWord } from '../items.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { cohortOf, orderCheck } from './cohort.ts';
import { comparedQuantity } from './compared.ts';

const byNumber = ['exceeded', 'surpassed', 'topped'];
/** Words of a set that only another is ahead of */
export const exceeding: readonly string[] = [...byNumber, 'beaten', 'bettered', 'outdone'];

/** "The Hearth is exceeded by the Plain in peak luminance": behind that one. */
function readPassive(scene: Scene, findings: Findings): undefined {
  const at = scene.items.findIndex(
    (item, place) => isWord(item, ...exceeding) && isWord(scene.items[place + 1], 'by'),
  );
  const verb = scene.items[at];
  const mention = scene.units.find(
    ({ role, item }) =>
      role !== 'subject' && item.index > (verb?.index ?? 0) && item.index <= (verb?.index ?? 0) + 3,
  );
  const isPassive = isWord(scene.items[at - 1], 'is', 'was', 'are', 'narrowly', 'easily', 'comfortably');
  if (!verb || !mention || !isPassive || scene.used.has(verb)) return;
  const id = resolveMention(mention, scene.carry, scene.context);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  const words = [verb, mention.item];
  if (id === undefined)
    return refuse(findings, scene, 'order', 'the words do not say which set is meant', words);
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, words);
  const better = quantity.better === 'target' ? undefined : quantity.better;
  const direction = isWord(verb, ...byNumber) ? 'higher' : better;
  if (!direction) return refuse(findings, scene, 'order', 'better has no direction for this quantity', words);
  propose(
    findings,
    scene,
    'order',
    orderCheck(scene, quantity, direction, { type: 'behind' }, { units: [id] }),
    words,
  );
}

/** "Its power consumption is exceeded only by that of the Plain": the highest, bar that one, which is ahead of it. */
export function readExceededBy(scene: Scene, findings: Findings): undefined {
  const verb = scene.items.find(
    (item, at) => isWord(item, ...exceeding) && isWord(scene.items[at + 1], 'only') && !scene.used.has(item),
  );
  const mention = scene.units.find(({ role, item }) => role === 'barred' && item.index > (verb?.index ?? 0));
  if (!verb || !mention) return readPassive(scene, findings);
  const id = resolveMention(mention, scene.carry, scene.context);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  const words = [verb, mention.item];
  if (id === undefined)
    return refuse(findings, scene, 'order', 'the words do not say which set is meant', words);
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, words);
  const better = quantity.better === 'target' ? undefined : quantity.better;
  const direction = isWord(verb, ...byNumber) ? 'higher' : better;
  if (!direction) return refuse(findings, scene, 'order', 'better has no direction for this quantity', words);
  const { cohort, items } = cohortOf(scene);
  const check = orderCheck(scene, quantity, direction, { type: 'best' }, cohort);
  propose(findings, scene, 'order', check, [...words, ...items]);
}
