import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { subjectOf } from '../subject.ts';
import { factConditions } from './factCheck.ts';
import { opposite } from './levelCount.ts';
import { makerKey, promisedOp, sideOf } from './makersNumber.ts';

/** "It delivers what Nocthale claims": the number that was quoted just before, else nobody knows which one. */
export function readWhatIsClaimed(
  scene: Scene,
  findings: Findings,
  makerItem: Item | undefined,
  saying: Item | undefined,
): boolean {
  // "The maker has delivered what it promised"
  const before = saying && scene.items[scene.items.indexOf(saying) - 1];
  const speaker = isWord(before, 'it', 'they') ? before : makerItem;
  const what = scene.items.find(
    (item) => isWord(item, 'what') && makerItem && speaker && item.index < speaker.index,
  );
  if (what && saying && readAsPromised(scene, findings, what, saying)) return true;
  if (!what || !saying || saying.index < what.index || scene.items.some(({ number }) => number)) return false;
  const verb = scene.items.find(
    (item) =>
      item.index < what.index &&
      (keyOf(item, 'verb') === 'reach' ||
        isWord(item, 'meets', 'keeps', 'fulfils', 'offers', 'delivered', 'met', 'kept', 'fulfilled')),
  );
  if (!verb) return false;
  const { claimed } = scene.carry;
  const words = [verb, what, makerItem, saying];
  const subject = subjectOf(scene, claimed?.key.startsWith('peak') ? 'luminance' : undefined);
  if (!claimed || !isSettled(subject) || subject.quantity.id !== claimed.key) {
    refuse(findings, scene, 'maker', 'the words do not say which of the maker’s numbers is meant', words);
    return true;
  }
  const denied = scene.items.find((item) => item.index < what.index && keyOf(item, 'negation') !== undefined);
  const promised = promisedOp(subject.quantity);
  const operand = operandOf(scene, subject.quantity, selectorOf(scene, subject.quantity, sideOf(promised)));
  const bound = { operand, op: denied ? opposite[promised] : promised, x: claimed.x, unit: claimed.unit };
  propose(findings, scene, 'maker', { kind: 'bound', bounds: [bound] }, [...words, denied]);
  return true;
}

/** "Lag is 9.6 ms, which is exactly what Orrinvale promises": the maker promises the number that was just stated. */
function readAsPromised(scene: Scene, findings: Findings, what: Item, saying: Item): boolean {
  const said = scene.previous?.said?.at(-1);
  const own = said?.kind === 'value' && said.operand.type === 'quantity' && !said.negated ? said : undefined;
  const is = isWord(scene.items[0], 'which') && isWord(scene.items[1], 'is', 'was', "'s");
  const plain = scene.items
    .slice(2, scene.items.indexOf(what))
    .every((item) => isWord(item, 'exactly', 'just', 'precisely') || keyOf(item, 'hedge') === 'exactly');
  if (own?.operand.type !== 'quantity' || !is || !plain || scene.items.some(({ number }) => number))
    return false;
  const { stated } = own;
  const check = {
    kind: 'fact' as const,
    key: makerKey(scene, own.operand.id),
    op: '=' as const,
    x: stated.x,
    stated,
    ...(stated.unit && { unit: stated.unit }),
    by: 'maker',
    conditions: factConditions(scene),
  };
  propose(findings, scene, 'maker', check, [...scene.items.slice(1, scene.items.indexOf(saying) + 1)]);
  return true;
}
