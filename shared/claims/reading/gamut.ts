import { type Item, isWord, keyOf } from './items.ts';
import { type Quantity, quantityById } from './quantity.ts';
import { firstWith, type Scene } from './scene.ts';
import type { Subject } from './settled.ts';

/** The reference gamut that the clause names or that is spoken of. */
export function gamutOf(scene: Scene): { gamut: string; item?: Item } | undefined {
  const item = firstWith(scene, 'gamut');
  if (item) return { gamut: keyOf(item, 'gamut')!, item };
  // "In xy it covers 93 % of P3. In that same diagram the Plain stops at 87.3 %."
  const said = /^(?:coverage|area)\.([a-z0-9]+)\./.exec(
    scene.carry.said?.id ?? scene.carry.claimed?.key ?? '',
  )?.[1];
  const gamut = scene.gamut ?? said;
  return gamut ? { gamut } : undefined;
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

/** "In that same diagram": the one that the sentence before named. */
function sameDiagram({ items, carry }: Scene): { key: string; item: Item } | undefined {
  const at = items.findIndex(
    (item, place) => isWord(item, 'diagram', 'chart') && isWord(items[place - 1], 'same', 'that', 'this'),
  );
  const key = /\.(xy|uv)$/.exec(carry.said?.id ?? '')?.[1];
  return at < 0 || key === undefined ? undefined : { key, item: items[at]! };
}

/** Coverage or area in the diagram that the words name, in which case the other is not heard. */
export function inDiagram(scene: Scene, quantity: Quantity): Quantity {
  const base = /^((?:coverage|area)\.[a-z0-9]+)\.(?:xy|uv)$/.exec(quantity.id)?.[1];
  const key = base && (keyOf(diagramOf(scene), 'diagram') ?? sameDiagram(scene)?.key);
  return key ? { ...quantityById(`${base}.${key}`), others: [] } : quantity;
}

/** How much of a gamut is covered, or its area, in the diagram that is named, else in either. */
export function gamutSubject(scene: Scene, concept: string, item: Item | undefined): Subject {
  const gamut = gamutOf(scene);
  if (!gamut) return { problem: 'the words do not say which reference gamut is meant' };
  const diagram = diagramOf(scene);
  const same = diagram ? undefined : sameDiagram(scene);
  const key = keyOf(diagram, 'diagram') ?? same?.key ?? 'xy';
  const base = `${concept}.${gamut.gamut}`;
  const quantity = quantityById(`${base}.${key}`);
  return {
    quantity: { ...quantity, others: diagram || same ? [] : [`${base}.${key === 'xy' ? 'uv' : 'xy'}`] },
    concept,
    items: [item, gamut.item, diagram ?? same?.item].filter((entry) => entry !== undefined),
  };
}
