import type { OrderCheck, ValueCheck } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord } from '../items.ts';
import { quantityById } from '../quantity.ts';
import { saidOf } from '../retarget.ts';
import { type Scene, valueNumbers } from '../scene.ts';
import { statedNumber } from '../stated.ts';

/** The comparison of two sets that the sentence has made before. */
function comparedBefore(scene: Scene): OrderCheck | undefined {
  for (let at: Scene | null = scene; at; at = at.previous) {
    const order = at.said?.find((check) => check.kind === 'order');
    if (order) return order.cohort.units?.length === 1 && !order.negated ? order : undefined;
  }
  return undefined;
}

/**
 * "It is brighter than the Kasulind, at 742 nits to 571", "it loses that to the Nocthale, 742 nits to 905": behind a
 * comparison of two sets the first number is that of the first, the second that of the other.
 */
export function readBothSets(scene: Scene, findings: Findings): undefined {
  const pair = valueNumbers(scene).find(
    (item) => item.number!.to !== undefined && item.number!.rangeWord === 'to' && !isLedByFrom(scene, item),
  );
  const order = pair && comparedBefore(scene);
  if (!pair || !order || order.key.type !== 'quantity') return;
  const { to, firstEnd, ...first } = pair.number!;
  const quantity = quantityById(order.key.id);
  if (first.dimension !== quantity.dimension && first.dimension !== '') return;
  const unit = first.unit || quantity.unit;
  const of = (x: number, place: number): ValueCheck => ({
    kind: 'value',
    operand: order.key,
    stated: statedNumber({ x, place, factor: first.factor, ...(unit && { unit }) }, quantity.family),
  });
  const other = saidOf(of(to!.x, to!.place), order.cohort.units![0]!, scene.context.own);
  if (other?.kind !== 'value') return;
  propose(
    findings,
    scene,
    'bothSets',
    of(first.x, first.place),
    [pair],
    firstEnd === undefined ? {} : { end: firstEnd },
  );
  propose(
    findings,
    scene,
    'bothSets',
    inStageOf(other, scene),
    [pair],
    to!.start === undefined ? {} : { start: to!.start },
  );
}

/** Sets are compared in the same stage: where the words name none, in the one that the article's conditions name. */
function inStageOf(check: ValueCheck, { context }: Scene): ValueCheck {
  const stages = new Set(Object.values(context.conditions ?? {}).map(({ stage }) => stage));
  const [stage] = stages;
  const { conditions } = check.operand;
  if (conditions.stage !== undefined || stages.size !== 1 || stage === undefined) return check;
  const origin = { ...conditions.origin, stage: 'carried' as const };
  return { ...check, operand: { ...check.operand, conditions: { ...conditions, stage, origin } } };
}

function isLedByFrom(scene: Scene, item: Item): boolean {
  return scene.items.some((entry) => isWord(entry, 'from') && entry.index < item.index);
}
