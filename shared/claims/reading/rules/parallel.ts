import type { Check, Operand, StatedNumber } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { isOnlyNumber, subjectOfGapped } from '../gapped.ts';
import { type Item, isWord, keyOf, type NumberPhrase } from '../items.ts';
import { quantityById } from '../quantity.ts';
import { ofHue, saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { type RoundingFamily, statedOf, tidy } from '../stated.ts';
import { resolveMention } from '../units.ts';
import { opOf } from './factCheck.ts';
import { operatorOf } from './limitOperator.ts';
import { severityOf } from './severity.ts';
import { complemented } from './share.ts';
import { signOf } from './sign.ts';

/**
 * Several sets in one sentence: "At 45 degrees the Hearth keeps 70 %, the Kasulind 55 % and the Veltrane 49 %". A
 * conjunct that names a set and a number says of that set what the conjunct before it said of its own: the same
 * statement with quantity, conditions and definition, and only set and number exchanged.
 */
export function readParallel(scene: Scene, findings: Findings): undefined {
  const models = scene.previous?.said;
  if (!models) return;
  if (readOtherField(scene, findings, models.at(-1)!)) return;
  const subject = subjectOfGapped(scene.items);
  const share = scene.share;
  if ((!subject && !(share && isOnlyNumber(scene.items))) || namesConditions(scene, subject)) return;
  const mention = scene.units.find(({ item }) => item === subject);
  const hue = keyOf(subject, 'hue');
  const id = share ?? (mention && resolveMention(mention, scene.carry, scene.context));
  if (id === undefined && hue === undefined) return;
  const own = scene.context.own;
  const numbers = scene.items.filter(({ number }) => number && isFree(number));
  const last = models.at(-1);
  const off =
    hue !== undefined && last && numbers.length === 1 ? offTarget(scene, last, hue, numbers[0]!) : undefined;
  if (off) return propose(findings, scene, 'parallel', off, [subject, numbers[0]]);
  const onto = (model: Check) => (id === undefined ? valueOfHue(model, hue!) : saidOf(model, id, own));
  for (const model of models.toReversed()) {
    const check = onto(model);
    const said = check && withOwnWords(scene, check);
    if (!said) continue;
    if (id !== undefined) {
      scene.unit = id === own ? undefined : id;
      scene.unitNamed = true;
      scene.unitProblem = undefined;
    }
    if (said.check) return propose(findings, scene, 'parallel', said.check, [subject, ...said.items]);
    const why = 'the words before cannot be said of this set so shortly';
    return refuse(findings, scene, 'parallel', why, [subject, ...said.items]);
  }
}

/** A window, a stage, a room of its own: the rules that read these say more than this one. */
function namesConditions(scene: Scene, subject: Item | undefined): boolean {
  for (const item of scene.conditionItems) if (item !== subject && scene.items.includes(item)) return true;
  return false;
}

function valueOfHue(model: Check, hue: string): Check | undefined {
  return model.kind === 'value' ? ofHue(model, hue) : undefined;
}

/** "White varies by 11 %, grey by 14 %": the same of another field. */
function readOtherField(scene: Scene, findings: Findings, model: Check): boolean {
  const words = scene.items.filter(
    (item) => item.type !== 'mark' && !isWord(item, 'and', 'but', 'a', 'the', 'mid'),
  );
  const [field, by, number] = words;
  const level = isWord(field, 'grey') ? 'grey50' : isWord(field, 'white', 'black') ? field!.text : undefined;
  const isShort = words.length === 3 && isWord(by, 'by') && number?.number?.dimension === 'percent';
  if (level === undefined || !isShort || model.kind !== 'value' || model.operand.type !== 'quantity')
    return false;
  if (!/^uniformity\.[a-z0-9]+$/.test(model.operand.id) || number.number!.comparator !== undefined)
    return false;
  const stated = statedOf(number.number!, familyOf(model.operand));
  const operand = { ...model.operand, id: `uniformity.${level}` };
  propose(findings, scene, 'parallel', { ...model, operand, stated: { ...stated, unit: '%' } }, [
    field,
    number,
  ]);
  return true;
}

/** "Red is on target, green 4 % under": how far another hue is off. */
function offTarget(scene: Scene, model: Check, hue: string, item: Item): Check | undefined {
  const side = signOf(scene);
  if (model.kind !== 'direction' || model.operand.type !== 'quantity' || model.negated) return undefined;
  if (!/^sweep\.[a-z]+\.saturation$/.test(model.operand.id) || !side.item || item.number!.comparator)
    return undefined;
  if (!scene.items.includes(side.item) || item.number!.dimension !== 'percent') return undefined;
  const plain = statedOf(item.number!, 'plain');
  const stated = { ...(side.sign < 0 ? turned(plain) : plain), unit: '%' };
  const of = ofHue({ kind: 'value', operand: model.operand, stated }, hue);
  return of;
}

/** The statement with the conjunct's own number, place or severity; `check` is absent where they do not fit it. */
function withOwnWords(scene: Scene, model: Check): { check?: Check; items: Item[] } | undefined {
  if (model.kind === 'observed') return withSeverity(scene, model);
  if (model.kind === 'onset') return withEdge(scene, model);
  if (scene.axes.length > 0) return undefined;
  const numbers = scene.items.filter(({ number }) => number && isFree(number));
  const [item] = numbers;
  if (!item || numbers.length > 1 || item.number!.to || item.number!.outOf !== undefined) return undefined;
  switch (model.kind) {
    case 'value':
      return model.range || item.number!.comparator ? undefined : withValue(scene, model, item);
    case 'bound':
      return withLimit(scene, model, item);
    case 'fact':
      return withFact(scene, model, item);
    default:
      return undefined;
  }
}

function isFree({ role }: NumberPhrase): boolean {
  return role === undefined || role === 'value' || role === 'money';
}

/** How the number before became what its statement says: as it stands, or as what is left, or as a shortfall. */
interface Turn {
  number: NumberPhrase;
  of: (stated: StatedNumber) => StatedNumber;
  at: (x: number) => number;
}

function turned(stated: StatedNumber): StatedNumber {
  return { ...stated, x: -stated.x, low: -stated.high, high: -stated.low };
}

const turns: readonly Omit<Turn, 'number'>[] = [
  { of: (stated) => stated, at: (x) => x },
  { of: complemented, at: (x) => tidy(100 - x) },
  { of: turned, at: (x) => -x },
];

/** The number of the conjunct before that its statement rests on. */
function turnBefore(scene: Scene, x: number): Turn | undefined {
  for (const { number } of scene.previous!.items) {
    if (!number || !isFree(number)) continue;
    const turn = turns.find(({ at }) => Math.abs(at(tidy(number.x * number.factor)) - x) < 1e-9);
    if (turn) return { ...turn, number };
  }
  return undefined;
}

/** The number in the unit of the one before; undefined where it has another unit of its own. */
function inUnitOf(number: NumberPhrase, model: NumberPhrase): NumberPhrase | undefined {
  if (number.dimension === model.dimension) return number;
  if (number.dimension !== '') return undefined;
  const { dimension, unit, factor } = model;
  return { ...number, dimension, unit, factor };
}

function familyOf(operand: Operand): RoundingFamily {
  return operand.type === 'fact'
    ? operand.key === 'price'
      ? 'price'
      : 'plain'
    : quantityById(operand.id).family;
}

function withValue(scene: Scene, model: Check & { kind: 'value' }, item: Item) {
  const turn = turnBefore(scene, model.stated.x);
  const number = turn && inUnitOf(item.number!, turn.number);
  if (!number) return undefined;
  // "Red 8.8 % over; green 7.6 % under": a side of its own.
  const side = signOf(scene);
  const ownSide = side.item && scene.items.includes(side.item) && quantityById(idOf(model)).signed;
  const plain = statedOf(number, familyOf(model.operand));
  const stated = ownSide ? (side.sign < 0 ? turned(plain) : plain) : turn.of(plain);
  const unit = model.stated.unit;
  return { check: { ...model, stated: { ...stated, ...(unit && { unit }) } }, items: [item] };
}

function idOf({ operand }: Check & { kind: 'value' }): string {
  return operand.type === 'fact' ? `fact:${operand.key}` : operand.id;
}

function withLimit(scene: Scene, model: Check & { kind: 'bound' }, item: Item) {
  const [bound, second] = model.bounds;
  if (!bound || second || model.houseWord) return undefined;
  const turn = turnBefore(scene, bound.x);
  const number = turn && inUnitOf(item.number!, turn.number);
  if (!number) return undefined;
  const own = operatorOf(scene, item);
  // "The Plain covers more than 98 %, the Umbra 85 %": how much it is, and no limit any more.
  if (!own) {
    const stated = { ...turn.of(statedOf(number, familyOf(bound.operand))), unit: bound.unit };
    return { check: { kind: 'value' as const, operand: bound.operand, stated }, items: [item] };
  }
  // Of what is lost a limit turns round; said shortly, nobody can tell which way.
  if (own && (own.scale !== 1 || turn.at(1) !== 1)) return { items: [item] };
  const x = turn.at(tidy(number.x * number.factor));
  return {
    check: { ...model, bounds: [{ ...bound, x, op: own?.op ?? bound.op }] },
    items: [item, ...(own?.items ?? [])],
  };
}

function withFact(scene: Scene, model: Check & { kind: 'fact' }, item: Item) {
  if (typeof model.x !== 'number') return undefined;
  const turn = turnBefore(scene, model.x);
  const number = turn && inUnitOf(item.number!, turn.number);
  if (!number || model.negated) return undefined;
  const stated = statedOf(number, model.key === 'price' ? 'price' : 'plain');
  return {
    check: { ...model, x: stated.x, op: opOf(item), ...(model.stated && { stated }) },
    items: [item],
  };
}

function withEdge(scene: Scene, model: Check & { kind: 'onset' }) {
  const [axis] = scene.axes;
  if (!axis || scene.axes.length > 1 || axis.tone || axis.free || axis.at !== undefined) return undefined;
  const side = model.from === undefined ? 'to' : 'from';
  const edge = axis[side];
  const items = axis.items.filter((item) => scene.items.includes(item));
  if (edge === undefined || (axis.from !== undefined && axis.to !== undefined)) return { items };
  const included = side === 'from' ? axis.fromIncluded : axis.toIncluded;
  const check: Check = { ...model, [side]: edge, edge: included ? 'included' : 'excluded' };
  return { check, items };
}

function withSeverity(scene: Scene, model: Check & { kind: 'observed' }) {
  if (model.negated || scene.axes.length > 0 || scene.items.some(({ number }) => number)) return undefined;
  const found = severityOf(scene, scene.items[0]!, scene.used);
  return found && { check: { ...model, severity: found.range }, items: found.items };
}
