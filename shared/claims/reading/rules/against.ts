import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { knownGroup } from '../knownGroup.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene, UnitMention } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { orderCheck } from './cohort.ts';
import { comparedQuantity } from './compared.ts';
import { concepts, negated } from './orderWords.ts';
import { setPassed } from './owner.ts';
import { saidBefore } from './saidBefore.ts';

/** Which side of the other set the words put this one on. */
interface Side {
  item: Item;
  /** "ahead" and "behind" go by what is better, "above" and "below" by the number itself. */
  side: 'ahead' | 'behind' | 'above' | 'below';
}

/**
 * Two sets without a number between them: "its peak is above the Kasulind's", "it beats the Kasulind for contrast and
 * loses to the Nocthale", "on contrast the Nocthale wins".
 */
export function readAgainst(scene: Scene, findings: Findings): undefined {
  const sides = scene.items.flatMap((item, at) => sideAt(scene, item, at) ?? []);
  for (const [order, side] of sides.entries()) {
    if (scene.used.has(side.item)) continue;
    readSide(scene, findings, side, sides[order + 1]?.item.index ?? Number.POSITIVE_INFINITY);
  }
}

function sideAt(scene: Scene, item: Item, at: number): Side | undefined {
  const standing = keyOf(item, 'standing');
  // "It leaves both rivals behind"
  if (
    standing === 'behind' &&
    scene.items
      .slice(Math.max(0, at - 5), at)
      .some((word) => isWord(word, 'leaves', 'leave', 'left', 'leaving'))
  )
    return { item, side: 'ahead' };
  if (standing === 'ahead' || standing === 'behind') return { item, side: standing };
  const exceeds = keyOf(item, 'verb') === 'exceed';
  const comparator = keyOf(item, 'comparator');
  if (!exceeds && comparator !== '>' && comparator !== '<') return undefined;
  // "Above the Kasulind's", not "above 300 nits" and not "over half of the Kasulind's".
  const next = scene.items
    .slice(at + 1)
    .find((word) => !isWord(word, 'the', 'that', 'of', 'what', 'its', 'on'));
  if (!scene.units.some((mention) => mention.item === next)) return undefined;
  return { item, side: exceeds || comparator === '>' ? 'above' : 'below' };
}

/** "…, 446 cd/m² against 193": the number of each side behind what compares them. */
function isPair(items: readonly Item[]): boolean {
  const numbers = items.filter(({ number }) => number && number.role !== 'window' && number.role !== 'axis');
  const [first, second] = numbers;
  return (
    numbers.length === 2 &&
    items.some(
      (item) => item.index > first!.index && item.index < second!.index && isWord(item, 'against', 'versus'),
    )
  );
}

/** What two numbers are of, where the words behind which they stand name something else: light, or a contrast. */
function quantityOfPair(
  scene: Scene,
  spoken: ReturnType<typeof quantityNamed>,
): ReturnType<typeof quantityNamed> {
  if (!isPair(scene.items)) return spoken;
  const dimension = scene.items.find(({ number }) => number && number.dimension !== '')?.number?.dimension;
  if (spoken && !('problem' in spoken) && spoken.dimension === dimension) return spoken;
  if (dimension === 'luminance') return quantityById(scene.conditions.signal === 'SDR' ? 'white' : 'peak');
  return dimension === 'ratio' ? quantityById('contrast.native') : undefined;
}

/** One word of standing with the sets that stand between it and the next such word. */
function readSide(scene: Scene, findings: Findings, { item, side }: Side, until: number): undefined {
  const isNumber = (word: Item) =>
    word.number !== undefined && !word.number.role && word.number.dimension !== '';
  if (scene.items.some((word) => isNumber(word) && !setPassed(scene, word)) && !isPair(scene.items)) return;
  // "The blue sweep never tops 3 any more": over a limit, and no set.
  const limit = scene.items[scene.items.indexOf(item) + 1]?.number;
  if (keyOf(item, 'verb') === 'exceed' && limit && limit.role === undefined) return;
  // "The Umbra outshines neither"
  const neither = scene.items[scene.items.indexOf(item) + 1];
  const isLast = (scene.sentence[(neither?.index ?? 0) + 1]?.type ?? 'mark') === 'mark';
  if (isWord(neither, 'neither', 'none') && isLast)
    return refuse(findings, scene, 'order', 'say it of each of the sets', [item, neither]);
  const leaves = side === 'ahead' && isWord(item, 'behind');
  const others = scene.units.filter(
    (mention) =>
      mention.role !== 'subject' && (leaves || mention.item.index > item.index) && mention.item.index < until,
  );
  // "The tint hides behind both": a place, where no set is named beside it.
  const rival = others.length === 0 ? setJustMeasured(scene, item) : undefined;
  if (others.length === 0 && !rival && isWord(item, 'behind', 'ahead', 'ahead of', 'second to')) return;
  const both = others.length > 0 ? undefined : bothBehind(scene, item);
  const takenUp = isTakenUp(scene, item);
  const ids = rival
    ? [rival]
    : (both ?? (others.length > 0 ? others.map((other) => idOf(scene, other)) : [ownBeside(scene)]));
  const named = others.map((other) => other.item);
  // "The Umbra wins on contrast, the Hearth on price": each set in a quantity of its own.
  const apart = others.find(({ item: set }) => {
    const at = scene.items.indexOf(set);
    const before = scene.items.slice(scene.items.indexOf(item), at);
    return isWord(scene.items[at + 1], 'on', 'for', 'in') && before.some((word) => keyOf(word, 'concept'));
  });
  if (apart)
    return refuse(findings, scene, 'order', 'each set is ahead in something else: say it of each', [
      item,
      apart.item,
    ]);
  // "Leaves both behind in peak luminance, and trails both in black level": each in what stands beside it.
  const beside = {
    ...scene,
    items: scene.items.filter((word) => word.index > item.index && word.index < until),
  };
  const spoken = quantityNamed(concepts(beside).length > 0 ? beside : scene);
  const quantity = concepts(beside).length > 0 ? spoken : quantityOfPair(scene, spoken);
  const pair = isPair(scene.items) && scene.items.find(({ number }) => number && number.dimension !== '');
  if (pair && quantity && !('problem' in quantity) && quantity.dimension !== pair.number!.dimension) return;
  if (!quantity || (others.length === 0 && !both && !rival && !takenUp && concepts(scene).length === 0))
    return;
  if ('problem' in quantity) return refuse(findings, scene, 'order', quantity.problem, [item, ...named]);
  if (ids.some((id) => id === undefined))
    return refuse(findings, scene, 'order', 'the words do not say which set is meant', [item, ...named]);
  const direction =
    side === 'above' || side === 'below' ? (side === 'above' ? 'higher' : 'lower') : betterOf(quantity);
  if (!direction)
    return refuse(findings, scene, 'order', 'better has no direction for this quantity', [item, ...named]);
  propose(
    findings,
    scene,
    'order',
    orderCheck(
      scene,
      quantity,
      direction,
      { type: side === 'behind' ? 'behind' : 'ahead' },
      { units: ids as string[] },
      negated(scene, item),
    ),
    [item, ...named, ...concepts(concepts(beside).length > 0 ? beside : scene)],
  );
}

/** "The Kasulind gets 5,502:1, so our set is ahead": of the set whose number the clause before gave. */
function setJustMeasured(
  { items, previous, unit, unitNamed, context }: Scene,
  word: Item,
): string | undefined {
  const next = items[items.indexOf(word) + 1];
  const said = previous?.said?.length === 1 ? previous.said[0] : undefined;
  const other = previous?.unit ?? context.own;
  const ends = next === undefined || next.index > word.index + 1 || isWord(next, 'by', 'if', 'there', 'here');
  if (!isWord(word, 'ahead', 'behind') || !ends || !unitNamed || said?.kind !== 'value') return undefined;
  return other === (unit ?? context.own) ? undefined : other;
}

/** "beats both of them": the two other sets that the text speaks of. */
function bothBehind(scene: Scene, verb: Item): readonly string[] | undefined {
  const at = scene.items.indexOf(verb);
  const word = scene.items[at + 1];
  if (!isWord(word, 'both', 'the others', 'the other')) return undefined;
  const of = scene.unit ?? scene.context.own;
  const known = knownGroup(scene, word!, scene.items[at + 2]);
  const three =
    scene.context.against?.length === 2 ? [scene.context.own, ...scene.context.against] : undefined;
  const others = (known?.includes(of) ? three : (known ?? three))?.filter((id) => id !== of);
  return others?.length === 2 ? others : undefined;
}

/** "The Kasulind beats it, at 2.4": in what was just spoken of. */
function isTakenUp(scene: Scene, verb: Item): boolean {
  const next = scene.items[scene.items.indexOf(verb) + 1];
  return keyOf(next, 'pronoun') === 'it' && saidBefore(scene) !== undefined;
}

function idOf(scene: Scene, mention: UnitMention): string | undefined {
  return resolveMention(mention, scene.carry, scene.context);
}

/** "The Nocthale beats it", "the Nocthale leads on contrast": the other is this review's own set. */
function ownBeside(scene: Scene): string | undefined {
  const { own } = scene.context;
  return scene.unit !== undefined && scene.unit !== own ? own : undefined;
}

/** The quantity in which they are compared; undefined where the clause names none and nothing was said before. */
function quantityNamed(scene: Scene): Quantity | { problem: string } | undefined {
  // "In a 2 % window the Hearth edges out the Plain"
  const byPatch = concepts(scene).length === 0 && scene.conditions.origin.window === 'named';
  if (byPatch) return quantityById(scene.conditions.signal === 'SDR' ? 'white' : 'peak');
  const priced = scene.items.some((item) => keyOf(item, 'concept') === 'price' || isWord(item, 'price'));
  const quantity = comparedQuantity(scene, { concept: priced ? 'price' : '', direction: 'higher' });
  return 'problem' in quantity && concepts(scene).length === 0 && !priced ? undefined : quantity;
}

function betterOf(quantity: Quantity): 'higher' | 'lower' | undefined {
  return quantity.better === 'target' ? undefined : quantity.better;
}
