import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { multipleWords } from '../lexicon/grammar.ts';
import { operandOf } from '../operand.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { statedMultiple, statedNumber } from '../stated.ts';
import { comparedQuantity } from './compared.ts';
import { otherOperand } from './otherOperand.ts';
import { denialOf } from './ratioNumber.ts';

const factors: Readonly<Record<string, number>> = { doubled: 2, trebled: 3, tripled: 3, quadrupled: 4 };
/** The words that such a statement has. */
export const multiplied: readonly string[] = Object.keys(factors);

/** "Its contrast is more than doubled by the Plain": the other set has so many times as much. */
export function readDoubledBy(scene: Scene, findings: Findings): undefined {
  const { items } = scene;
  const at = items.findIndex((item) => isWord(item, ...multiplied));
  const verb = items[at];
  const other = scene.units.find(
    ({ item }) => verb !== undefined && item.index > verb.index && item.index <= verb.index + 4,
  );
  if (!verb || !other || !isWord(items[at + 1], 'by')) return;
  const isMore = isWord(items[at - 1], 'than') && isWord(items[at - 2], 'more');
  const hedge = keyOf(items[at - 1], 'hedge') === undefined ? undefined : items[at - 1];
  const words: (Item | undefined)[] = [isMore ? items[at - 2] : hedge, verb, other.item];
  const denial = denialOf(scene, verb);
  if (denial)
    return refuse(findings, scene, 'ratio', 'the words leave open which side of the ratio is meant', [
      denial,
      ...words,
    ]);
  const quantity = comparedQuantity(scene, { concept: '', direction: 'higher' });
  if ('problem' in quantity) return refuse(findings, scene, 'ratio', quantity.problem, words);
  const a = otherOperand(scene, quantity);
  if (!a || 'problem' in a)
    return refuse(
      findings,
      scene,
      'ratio',
      a?.problem ?? 'the words do not say what it is compared with',
      words,
    );
  const b = operandOf(scene, quantity, selectorOf(scene, quantity, 'value'));
  const x = factors[verb.text]!;
  if (isMore) for (const item of items.slice(at - 2, at)) scene.used.add(item);
  const hedged = hedge && { hedge: keyOf(hedge, 'hedge')!, hedgeText: hedge.text };
  // Doubled is twice as a word, of which half, twice, a third and a quarter have a wider range (`judging.md`, "Rounding").
  const said =
    x === 2
      ? statedMultiple(multipleWords.twice!, keyOf(hedge, 'hedge'), hedge?.text)
      : statedNumber({ x, place: 1, ...hedged }, 'plain');
  const stated = isMore ? { x, low: x, high: x } : said;
  propose(
    findings,
    scene,
    'ratio',
    { kind: 'ratio', a: a.operand, b, stated, ...(isMore && { op: '>' as const }) },
    [items.find((item) => keyOf(item, 'concept') !== undefined), ...words],
  );
}
