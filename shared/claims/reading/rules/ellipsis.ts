import type { Bound, BoundOp, Check } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';

const opposite: Readonly<Record<BoundOp, BoundOp>> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };

/** The denial at the end of a clause that says nothing else: "but the maximum isn't", "the worst level does not". */
export function closingDenial(items: readonly Item[]): Item | undefined {
  const words = items.filter((item) => item.type !== 'mark');
  const last = words.at(-1);
  return last &&
    words.length <= 6 &&
    /^(?:isn't|aren't|doesn't|don't|not|wasn't|didn't|does not|is not)$/.test(last.text)
    ? last
    : undefined;
}

/** "The average is under 3, but the maximum isn't": the limit before, denied of another statistic. */
export function readEllipsis(scene: Scene, findings: Findings): undefined {
  const denial = closingDenial(scene.items);
  const stat = scene.items.find((item) => ['average', 'max', 'min'].includes(keyOf(item, 'stat') ?? ''));
  const said = scene.previous?.said?.at(-1);
  if (!denial || !stat || said?.kind !== 'bound' || said.negated || said.bounds.length !== 1) return;
  if (scene.items.some((item) => item.number ?? keyOf(item, 'house'))) return;
  const [bound] = said.bounds;
  const { operand } = bound!;
  if (operand.type !== 'quantity') return;
  const named = keyOf(stat, 'stat') as 'average' | 'max' | 'min';
  if (operand.selector.stat === named) return;
  const turned: Bound = {
    ...bound!,
    op: opposite[bound!.op],
    operand: { ...operand, selector: { ...operand.selector, stat: named } },
  };
  const check: Check = { ...said, bounds: [turned] };
  const concepts = scene.items.filter((item) => keyOf(item, 'concept') !== undefined || isWord(item, 'the'));
  propose(findings, scene, 'ellipsis', check, [stat, denial, ...concepts]);
}
