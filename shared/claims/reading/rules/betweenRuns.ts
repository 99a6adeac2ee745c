import type { Operand } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import type { ComparingWord } from './comparativeEntry.ts';
import { comparedQuantity } from './compared.ts';
import { betterDirection, concepts, negated } from './orderWords.ts';
import { otherOperand } from './otherOperand.ts';

/** "Contrast is higher after adjustment than as delivered": two runs of one set, of which one reads more than the other. */
export function readBetweenRuns(
  clause: Scene,
  findings: Findings,
  comparing: ComparingWord,
  given: Quantity | { problem: string },
): boolean {
  const { item, key, entry } = comparing;
  const scene = inSignalOfBoth(clause);
  const quantity = scene === clause ? given : comparedQuantity(scene, entry);
  if ('problem' in quantity || quantity.signed || quantity.id.startsWith('fact:')) return false;
  const direction = betterDirection(entry, key, quantity);
  const other = otherOperand(scene, quantity);
  if (!direction || !other || 'problem' in other || negated(scene, item).negated) return false;
  const averaged = (operand: Operand): Operand =>
    operand.type === 'quantity' && quantity.dimension === 'de' && operand.selector.stat === 'scalar'
      ? { ...operand, selector: { ...operand.selector, stat: 'average' } }
      : operand;
  const a = averaged(operandOf(scene, quantity, selectorOf(scene, quantity, 'value')));
  const b = averaged(other.operand);
  if (JSON.stringify(a) === JSON.stringify(b)) return false;
  const than = scene.items.slice(scene.items.findIndex((word) => isWord(word, 'than')));
  propose(
    findings,
    scene,
    'order',
    {
      kind: 'ratio',
      a,
      b,
      op: direction === 'higher' ? '>' : '<',
      stated: { x: 1, low: 1, high: 1 },
      certain: true,
    },
    [
      item,
      ...concepts(scene),
      ...than.filter((word) => keyOf(word, 'stage') ?? keyOf(word, 'signal') ?? keyOf(word, 'mode')),
      ...other.items,
    ],
  );
  return true;
}

/** "The Bright mode is brighter than the Evening mode in SDR": a signal behind two modes holds for both. */
function inSignalOfBoth(scene: Scene): Scene {
  const { items, conditions } = scene;
  const than = items.slice(items.findIndex((word) => isWord(word, 'than')));
  const signal = than.find((word) => keyOf(word, 'signal') !== undefined);
  const ofModes = than.some((word) => keyOf(word, 'mode') !== undefined) && conditions.mode !== undefined;
  if (!signal || !ofModes || conditions.signal !== undefined) return scene;
  const origin = { ...conditions.origin, signal: 'named' as const };
  return {
    ...scene,
    conditions: { ...conditions, signal: keyOf(signal, 'signal')!, origin } as Scene['conditions'],
  };
}
