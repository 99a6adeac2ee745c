import { type Item, isWord } from './items.ts';
import type { Scene } from './scene.ts';

const counts: Readonly<Record<string, number>> = { both: 2, neither: 2 };

type Place = Pick<Scene, 'context' | 'carry'> & { previous?: Scene | null };

/**
 * The sets that "both", "neither", "the other two" and "all five" mean where nothing leaves a doubt: those that the
 * sentence before named, those that the review compares, or all that there are. Undefined where it could be others.
 */
export function knownGroup(
  scene: Place,
  first: Item,
  second: Item | undefined,
): readonly string[] | undefined {
  const { context, carry } = scene;
  const { own, against } = context;
  const all = context.units.map(({ id }) => id);
  const said = [first, second].find(({ number } = first) => number !== undefined)?.number?.x;
  const n = said ?? counts[first.text];
  if (isWord(first, 'others', 'other', 'the others', 'the other') || isWord(second, 'rival', 'rivals')) {
    const others = othersThan(scene, scene.previous?.unit ?? carry.unit ?? own);
    return others && (n === undefined || n === others.length) ? others : undefined;
  }
  if (n === undefined) return undefined;
  if (carry.sets?.length === n) return carry.sets;
  if (against?.length === n - 1) return [own, ...against];
  return all.length === n ? all : undefined;
}

/** All sets that the review compares, or that there are, but the one that is spoken of. */
export function othersThan({ context }: Pick<Scene, 'context'>, id: string): readonly string[] | undefined {
  const { own, against, units } = context;
  const compared = against && against.length > 0 ? [own, ...against] : units.map((unit) => unit.id);
  return compared.includes(id) ? compared.filter((other) => other !== id) : undefined;
}
