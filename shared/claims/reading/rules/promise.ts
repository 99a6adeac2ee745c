import type { BoundOp, Operand, StatedNumber } from '../../../contract/check.ts';
import type { Carry } from '../carry.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { statedNumber, tidy } from '../stated.ts';
import { factConditions } from './factCheck.ts';
import { hedgeBefore, multipleAt, ratioStated } from './ratioNumber.ts';

type Claimed = NonNullable<Carry['claimed']>;

/** What was measured, and what the maker says of it. */
function sidesOf(
  scene: Scene,
  claimed: Claimed,
  quantity: Quantity,
): { measured: Operand; promised: Operand } {
  return {
    measured: operandOf(scene, quantity, selectorOf(scene, quantity, 'value')),
    promised: {
      type: 'fact',
      key: claimed.factKey ?? claimed.key,
      by: 'maker',
      conditions: factConditions(scene),
    },
  };
}

/** "by almost 370", "by about a quarter": the number or share that "by" leads to. */
export function shortBy(scene: Scene): Item | undefined {
  return scene.items.find((item, at) => {
    if (!item.number && keyOf(item, 'multiple') === undefined) return false;
    // "falls 48 nits short of the promise"
    // "a quarter short of the claim"
    if (isWord(scene.items[at + 1], 'short', 'shy', 'short of')) return !scene.used.has(item);
    let left = at - 1;
    while (
      keyOf(scene.items[left], 'hedge') !== undefined ||
      isWord(scene.items[left], 'a', 'some', 'just', 'only')
    )
      left -= 1;
    return isWord(scene.items[left], 'by') && !scene.used.has(item);
  });
}

/** How far the measured value lies from the maker's: "falls short of it by 370 nits", "misses it by a quarter". */
export function readShortfall(scene: Scene, findings: Findings, claimed: Claimed, over: boolean): undefined {
  const anchor = shortBy(scene);
  if (!anchor) return;
  const quantity = quantityById(claimed.key);
  const { measured, promised } = sidesOf(scene, claimed, quantity);
  const number = anchor.number;
  const verb = scene.items.find((item) =>
    isWord(item, 'short of', 'falls short of', 'fall short of', 'misses', 'missed', 'exceeds', 'beats'),
  );
  const words = [verb, anchor];
  if (number && number.dimension !== 'percent' && number.dimension !== 'times') {
    if (number.dimension !== '' && number.unit !== claimed.unit) return;
    const stated: StatedNumber = {
      ...statedNumber(
        {
          x: number.x,
          place: number.place,
          factor: number.factor,
          ...(number.hedge && { hedge: number.hedge }),
          ...(number.hedgeText && { hedgeText: number.hedgeText }),
        },
        quantity.family,
      ),
      unit: claimed.unit,
    };
    const [a, b] = over ? [measured, promised] : [promised, measured];
    return propose(findings, scene, 'promise', { kind: 'difference', a, b, stated }, words);
  }
  const multiple = number ? undefined : multipleAt(scene);
  const hedge = number ? undefined : hedgeBefore(scene, anchor);
  const stated = ratioStated(number ? anchor : undefined, multiple, hedge, true, !over);
  if (!stated) return;
  propose(findings, scene, 'promise', { kind: 'ratio', a: measured, b: promised, stated }, [...words, hedge]);
}

/** "93 % of the promise", "three quarters of the way there": what was measured over what the maker claims. */
export function readShareOfPromise(scene: Scene, findings: Findings): boolean {
  const { claimed } = scene.carry;
  const { items } = scene;
  const anchor = items.find(
    (item, place) =>
      (item.number?.dimension === 'percent' && item.number.role === undefined) ||
      (keyOf(item, 'multiple') !== undefined &&
        (/ (?:of(?: the)?|the)$/.test(item.text) ||
          isWord(items[place + 1], 'the', 'its', 'that', 'this'))) ||
      // "Delivers three times that"
      (item.number?.dimension === 'times' && item.number.comparator === undefined),
  );
  if (!claimed || !anchor || scene.used.has(anchor)) return false;
  let at = items.indexOf(anchor) + 1;
  while (isWord(items[at], 'of', 'the', 'that', 'its', 'this', 'what')) at += 1;
  const noun = items[at];
  // "About half of what the brochure sings"
  const isSung =
    items.slice(items.indexOf(anchor), at).some((item) => isWord(item, 'what')) &&
    (keyOf(noun, 'makerWord') !== undefined ||
      (keyOf(noun, 'maker') !== undefined && keyOf(items[at + 1], 'saying') !== undefined));
  const isWay = isWord(noun, 'way') && isWord(items[at + 1], 'there', 'to');
  const isThat =
    isWord(items[at - 1], 'that') &&
    (noun === undefined || noun.type === 'mark') &&
    (keyOf(anchor, 'multiple') !== undefined || anchor.number?.dimension === 'times') &&
    items
      .slice(0, items.indexOf(anchor))
      .some((item) =>
        isWord(
          item,
          'delivers',
          'delivered',
          'manages',
          'managed',
          'got',
          'get',
          'found',
          'saw',
          'gave',
          'gives',
        ),
      );
  const isPromise =
    isSung || isThat || isWord(noun, 'promise', 'claim', 'pledge', 'advertised', 'claimed', 'promised');
  const isBare = items[at - 1] === anchor && !/ the$/.test(anchor.text);
  if (isBare || (!isPromise && !isWay)) return false;
  const quantity = quantityById(claimed.key);
  const hedge = hedgeBefore(scene, anchor);
  const multiple = anchor.number ? undefined : multipleAt(scene);
  if (!anchor.number && multiple?.item !== anchor) return false;
  const stated = ratioStated(anchor.number ? anchor : undefined, multiple, hedge, false, false);
  const isOfAnother = claimed.of !== undefined && claimed.of !== scene.unit;
  if (!stated || isOfAnother || claimed.key.startsWith('fact:')) return false;
  const { measured, promised } = sidesOf(scene, claimed, quantity);
  propose(findings, scene, 'promise', { kind: 'ratio', a: measured, b: promised, stated }, [
    hedge,
    anchor,
    noun,
  ]);
  return true;
}

/** "A little over half of the 6,000:1 that Orrinvale quotes": what was measured over the maker's number beside it. */
export function readShareOfQuoted(
  scene: Scene,
  findings: Findings,
  quoted: Item,
  claimed: Claimed,
): undefined {
  const at = scene.items.indexOf(quoted);
  const lead = scene.items.slice(Math.max(0, at - 4), at);
  const share = lead.findLast(
    (item) =>
      !scene.used.has(item) &&
      (keyOf(item, 'multiple') !== undefined ||
        (item.number?.dimension === 'percent' && item.number.role === undefined)),
  );
  const between = share ? lead.slice(lead.indexOf(share) + 1) : [];
  const isOf =
    between.length === 0
      ? / of(?: the)?$/.test(share?.text ?? '')
      : between.every((item) => isWord(item, 'of', 'the'));
  if (!share || !isOf || claimed.key.startsWith('fact:')) return;
  const multiple = share.number ? undefined : multipleAt(scene);
  if (!share.number && multiple?.item !== share) return;
  const hedge = share.number ? undefined : hedgeBefore(scene, share);
  const limited = keyOf(scene.items[scene.items.indexOf(share) - 1], 'comparator') !== undefined;
  const stated =
    limited && !hedge
      ? undefined
      : ratioStated(share.number ? share : undefined, multiple, hedge, false, false);
  if (!stated) return;
  const quantity = quantityById(claimed.key);
  const { measured, promised } = sidesOf(scene, claimed, quantity);
  propose(findings, scene, 'promise', { kind: 'ratio', a: measured, b: promised, stated }, [share, hedge]);
}

/** "We got within 20 nits of that": at most so far from the maker's number, on either side. */
export function readNearMiss(scene: Scene, findings: Findings): boolean {
  const { claimed } = scene.carry;
  if (!claimed) return false;
  const anchor = scene.items.find((item, at) => {
    const { number } = item;
    const next = scene.items[at + 1];
    return (
      number !== undefined &&
      (number.comparator === '<=' || number.comparator === '<') &&
      isWord(scene.items[at - 1], 'within') &&
      isWord(next, 'of') &&
      // "Of the promise", and not "of the PQ curve"
      (isWord(scene.items[at + 2], 'that', 'it', 'this') ||
        (isWord(scene.items[at + 2], 'the') &&
          isWord(
            scene.items[at + 3],
            'promise',
            'promised',
            'claim',
            'claimed',
            'figure',
            'number',
            'quoted',
          ))) &&
      !scene.used.has(item)
    );
  });
  const number = anchor?.number;
  if (
    !anchor ||
    !number ||
    (number.dimension !== '' && number.unit !== claimed.unit && number.dimension !== 'percent')
  )
    return false;
  const far = number.dimension === 'percent' ? (claimed.x * number.x) / 100 : number.x * number.factor;
  const quantity = quantityById(claimed.key);
  const bound = (op: BoundOp, x: number) => ({
    operand: operandOf(scene, quantity, selectorOf(scene, quantity, 'value')),
    op,
    x: tidy(x),
    unit: claimed.unit,
  });
  const at = scene.items.indexOf(anchor);
  propose(
    findings,
    scene,
    'promise',
    { kind: 'bound', bounds: [bound('>=', claimed.x - far), bound('<=', claimed.x + far)] },
    [scene.items[at - 1], anchor, scene.items[at + 1], scene.items[at + 2]],
  );
  return true;
}
