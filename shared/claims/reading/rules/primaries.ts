import type { Bound } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { negationBefore } from './directionCheck.ts';

const groups = { primaries: ['red', 'green', 'blue'], secondaries: ['cyan', 'magenta', 'yellow'] } as const;

/**
 * "All primaries are on target", "the secondaries are oversaturated": all three hues at full amplitude, in saturation
 * and, on target, in hue too, against the house's limits.
 */
export function readPrimaries(
  scene: Scene,
  findings: Findings,
  { item, key }: { item: Item; key: string },
): boolean {
  const group = (['primaries', 'secondaries'] as const).find((part) =>
    scene.items.some((entry) => plays(entry, part)),
  );
  if (!group || !['on-target', 'over', 'under'].includes(key)) return false;
  const { saturationPercent, hueDegrees } = scene.context.house.limits;
  const bound = (id: string, op: Bound['op'], x: number): Bound => {
    const quantity = quantityById(id);
    return { operand: operandOf(scene, quantity, { stat: 'at', at: 100 }), op, x, unit: quantity.unit };
  };
  const bounds = groups[group].flatMap((hue) => {
    const saturation = `sweep.${hue}.saturation`;
    if (key === 'over') return [bound(saturation, '>', saturationPercent)];
    if (key === 'under') return [bound(saturation, '<', -saturationPercent)];
    return [
      bound(saturation, '<=', saturationPercent),
      bound(saturation, '>=', -saturationPercent),
      bound(`sweep.${hue}.hue`, '<=', hueDegrees),
      bound(`sweep.${hue}.hue`, '>=', -hueDegrees),
    ];
  });
  const denied = negationBefore(scene, item);
  propose(findings, scene, 'direction', { kind: 'bound', bounds, ...(denied && { negated: true }) }, [
    item,
    denied,
    ...scene.items.filter((entry) => plays(entry, group) || keyOf(entry, 'stat') === 'all'),
  ]);
  return true;
}
