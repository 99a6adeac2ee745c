import type { DirectionCheck, Selector, StatedConditions, StatedNumber } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';

function intensityOf(scene: Scene, near: Item): { size?: DirectionCheck['size']; item?: Item } {
  const candidates = scene.items.filter(
    (item) => keyOf(item, 'intensity') !== undefined && !scene.used.has(item),
  );
  const item = candidates.sort((a, b) => Math.abs(a.index - near.index) - Math.abs(b.index - near.index))[0];
  const tiny = scene.items.find((entry) => plays(entry, 'tiny') && entry.index < near.index);
  if (item) return { size: keyOf(item, 'intensity') as DirectionCheck['size'], item };
  return tiny ? { size: 'slight', item: tiny } : {};
}

/** The stretch of the axis that the clause names, in words or numbers; else the default of the metric. */
export function region(scene: Scene, fallback: Partial<Selector>): Selector {
  const axis = scene.axes.find((entry) => entry.kind === 'stimulus');
  if (!axis) return { stat: 'average', ...fallback };
  if (axis.at !== undefined) return { stat: 'at', at: axis.at };
  return {
    stat: 'average',
    ...(axis.from !== undefined && { from: axis.from, ...(!axis.fromIncluded && { fromIncluded: false }) }),
    ...(axis.to !== undefined && { to: axis.to, ...(!axis.toIncluded && { toIncluded: false }) }),
  };
}

/** The word before this one that denies it. */
export function negationBefore(scene: Scene, item: Item): Item | undefined {
  return scene.items.find(
    (entry) =>
      entry.index < item.index &&
      !scene.used.has(entry) &&
      keyOf(entry, 'hedge') === undefined &&
      (keyOf(entry, 'negation') !== undefined || ['none', 'never'].includes(keyOf(entry, 'stat') ?? '')),
  );
}

/** Makes the direction check of a quantity, with its size, its denial and the place that the clause names. */
export function emit(
  scene: Scene,
  findings: Findings,
  id: string,
  name: string,
  selector: Selector,
  main: Item,
  words: (Item | undefined)[],
  more: { conditions?: StatedConditions; denied?: Item; from?: StatedNumber | undefined } = {},
): undefined {
  const { conditions, denied, from } = more;
  const quantity = quantityById(id);
  const { size, item: sizeItem } = name === 'none' || name === 'on-target' ? {} : intensityOf(scene, main);
  const negation = denied ?? negationBefore(scene, main);
  // The level of a roll-off is no stretch of the curve.
  const axes = id === 'eotf.rolloff' ? [] : scene.axes.filter((axis) => axis.kind === 'stimulus');
  const axisItems = axes.flatMap((axis) => axis.items);
  propose(
    findings,
    scene,
    'direction',
    {
      kind: 'direction',
      operand: operandOf(scene, quantity, selector, conditions),
      name,
      ...(size && { size }),
      ...(from && { from }),
      ...(negation && { negated: true }),
    },
    [main, ...words, sizeItem, negation, ...axisItems],
  );
}

/** "Red is oversaturated at every step": not the average, but the level nearest to the target is past the limit. */
export function emitEvery(
  scene: Scene,
  findings: Findings,
  id: string,
  key: 'over' | 'under',
  item: Item,
  hue: Item,
): undefined {
  const quantity = quantityById(id);
  const limit = scene.context.house.limits.saturationPercent;
  const { stat: _stat, ...part } = region(scene, {});
  const over = key === 'over';
  propose(
    findings,
    scene,
    'direction',
    {
      kind: 'bound',
      bounds: [
        {
          operand: operandOf(scene, quantity, { ...part, stat: over ? 'min' : 'max' }),
          op: over ? '>' : '<',
          x: over ? limit : -limit,
          unit: quantity.unit,
        },
      ],
    },
    [item, hue, ...scene.items.filter((entry) => keyOf(entry, 'stat') === 'all')],
  );
}
