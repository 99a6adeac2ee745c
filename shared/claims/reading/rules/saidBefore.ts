import type { Check, Operand } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';

/** What a check speaks of: `fact:price`, `peak` …; undefined for kinds that no comparison can take up. */
export function quantityOfCheck(check: Check): string | undefined {
  const ofOperand = (operand: Operand) => (operand.type === 'fact' ? `fact:${operand.key}` : operand.id);
  switch (check.kind) {
    case 'value':
      return ofOperand(check.operand);
    case 'bound':
      return check.bounds[0] && ofOperand(check.bounds[0].operand);
    case 'ratio':
    case 'difference':
      return ofOperand(check.a);
    case 'order':
      return ofOperand(check.key);
    case 'fact':
      return typeof check.x === 'number' && !check.by ? `fact:${check.key}` : undefined;
    default:
      return undefined;
  }
}

/** What a comparison may take up: a quantity, and where on its axis it was read. */
export interface Said {
  id: string;
  window?: number;
  angle?: number;
  stage?: string;
  stat?: string;
}

/** The one quantity that these checks speak of; its id is '' where they speak of several. */
export function onlySaid(all: readonly Check[]): Said | undefined {
  let id: string | undefined;
  const places: Place[] = [];
  for (const check of all) {
    const quantity = quantityOfCheck(check);
    // The place of the worst cell says nothing more of the quantity.
    if (quantity === undefined || quantity.endsWith('.cell')) continue;
    if (id !== undefined && id !== quantity) return { id: '' };
    id = quantity;
    places.push(placeOf(check));
  }
  const [first] = places;
  if (id === undefined || first === undefined) return undefined;
  const said: Record<string, unknown> = { id };
  for (const key of ['window', 'angle', 'stage', 'stat'] as const) {
    const isOne = places.every((place) => place[key] === first[key]);
    // Two windows of one quantity: "that" may be either.
    if (!isOne && key !== 'stat' && key !== 'stage') return undefined;
    if (isOne && first[key] !== undefined) said[key] = first[key];
  }
  return said as unknown as Said;
}

type Place = Omit<Said, 'id'>;

function placeOf(check: Check): Place {
  const operand =
    check.kind === 'value' ? check.operand : check.kind === 'bound' ? check.bounds[0]?.operand : undefined;
  if (operand?.type !== 'quantity') return {};
  const { window, angle, stage } = operand.conditions;
  return {
    ...(window !== undefined && { window }),
    ...(angle !== undefined && { angle }),
    ...(stage !== undefined && { stage }),
    stat: operand.selector.stat,
  };
}

/** "It now averages 1.8, less than half of that": the same quantity, before adjustment. */
export function isSaidBeforeAdjusting(scene: Scene): boolean {
  const before = scene.carry.said;
  const now = scene.previous?.said && onlySaid(scene.previous.said);
  return (
    before !== undefined &&
    now?.stage === 'adjusted' &&
    before.stage !== 'adjusted' &&
    before.id === now.id &&
    before.stat !== undefined &&
    before.stat === now.stat
  );
}

/**
 * "742 nits, nearly twice the Kasulind": a clause that names no quantity speaks of the one before it, in its sentence
 * or, where that is the only one, in the sentence before.
 */
export function saidBefore(scene: Scene): Quantity | undefined {
  const said = saidOf(scene);
  return said && said.id !== '' ? quantityById(said.id) : undefined;
}

/** "The lag is 9 ms and the price £899. That is twice …": nobody knows which of the two is meant. */
export function saidSeveral(scene: Scene): boolean {
  const first = scene.items.find((item) => item.type !== 'mark');
  return isWord(first, 'that', "that's", 'which', 'this') && saidOf(scene)?.id === '';
}

function saidOf(scene: Scene): Said | undefined {
  if (namesQuantity(scene) || namesOtherThing(scene)) return undefined;
  for (let before = scene.previous; before; before = before.previous) {
    // "The Kasulind, which costs less, has twice as much": an inserted clause is passed over.
    if (isInserted(before) && !isWord(scene.items[0], 'which')) continue;
    if (before.said && before.said.length > 0) return onlySaid(before.said);
    // A clause that spoke of something, and of which nothing could be made, stands in between.
    if (namesQuantity(before) || before.used.size > 0) return undefined;
  }
  return scene.carry.said;
}

const plainNouns =
  /^(?:figure|number|ratio|value|level|customers|buyers|owners|glow|light|same|other|others|set|sets|two|three|four|five|whole|full|screen|latter|former|way|one|rest|lot|even|only|just|very|most|test|end|result|maker|is|isn't|are|was|has|does|still|also|bit|far|and|but|or|so|yet|while|which|where|at|in|on|with|for|from|because|as)$/;

/** "Its remote is smaller", "the Kasulind's stand": a noun that no list knows is what the clause speaks of. */
export function namesOtherThing(scene: Scene): boolean {
  const items = withoutTail(scene.items);
  return items.some((item, at) => {
    const before = items[at - 1];
    const owner = items[at - 2];
    const owned =
      isWord(before, 'its', 'their', 'the') ||
      (isWord(before, "'s") && (keyOf(owner, 'unit') ?? keyOf(owner, 'maker')) !== undefined);
    return (
      owned &&
      item.type === 'word' &&
      item.meanings.length === 0 &&
      !item.number &&
      !plainNouns.test(item.text)
    );
  });
}

/** "… lower than the Kasulind's, and the teenagers …": what another statement begins with is not compared. */
function withoutTail(items: readonly Item[]): readonly Item[] {
  const word = items.findIndex((item) => isWord(item, 'than'));
  const than = word >= 0 ? word : items.findIndex((item) => keyOf(item, 'comparative') !== undefined);
  const end = items.findIndex(
    (item, at) =>
      at > than &&
      at > 0 &&
      isWord(item, 'and', 'but', 'so') &&
      item.index > items[at - 1]!.index + 1 &&
      !isWord(items[at + 1], 'than'),
  );
  return than >= 0 && end > 0 ? items.slice(0, end) : items;
}

function isInserted({ items }: Scene): boolean {
  return items.some((item, at) => {
    const owner = items[at - 1];
    return (
      isWord(item, 'which') && (at === 0 || (keyOf(owner, 'unit') ?? keyOf(owner, 'maker')) !== undefined)
    );
  });
}

function namesQuantity({ items }: Scene): boolean {
  return items.some((item) => keyOf(item, 'concept') ?? keyOf(item, 'fact') ?? keyOf(item, 'gamut'));
}

/** "That is less than a third of what …": "that" is the value just named, with its window and angle. */
export function takeUpPlace(scene: Scene): undefined {
  const first = scene.items.find((item) => item.type !== 'mark');
  if (!isWord(first, 'that', "that's", 'which', 'this')) return;
  const said = saidOf(scene);
  if (!said || said.id === '') return;
  const { window, angle } = scene.conditions;
  const more = {
    ...(window === undefined && said.window !== undefined && { window: said.window }),
    ...(angle === undefined && said.angle !== undefined && { angle: said.angle }),
  };
  scene.conditions = { ...scene.conditions, ...more };
}
