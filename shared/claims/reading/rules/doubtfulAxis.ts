import { carriedConcept } from '../carry.ts';
import { placeNouns } from '../cell.ts';
import { coloursGrey } from '../hueSaid.ts';
import { isOneOf, isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';

/** "above 60 %" is a place on the axis unless the clause is about a percentage and states no other number. */
export function resolveDoubtfulAxes(scene: Scene): undefined {
  for (const axis of scene.axes) {
    if (!axis.doubtful) continue;
    const number = axis.items.find((item) => item.number?.role === 'axisOrValue');
    if (!number) continue;
    const otherAnchor =
      coloursGrey(scene.items) ||
      scene.items.some(
        (item) =>
          item !== number &&
          ((item.number !== undefined && (item.number.role === undefined || item.number.role === 'value')) ||
            keyOf(item, 'house') ||
            keyOf(item, 'direction') ||
            keyOf(item, 'tint') ||
            keyOf(item, 'lean')),
      );
    const percentConcept = scene.items.some(
      (item) =>
        [
          'coverage',
          'area',
          'hold',
          'uniformity',
          'luminance',
          'saturation',
          'eotf',
          'redBalance',
          'greenBalance',
          'blueBalance',
        ].includes(keyOf(item, 'concept') ?? '') ||
        keyOf(item, 'gamut') ||
        isOneOf(item, placeNouns) ||
        isWord(item, 'uniform', 'strays', 'stray') ||
        (isWord(item, 'left', 'is left', 'survives', 'remains') &&
          scene.axes.some(({ kind }) => kind === 'angle')),
    );
    const carried = scene.concept ?? carriedConcept(scene.carry);
    if (
      otherAnchor ||
      (!percentConcept &&
        carried !== 'coverage' &&
        carried !== 'uniformity' &&
        carried !== 'hold' &&
        carried !== 'luminance')
    )
      number.number!.role = 'axis';
    else number.number!.role = 'value';
  }
}
