import type { StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { statedNumber } from '../stated.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { takeMoney } from './comparedWords.ts';
import { hedgeBefore, multipleAt, ratioStated } from './ratioNumber.ts';

const paying = [
  'for',
  'spend',
  'pay',
  'add',
  'find',
  'costs',
  'cost',
  'put',
  'spare',
  'stretch',
  'asks',
  'wants',
];

/** The word that makes an amount one on top of a price: "another £250", "£250 more". */
function extraBeside(scene: Scene, at: number): { item: Item; less: boolean } | undefined {
  let before = at - 1;
  while (keyOf(scene.items[before], 'hedge') !== undefined) before -= 1;
  const lead = scene.items[before];
  if (isWord(lead, 'another', 'extra', 'further', 'additional')) return { item: lead!, less: false };
  const next = scene.items[at + 1];
  if (!isWord(next, 'more', 'less', 'extra')) return undefined;
  return { item: next!, less: isWord(next, 'less') };
}

/**
 * "For £600 more you can have the Umbra", "another £250 buys the Umbra": what that set costs above this one. With "than"
 * the words are a comparison, which `compare.ts` reads.
 */
export function readPaidMore(scene: Scene, findings: Findings): undefined {
  takeMoney(scene);
  readShareMore(scene, findings);
  readSaved(scene, findings);
  for (const [at, item] of scene.items.entries()) {
    const number = item.number;
    if (number?.role !== 'money' || scene.used.has(item)) continue;
    const extra = extraBeside(scene, at);
    if (!extra || scene.items.some((word) => isWord(word, 'than'))) continue;
    const paid = scene.items.find((word) => word.index < item.index && isWord(word, ...paying));
    if (!paid && isWord(extra.item, 'more', 'less')) continue;
    const words = [item, extra.item];
    const id = setBought(scene);
    if (id === undefined && isWord(extra.item, 'more', 'less')) continue;
    if (id === undefined) {
      refuse(findings, scene, 'difference', 'the words do not say which set costs so much more', words);
      continue;
    }
    const price = quantityById('fact:price');
    const operand = (of: string) =>
      operandOf(scene, price, { stat: 'scalar' }, conditionsOf(of, scene.context.own));
    const [a, b] = extra.less ? [scene.context.own, id] : [id, scene.context.own];
    const stated = statedNumber(
      {
        x: number.x,
        place: number.place,
        unit: number.unit,
        ...(number.hedge && { hedge: number.hedge }),
        ...(number.hedgeText && { hedgeText: number.hedgeText }),
      },
      'price',
    );
    const mention = scene.units.find(({ role }) => role !== 'maker');
    propose(findings, scene, 'difference', { kind: 'difference', a: operand(a), b: operand(b), stated }, [
      ...words,
      mention?.item,
    ]);
  }
}

/** "It is £579, which saves you £250 against the Plain": how much less it costs. */
function readSaved(scene: Scene, findings: Findings): undefined {
  const verb = scene.items.findIndex((item) => isWord(item, 'saves', 'save'));
  const item = scene.items.find(
    ({ number, index }, at) => number?.role === 'money' && at > verb && index > 0,
  );
  // "… and £70 on the Umbra": what is saved goes on.
  const goesOn = verb < 0 && item !== undefined && isSavedToo(scene, item);
  const near = verb >= 0 && item !== undefined && item.index - scene.items[verb]!.index <= 4;
  if (!item || scene.used.has(item) || !(near || goesOn)) return;
  const number = item.number!;
  const words = [scene.items[verb], item];
  const beside = scene.items.findIndex(
    (word) =>
      word.index > item.index && isWord(word, 'against', 'over', 'compared with', 'compared to', 'on'),
  );
  const mention = scene.units.find((entry) => beside >= 0 && entry.item.index > scene.items[beside]!.index);
  const { own } = scene.context;
  const saver = goesOn ? (scene.previous?.unit ?? own) : (scene.unit ?? own);
  const dearer = mention
    ? resolveMention(mention, scene.carry, scene.context)
    : saver === own
      ? undefined
      : own;
  const denied = scene.items.some((word) => word.index < item.index && keyOf(word, 'negation') !== undefined);
  if (denied) return refuse(findings, scene, 'difference', 'the words leave open what is denied', words);
  if (dearer === undefined || dearer === saver || (scene.unitProblem !== undefined && !goesOn)) return;
  const price = quantityById('fact:price');
  const operand = (of: string) => operandOf(scene, price, { stat: 'scalar' }, conditionsOf(of, own));
  const stated = statedNumber(
    {
      x: number.x,
      place: number.place,
      unit: number.unit,
      ...(number.hedge && { hedge: number.hedge }),
      ...(number.hedgeText && { hedgeText: number.hedgeText }),
    },
    'price',
  );
  const check = { kind: 'difference' as const, a: operand(dearer), b: operand(saver), stated };
  propose(findings, scene, 'difference', check, [...words, mention?.item]);
}

/** "£70 on the Umbra" behind "it saves you £90 on the Plain" */
function isSavedToo({ items, previous }: Scene, amount: Item): boolean {
  const [money, on, ...rest] = items.filter(
    (item) => item.type !== 'mark' && !isWord(item, 'and', 'or', 'the'),
  );
  return (
    money === amount &&
    isWord(on, 'on', 'over', 'against') &&
    rest.length === 1 &&
    previous?.said?.at(-1)?.kind === 'difference' &&
    previous.items.some((item) => isWord(item, 'saves', 'save'))
  );
}

/** "For a quarter more money the Umbra …", "for 24 % more": the ratio of the two prices. */
function readShareMore(scene: Scene, findings: Findings): undefined {
  const at = scene.items.findIndex(
    (item, place) => isWord(item, 'more', 'less') && isWord(scene.items[place + 1], 'money'),
  );
  const anchor = scene.items[at - 1];
  const number = anchor?.number?.dimension === 'percent' ? anchor : undefined;
  const multiple = number || !anchor ? undefined : multipleAt(scene);
  if (at < 0 || !anchor || (!number && multiple?.item !== anchor) || scene.used.has(anchor)) return;
  const more = scene.items[at]!;
  const words = [anchor, more, scene.items[at + 1]];
  const id = setBought(scene);
  const lower = isWord(more, 'less');
  const hedge = number ? undefined : hedgeBefore(scene, anchor);
  const stated = ratioStated(number, multiple, hedge, true, lower);
  if (!stated || id === undefined || scene.items.some((word) => isWord(word, 'than'))) return;
  const price = quantityById('fact:price');
  const operand = (of: string) =>
    operandOf(scene, price, { stat: 'scalar' }, conditionsOf(of, scene.context.own));
  // "Against the Plain the Hearth is brighter for 25 % more money": who costs so much stands before.
  const { own } = scene.context;
  const named = scene.units.find(({ role, item }) => role === 'subject' && item.index < anchor.index);
  const isOwn = named !== undefined && resolveMention(named, scene.carry, scene.context) === own;
  const [a, b] = isOwn ? [own, id] : [id, own];
  const check = { kind: 'ratio' as const, a: operand(a), b: operand(b), stated };
  propose(findings, scene, 'ratio', check, [...words, hedge]);
}

function conditionsOf(id: string, own: string): StatedConditions {
  const { unit, inches } = splitVariant(id);
  return {
    ...(unit !== own && unit !== undefined && { unit }),
    ...(inches !== undefined && { variantInches: inches }),
    origin: {
      ...(unit !== own && { unit: 'named' }),
      ...(inches !== undefined && { variantInches: 'named' }),
    },
  };
}

/** The one set that the clause names beside this review's own. */
function setBought(scene: Scene): string | undefined {
  if (scene.unit !== undefined && scene.unit !== scene.context.own && scene.unitNamed) return scene.unit;
  const ids = scene.units
    .filter(({ role }) => role !== 'maker')
    .map((mention) => resolveMention(mention, scene.carry, scene.context));
  const others = [...new Set(ids)].filter((id) => id !== scene.context.own);
  return others.length === 1 ? others[0] : undefined;
}
