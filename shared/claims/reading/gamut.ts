import { type Item, keyOf } from './items.ts';
import { quantityById } from './quantity.ts';
import { firstWith, type Scene } from './scene.ts';
import type { Subject } from './settled.ts';

/** The reference gamut that the clause names or that is spoken of. */
export function gamutOf(scene: Scene): { gamut: string; item?: Item } | undefined {
  const item = firstWith(scene, 'gamut');
  if (item) return { gamut: keyOf(item, 'gamut')!, item };
  return scene.gamut ? { gamut: scene.gamut } : undefined;
}

/** Of two diagrams ("93.5 % in xy and 95.5 % in u′v′") the one behind the number that is read. */
function diagramOf(scene: Scene): Item | undefined {
  const { focus } = scene;
  const behind =
    focus && scene.items.find((item) => item.index > focus.index && keyOf(item, 'diagram') !== undefined);
  // "On the xy diagram it covers 99.7 %, against 97.7 for the Harrow"
  let earlier = scene.previous;
  while (earlier && !firstWith(earlier, 'diagram')) earlier = earlier.previous;
  return behind ?? firstWith(scene, 'diagram') ?? (earlier ? firstWith(earlier, 'diagram') : undefined);
}

/** How much of a gamut is covered, or its area, in the diagram that is named, else in either. */
export function gamutSubject(scene: Scene, concept: string, item: Item | undefined): Subject {
  const gamut = gamutOf(scene);
  if (!gamut) return { problem: 'the words do not say which reference gamut is meant' };
  const diagram = diagramOf(scene);
  const key = keyOf(diagram, 'diagram') ?? 'xy';
  const base = `${concept}.${gamut.gamut}`;
  const quantity = quantityById(`${base}.${key}`);
  return {
    quantity: { ...quantity, others: diagram ? [] : [`${base}.${key === 'xy' ? 'uv' : 'xy'}`] },
    concept,
    items: [item, gamut.item, diagram].filter((entry) => entry !== undefined),
  };
}
