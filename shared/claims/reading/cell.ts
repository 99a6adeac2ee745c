import { isWord } from './items.ts';
import type { Scene } from './scene.ts';
import { type Subject, settled } from './settled.ts';

/** Parts of the screen that a cell of the grid stands for. */
export const placeNouns = ['corner', 'corners', 'edge', 'edges', 'side', 'border', 'borders'] as const;

/** "The bottom left corner is 31 % darker than the centre" speaks of one cell of the grid. */
export function cellOf(scene: Scene): Subject | undefined {
  const corner = scene.items.find((item) => isWord(item, ...placeNouns));
  if (
    !corner ||
    !scene.items.some(
      (item) => isWord(item, 'centre', 'middle') || /^(?:darker|dimmer|brighter)/.test(item.text),
    )
  )
    return undefined;
  return settled(`uniformity.${scene.conditions.level ?? 'white'}.cell`, 'uniformity', [corner]);
}
