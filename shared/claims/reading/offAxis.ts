import { carriedConcept } from './carry.ts';
import { isWord } from './items.ts';
import { hasKey, type Scene } from './scene.ts';

/** Is the clause about looking from the side? */
export function isOffAxis(scene: Scene): boolean {
  return (
    scene.axes.some((axis) => axis.kind === 'angle') ||
    scene.conditions.angle !== undefined ||
    hasKey(scene, 'concept', 'angle') ||
    scene.items.some((item, at) => isWord(item, 'axis', 'centre') && isWord(scene.items[at - 1], 'off')) ||
    (carriedConcept(scene.carry) === 'angle' && !hasKey(scene, 'concept', 'black', 'lag', 'contrastChequer'))
  );
}
