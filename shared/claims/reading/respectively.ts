import type { ReadingContext } from '../../contract/articleText.ts';
import type { Carry } from './carry.ts';
import { type Item, isWord } from './items.ts';
import { meets, needBits, type Signs } from './needs.ts';
import type { Scene, UnitMention } from './scene.ts';
import { unitMentions } from './unitMentions.ts';

/** Whose each number of a list is; `undefined` where nobody knows. */
export type Shares = ReadonlyMap<Item, string | undefined>;

/** The sets that are named, in order; a name that fits several, or a maker who says something, is none. */
export function setsNamed(mentions: readonly UnitMention[]): string[] {
  const ids = mentions.flatMap(({ id, role }) =>
    role === 'maker' || id === 'rival' || id.includes('|') ? [] : [id],
  );
  return [...new Set(ids)];
}

function isListed({ number }: Item): boolean {
  return number !== undefined && (!number.role || number.role === 'value' || number.role === 'money');
}

const inOrder = needBits([{ words: ['respectively'] }]);

/**
 * "They cost £749, £599 and £899 respectively": each number is of the set that has its place in the list of sets, of
 * this sentence or, behind "they", of the one before. Lists of different length leave open whose is which.
 */
export function sharesOf(
  items: readonly Item[],
  signs: Signs,
  context: ReadingContext,
  carry: Carry,
): Shares | undefined {
  if (!meets(signs, inOrder)) return undefined;
  const end = items.findIndex((item) => isWord(item, 'respectively'));
  if (end < 0) return undefined;
  const here = setsNamed(unitMentions(items.slice(0, end), context));
  const sets = here.length > 1 ? here : (carry.sets ?? []);
  const numbers = items.slice(0, end).filter(isListed);
  shareUnit(numbers);
  const measures = new Set(numbers.map(({ number }) => number!.dimension));
  const pairs = sets.length > 1 && sets.length === numbers.length && measures.size === 1;
  return new Map(numbers.map((item, order) => [item, pairs ? sets[order] : undefined]));
}

/** "742, 912 and 455 nits respectively": the unit stands behind the last. */
function shareUnit(numbers: readonly Item[]): undefined {
  const last = numbers.at(-1)?.number;
  if (!last?.dimension) return;
  const { dimension, unit, factor } = last;
  for (const { number } of numbers)
    if (number!.dimension === '') Object.assign(number!, { dimension, unit, factor });
}

/** Gives a clause the set of its number. */
export function takeShare(scene: Scene, shares: Shares): undefined {
  const numbers = scene.items.filter((item) => shares.has(item));
  const [number] = numbers;
  if (!number) return;
  const id = numbers.length === 1 ? shares.get(number) : undefined;
  scene.group = undefined;
  scene.unitNamed = true;
  scene.unit = id === scene.context.own ? undefined : id;
  scene.unitProblem = id === undefined ? 'the words do not say which number is whose' : undefined;
  scene.share = id;
}
