import { carriedConcept } from './carry.ts';
import { isWord } from './items.ts';
import { hasKey, type Scene } from './scene.ts';

/** "White in SDR is 236 cd/m²": in cd/m² only what is seen in front is kept. */
function statesWhite(scene: Scene): boolean {
  return (
    hasKey(scene, 'concept', 'whitePoint', 'sdrWhite', 'peak') &&
    scene.items.some(({ number }) => number?.dimension === 'luminance')
  );
}

/** Is the clause about looking from the side? */
export function isOffAxis(scene: Scene): boolean {
  return (
    scene.axes.some((axis) => axis.kind === 'angle') ||
    scene.conditions.angle !== undefined ||
    hasKey(scene, 'concept', 'angle') ||
    scene.items.some((item, at) => isWord(item, 'axis', 'centre') && isWord(scene.items[at - 1], 'off')) ||
    (carriedConcept(scene.carry) === 'angle' &&
      !hasKey(scene, 'concept', 'black', 'lag', 'contrastChequer') &&
      !statesWhite(scene))
  );
}
