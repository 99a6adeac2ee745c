import type { Operand, OrderCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { othersThan } from '../knownGroup.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { splitVariant } from '../variant.ts';
import { cohortOf } from './cohort.ts';
import { groupNamed } from './group.ts';
import { negated } from './orderWords.ts';

const figures = [
  ...['figure', 'figures', 'result', 'results', 'value', 'reading', 'showing', 'performance'],
  ...['one', 'number', 'measurement'],
];

/**
 * "It keeps 73 %, the best figure of the three", "the second-best result here": the place of what was just stated, by
 * what is better of it. True where the words are taken.
 */
export function readBestFigure(scene: Scene, findings: Findings, item: Item): boolean {
  const { items, context } = scene;
  const at = items.indexOf(item);
  if (!isWord(item, 'best', 'worst', 'second best') || !isWord(items[at + 1], ...figures)) return false;
  const said = (scene.said ?? scene.previous?.said)?.at(-1);
  const operand: Operand | undefined = said?.kind === 'value' ? said.operand : undefined;
  const ordinal = items.slice(Math.max(0, at - 2), at).find((word) => keyOf(word, 'ordinal') !== undefined);
  const group = groupNamed(scene);
  const isOfAll =
    group ?? items.slice(at + 2, at + 5).find((word) => isWord(word, 'here', 'tested', 'we', 'year'));
  // "The best reading is 1.2, at 40 %": among the levels of one set.
  if (!isOfAll) return false;
  const words = [ordinal, item, items[at + 1]!];
  if (operand?.type !== 'quantity') {
    refuse(findings, scene, 'order', 'the words do not say which sets, or in what, are compared', words);
    return true;
  }
  const quantity = quantityById(operand.id);
  if (quantity.better === 'target') {
    refuse(findings, scene, 'order', 'better has no direction for this quantity', words);
    return true;
  }
  const { cohort, items: ofCohort } = cohortOf(scene);
  const others = othersThan(scene, splitVariant(operand.conditions.unit).unit ?? context.own);
  if (group && cohort.units === undefined && context.units.length !== group.n) {
    refuse(findings, scene, 'order', 'the words do not say among which sets', words);
    return true;
  }
  if (cohort.units && others) cohort.units = others;
  const n = isWord(item, 'second best') ? 2 : Number(keyOf(ordinal, 'ordinal') ?? 1);
  const isHigher = (quantity.better === 'higher') !== isWord(item, 'worst');
  const direction: OrderCheck['direction'] = isHigher ? 'higher' : 'lower';
  const rank = n === 1 ? ({ type: 'best' } as const) : ({ type: 'position', n } as const);
  const check: OrderCheck = { kind: 'order', key: operand, direction, rank, cohort, ...negated(scene, item) };
  propose(findings, scene, 'order', check, [...words, ...ofCohort]);
  return true;
}
